import { type ChildProcess, spawn } from 'node:child_process';

const built = new URL('../../dist/bot/store/sqlite.js', import.meta.url).href;

/**
 * Opens the SQLite file at `path` in `count` processes at the same moment, runs `work` in each, the body of an async
 * function over `store`, and gives what each returned. Needs the build; rejects when a process fails.
 */
export async function together(count: number, path: string, work: string): Promise<unknown[]> {
  const script = `
    const { openSqlite } = await import(${JSON.stringify(built)});
    process.send('ready');
    await new Promise((go) => process.once('message', go));
    const store = await openSqlite(${JSON.stringify(path)});
    const answer = await (async () => { ${work} })();
    await store.close();
    process.send({ answer }, () => process.disconnect());`;
  const children = Array.from({ length: count }, () =>
    spawn(process.execPath, ['--input-type=module', '--eval', script], {
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    }),
  );
  await Promise.all(children.map(told));
  const answers = children.map(told);
  for (const child of children) child.send('go');
  return (await Promise.all(answers)).map((message) => (message as { answer: unknown }).answer);
}

function told(child: ChildProcess): Promise<unknown> {
  return new Promise((resolve, reject) => {
    child.once('message', resolve);
    child.once('exit', (code) => reject(new Error(`a process ended with ${code} before it answered`)));
  });
}
