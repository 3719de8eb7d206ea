import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What one maker types in a row; talks of one name go on in one store. */
type Stretch = { talk: string; maker: string; typed: string[] };

/** A maker begins to type, or a line that is typed and the answer under it. */
const PIECES = /^<!-- talk (?<talk>\w+), (?<maker>\w+) -->$|^ {4}(?<typed>.+)\n\n```text\n(?<answer>[\s\S]*?)^```$/gm;

/** When every talk is held. */
const NOW = '2026-11-09T09:00:00Z';

function stretchesIn(readme: string): Stretch[] {
  const found: Stretch[] = [];
  for (const { groups = {} } of readme.matchAll(PIECES)) {
    const { talk, maker, typed } = groups;
    if (talk !== undefined && maker !== undefined) found.push({ talk, maker, typed: [] });
    else if (typed !== undefined) found.at(-1)?.typed.push(typed);
  }
  return found;
}

/** What the program answers to a stretch, one answer to a line. */
function answersTo({ talk, maker, typed }: Stretch, folder: string): string[] {
  const named = ['--store', join(folder, `${talk}.sqlite`), '--as', maker, '--now', NOW];
  const { stdout } = spawnSync(process.execPath, ['dist/run/walewright.js', 'ask', '--lines', ...named], {
    input: typed.map((line) => `${line}\n`).join(''),
    encoding: 'utf8',
  });
  return stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => (JSON.parse(line) as { reply: { text: string } }).reply.text);
}

/** How many lines the talks of a README hold. */
export const linesIn = (readme: string): number => stretchesIn(readme).flatMap(({ typed }) => typed).length;

/** The README with its talks as the program that was built last holds them. */
export function withTalks(readme: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'talks-'));
  const answers = stretchesIn(readme).flatMap((stretch) => answersTo(stretch, folder));
  rmSync(folder, { recursive: true });
  return readme.replaceAll(PIECES, (all, ...rest) => {
    const { typed } = rest.at(-1) as Record<string, string | undefined>;
    return typed === undefined ? all : `    ${typed}\n\n\`\`\`text\n${answers.shift() ?? ''}\n\`\`\``;
  });
}
