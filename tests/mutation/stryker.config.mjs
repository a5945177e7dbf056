/** Mutation testing, by `npm run mutate`: what each choice leaves out is said in survivors.md. */
export default {
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  mutate: ['src/core/**/*.ts', 'src/functions/**/*.ts'],
  // Texts for people may be worded otherwise. An expression is a string too, but an empty one fails as the module loads.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  // What is computed once as a module loads would need every test of every file, for hours.
  ignoreStatic: true,
  concurrency: 2,
  // A search that a mutant made endless is stopped.
  timeoutMS: 60_000,
  reporters: ['clear-text', 'json', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: 'dist/mutation/report.json' },
  tempDirName: 'dist/mutation/sandbox',
}
