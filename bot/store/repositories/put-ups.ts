import type { Kysely } from 'kysely';
import type { Ball, Bound, Price } from '../ports.js';
import type { Tables } from '../schema.js';

export function putUps(db: Kysely<Tables>, workspaceId: string): Bound['putUps'] {
  async function setWithdrawn(id: string, at: number | null): Promise<void> {
    await db
      .updateTable('put_up')
      .set({ withdrawn_at_ms: at })
      .where('workspace_id', '=', workspaceId)
      .where('id', '=', id)
      .execute();
  }

  return {
    async add({ id, yarnId, ball, balls, price, said, at }) {
      await db
        .insertInto('put_up')
        .values({
          workspace_id: workspaceId,
          id,
          yarn_id: yarnId,
          ...ballColumns(ball),
          balls,
          ...priceColumns(price),
          said,
          at_ms: at,
          withdrawn_at_ms: null,
        })
        .execute();
    },

    async of(yarnId) {
      const rows = await db
        .selectFrom('put_up')
        .selectAll()
        .where('workspace_id', '=', workspaceId)
        .where('yarn_id', '=', yarnId)
        .where('withdrawn_at_ms', 'is', null)
        .orderBy('at_ms')
        .orderBy('id')
        .execute();
      return rows.map((row) => ({
        id: row.id,
        yarnId,
        ball: { massG: row.ball_mg / 1000, lengthMm: row.ball_mm },
        balls: row.balls,
        price: priceOf(row),
        said: row.said,
        at: row.at_ms,
      }));
    },

    withdraw: setWithdrawn,
    restore: (id) => setWithdrawn(id, null),
  };
}

/** A mass in grams as the store keeps it: whole mg. */
export const milligrams = (massG: number): number => Math.round(massG * 1000);

export const ballColumns = ({ massG, lengthMm }: Ball) => ({ ball_mg: milligrams(massG), ball_mm: lengthMm });

export const priceColumns = (price: Price | undefined) => ({
  price_minor: price?.minor ?? null,
  currency: price?.currency ?? '',
});

export const priceOf = (row: { price_minor: number | null; currency: string }): Price | undefined =>
  row.price_minor === null ? undefined : { minor: row.price_minor, currency: row.currency };
