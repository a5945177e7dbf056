import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

/** Two projects, so that a run can tell apart that the browser tests passed and that they never ran. */
export default defineConfig({
  test: {
    // One more than vitest takes by itself: browsers and servers answer from processes of their own, and meanwhile another file goes on.
    maxWorkers: availableParallelism() + 1,
    projects: [
      {
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          setupFiles: ['tests/sameInputs.ts'],
          // The files of a worker share what they import: the catalogue is read once, not a hundred times.
          isolate: false,
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/startOnce.ts'],
          // A wait ends with what it waits for. These only tell when to give up, on a machine that is busy with other work too.
          testTimeout: 300_000,
          hookTimeout: 300_000,
          expect: { poll: { timeout: 90_000 } },
        },
      },
    ],
  },
})
