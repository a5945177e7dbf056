import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from './sourceTree'

const minutes = 60_000

/** Runs a tool of node_modules and gives what it printed: nothing, where it has nothing to complain about. */
function complaints(tool: readonly string[], ...options: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, 'node_modules', ...tool), ...options], {
    cwd: root,
    encoding: 'utf8',
  })
  return status === 0 ? '' : stdout + stderr
}

test('All code compiles under the strict compiler.', { timeout: 10 * minutes }, () => {
  expect(complaints(['typescript-7', 'bin', 'tsc'], '-p', 'tsconfig.json')).toBe('')
})

test('The pure folders compile where there is no browser, no Node and no Office.', { timeout: 10 * minutes }, () => {
  expect(complaints(['typescript-7', 'bin', 'tsc'], '-p', 'tsconfig.pure.json')).toBe('')
})

test('All code is formatted; if not, npm run format does it.', { timeout: 10 * minutes }, () => {
  expect(
    complaints(
      ['prettier', 'bin', 'prettier.cjs'],
      '--check',
      '--log-level',
      'warn',
      '{src,tests}/**/*.{ts,tsx,mjs}',
      '*.{ts,js}',
    ),
  ).toBe('')
})

test('The linter has nothing to say, warnings included.', { timeout: 10 * minutes }, () => {
  expect(complaints(['eslint', 'bin', 'eslint.js'], '.', '--max-warnings', '0')).toBe('')
})
