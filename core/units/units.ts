/** A maker's system: centimetres and metres, or inches and yards. */
export type Units = 'cm' | 'in';

/** The other of the two, for the figures in brackets. */
export const otherUnits = (units: Units): Units => (units === 'cm' ? 'in' : 'cm');

/**
 * Units a maker may type. Inch, foot, yard, ounce and pound are exact by definition.
 * @source NIST Special Publication 811 (2008), appendix B; yard and pound agreement of 1959
 */
export const MM_PER = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8, yd: 914.4 } as const;
export const G_PER = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 } as const;

export type LengthUnit = keyof typeof MM_PER;
export type MassUnit = keyof typeof G_PER;
