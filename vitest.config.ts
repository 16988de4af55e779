import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['{packages,apps}/*/src/**/*.test.{ts,tsx}', 'scripts/**/*.test.ts', 'examples/**/*.test.ts'],
          setupFiles: ['scripts/property-seed.ts'],
          testTimeout: 20_000,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['apps/web/e2e/**/*.test.ts'],
          globalSetup: 'apps/web/e2e/built-screens.ts',
          // One real Chromium and one real server at a time: two cores.
          fileParallelism: false,
          testTimeout: 240_000,
          hookTimeout: 180_000,
          // As long as the browser itself waits for what is asked to be there.
          expect: { poll: { timeout: 30_000, interval: 50 } },
        },
      },
    ],
  },
})
