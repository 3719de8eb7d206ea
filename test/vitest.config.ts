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
        },
      },
      { test: { name: 'journeys', include: ['test/journeys/**/*.test.ts'] } },
    ],
  },
});
