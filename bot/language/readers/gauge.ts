import { mmPer, type Piece } from '../../../core/index.js';
import type { GaugeAsk, Tension, Value } from '../../request.js';
import { bareAt } from '../clauses.js';
import { type BareUnit, madeOf, typedValue } from '../lengths.js';
import {
  claim,
  freeQuantities,
  isFree,
  isLabelOfNext,
  labelBefore,
  quantityAtIndex,
  type Sheet,
  said,
  saidBetween,
  wordAt,
} from '../sheet.js';
import { FLAT_WORDS, ROW_WORDS } from '../vocabulary.js';
import { fieldOf } from './fields.js';
import { readMass, readUnravelled } from './masses.js';
import { readEachState, readStates } from './states.js';
import { type CountAt, countsIn, LENGTH_OF_ROWS, ROUND_WORDS, readTension } from './tension.js';
import { readYarnWeight } from './yarn-weights.js';

/** What a message records, one entry a piece measured; or two rates that cannot both be, quoted. */
export type GaugeRead = { records: readonly Omit<GaugeAsk, 'on'>[] } | { conflict: string };

/**
 * Reads rows and stitches over a length, flat width, state and form. Undefined when the message records nothing.
 * @param named the piece asked for in the same message: a width without `flat` is then its own, and so is a flat
 * width that it takes, while nothing else is recorded
 */
export function readGauge(
  sheet: Sheet,
  bare: BareUnit,
  named: Piece | undefined,
  swatchRows?: number,
): GaugeRead | undefined {
  const weight = readYarnWeight(sheet);
  const unravelled = readUnravelled(sheet, bare);
  const weighed = readMass(sheet, 0, false);
  const counts = countsIn(sheet);
  const unclaimed = { ...sheet, uses: [...sheet.uses] };
  const rows = tensions(sheet, unclaimed, counts, 'rows', bare);
  const stitches = tensions(sheet, unclaimed, counts, 'stitches', bare);
  const conflict = clash(rows) ?? clash(stitches);
  if (conflict !== undefined) return { conflict };
  const recorded = rows.length > 0 || stitches.length > 0;
  const same = readSame(sheet);
  const measuring = recorded || same || counts.some(({ noun }) => noun === 'needles');
  const itsOwn = named !== undefined && !recorded && FLAT_WORDS.some((word) => fieldOf(named, word) !== undefined);
  const flatWidth = itsOwn ? undefined : readFlatWidth(sheet, counts, bare, measuring && named === undefined);
  const again = same && !recorded ? sameRows(sheet, bare, swatchRows) : undefined;
  if (!recorded && flatWidth === undefined && again === undefined) {
    if (unravelled ?? weighed ?? weight) return { records: [ofYarn(weighed, unravelled, weight)] };
    if (same) return { records: [{ same, state: readEachState(sheet, 1)[0] }] };
    return named === undefined ? rowsAlone(sheet, counts) : undefined;
  }
  const form = readForm(sheet);
  const mass = weighed ?? (named === undefined ? readMass(sheet, 0, true) : undefined);
  const told = {
    form,
    ...(same && { same }),
    ...(mass && { mass }),
    ...(unravelled && { unravelled }),
    ...(weight && { weight }),
  };
  const readings = readStates(sheet, rows, bare);
  const last = readings.at(-1);
  if (last !== undefined) {
    const earlier = readings.slice(0, -1);
    return { records: [{ ...last, stitches: stitches[0], flatWidth, earlier, ...told }] };
  }
  const states = readEachState(sheet, rows.length);
  const first = { rows: rows[0] ?? again, stitches: stitches[0], flatWidth, state: states[0], ...told };
  return { records: [first, ...rows.slice(1).map((more, i) => ({ rows: more, state: states[i + 1], form }))] };
}

/** The yarn alone: a weight belongs to the swatch recorded last. */
const ofYarn = (mass: Value | undefined, unravelled: GaugeAsk['unravelled'], weight: GaugeAsk['weight']) => ({
  ...(mass && { mass }),
  ...(mass && unravelled === undefined && { same: true }),
  ...(unravelled && { unravelled }),
  ...(weight && { weight }),
});

/** `the same one`: another reading of the swatch recorded last. */
function readSame(sheet: Sheet): boolean {
  const places = sheet.tokens.flatMap((_, i) => {
    const isThing =
      ['piece', 'swatch'].includes(wordAt(sheet, i + 1) ?? '') || said(sheet, i + 1).toLowerCase() === 'one';
    return wordAt(sheet, i) === 'same' && isThing ? [i] : [];
  });
  claim(sheet, 'the same swatch', ...places.flatMap((i) => [i, i + 1]));
  return places.length > 0;
}

/** The one length of a swatch whose rows were said before: `same one now 15 3/8`. */
function sameRows(sheet: Sheet, bare: BareUnit, rows: number | undefined): Tension | undefined {
  const [index] = freeQuantities(sheet).filter(
    (i) => mmPer(quantityAtIndex(sheet, i)?.unit) !== undefined || bareAt(sheet, i) !== undefined,
  );
  const quantity = index === undefined ? undefined : quantityAtIndex(sheet, index);
  if (rows === undefined || index === undefined || quantity === undefined) return undefined;
  claim(sheet, LENGTH_OF_ROWS, index);
  return { count: rows, over: typedValue(quantity, bare, said(sheet, index)), how: 'read', said: said(sheet, index) };
}

