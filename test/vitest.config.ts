import { defineConfig } from 'vitest/config';

// An odd zone, so that no test leans on the zone of whoever runs it. Workers inherit it.
process.env.TZ = 'Pacific/Chatham';

// biome-ignore lint/style/noDefaultExport: vitest reads the default export
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'pure',
          include: ['test/**/*.test.ts'],
          exclude: ['test/journeys/**'],
          isolate: false,
          // Laws and conversations take a second or two, and longer on a machine that does other work beside them.
          testTimeout: 30_000,
        },
      },
      { test: { name: 'journeys', include: ['test/journeys/**/*.test.ts'], testTimeout: 30_000 } },
    ],
  },
});
