import type { Outcome, Units } from '../../../core/index.js';
import type { FormValues, RateOf, Request } from '../../request.js';

/** A machine and yarn of the maker, as one choice. */
export type BenchKnown = { id: string; machine: string; needles: number | undefined; yarn: string; tension: string };

/** A piece on a machine. `label` names both. */
export type WorkKnown = { id: string; label: string; rows: number };

/** A line of the rate card that holds for the maker; a price without a currency has ''. */
export type RateKnown = {
  of: RateOf;
  prices: readonly { minor: number; currency: string }[];
  percent?: number | undefined;
};

/** What a form draws from and reads against: the maker's own things, the one used last first. */
export type Known = {
  units: Units | undefined;
  currency: string | undefined;
  benches: readonly BenchKnown[];
  works: readonly WorkKnown[];
  rates: readonly RateKnown[];
  /** The plan in hand by its size, as others would see it. */
  inHand?: string | undefined;
};

export type Option = { id: string; label: string; about?: string };

/** One field. `redraws`: what else is asked depends on it. `most`: characters, where a note may be longer. */
export type Field = {
  id: string;
  label: string;
  hint?: string;
  required?: true;
} & (
  | { is: 'text'; most?: number }
  /** People of the workspace; it holds their ids, joined by commas. */
  | { is: 'people'; most: number }
  | { is: 'select'; options: readonly Option[]; redraws?: boolean }
  | { is: 'radio'; options: readonly Option[] }
);

/** A form is filled in at a glance: what has no room stays as it was said. */
export const MOST_FIELDS = 6;

/** What is wrong, and the field it stands beside; without one it is of the form as a whole. */
export type Fault = { at?: string | undefined; says: string };

/** A form as data and pure functions. Reading back what `filled` holds gives what it was filled from. */
export type Form = {
  title: string;
  submit: string;
  /** What the fields hold of what was said. Ids without a field are carried along unseen. */
  filled(said: Request | undefined, known: Known): FormValues;
  fields(values: FormValues, known: Known): readonly Field[];
  /** The request that words would make, or every fault at once. */
  request(values: FormValues, known: Known): Outcome<Request, Fault>;
  /** What a value without a field is called for the one who said it; undefined for one that goes without saying. */
  unseen?(id: string, values: FormValues): string | undefined;
  /** The field that a problem names by its label. */
  at: Readonly<Record<string, string>>;
};
