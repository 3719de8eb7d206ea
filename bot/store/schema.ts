import type { Count, Form, State } from '../../core/index.js';
import type { Units } from './ports.js';

/** The tables as Kysely sees them. Times are epoch ms, lengths mm, JSON text; absent is null, never in a key. */
export type Tables = {
  workspace: { workspace_id: string; slack_team_id: string };
  maker: Row & { slack_user_id: string; name: string; units: Units | null; time_zone: string };
  machine: Row & Named & { needles: number | null };
  yarn: Row & Named;
  profile: Row & { maker_id: string; machine_id: string; yarn_id: string; used_at_ms: number };
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
