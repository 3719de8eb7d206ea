import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const RECORD = '110 rows in 22 in, 46 needles, 6 3/4 in flat';
const PLAN = 'rows for a pouch 10.5 to 11 in wide';
const SAMPLE = 'how many rows for a pouch 11 in wide, 5 rows to the inch, 46 needles, 6 3/4 flat';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'terminal-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Runs the program as its user does; the environment is bare but for what is given. */
function run(args: string[], { input = '', env = {} }: { input?: string; env?: Record<string, string> } = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['dist/run/walewright.js', ...args], {
    input,
    env,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

describe('ask', () => {
  it('answers the sample request as data: 109 rows, the graft makes the 110th', () => {
    const { status, stdout } = run(['ask', '--json', SAMPLE]);
    expect(status).toBe(0);
    const { plan, text } = JSON.parse(stdout).reply;
    expect(plan).toMatchObject({ piece: 'pouch', needles: 46, rows: 109, graftRows: 1, pieces: 1 });
    expect(plan.tube.flatWidthMm).toBeCloseTo(171.45, 6);
    expect(plan.finished.widthMm).toBeCloseTo(279.4, 6);
    // The bottom seam takes half a stitch from each edge: 171.45 - 171.45/46.
    expect(plan.finished.heightMm).toBeCloseTo(167.7228, 3);
    expect(text).toMatch(/^Knit 109 rows on 46 needles/);
    expect(text).toContain('The graft makes row 110.');
  });

  it('reads lines as one conversation, so that a gauge recorded once is used again', () => {
    const { status, stdout } = run(['ask', '--lines'], { input: `${RECORD}\n\n${PLAN}\nmake it 12\n` });
    const answers = stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(status).toBe(0);
    expect(answers.map(({ reply }) => reply.kind)).toEqual(['gauge', 'problem', 'plan', 'plan']);
    expect(answers[2].reply.plan.landing).toMatchObject({ rows: 106, dimension: 'width' });
    expect(answers[2].reply.plan.landing.chance).toBeCloseTo(0.3844, 4);
  });

  it('keeps a conversation over runs in one store, each maker apart', () => {
    const store = join(folder, 'store.sqlite');
    run(['ask', '--store', store, '--as', 'Nadia', RECORD]);
    expect(run(['ask', '--store', store, '--as', '@nadia', PLAN]).stdout).toContain('Knit 106 rows');
    expect(run(['ask', '--store', store, '--as', 'Owen', PLAN]).stdout).toContain('Which piece have you measured?');
  });

  it('says what is wrong with a call, and exits with 2', () => {
    for (const args of [
      ['--now', 'soon', 'x'],
      ['--as', ' ', 'x'],
      ['--colour', 'x'],
    ]) {
      const { status, stderr } = run(['ask', ...args]);
      expect(status).toBe(2);
      expect(stderr).toContain('ask "words"');
    }
  });

  it('adds on request how each part of the words was used', () => {
    const { stdout } = run(['ask', '--json', '--explain', SAMPLE]);
    expect(JSON.parse(stdout).trace.tokens).toContainEqual({ text: '6 3/4', usedAs: 'flat width' });
  });
});

describe('the terminal conversation', () => {
  it('takes the same two lines, and keeps its data in the file named', () => {
    const store = join(folder, 'data', 'walewright.sqlite');
    const { status, stdout } = run(['chat'], { input: `${RECORD}\n${PLAN}\nbye\n`, env: { WALEWRIGHT_STORE: store } });
    expect(status).toBe(0);
    expect(stdout).toContain('Recorded: 110 rows in 22 in, 46 needles, 6 3/4 in flat, rested');
    expect(stdout).toContain('Knit 106 rows on 46 needles');
    expect(existsSync(store)).toBe(true);
  });

  it('opens from start with two lines on how to connect a workspace, where none is connected', () => {
    const { stdout } = run(['start'], { input: 'bye\n', env: { WALEWRIGHT_STORE: join(folder, 's.sqlite') } });
    expect(stdout.split('\n')[0]).toContain('manifest-example/manifest.json');
    expect(stdout.split('\n')[1]).toContain('here, in the terminal');
  });

  it('names each setting that does not fit, and does not start', () => {
    const { status, stderr } = run(['start'], { env: { SLACK_BOT_TOKEN: 'xoxp-1', PORT: 'many' } });
    expect(status).toBe(2);
    expect(stderr).toContain('SLACK_BOT_TOKEN: must begin with xoxb-');
    expect(stderr).toContain('PORT');
  });
});
