/** `npm test`: installs, builds, runs every test, and ends with the one line "N passed, N failed". */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildWhereStale, command, Failure, installMissing, root } from '../src/start/prepare.mjs'

await command(async () => {
  let counts
  try {
    installMissing()
    await buildWhereStale()
    counts = count(runVitest())
  } catch (error) {
    console.error(error instanceof Failure ? error.message : error)
    counts = { passed: 0, failed: 1 }
  }
  console.log(`${counts.passed} passed, ${counts.failed} failed`)
  if (counts.failed > 0) process.exitCode = 1
})

function runVitest() {
  const folder = mkdtempSync(join(tmpdir(), 'sticksheet-tests-'))
  const file = join(folder, 'report.json')
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs')
  try {
    const { status } = spawnSync(
      process.execPath,
      [vitest, 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${file}`, ...process.argv.slice(2)],
      { cwd: root, stdio: 'inherit' },
    )
    return { status, report: JSON.parse(readFileSync(file, 'utf8')) }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** A test that was skipped, a file that did not load and a run without browser tests count as failures: nothing passes in silence. */
function count({ status, report }) {
  const files = report.testResults
  const tests = files.flatMap((file) => file.assertionResults)
  const passed = tests.filter((test) => test.status === 'passed').length
  const complaints = [
    ...tests.filter((test) => test.status === 'failed').map((test) => `Failed: ${test.fullName}`),
    ...tests.filter((test) => !['passed', 'failed'].includes(test.status)).map((test) => `Did not run: ${test.fullName}`),
    ...files.filter((file) => file.assertionResults.length === 0).map((file) => `No test ran in ${file.name}. ${file.message}`),
  ]
  if (passed === 0) complaints.push('No test passed.')
  if (!files.some(passedInBrowser)) complaints.push('No browser test ran.')
  if (status !== 0 && complaints.length === 0) complaints.push('The test runner reported an error outside the tests; see above.')
  for (const complaint of complaints) console.error(complaint)
  return { passed, failed: complaints.length }
}

function passedInBrowser(file) {
  return file.name.replaceAll('\\', '/').includes('/tests/browser/') && file.assertionResults.some((test) => test.status === 'passed')
}
