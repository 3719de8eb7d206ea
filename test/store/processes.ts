import { type ChildProcess, spawn } from 'node:child_process';

const built = new URL('../../dist/bot/store/sqlite.js', import.meta.url).href;

/**
 * Opens the SQLite file at `path` in `count` processes at the same moment, runs `work` in each, the body of an async
 * function over `store`, and gives what each returned. Needs the build; rejects when a process fails.
 */
export async function together(count: number, path: string, work: string): Promise<unknown[]> {
  const script = `
    process.send('ready');
    await new Promise((go) => process.once('message', go));
    ${opening(path)}
    const answer = await (async () => { ${work} })();
    await store.close();
    process.send({ answer }, () => process.disconnect());`;
  const children = Array.from({ length: count }, () => running(script));
  await Promise.all(children.map(told));
  const answers = children.map(told);
  for (const child of children) child.send('go');
  return (await Promise.all(answers)).map((message) => (message as { answer: unknown }).answer);
}

/**
 * Opens the SQLite file at `path` in a process that runs `work`, the body of an async function over `s`, inside one
 * transaction, and kills it before the commit.
 */
export async function killedWithin(path: string, work: string): Promise<void> {
  const child = running(`
    ${opening(path)}
    await store.within('T1', async (s) => {
      ${work}
      process.send('done all but the commit');
      await new Promise((resolve) => setTimeout(resolve, 60_000));
    });`);
  await told(child);
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGKILL');
  await gone;
}

const opening = (path: string): string => `
  const { openSqlite } = await import(${JSON.stringify(built)});
  const store = await openSqlite(${JSON.stringify(path)});`;

const running = (script: string): ChildProcess =>
  spawn(process.execPath, ['--input-type=module', '--eval', script], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });

function told(child: ChildProcess): Promise<unknown> {
  return new Promise((resolve, reject) => {
    child.once('message', resolve);
    child.once('exit', (code) => reject(new Error(`a process ended with ${code} before it answered`)));
  });
}
