import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Tests that draw parts of a page in jsdom. */
const withPage = ['tests/pane/**/*.test.ts', 'tests/start/workbench/**/*.test.ts']

const common = { environment: 'node', setupFiles: 'tests/sameInputs.ts', testTimeout: 120_000, hookTimeout: 120_000 }

/** The engine calculates as quickly as in the workbench, and what it makes and drops at once is collected less often. */
const quickEngine = ['--import', './src/start/plainFieldsInNode.mjs', '--max-semi-space-size=64']

/** Files that wait for whole programs. Begun last, each would go on alone while a core is idle. */
const longFiles = [
  'tests/browser/engines/engines.test.ts',
  'tests/architecture/compile.test.ts',
  'tests/browser/walks.test.ts',
]

class LongFilesFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const place = longFiles.findIndex((file) => moduleId.replaceAll('\\', '/').endsWith(file))
      return place === -1 ? longFiles.length : place
    }
    return [...(await super.sort(files))].sort((a, b) => rank(a) - rank(b))
  }
}

/** The browser tests are a project of their own, so that a run can tell apart that they passed and that they never ran. */
export default defineConfig({
  test: {
    // One more than vitest takes by itself: browsers and servers answer from processes of their own, and meanwhile another file goes on.
    maxWorkers: availableParallelism() + 1,
    sequence: { sequencer: LongFilesFirst },
    projects: [
      {
        test: {
          ...common,
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', ...withPage],
          // The files of a worker share what they import: the catalogue is read once, not a hundred times.
          isolate: false,
          execArgv: quickEngine,
        },
      },
      {
        test: {
          ...common,
          name: 'page',
          // Not shared: React keeps what it found of a page when it was first read, and each file has a page of its own.
          include: withPage,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          isolate: false,
          execArgv: quickEngine,
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
