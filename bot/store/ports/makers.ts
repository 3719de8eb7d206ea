import type { Hours } from '../../hours.js';

export type Units = 'cm' | 'in';

export type Maker = {
  id: string;
  slackUserId: string;
  name: string;
  units: Units | undefined;
  /** An IANA name. */
  timeZone: string;
  hours: Hours;
  /** The ISO 4217 code that prices without one are in; undefined until said. */
  currency: string | undefined;
};

export type Makers = {
  /** The maker of this Slack user, made on first use and held until the commit. */
  held(slackUserId: string, name: string, at: number): Promise<Maker>;
  get(id: string): Promise<Maker | undefined>;
  /** Makers that go by these words, which are a name or the id of a Slack user, in whatever case. */
  named(said: string): Promise<Maker[]>;
  /** All makers of the workspace, first come first. */
  all(): Promise<Maker[]>;
  setUnits(makerId: string, units: Units | undefined): Promise<void>;
  setHours(makerId: string, hours: Hours): Promise<void>;
  setTimeZone(makerId: string, timeZone: string): Promise<void>;
  setCurrency(makerId: string, currency: string | undefined): Promise<void>;
};
