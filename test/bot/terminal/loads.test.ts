import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

/** Everything `ask` may load for a request without a date: it must start fast. */
const ALLOWED = ['@stdlib', 'better-sqlite3', 'fraction.js', 'kysely', 'uuid', 'zod'];
/** What a date in the words brings in. */
const FOR_DATES = ['chrono-node', 'temporal-polyfill', 'temporal-spec', 'temporal-utils'];

const folder = mkdtempSync(join(tmpdir(), 'loads-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The packages that one run of `ask` loads, by a hook on every module it imports. */
function packagesLoaded(words: string): string[] {
  const list = join(folder, 'loaded.txt');
  const hooks = `import { appendFileSync } from 'node:fs';
    export async function load(url, context, next) { appendFileSync(${JSON.stringify(list)}, url + '\\n'); return next(url, context); }`;
  const registering = `import { register } from 'node:module';
    register('data:text/javascript,' + encodeURIComponent(${JSON.stringify(hooks)}));`;
  writeFileSync(list, '');
  execFileSync(process.execPath, [
    '--import',
    `data:text/javascript,${encodeURIComponent(registering)}`,
    'dist/bot/main.js',
    'ask',
    words,
  ]);
  const urls = readFileSync(list, 'utf8').split('\n');
  const packages = urls.flatMap((url) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(url)?.[1] ?? []);
  return [...new Set(packages)].map((name) => name.replace(/^@stdlib\/.*/, '@stdlib')).sort();
}

describe('the packages that ask loads', () => {
  it('loads neither Slack nor a logger nor dates for a request without a day', () => {
    const packages = packagesLoaded('pouch 11 in wide, 5 rows to the inch');
    expect(packages).toContain('zod');
    expect(packages.filter((name) => !ALLOWED.includes(name))).toEqual([]);
  });

  it('loads the date libraries only once a day is named', () => {
    const packages = packagesLoaded('pouch 11 in wide by 5 december, 5 rows to the inch');
    expect(packages).toContain('chrono-node');
    expect(packages.filter((name) => ![...ALLOWED, ...FOR_DATES].includes(name))).toEqual([]);
  });
});
