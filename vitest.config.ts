import { defineConfig } from 'vitest/config'

/** Two projects, so that a run can tell apart that the browser tests passed and that they never ran. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          setupFiles: ['tests/sameInputs.ts'],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // The grid calculates on; a busy machine takes longer than the second that vitest would wait.
          expect: { poll: { timeout: 15_000 } },
          // One Chromium at a time: several would compete for the processor and time out.
          fileParallelism: false,
        },
      },
    ],
  },
})
