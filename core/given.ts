/** A value as it reaches core: what was asked for, in mm, counts or the id of a choice. */
export type Given =
  | { is: 'length'; mm: number }
  | { is: 'window'; loMm: number; hiMm: number }
  | { is: 'count'; count: number }
  | { is: 'mass'; g: number }
  /** A share in per cent: 10 is 10 %. */
  | { is: 'percent'; percent: number }
  | { is: 'choice'; id: string }
  /** The three sides of a thing that a piece must take, as typed. */
  | { is: 'contents'; sidesMm: readonly [number, number, number] };
