import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
import { describe, expect, test } from 'vitest';
import { pieces } from '../core/pieces/index.js';

type Import = { from: string; to: string; typeOnly: boolean };

const source = (path: string): string => readFileSync(path, 'utf8');
const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => join(folder, path));

const STATEMENT = /^(?:import|export)\s+(?<type>type\s+)?(?:(?<names>[\w\s{},*$]*?)\s*from\s+)?'(?<to>[^']+)'/gm;
const DYNAMIC = /(?<type>typeof\s+)?\bimport\(\s*'(?<to>[^']+)'/g;

const allTypes = (names = ''): boolean => /^\{(\s*type\s+[\w$]+(\s+as\s+[\w$]+)?\s*,?)+\s*\}$/.test(names.trim());

/** A path within the project for a relative import, a package name as it stands. */
const target = (from: string, to: string): string =>
  to.startsWith('.') ? join(dirname(from), to).replace(/\.js$/, '.ts') : to;

function importsOf(from: string): Import[] {
  const text = source(from);
  return [...text.matchAll(STATEMENT), ...text.matchAll(DYNAMIC)].map(({ groups }) => ({
    from,
    to: target(from, groups?.to ?? ''),
    typeOnly: groups?.type !== undefined || allTypes(groups?.names),
  }));
}

const core = filesUnder('core');
const bot = filesUnder('bot');
const coreImports = core.flatMap(importsOf);
const botImports = bot.flatMap(importsOf);

const isNode = ({ to }: Import): boolean => to.startsWith('node:');
const shown = ({ from, to }: Import): string => `${from} → ${to}`;
const broken = (imports: readonly Import[], rule: (i: Import) => boolean): string[] => imports.filter(rule).map(shown);
const under = (path: string, ...folders: string[]): boolean => folders.some((folder) => path.startsWith(`${folder}/`));

test('the reader of imports sees static, type-only, multi-line and dynamic ones', () => {
  const from = (path: string) => importsOf(path).map(({ to, typeOnly }) => `${to}${typeOnly ? ' (type)' : ''}`);
  expect(from('core/stats/normal.ts')).toEqual([
    '@stdlib/stats-base-dists-normal-cdf',
    '@stdlib/stats-base-dists-normal-pdf',
    '@stdlib/stats-base-dists-normal-quantile',
  ]);
  expect(from('core/pieces/pouch.ts')).toContain('core/finishing/closing.ts');
  expect(from('core/cautions.ts')).toEqual(['core/piece.ts (type)', 'core/words.ts']);
  expect(from('core/index.ts')).toContain('core/gauge/estimate.ts (type)');
  expect(from('bot/main.ts')).toContain('bot/config.ts');
  expect(allTypes('{ type A, type B as C }')).toBe(true);
  expect(allTypes('{ type A, b }')).toBe(false);
});

describe('core', () => {
  /** The pure packages of core, each with the only place that imports it. */
  const PURE_PACKAGES = { 'core/stats/': '@stdlib/', 'core/money/exact.ts': 'fraction.js' };

  test('imports only core, and each pure package in its one place', () => {
    const allowed = ({ from, to }: Import): boolean =>
      under(to, 'core') ||
      Object.entries(PURE_PACKAGES).some(([place, name]) => from.startsWith(place) && to.startsWith(name));
    expect(broken(coreImports, (i) => !allowed(i))).toEqual([]);
  });

  test('has pieces that import no other piece', () => {
    const ofPiece = coreImports.filter(({ from }) => under(from, 'core/pieces') && from !== 'core/pieces/index.ts');
    expect(broken(ofPiece, ({ to }) => under(to, 'core/pieces'))).toEqual([]);
  });
});

describe('bot', () => {
  test('imports core through its index alone', () => {
    expect(broken(botImports, ({ to }) => under(to, 'core') && to !== 'core/index.ts')).toEqual([]);
  });

  test('reads the environment in main alone', () => {
    const readers = [...core, ...bot].filter((path) => /process\.env|\benv\b[^;]*'node:process'/.test(source(path)));
    expect(readers).toEqual(['bot/main.ts']);
  });

  test('meets Slack’s library in its Slack and practice doors alone', () => {
    const isBolt = ({ to, typeOnly }: Import): boolean => to.startsWith('@slack/bolt') && !typeOnly;
    expect(broken(botImports, (i) => isBolt(i) && !under(i.from, 'bot/slack', 'bot/practice'))).toEqual([]);
  });

  test('reads and draws without store, Node or Slack', () => {
    const pure = botImports.filter(({ from }) => under(from, 'bot/language', 'bot/cards'));
    const impure = (i: Import): boolean =>
      isNode(i) || under(i.to, 'bot/store') || (i.to.startsWith('@slack/') && !i.typeOnly);
    expect(broken(pure, impure)).toEqual([]);
  });
});

/** A first way round from a file to itself, or undefined. */
function cycleFrom(start: string, edges: ReadonlyMap<string, readonly string[]>): string | undefined {
  const seen = new Set<string>();
  const walk = (path: string, way: readonly string[]): string | undefined => {
    for (const next of edges.get(path) ?? []) {
      if (next === start) return [...way, next].join(' → ');
      if (seen.has(next)) continue;
      seen.add(next);
      const found = walk(next, [...way, next]);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  return walk(start, [start]);
}

test('the search for a way round finds one, and only from a file on it', () => {
  const edges = new Map([
    ['a', ['b']],
    ['b', ['c']],
    ['c', ['b', 'd']],
  ]);
  expect(cycleFrom('b', edges)).toBe('b → c → b');
  expect(cycleFrom('a', edges)).toBeUndefined();
});

test('no file imports itself round about, not even for types', () => {
  const all = [...coreImports, ...botImports];
  const edges = new Map([...core, ...bot].map((path) => [path, all.filter((i) => i.from === path).map((i) => i.to)]));
  expect([...edges.keys()].flatMap((path) => cycleFrom(path, edges) ?? [])).toEqual([]);
});

const withoutComments = (text: string): string => text.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');

/** Its code without the names of a kind in its own file, which may hold those of another in longer words. */
function withoutOwnNames(path: string, text: string): string {
  const own = pieces.find((p) => path === `core/pieces/${p.id}.ts`);
  if (own === undefined) return text;
  const names = [own.label, own.example, ...own.words].sort((a, b) => b.length - a.length);
  return names.reduce((rest, name) => rest.replaceAll(`'${name}'`, ''), text);
}

test.each(pieces.map((p) => p.id))('the kind "%s" is named only in its own file', (id) => {
  const own = [`core/pieces/${id}.ts`, 'core/pieces/index.ts'];
  const named = new RegExp(`(?<![\\w-])${id}(?![\\w-])`, 'i');
  const namers = [...core, ...bot].filter(
    (path) => !own.includes(path) && named.test(withoutOwnNames(path, withoutComments(source(path)))),
  );
  expect(existsSync(own[0] ?? '')).toBe(true);
  expect(namers).toEqual([]);
});

test('every path that DEVELOPERS.md names exists', () => {
  const quoted = [...source('DEVELOPERS.md').matchAll(/`([^`\n]+)`/g)].map(([, words = '']) => words);
  const paths = quoted.filter((words) =>
    /^(?:\.ci|core|bot|test|manifest-example)\/[\w./-]*$|^[\w.-]+\.md$/.test(words),
  );
  expect(paths.length).toBeGreaterThan(0);
  expect(paths.filter((path) => !existsSync(path))).toEqual([]);
});
