/** The Home tab of a maker who has opened it. */
export type Home = {
  /** Their direct message, where the buttons of the page answer. */
  channel: string;
  /** Tells one page from another: that queued last, '' for none. */
  page: string;
};

export type Homes = {
  /** Undefined for a maker who never opened it. */
  of(makerId: string): Promise<Home | undefined>;
  opened(makerId: string, channel: string, at: number): Promise<void>;
  /** Keeps which page was queued last. */
  shows(makerId: string, page: string): Promise<void>;
};
