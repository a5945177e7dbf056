import { basename, relative } from 'node:path'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Most mutants die of the tests of the core and of published values, and the run of a mutant ends with its first failure. */
const killFirst = ['core', 'functions', 'golden', 'laws', 'derived', 'formula', 'invariants']

class KillFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const [folder = ''] = relative('tests', moduleId).split('/')
      return basename(moduleId) === 'anyInput.test.ts' ? killFirst.length : killFirst.indexOf(folder)
    }
    return Promise.resolve([...files].sort((a, b) => rank(a) - rank(b)))
  }
}

/** The quick tests of the core and of the functions: without the oracles, the grid's engine, a page or the built script. */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/{core,functions,golden,laws,derived,formula,invariants}/**/*.test.ts'],
    // These two start the grid's engine.
    exclude: ['tests/derived/plainFormula.test.ts', 'tests/derived/quotePlainFormula.test.ts'],
    setupFiles: ['tests/sameInputs.ts', 'tests/mutation/fewerInputs.ts'],
    sequence: { sequencer: KillFirst },
    testTimeout: 60_000,
  },
})
