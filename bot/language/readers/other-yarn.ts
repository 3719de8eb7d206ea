import type { Meaning } from '../../request.js';
import type { Context } from '../context.js';
import { claim, indexesBetween, isFree, phrasePlaces, type Sheet, saidBetween, wordAt } from '../sheet.js';
import { COLOURS, FIBRES, YARN_WEIGHTS } from '../vocabulary.js';
import { massIn } from './put-ups.js';
import { claimBall } from './stock-amounts.js';

/** With these an `instead` at the end makes it another yarn. */
const MAY = ['can i use', 'could i use', 'can i knit it in', 'could i knit it in'];
const OTHER = [
  'in another yarn',
  'with another yarn',
  'in a different yarn',
  'with a different yarn',
  'swap to',
  'swap for',
  'swap the yarn for',
  'substitute',
];
const MAKE = ['what can i make', 'what could i make', 'what can i knit', 'what could i knit'];
/** Without one of these nothing of it is asked. */
const CUES = ['what', 'another', 'different', 'swap', 'substitute', 'instead'];
const FILLERS =
  'yarn instead for this plan it the a my of with from out in i have got left what on shelf stash some'.split(' ');

/** Another yarn for the plan in hand, or what a yarn is enough for. Claims its words. */
export function readOtherYarn(sheet: Sheet, context: Context): Meaning | undefined {
  if (!sheet.tokens.some((_, i) => CUES.includes(wordAt(sheet, i) ?? ''))) return undefined;
  const made = MAKE.flatMap((phrase) => phrasePlaces(sheet, phrase))[0];
  if (made !== undefined) {
    claim(sheet, USE, ...indexesBetween(made.from, made.to));
    const mass = massIn(sheet, made.to + 1, sheet.tokens.length);
    if (mass !== undefined) claim(sheet, USE, mass.at);
    const yarn = claimYarn(sheet, made.to + 1, context);
    return { kind: 'what_to_make', ...(mass && { massG: mass.value }), ...(yarn !== undefined && { yarn }) };
  }
  const may = MAY.flatMap((phrase) => phrasePlaces(sheet, phrase))[0];
  const isInstead = sheet.tokens.some((_, i) => wordAt(sheet, i) === 'instead');
  const used = phrasePlaces(sheet, 'use')[0];
  const place = OTHER.flatMap((phrase) => phrasePlaces(sheet, phrase))[0] ?? (isInstead ? (may ?? used) : undefined);
  const isOfPlan = context.subjectPiece !== undefined || context.inHand !== undefined;
  if (place === undefined || !(isOfPlan || place === used)) return undefined;
  const draft: Sheet = { ...sheet, uses: [...sheet.uses] };
  claim(draft, USE, ...indexesBetween(place.from, place.to));
  const ball = claimBall(draft, { from: place.to + 1, to: sheet.tokens.length }, true);
  const yarn = claimYarn(draft, place.to + 1, context);
  // A yarn alone that is to be used is another one for the plan.
  if (ball === undefined && (yarn === undefined || place === used)) return undefined;
  sheet.uses.splice(0, sheet.uses.length, ...draft.uses);
  return { kind: 'other_yarn', ...(yarn !== undefined && { yarn }), ...(ball && { ball }) };
}

const USE = 'yarn meant';

/** A name known, else words that tell a yarn. */
function claimYarn(sheet: Sheet, from: number, { yarns, onShelf = [] }: Context): string | undefined {
  const names = [...yarns, ...onShelf].sort((a, b) => b.length - a.length);
  const known = names.flatMap((name) => phrasePlaces(sheet, name))[0] ?? runFrom(sheet, from);
  if (known === undefined) return undefined;
  claim(sheet, USE, ...indexesBetween(known.from, known.to));
  return saidBetween(sheet, known.from, known.to);
}

function runFrom(sheet: Sheet, from: number): { from: number; to: number } | undefined {
  const isOf = (i: number): boolean =>
    isFree(sheet, i) && wordAt(sheet, i) !== undefined && !FILLERS.includes(wordAt(sheet, i) ?? '');
  const first = sheet.tokens.findIndex((_, i) => i >= from && isOf(i));
  if (first < 0) return undefined;
  let to = first;
  while (isOf(to + 1)) to++;
  const tells = indexesBetween(first, to).some((i) =>
    [COLOURS, FIBRES, YARN_WEIGHTS].some((words) => words.has(wordAt(sheet, i) ?? '')),
  );
  return tells ? { from: first, to } : undefined;
}
