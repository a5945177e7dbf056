import all from './stryker.config.mjs'

/**
 * The methods have quick tests of their own, and only these are run, since every test of a function that uses a
 * method would run for each of its changes. Where a search becomes endless, a few seconds are enough to see it.
 */
export default {
  ...all,
  mutate: ['src/core/method/**/*.ts'],
  vitest: { configFile: 'tests/mutation/method.vitest.config.ts', related: false },
  timeoutMS: 4000,
}
