import type { Compilable, CompiledQuery, DialectAdapter, Kysely } from 'kysely';
import type { Tables } from './schema.js';

/** Stands in a statement where a value of this name will be. */
class Place {
  constructor(readonly name: string) {}
}

const places: object = new Proxy({}, { get: (_, name) => new Place(String(name)) });

/**
 * A statement that is built and compiled once a store and then only given its values, for those that every turn runs:
 * building one anew takes several times as long as SQLite takes to run it. `build` sees places in place of values, so it may
 * put them into the statement and do nothing else with them; a value that may be null is compared by `is`, not by `=`.
 */
export function prepared<Given extends object, Row>(
  build: (db: Kysely<Tables>, given: Given) => Compilable<Row>,
): (db: Kysely<Tables>, given: Given) => Promise<Row[]> {
  const known = new WeakMap<DialectAdapter, CompiledQuery<Row>>();
  return async (db, given) => {
    const { adapter } = db.getExecutor();
    const compiled = known.get(adapter) ?? build(db, places as Given).compile();
    known.set(adapter, compiled);
    const values = given as Record<string, unknown>;
    const parameters = compiled.parameters.map((one) => (one instanceof Place ? values[one.name] : one));
    const { rows } = await db.executeQuery<Row>({ ...compiled, parameters });
    return rows;
  };
}
