import type { Piece } from '../../core/index.js';
import type { Meaning } from '../request.js';
import { sentenceAt } from './clauses.js';
import type { Context } from './context.js';
import type { BareUnit } from './lengths.js';
import { readCorrections } from './readers/corrections.js';
import { readFinishes } from './readers/finishes.js';
import { readLostCounts } from './readers/lost-counts.js';
import { MACHINE, readMachine } from './readers/machines.js';
import { piecePlaces } from './readers/pieces.js';
import { readReadings } from './readers/readings.js';
import { readStarts } from './readers/starts.js';
import { readSettled, readStops } from './readers/stops.js';
import { readTakeBacks } from './readers/take-backs.js';
import { readTallies } from './readers/tallies.js';
import { readYarnLeft } from './readers/yarn-left.js';
import { claim, indexesBetween, isLeftOut, phrasePlaces, type Sheet, WORK_PIECE, wordAt } from './sheet.js';

/** In this order: each claims its words, so that the next sees none of them. */
const READERS = [
  readYarnLeft,
  readTakeBacks,
  readSettled,
  readLostCounts,
  readStops,
  readCorrections,
  readFinishes,
  readReadings,
  readTallies,
];
const SAME = ['the', 'this', 'that', 'my', 'same'];
const HIDDEN = 'a piece wanted';

/**
 * What a message asks of the work in hand and of what was recorded, in the order typed; the words are claimed. A
 * sentence that names a piece wanted has none of it, but for a `start` at its end.
 */
export function workMeanings(sheet: Sheet, context: Context, bare: BareUnit): Meaning[] {
  const named = withPiece(sheet, context.pieces);
  const own = besidePieces(named, context.pieces);
  const machine = namesMachine(own, context) ? machineIn(own, context) : undefined;
  const found = READERS.flatMap((reader) => reader(own, context, bare));
  const isOfWork = found.some(({ meaning }) => hasWhich(meaning));
  const all = [...found, ...readStarts(named, context, bare)].sort((a, b) => a.at - b.at);
  // What could not be told of the work is no size either.
  for (const [i, use] of named.uses.entries()) if (isLeftOut(use)) claim(sheet, use ?? '', i);
  if (all.length === 0) return [];
  for (const [i, use] of own.uses.entries()) {
    const isOwn = found.length > 0 && use !== HIDDEN && (isOfWork || use !== MACHINE);
    const claimed = (isOwn ? use : undefined) ?? named.uses[i];
    if (claimed !== undefined) claim(sheet, claimed, i);
  }
  const on = machine === undefined ? {} : { on: { machine } };
  return all.map(({ meaning }) => (hasWhich(meaning) ? { ...meaning, ...on } : meaning));
}

const OF_WORK = ['tally', 'lost_count', 'reading', 'set_stop', 'finish', 'yarn_left'] as const;
const hasWhich = ({ kind }: Meaning): boolean => OF_WORK.some((one) => one === kind);

/** `on the 48`, or a name that is no number: `on 48` may be a row. */
const namesMachine = (sheet: Sheet, { machines }: Context): boolean =>
  machines.some((name) => !/^\d/.test(name) && phrasePlaces(sheet, name).length > 0) ||
  ['the', 'my'].some((article) =>
    phrasePlaces(sheet, `on ${article}`).some(({ to }) => sheet.tokens[to + 1]?.is === 'quantity'),
  );

/** The machine named, with the words before it claimed. */
function machineIn(sheet: Sheet, { machines }: Context): string | undefined {
  const machine = readMachine(sheet, machines);
  const at = sheet.uses.indexOf(MACHINE);
  for (let i = at - 1; ['on', 'the', 'my'].includes(wordAt(sheet, i) ?? ''); i--) claim(sheet, MACHINE, i);
  return machine;
}

/** The sheet with the piece in hand claimed, where a word points to it: `the pouch`. */
function withPiece(sheet: Sheet, pieces: readonly Piece[]): Sheet {
  const named: Sheet = { ...sheet, uses: [...sheet.uses] };
  for (const { from, to } of piecePlaces(sheet, pieces)) {
    if (SAME.includes(wordAt(sheet, from - 1) ?? '')) claim(named, WORK_PIECE, ...indexesBetween(from - 1, to));
  }
  return named;
}

/** The sheet with every sentence hidden that names a piece wanted. */
function besidePieces(sheet: Sheet, pieces: readonly Piece[]): Sheet {
  const own: Sheet = { ...sheet, uses: [...sheet.uses] };
  for (const { from } of piecePlaces(sheet, pieces)) {
    const sentence = sentenceAt(sheet, from);
    claim(own, HIDDEN, ...indexesBetween(sentence.from, sentence.to - 1));
  }
  return own;
}