/** Rows without a length: a record that still has to be completed. The number of one row is none. */
function rowsAlone(sheet: Sheet, counts: readonly CountAt[]): GaugeRead | undefined {
  const at = counts.find(({ noun, index }) => noun === 'rows' && isFree(sheet, index));
  if (at === undefined || wordAt(sheet, 0) === 'how') return undefined;
  if (ROW_WORDS.includes(wordAt(sheet, at.index - 1) ?? '')) return undefined;
  claim(sheet, 'rows', at.index, at.end);
  return { records: [{ rows: { count: at.count, how: 'read', said: saidBetween(sheet, at.index, at.end) } }] };
}

/** A rate shared by two counts (`5 rows and 3 sts to the inch`) is read for the last, and lent to the one before. */
function tensions(
  sheet: Sheet,
  unclaimed: Sheet,
  counts: readonly CountAt[],
  noun: CountAt['noun'],
  bare: BareUnit,
): Tension[] {
  return counts
    .filter((at) => at.noun === noun && isFree(sheet, at.index))
    .flatMap((at) => readTension(sheet, at, bare) ?? sharedRate(sheet, unclaimed, counts, at, bare) ?? []);
}

function sharedRate(
  sheet: Sheet,
  unclaimed: Sheet,
  counts: readonly CountAt[],
  at: CountAt,
  bare: BareUnit,
): Tension | undefined {
  const joined = wordAt(sheet, at.end + 1) === 'and' || sheet.tokens[at.end + 1]?.is === 'mark';
  const next = counts.find((other) => other.index === at.end + (joined ? 2 : 1) && other.noun !== 'needles');
  if (next === undefined) return undefined;
  const lent = readTension({ ...unclaimed, uses: [...unclaimed.uses] }, next, bare);
  if (lent === undefined || lent.how !== 'counted') return undefined;
  claim(sheet, `${at.noun} rate`, at.index, at.end);
  return { ...lent, count: (lent.count * at.count) / next.count, said: saidBetween(sheet, at.index, at.end) };
}

/** Two pieces of one maker never differ by so large a share. From memory. */
const PIECES_DIFFER = 0.15;

/** Two rates of one thing in one message contradict each other, and so do two pieces that differ beyond belief. */
function clash(tensions: readonly Tension[]): string | undefined {
  const [first, ...others] = tensions;
  const second = others.find((other) => first !== undefined && contradicts(first, other));
  return first && second && `${first.said ?? first.count} and ${second.said ?? second.count}`;
}

function contradicts(a: Tension, b: Tension): boolean {
  if (a.how === 'counted' && b.how === 'counted') return true;
  if (a.over?.is !== 'length' || b.over?.is !== 'length') return false;
  return Math.abs(Math.log((a.over.mm / a.count) * (b.count / b.over.mm))) > PIECES_DIFFER;
}

/** A flat tube's width: labelled flat or folded, or plainly wide in a message that records rows. */
function readFlatWidth(sheet: Sheet, counts: readonly CountAt[], bare: BareUnit, recording: boolean) {
  for (const index of freeQuantities(sheet).filter((i) => counts.every((count) => count.index !== i))) {
    const labels = flatLabels(sheet, index, recording);
    const quantity = quantityAtIndex(sheet, index);
    if (labels.length === 0 || quantity === undefined) continue;
    const isRound = labels.every((i) => ROUND_WORDS.includes(wordAt(sheet, i) ?? ''));
    claim(sheet, 'flat width', index, ...labels);
    const value = typedValue(quantity, bare, said(sheet, index), { minMm: 20, maxMm: 1000 });
    return isRound ? madeOf(value, 'around') : value;
  }
  return undefined;
}

const WIDE_WORDS = ['wide', 'width', 'across'];

/** Indexes of the words beside a quantity that call it the flat width; empty when none does. */
function flatLabels(sheet: Sheet, index: number, recording: boolean): number[] {
  const near = [index - 2, index - 1, index + 1, index + 2].filter((i) => {
    const word = wordAt(sheet, i) ?? '';
    const between = i === index - 2 ? sheet.tokens[index - 1] : sheet.tokens[index + 1];
    const joins = Math.abs(i - index) === 1 || between?.is === 'word' || i === labelBefore(sheet, index);
    const isRound = i > index && ROUND_WORDS.includes(word);
    const isLabel = isRound || [...FLAT_WORDS, ...WIDE_WORDS].includes(word);
    return isFree(sheet, i) && isLabel && joins && !(i > index && isLabelOfNext(sheet, i));
  });
  const words = near.map((i) => wordAt(sheet, i) ?? '');
  const flat = words.some((word) => FLAT_WORDS.includes(word));
  return flat || (recording && words.length > 0) ? near : [];
}

function readForm(sheet: Sheet): GaugeAsk['form'] {
  const index = sheet.tokens.findIndex((_, i) => ['panel', 'tube'].includes(wordAt(sheet, i) ?? ''));
  return wordAt(sheet, index) === 'panel' ? 'panel' : undefined;
}
