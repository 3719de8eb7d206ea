import { stdin, stdout } from 'node:process';
import { createInterface } from 'node:readline/promises';
import { newId } from '../ids.js';
import { openSqlite } from '../store/sqlite.js';
import { silentLog } from '../surroundings.js';
import { asked, printedAnswer } from './ask.js';

/** A conversation in the terminal, on the path the bot takes; it ends with an empty input, `bye` or Ctrl-D. */
export async function chat(storePath: string, name: string): Promise<void> {
  const store = await openSqlite(storePath);
  const surroundings = { store, newId, log: silentLog, now: Date.now };
  const lines = createInterface({ input: stdin, output: stdout, prompt: '> ' });
  stdout.write('Tell me a piece and its size, or what you have measured. "help" shows more, "bye" ends.\n\n');
  lines.prompt();
  try {
    for await (const line of lines) {
      if (/^(?:bye|quit|exit)$/i.test(line.trim())) break;
      if (line.trim() !== '') stdout.write(`\n${printedAnswer(await asked(line, name, surroundings), false)}\n\n`);
      lines.prompt();
    }
  } finally {
    lines.close();
    await store.close();
  }
}
