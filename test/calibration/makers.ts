import type { Measurement, State } from '../../core/gauge/measurement.js';
import type { Reading } from '../../core/work/reading.js';
import type { Draws } from './draws.js';

/**
 * Makers as they truly are, which the program never sees: what its figures take for granted, written down once more so
 * that a change of one without the other shows. Shares in logs, all from memory.
 */
const SCATTER = 0.03;
const DRAWING_IN = 0.03;
const PIECE_STRAYS = 0.01;
const RULER_MM = 1.6;
const LAYING_OUT = 0.005;
const ROW_TENSION = 0.005;

/** Log height of a row, how far pieces scatter about it, and ln(rested/hanging), the same for all the maker's work. */
export type Maker = { mu: number; scatter: number; drawsIn: number };

/** @param pitchMm the range that the maker's rows are drawn from */
export const makerFrom = (draw: Draws, pitchMm: readonly [lo: number, hi: number]): Maker => ({
  mu: draw.uniform(Math.log(pitchMm[0]), Math.log(pitchMm[1])),
  scatter: Math.sqrt((4 * SCATTER ** 2) / draw.chiSquare()),
  drawsIn: draw.normal(DRAWING_IN),
});

/** The log height of a row of one piece in each state. */
export type Fabric = Readonly<Record<Exclude<State, 'washed'>, number>>;

export function knitted(draw: Draws, maker: Maker): Fabric {
  const rested = maker.mu + draw.normal(maker.scatter);
  return { rested, hanging: rested - maker.drawsIn - draw.normal(PIECE_STRAYS) };
}

/** A swatch or piece of about this length, laid out and read in each of the states. */
export function measured(
  draw: Draws,
  maker: Maker,
  name: string,
  lengthMm: number,
  states: readonly (keyof Fabric)[],
): Measurement[] {
  const fabric = knitted(draw, maker);
  const count = Math.round(lengthMm / Math.exp(maker.mu));
  return states.map((state) => {
    const overMm = count * Math.exp(fabric[state] + draw.normal(LAYING_OUT)) + draw.normal(RULER_MM);
    return { swatch: name, state, form: 'tube', rows: { count, overMm, how: 'read' } };
  });
}

/** A piece on the machine, to be read at rows that follow one another and then finished. */
export type OnMachine = { read(row: number, state: keyof Fabric): Reading; finishedPitchMm(rows: number): number };

/**
 * Rows are independent in tension, so that the mean of those knitted wanders about that of the planned piece and meets
 * it at its end: a bridge. The work is laid out once in each state it is read in.
 */
export function onMachine(draw: Draws, maker: Maker, plannedRows: number): OnMachine {
  const fabric = knitted(draw, maker);
  const laidOut: Fabric = { hanging: draw.normal(LAYING_OUT), rested: draw.normal(LAYING_OUT) };
  const rowSpread = ROW_TENSION * Math.sqrt(plannedRows);
  let [row, surplus] = [0, 0];
  const meanAt = (to: number): number => {
    const ahead = plannedRows - row;
    const left = Math.max(0, plannedRows - to);
    const free = left > 0 ? ((to - row) * left) / ahead : Math.min(to - row, to - plannedRows);
    surplus = (ahead > 0 ? (surplus * left) / ahead : surplus) + draw.normal(rowSpread * Math.sqrt(free));
    row = to;
    return surplus / to;
  };
  return {
    read: (at, state) => ({
      row: at,
      state,
      lengthMm: at * Math.exp(fabric[state] + laidOut[state] + meanAt(at)) + draw.normal(RULER_MM),
    }),
    finishedPitchMm: (rows) => Math.exp(fabric.rested + meanAt(rows)),
  };
}
