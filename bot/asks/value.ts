import { z } from 'zod';

const Person = z.union([
  z.object({ is: z.enum(['woman', 'man']) }),
  z.object({ is: z.literal('child'), months: z.number(), sex: z.enum(['boy', 'girl']).optional() }),
]);

/** A value a maker gave for one ask of a piece, with what was typed and what was taken for granted. */
const provenance = {
  said: z.string().optional(),
  assumed: z.enum(['unit', 'same_unit', 'field', 'rate', 'body', 'usual', 'named']).optional(),
  /** Whose published measure the value is, with `assumed: 'body'`; the label is that of the ask. */
  body: z.object({ label: z.string(), person: Person }).optional(),
  /**
   * What was made of the words: `around`: a length once round, of which the value is half, as the piece lies flat.
   * `across`: a diameter, of which the value is once round. `girth`: once round, of which the value is the diameter.
   * `at_least`, `at_most`: a window from the size typed to the usual tolerance on the side allowed. Empty
   * for a window of both bounds.
   */
  given: z.array(z.enum(['around', 'across', 'girth', 'at_least', 'at_most'])).optional(),
};

const Sides = z.tuple([z.number(), z.number(), z.number()]).readonly();

export const Value = z.discriminatedUnion('is', [
  z.object({ is: z.literal('length'), mm: z.number(), ...provenance }),
  z.object({ is: z.literal('window'), loMm: z.number(), hiMm: z.number(), ...provenance }),
  /** A number, or three `sides`, whose unit nobody has said yet; it becomes a length once the maker's unit is known. */
  z.object({ is: z.literal('bare'), lo: z.number(), hi: z.number(), sides: Sides.optional(), ...provenance }),
  z.object({ is: z.literal('count'), count: z.number(), ...provenance }),
  z.object({ is: z.literal('mass'), g: z.number(), ...provenance }),
  z.object({ is: z.literal('percent'), percent: z.number(), ...provenance }),
  z.object({ is: z.literal('choice'), id: z.string(), ...provenance }),
  /** The sides of a thing that a piece must take, with its name in what was said. */
  z.object({ is: z.literal('contents'), sidesMm: Sides, ...provenance }),
]);
export type Value = z.infer<typeof Value>;
