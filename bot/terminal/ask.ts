import { createInterface } from 'node:readline/promises';
import { parseArgs } from 'node:util';
import { plainText } from '../cards/plain-text.js';
import { newId } from '../ids.js';
import { openSqlite } from '../store/sqlite.js';
import { type Surroundings, silentLog } from '../surroundings.js';
import { type Answered, taken } from '../turn.js';
import { asJson } from './json.js';

const ASK_USAGE = `ask "words" [--json] [--explain] [--lines [--text]] [--store FILE] [--as NAME] [--now ISO]
  --json     print one JSON object a message: its request and its reply
  --explain  add how each part of the words was used
  --lines    read requests from standard input, one a line, as one conversation; print one JSON line for each
  --text     with --lines, print each answer as a card instead
  --store    keep the data in FILE (default: a store that is gone afterwards)
  --as       which maker asks (default: maker)
  --now      the time of the request, as an ISO instant or day`;

const OPTIONS = {
  json: { type: 'boolean', default: false },
  explain: { type: 'boolean', default: false },
  lines: { type: 'boolean', default: false },
  text: { type: 'boolean', default: false },
  store: { type: 'string', default: ':memory:' },
  as: { type: 'string', default: 'maker' },
  now: { type: 'string' },
} as const;

type Streams = { input: NodeJS.ReadableStream; print: (text: string) => void; complain: (text: string) => void };

/** Answers words from the command line on the path the bot takes. Returns the exit code: 2 when the call is off. */
export async function ask(args: string[], streams: Streams): Promise<number> {
  const call = callFrom(args);
  if ('fault' in call) {
    streams.complain(`${call.fault}\n${ASK_USAGE}`);
    return 2;
  }
  const { options, text, fixedNow } = call;
  const store = await openSqlite(options.store);
  const now = fixedNow === undefined ? Date.now : () => fixedNow;
  const surroundings: Surroundings = { store, newId, log: silentLog, now };
  try {
    const isData = options.json || (options.lines && !options.text);
    const lines = options.lines
      ? createInterface({ input: streams.input, crlfDelay: Number.POSITIVE_INFINITY })
      : [text];
    for await (const line of lines) {
      const answered = await asked(line, options.as, surroundings);
      streams.print(
        isData ? JSON.stringify(asJson(answered, options.explain)) : printedAnswer(answered, options.explain),
      );
    }
  } finally {
    await store.close();
  }
  return 0;
}

/** One line of talk with the terminal as its place. */
export function asked(text: string, name: string, surroundings: Surroundings): Promise<Answered> {
  const maker = name.replace(/^@/, '').trim();
  return taken(
    {
      key: `terminal:${surroundings.newId()}`,
      slackTeamId: 'local',
      place: 'dm:terminal',
      user: { slackUserId: maker.toLowerCase(), name: maker },
      at: surroundings.now(),
      input: { text },
    },
    surroundings,
  );
}

/** The card as text, and below it how the words were read. */
export function printedAnswer(answered: Answered, explain: boolean): string {
  if (answered.status === 'seen') throw new Error('each line is a delivery of its own');
  if (answered.status === 'refused') throw new Error('no form is sent in a terminal');
  if (answered.status === 'apologised') return answered.text;
  const text = plainText(answered.card);
  return explain ? `${text}\n\n${JSON.stringify(answered.trace, null, 1)}` : text;
}

type Call =
  | { fault: string }
  | {
      options: { json: boolean; explain: boolean; lines: boolean; text: boolean; store: string; as: string };
      text: string;
      fixedNow: number | undefined;
    };

function callFrom(args: string[]): Call {
  try {
    const { values, positionals } = parseArgs({ args, options: OPTIONS, allowPositionals: true });
    const fixedNow = values.now === undefined ? undefined : Date.parse(values.now);
    if (Number.isNaN(fixedNow))
      return { fault: `--now: I read "${values.now}"; it takes a day or instant such as 2026-11-25.` };
    if (values.as.replace(/^@/, '').trim() === '') return { fault: '--as: it takes a name.' };
    return { options: values, text: positionals.join(' '), fixedNow };
  } catch (error) {
    return { fault: error instanceof Error ? error.message : String(error) };
  }
}
