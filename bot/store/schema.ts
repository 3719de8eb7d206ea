import type { Count, Driver, Form, State } from '../../core/index.js';
import type { RateOf } from '../asks/rates.js';
import type { BatchStage, LotOf, Outcome, Reminder, ReminderWhat, Sent, TallyEntry, Units } from './ports.js';

/** The tables as Kysely sees them. Times are epoch ms, lengths mm, JSON text; absent is null, never in a key. */
export type Tables = {
  workspace: { workspace_id: string; slack_team_id: string };
  maker: Row & {
    slack_user_id: string;
    name: string;
    units: Units | null;
    time_zone: string;
    currency: string;
    /** '' until said. */
    hours_json: string;
    /** '' for none. */
    days_off_json: string;
  };
  machine: Row & Named & { needles: number | null };
  yarn: Row & Named & { category: number | null; tex: number | null; since_day: number | null };
  profile: Row & { maker_id: string; machine_id: string; yarn_id: string; tension: string; used_at_ms: number };
  measurement: Row & {
    profile_id: string;
    swatch: string;
    state: State;
    form: Form;
    rows: number | null;
    rows_over_mm: number | null;
    rows_how: Count['how'] | null;
    stitches: number | null;
    stitches_over_mm: number | null;
    stitches_how: Count['how'] | null;
    rows_spread_mm: number | null;
    needles: number | null;
    mass_g: number | null;
    unravelled_stitches: number | null;
    unravelled_mm: number | null;
    said: string;
    note: string;
    /** Whole days since 1970, as core counts them. */
    day: number;
    /** The work it came from, '' for a swatch. */
    work_id: string;
    /** The measurement it corrects, '' for none. */
    replaces: string;
    at_ms: number;
    withdrawn_at_ms: number | null;
  };
  work: Row & {
    maker_id: string;
    plan_id: string;
    profile_id: string;
    stop_rows: number;
    /** Counts the entries of its tally, so that each has its own number. */
    version: number;
    started_at_ms: number;
    touched_at_ms: number;
    ended_at_ms: number | null;
    outcome: '' | Outcome;
  };
  tally_entry: {
    workspace_id: string;
    work_id: string;
    seq: number;
    kind: TallyEntry['kind'];
    rows: number;
    said: string;
    at_ms: number;
    undone_at_ms: number | null;
  };
  reading: Row & {
    work_id: string;
    row_no: number;
    length_mm: number;
    state: State;
    said: string;
    at_ms: number;
    withdrawn_at_ms: number | null;
  };
  plan: Row & { maker_id: string; piece: string; profile_id: string; revision: number; at_ms: number };
  plan_revision: {
    workspace_id: string;
    plan_id: string;
    revision: number;
    engine: string;
    ask_json: string;
    numbers_json: string;
  };
  put_up: Row & {
    yarn_id: string;
    ball_mg: number;
    ball_mm: number;
    /** Balls that the price buys: 10 in a pack of ten. */
    balls: number;
    price_minor: number | null;
    currency: string;
    said: string;
    at_ms: number;
    withdrawn_at_ms: number | null;
  };
  lot: Row &
    Omit<Named, 'maker_id'> & {
      /** A maker's id, '' for the team. */
      owner: string;
      kind: LotOf['kind'];
      dye_lot: string;
      ball_mg: number | null;
      ball_mm: number | null;
      price_minor: number | null;
      currency: string;
      /** mg of yarn, pieces of a notion. */
      left_amount: number;
      aside_amount: number;
      at_ms: number;
    };
  lot_move: Row & {
    lot_id: string;
    /** The work it is for, '' for none. */
    work_id: string;
    left_change: number;
    aside_change: number;
    said: string;
    at_ms: number;
    undone_at_ms: number | null;
  };
  rate: Omit<Row, 'id'> & {
    /** A maker's id, '' for the team. */
    owner: string;
    of_what: RateOf;
    name: string;
    name_key: string;
    value_json: string;
  };
  bench_log: Row & {
    maker_id: string;
    session: string;
    work_id: string;
    driver: Driver;
    /** Of what the driver counts. */
    amount: number;
    seconds: number;
    /** Whole days since 1970, in the maker's own time zone. */
    day: number;
    said: string;
    at_ms: number;
    withdrawn_at_ms: number | null;
  };
  share: Row & {
    owner_id: string;
    origin: string;
    to_maker: string;
    to_channel: string;
    to_thread: string;
    revision: number;
    at_ms: number;
    withdrawn_at_ms: number | null;
  };
  share_revision: {
    workspace_id: string;
    share_id: string;
    revision: number;
    ask_json: string;
    /** '' where the rows were not shared. */
    counts_json: string;
  };
  share_taken: { workspace_id: string; share_id: string; maker_id: string; revision: number; answered: number };
  result: Row & {
    maker_id: string;
    origin: string;
    came_mm: number;
    lo_mm: number;
    hi_mm: number;
    rows: number;
    needles: number | null;
    sent: Sent;
    at_ms: number;
    withdrawn_at_ms: number | null;
  };
  bench_clock: {
    workspace_id: string;
    maker_id: string;
    work_id: string;
    rows: number;
    started_at_ms: number;
  };
  home: {
    workspace_id: string;
    maker_id: string;
    channel: string;
    /** Tells the page queued last from others, '' for none. */
    page: string;
    opened_at_ms: number;
  };
  introduction: { workspace_id: string; maker_id: string; at_ms: number };
  batch: Row & {
    owner_id: string;
    plan_id: string;
    pieces: number;
    due_day: number;
    ready_day: number;
    version: number;
    at_ms: number;
    ended_at_ms: number | null;
  };
  batch_part: {
    workspace_id: string;
    batch_id: string;
    maker_id: string;
    stage: BatchStage;
    share: number;
    done: number;
    away_json: string;
    /** 1 for whoever makes no more of it. */
    is_out: number;
    version: number;
  };
  reminder: Row & {
    maker_id: string;
    subject: Reminder['subject'];
    subject_id: string;
    what: ReminderWhat;
    due_day: number;
    due_at_ms: number;
    taken_until_ms: number | null;
    sent_at_ms: number | null;
    dropped_at_ms: number | null;
  };
  conversation: { workspace_id: string; place: string; maker_id: string; state_json: string; until_ms: number };
  delivery: { workspace_id: string; key: string; at_ms: number };
  outbox: Row & {
    address_json: string;
    body_json: string;
    coalesce_key: string;
    not_before_ms: number;
    taken_until_ms: number | null;
    attempts: number;
    expires_at_ms: number;
    /** When the row was done with: posted, or given up when `dropped_why` is set. */
    posted_at_ms: number | null;
    slack_ts: string | null;
    dropped_why: string | null;
  };
};

type Row = { workspace_id: string; id: string };
type Named = { maker_id: string; name: string; name_key: string };
