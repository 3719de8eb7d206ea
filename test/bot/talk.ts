import { v7 } from 'uuid';
import { expect } from 'vitest';
import { Conversation } from '../../bot/conversation.js';
import { answer } from '../../bot/desk/index.js';
import type { Reply } from '../../bot/reply.js';
import type { Request } from '../../bot/request.js';
import type { AnswerTo, Bound, Store } from '../../bot/store/ports.js';
import { openSqlite } from '../../bot/store/sqlite.js';
import { silentLog } from '../../bot/surroundings.js';
import { type Answered, type Turn, taken } from '../../bot/turn.js';

/** Monday 9 November 2026, 10:00 UTC. */
export const AT = Date.parse('2026-11-09T10:00:00Z');
export const MEDIUM = '46 needles, 110 rows, 22 in long, 6 3/4 flat';
export const POUCH = 'rows for a pouch 11 in wide';

export type Answer = Extract<Answered, { status: 'answered' }>;

export type Talk = {
  store: Store;
  /** One turn, answered or not. */
  take(input: Turn['input'], more?: Partial<Turn>): Promise<Answered>;
  /** Words typed, and the answer to them. */
  say(text: string, more?: Partial<Turn>): Promise<Answer>;
  /** Lines typed one after another, and the answer to the last. */
  sayAll(...lines: string[]): Promise<Answer>;
  /** A request as a door would make it of words or a button, straight to its desk. */
  ask(request: Request): Promise<Reply>;
  /** A button of the card that offered last. */
  press(index: number, turn?: string): Promise<Answer>;
  conversation(more?: Partial<Turn>): Promise<Conversation>;
  /** All that the store keeps of a maker, as one value. */
  kept(more?: Partial<Turn>): Promise<unknown>;
  /** Tables written since the last call. */
  written(): string[];
  within<T>(work: (bound: Bound) => Promise<T>): Promise<T>;
  close(): Promise<void>;
};

export type Fault = (bound: Bound) => Bound;

/** A talk through `taken` over a store, in memory unless `path` says. `fault` may spoil what a turn works with. */
export async function talk(fault: Fault = (bound) => bound, path = ':memory:'): Promise<Talk> {
  let statements: string[] = [];
  const store = await openSqlite(path, (event) => void statements.push(event.query.sql));
  const spoilt: Store = { ...store, within: (team, work) => store.within(team, (bound) => work(fault(bound))) };
  const surroundings = { store: spoilt, newId: v7, log: silentLog, now: () => AT };
  let turns = 0;
  const turnOf = (input: Turn['input'], more: Partial<Turn> = {}): Turn => ({
    key: `key ${v7()}`,
    slackTeamId: 'T1',
    place: 'dm:D1',
    user: { slackUserId: 'U1', name: 'Nadia' },
    at: AT + ++turns,
    input,
    ...more,
  });
  const take: Talk['take'] = (input, more) => taken(turnOf(input, more), surroundings);
  const within: Talk['within'] = (work) => store.within('T1', work);
  const held = (bound: Bound, more: Partial<Turn> = {}) =>
    bound.makers.held(more.user?.slackUserId ?? 'U1', more.user?.name ?? 'Nadia', AT);
  const conversation: Talk['conversation'] = (more) =>
    store.within(more?.slackTeamId ?? 'T1', async (bound) =>
      bound.conversations.of(more?.place ?? 'dm:D1', (await held(bound, more)).id, AT),
    );
  const answered = async (input: Turn['input'], more?: Partial<Turn>): Promise<Answer> => {
    const answer = await take(input, more);
    if (answer.status !== 'answered') throw new Error(`the turn was ${answer.status}`);
    const talk = await conversation(more);
    // The store remembers what it wrote last: another process reads it from its text, and must read the same.
    expect(Conversation.parse(JSON.parse(JSON.stringify(talk)))).toEqual(talk);
    return answer;
  };
  return {
    store,
    take,
    within,
    conversation,
    say: (text, more) => answered({ text }, more),
    async sayAll(...lines) {
      const answers: Answer[] = [];
      for (const text of lines) answers.push(await answered({ text }));
      const last = answers.at(-1);
      if (last === undefined) throw new Error('nothing was said');
      return last;
    },
    ask: (request) =>
      within(async (bound) => {
        const maker = await held(bound);
        const before = await bound.conversations.of('dm:D1', maker.id, AT);
        const at = {
          maker,
          talk: before,
          store: bound,
          now: AT + ++turns,
          newId: v7,
          openUntil: AT + 1e9,
          place: 'dm:D1',
        };
        const { reply, talk } = await answer(request, at);
        await bound.conversations.keep('dm:D1', maker.id, talk, AT + 1e9);
        return reply;
      }),
    async press(index, turn) {
      const offered = (await conversation()).offered.at(-1);
      return answered({ pick: { turn: turn ?? offered?.turn ?? '', index } });
    },
    kept: (more) =>
      within(async (bound) => {
        const maker = await held(bound, more);
        const profiles = await bound.profiles.of(maker.id);
        const measured = await Promise.all(profiles.map(({ id }) => bound.measurements.of(id)));
        const conversation = await bound.conversations.of(more?.place ?? 'dm:D1', maker.id, AT);
        return { maker, profiles, measured, conversation };
      }),
    written() {
      const tables = statements.flatMap((sql) => /^(?:insert into|update|delete from) "(\w+)"/.exec(sql)?.[1] ?? []);
      statements = [];
      return [...new Set(tables)].sort();
    },
    close: () => store.close(),
  };
}

/** The last reply of an answer, which must be of this kind. */
export function replyOf<K extends Reply['kind']>(answer: Answer, kind: K): Extract<Reply, { kind: K }> {
  const reply = answer.exchanges.at(-1)?.reply;
  if (reply?.kind !== kind) throw new Error(`expected a ${kind}, got: ${answer.card.lead}`);
  return reply as Extract<Reply, { kind: K }>;
}

export const kindsOf = (answer: Answer): string[] => answer.exchanges.map(({ reply }) => reply.kind);
/** Codes of the problems that an answer names. */
export const codesOf = (answer: Answer): string[] => replyOf(answer, 'problem').problems.map(({ code }) => code);

export const CHANNEL: AnswerTo = { to: 'post', channel: 'C1' };
