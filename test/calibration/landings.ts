import { type Evidence, evidence, gauge, RESTED_TUBE } from '../../core/gauge/gauge.js';
import { rowsFor, type Window } from '../../core/sizing/rows.js';
import { corrected } from '../../core/work/correction.js';
import type { Work } from '../../core/work/pitch.js';
import { FOLDED_RING, WINDOW } from '../core/samples.js';
import type { Draws } from './draws.js';
import { type Fabric, type Maker, makerFrom, measured, onMachine } from './makers.js';

/** One piece: the chance that was stated of it, and whether it ended inside its window. */
export type Landing = { stated: number; landed: boolean };

const LENGTHS_MM = [60, 100, 150, 250, 400, 560];

/** A window 0.5 to 30 % wide, so that chances from none to nearly certain are stated. */
function anyWindow(draw: Draws): Window {
  const loMm = draw.uniform(150, 500);
  return { loMm, hiMm: loMm * (1 + Math.exp(draw.uniform(Math.log(0.005), Math.log(0.3)))) };
}

const inside = ({ loMm, hiMm }: Window, rowsInPiece: number, pitchMm: number): boolean => {
  const finishedMm = FOLDED_RING.share * rowsInPiece * pitchMm;
  return loMm <= finishedMm && finishedMm <= hiMm;
};

function rowOf(known: Evidence) {
  const { row } = gauge(known);
  if (row === undefined) throw new Error('no gauge from swatches that were measured');
  return row;
}

/** A piece planned from swatches at rest and swatches read only as they hang, and knitted as planned. */
export function planned(draw: Draws, swatches: Readonly<Record<keyof Fabric, number>>): Landing {
  const maker = makerFrom(draw, [3.5, 7.5]);
  const window = anyWindow(draw);
  const read = (state: keyof Fabric) =>
    Array.from({ length: swatches[state] }, (_, i) =>
      measured(draw, maker, `${state} ${i}`, draw.oneOf(LENGTHS_MM), [state]),
    ).flat();
  const row = rowOf(evidence([...read('rested'), ...read('hanging')]));
  const { rowsInPiece, chance } = rowsFor(window, FOLDED_RING, row);
  const pitchMm = onMachine(draw, maker, rowsInPiece).finishedPitchMm(rowsInPiece);
  return { stated: chance, landed: inside(window, rowsInPiece, pitchMm) };
}

/** Where and in what state the work is read, given what is known of it. */
export type ReadAt = (work: Work) => readonly (readonly [row: number, state: keyof Fabric])[];

/** A piece 11 in wide within 1/4 in, planned from one swatch as long, read on the way and stopped where that says. */
export function correctedBy(draw: Draws, pairs: number, readAt: ReadAt): Landing {
  const maker = makerFrom(draw, [4.8, 5.4]);
  const own = measured(draw, maker, 'swatch', 558.8, ['rested']);
  const known = evidence(own, [...own, ...pairsOf(draw, maker, pairs)]);
  const row = rowOf(known);
  const plan = rowsFor(WINDOW, FOLDED_RING, row);
  const work = { row, rowsInPiece: plan.rowsInPiece, target: RESTED_TUBE, factors: known.rows.factors };

  const piece = onMachine(draw, maker, plan.rowsInPiece);
  const readings = readAt(work).map(([at, state]) => piece.read(at, state));
  const inHand = { readings, stopAt: plan.rows, knitted: readings.at(-1)?.row ?? 0 };
  const { stop } = corrected(WINDOW, FOLDED_RING, work, inHand);
  return { stated: stop.chance, landed: inside(WINDOW, stop.rowsInPiece, piece.finishedPitchMm(stop.rowsInPiece)) };
}

/** Earlier pieces as long, read as they hung and at rest, on another machine: they teach the change and no gauge. */
const pairsOf = (draw: Draws, maker: Maker, howMany: number) =>
  Array.from({ length: howMany }, (_, i) => measured(draw, maker, `pair ${i}`, 558.8, ['hanging', 'rested'])).flat();
