/** `npm test`: installs, builds, runs every test, and ends with the one line "N passed, N failed". */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import { pathToFileURL } from 'node:url'
import { buildWhereStale, command, Failure, installMissing, root } from '../src/start/prepare.mjs'

await command(async () => {
  const started = Date.now()
  const seconds = []
  let counts
  try {
    await timed('installing', installMissing)
    await sayPrograms()
    await timed('building', buildWhereStale)
    const run = await timed('tests', runVitest)
    counts = count(run)
    sayTimes(run.report)
  } catch (error) {
    console.error(error instanceof Failure ? error.message : error)
    counts = { passed: 0, failed: 1 }
  }
  console.log(`${counts.passed} passed, ${counts.failed} failed`)
  if (counts.failed > 0) process.exitCode = 1

  async function timed(what, act) {
    const from = Date.now()
    const result = await act()
    seconds.push([what, Date.now() - from])
    return result
  }

  /** Files run side by side, so that the times of the groups together are longer than the tests took. */
  function sayTimes(report) {
    for (const [what, time] of [...seconds, ['all', Date.now() - started], ...timesOfGroups(report)])
      console.log(`${inSeconds(time)}  ${what}`)
  }
})

/** A program that must be there and is not fails the run: EVERY_ENGINE=1 says that each must. */
async function sayPrograms() {
  const { tsImport } = await import('tsx/esm/api')
  const load = (...path) => tsImport(pathToFileURL(join(root, 'tests', ...path)).href, import.meta.url)
  const { engines } = await load('browser', 'engines', 'engines.ts')
  const { libreOffice } = await load('workbench', 'xlsx', 'libreOffice.ts')
  const found = (programs) =>
    programs.filter(({ version }) => version !== undefined).map(({ name, version }) => `${name} ${version}`)
  console.log(`Browsers: ${found(engines).join(', ')}.`)
  for (const program of found([libreOffice])) console.log(`Files are opened in ${program} too.`)
  for (const { name, missing } of [...engines, libreOffice].filter(({ version }) => version === undefined)) {
    const sentence = `${name} is not installed, so nothing is tried in it. ${missing}`
    if (process.env.EVERY_ENGINE === '1') throw new Failure(sentence)
    console.log(sentence)
  }
}

/** By the folder of tests/ that a file stands in, the longest first. */
function timesOfGroups({ testResults }) {
  const times = new Map()
  for (const { name, startTime, endTime } of testResults) {
    const group = `tests/${relative(join(root, 'tests'), name).split(/[\\/]/)[0]}`
    times.set(group, (times.get(group) ?? 0) + endTime - startTime)
  }
  return [...times].sort(([, a], [, b]) => b - a)
}

function inSeconds(time) {
  return `${(time / 1000).toFixed(0).padStart(6)} s`
}

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
    ...tests
      .filter((test) => !['passed', 'failed'].includes(test.status))
      .map((test) => `Did not run: ${test.fullName}`),
    ...files
      .filter((file) => file.assertionResults.length === 0)
      .map((file) => `No test ran in ${file.name}. ${file.message}`),
  ]
  if (passed === 0) complaints.push('No test passed.')
  if (!files.some(passedInBrowser)) complaints.push('No browser test ran.')
  if (status !== 0 && complaints.length === 0)
    complaints.push('The test runner reported an error outside the tests; see above.')
  for (const complaint of complaints) console.error(complaint)
  return { passed, failed: complaints.length }
}

function passedInBrowser(file) {
  return (
    file.name.replaceAll('\\', '/').includes('/tests/browser/') &&
    file.assertionResults.some((test) => test.status === 'passed')
  )
}
