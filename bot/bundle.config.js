// One file and its lazy parts out of what tsc made: `ask` starts in half the time when its small libraries
// need not be looked up one file at a time. What is native or loaded only on demand stays outside.
const bundle = {
  input: 'dist/bot/main.js',
  platform: 'node',
  external: [/^@slack\//, 'pino', 'better-sqlite3', 'chrono-node/en', 'temporal-polyfill'],
  output: { dir: 'dist/run', format: 'esm', entryFileNames: 'walewright.js', cleanDir: true },
};

// biome-ignore lint/style/noDefaultExport: rolldown reads its settings there
export default bundle;
