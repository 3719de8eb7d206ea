import type { Kysely } from 'kysely';
import { Conversation } from '../../conversation.js';
import type { Bound } from '../ports.js';
import { prepared } from '../prepared.js';
import type { Tables } from '../schema.js';

export function conversations(db: Kysely<Tables>, workspaceId: string): Bound['conversations'] {
  return {
    async of(place, makerId, at) {
      const [row] = await alive(db, { workspaceId, place, makerId, at });
      return row === undefined ? Conversation.parse({}) : (written.get(row.state_json) ?? parsed(row.state_json));
    },

    async offering(place, turn, at) {
      const talks = await db
        .selectFrom('conversation')
        .select(['maker_id', 'state_json'])
        .where('workspace_id', '=', workspaceId)
        .where('place', '=', place)
        .where('until_ms', '>', at)
        .execute();
      for (const { maker_id: makerId, state_json } of talks) {
        const { offered = [] } = Conversation.safeParse(JSON.parse(state_json)).data ?? {};
        const offer = offered.find((one) => one.turn === turn);
        if (offer !== undefined) return { makerId, choices: offer.choices };
      }
      return undefined;
    },

    async keep(place, makerId, talk, until) {
      const state = textOf(talk);
      await kept(db, { workspaceId, place, makerId, state, until });
      if (written.size >= MOST_WRITTEN) written.clear();
      written.set(state, talk);
    },
  };
}

/** Talks by the text that was last written of them: to read one back takes a tenth of a turn. */
const written = new Map<string, Conversation>();
const MOST_WRITTEN = 200;

/** Offers and changes, by far the most of a talk, stand unchanged from turn to turn: their text is kept with them. */
const texts = new WeakMap<object, string>();

function textOf({ offered, changes, ...rest }: Conversation): string {
  const list = (all: readonly object[]): string => `[${all.map(textOfOne).join()}]`;
  return `${JSON.stringify(rest).slice(0, -1)},"offered":${list(offered)},"changes":${list(changes)}}`;
}

function textOfOne(one: object): string {
  const text = texts.get(one) ?? JSON.stringify(one);
  texts.set(one, text);
  return text;
}

/** A talk kept in a shape that is no longer known is a talk forgotten; nothing but its follow-ups is lost. */
function parsed(state: string): Conversation {
  const kept = Conversation.safeParse(JSON.parse(state));
  return kept.success ? kept.data : Conversation.parse({});
}

type Of = { workspaceId: string; place: string; makerId: string };

const alive = prepared((db, { workspaceId, place, makerId, at }: Of & { at: number }) =>
  db
    .selectFrom('conversation')
    .select('state_json')
    .where('workspace_id', '=', workspaceId)
    .where('place', '=', place)
    .where('maker_id', '=', makerId)
    .where('until_ms', '>', at),
);

const kept = prepared((db, { workspaceId, place, makerId, state, until }: Of & { state: string; until: number }) =>
  db
    .insertInto('conversation')
    .values({ workspace_id: workspaceId, place, maker_id: makerId, state_json: state, until_ms: until })
    .onConflict((on) =>
      on.columns(['workspace_id', 'place', 'maker_id']).doUpdateSet({ state_json: state, until_ms: until }),
    ),
);
