import type { Measurement } from '../../../core/index.js';

/** `name` is '' for the machine or yarn a maker has not named; `needles` is undefined until said. */
export type Machine = { id: string; name: string; needles: number | undefined };
export type Yarn = {
  id: string;
  name: string;
  /** Its category in the standard yarn weight system, 0 to 7. */
  category: number | undefined;
  tex: number | undefined;
  /** The day this lot came to the maker, as core counts days. */
  since: number | undefined;
};

/** `tension` is the machine's setting, '' where none was said. */
export type Profile = { id: string; machine: Machine; yarn: Yarn; tension: string; usedAt: number };

export type StoredMeasurement = Measurement & {
  id: string;
  profileId: string;
  /** Needles in the tube, when they were known. */
  needles: number | undefined;
  massG: number | undefined;
  /** Yarn drawn out of so many stitches. */
  unravelled: { stitches: number; lengthMm: number } | undefined;
  said: string;
  note: string;
  day: number;
  /** The work it came from, '' for a swatch. */
  workId: string;
  /** The measurement it corrects, '' for none. */
  replaces: string;
  at: number;
};

export type Profiles = {
  /** All profiles of a maker, the one used last first. */
  of(makerId: string): Promise<Profile[]>;
  /** The profile of this machine, yarn and tension, made on first use. An unnamed machine without needles takes the name given. */
  opened(
    makerId: string,
    machine: { name: string; needles: number | undefined },
    yarn: string,
    tension: string,
    at: number,
  ): Promise<Profile>;
  used(profileId: string, at: number): Promise<void>;
};

export type Measurements = {
  add(measurement: StoredMeasurement): Promise<void>;
  /** Those not withdrawn, oldest first. */
  of(profileId: string): Promise<StoredMeasurement[]>;
  /** The same of a maker's yarn, over all machines and tensions. */
  inYarn(makerId: string, yarnId: string): Promise<StoredMeasurement[]>;
  get(id: string): Promise<StoredMeasurement | undefined>;
  withdraw(id: string, at: number): Promise<void>;
  restore(id: string): Promise<void>;
};

export type Yarns = {
  /** The maker's yarns, by name; the one without a name left out. */
  of(makerId: string): Promise<Yarn[]>;
  /** The maker's yarn of this name, made on first use. */
  opened(makerId: string, name: string): Promise<Yarn>;
  /** Keeps the category, the count and the day of a yarn; null for what is not known. */
  describe(id: string, known: { category: number | null; tex: number | null; since: number | null }): Promise<void>;
};
