import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';
import { claim, holdsAny, phrasePlaces, type Sheet, said, wordAt } from '../sheet.js';

const PHRASES = [
  'the other yarn',
  'the other wool',
  'my other yarn',
  'the other machine',
  'my other machine',
  'the other one',
];
const OTHER = new Set(['other']);
/** May stand beside them; with any other word something else is told. */
const BESIDE = new Set(
  `the my other yarn wool machine one in on with use using make knit it this same please and but instead what about how switch to try for me
plan do now again then ok okay so could can you we i would want like rather`.split(/\s+/),
);

/** `in the other yarn`, `on the other machine`, `the other one`: the plan in hand on the only other that there is. */
export function readOthers(sheet: Sheet, context: Context): Meaning | undefined {
  if (context.subjectPiece === undefined || !holdsAny(sheet, OTHER)) return undefined;
  const place = PHRASES.flatMap((phrase) => phrasePlaces(sheet, phrase))[0];
  const isAll = sheet.tokens.every((_, i) => {
    const word = wordAt(sheet, i) ?? said(sheet, i).toLowerCase();
    return sheet.tokens[i]?.is === 'mark' || BESIDE.has(word);
  });
  if (place === undefined || !isAll) return undefined;
  const { bench = {}, yarns, machines } = context;
  const besides = (names: readonly string[], name = ''): string[] => names.filter((one) => one !== name.toLowerCase());
  const thing = said(sheet, place.to).toLowerCase();
  const inYarn = thing === 'machine' ? [] : besides(yarns, bench.yarn).map((yarn) => ({ yarn }));
  const onMachine =
    thing === 'machine' || thing === 'one'
      ? besides(machines, bench.machine).map((machine) => ({
          machine,
          ...(/^\d+$/.test(machine) && { needles: Number(machine) }),
        }))
      : [];
  const all = [...inYarn, ...onMachine];
  const [on, ...more] = all;
  claim(sheet, 'the other one', ...sheet.tokens.keys());
  if (on !== undefined && more.length === 0) return { kind: 'change', edit: { values: {}, on, focus: [] } };
  const names = [
    ...inYarn.map(({ yarn }) => yarn),
    ...onMachine.map(({ machine }) => `the ${machine.replace(/^the /, '')}`),
  ];
  return {
    kind: 'unread',
    why: 'which_other',
    words: names.length < 2 ? names.join() : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`,
  };
}
