import process from 'node:process';
import { configFrom } from './config.js';

const CONNECT = `No Slack workspace is connected: make an app from manifest-example/manifest.json, then set SLACK_BOT_TOKEN and SLACK_APP_TOKEN.
Until then we talk here, in the terminal.`;

/** Reads the environment and the command line, and opens the door asked for. Nothing else reads them. */
async function main(command: string | undefined, args: string[]): Promise<number> {
  if (command === 'ask') {
    const { ask } = await import('./terminal/ask.js');
    return ask(args, {
      input: process.stdin,
      print: (text) => process.stdout.write(`${text}\n`),
      complain: (text) => process.stderr.write(`${text}\n`),
    });
  }
  const settings = configFrom(process.env);
  if ('faults' in settings) {
    process.stderr.write(`${settings.faults.join('\n')}\n`);
    return 2;
  }
  const { config } = settings;
  if (command === 'start' && config.slack !== undefined) {
    const { serve } = await import('./serve.js');
    return serve(config.slack, config).then(() => 0, notConnected);
  }
  if (command === 'start') process.stdout.write(`${CONNECT}\n\n`);
  else if (command !== 'chat') {
    process.stderr.write('usage: main.js start | chat | ask "words"\n');
    return 2;
  }
  const { chat } = await import('./terminal/chat.js');
  await chat(config.storePath, process.env.USER ?? 'maker');
  return 0;
}

function notConnected(error: unknown): number {
  const why = error instanceof Error ? error.message : String(error);
  process.stderr.write(`Slack is not connected: ${why}. Check SLACK_BOT_TOKEN, the network and the port.\n`);
  return 1;
}

process.exitCode = await main(process.argv[2], process.argv.slice(3));
