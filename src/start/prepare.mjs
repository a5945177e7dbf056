/**
 * What every command does first, in plain JavaScript because nothing may be installed yet:
 * it installs the packages that are missing and builds what is out of date.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setInterval } from 'node:timers'
import { emptyServiceWorkerText } from './serviceWorkerText.mjs'

export const root = join(import.meta.dirname, '..', '..')
export const dist = join(root, 'dist')

const lockfile = join(root, 'package-lock.json')
/** Written last by a build, so that a build that broke off counts as none. */
const builtMark = join(dist, '.built')
const buildInputs = [
  'src',
  'assets/icons',
  'assets/demo-season.xlsx',
  'webpack.config.js',
  'package-lock.json',
  'tsconfig.json',
]

/** A failure whose sentence is all that the user needs; no stack is shown for it. */
export class Failure extends Error {}

/** Runs a command's main function and ends with a sentence where it fails. */
export async function command(main) {
  try {
    await main()
  } catch (error) {
    console.error(error instanceof Failure ? error.message : error)
    process.exitCode = 1
  }
}

/** Ends a server with the npm that started it: npm hands few signals on, and none where it is killed itself. */
export function endWithNpm() {
  if (process.env.npm_lifecycle_event === undefined) return
  const npm = process.ppid
  const betweenLooks = 500
  setInterval(() => {
    if (process.ppid !== npm) process.exit()
  }, betweenLooks).unref()
}

export function installMissing() {
  if (!packagesAreMissing()) return
  console.log('Installing the packages that Sticksheet needs. This takes a minute or two.')
  // Inside an npm script npm names its own program, which also works where npm is a batch file.
  const npm = process.env.npm_execpath
  const install = ['ci', '--include=dev']
  const options = { cwd: root, stdio: 'inherit' }
  const result =
    npm === undefined
      ? spawnSync('npm', install, { ...options, shell: process.platform === 'win32' })
      : spawnSync(process.execPath, [npm, ...install], options)
  if (result.status !== 0) {
    throw new Failure(
      'The packages could not be installed. Is the npm registry reachable? Run "npm ci" to see npm\'s own message.',
    )
  }
}

/** Compares what is installed with the lock file; a file's date would also change with every checkout. */
function packagesAreMissing() {
  const installedList = join(root, 'node_modules', '.package-lock.json')
  if (!existsSync(installedList)) return true
  const installed = readPackages(installedList)
  return Object.entries(readPackages(lockfile)).some(([path, entry]) => {
    if (path === '') return false
    const there = installed[path]
    return there === undefined ? entry.optional !== true : there.version !== entry.version
  })
}

function readPackages(file) {
  return JSON.parse(readFileSync(file, 'utf8')).packages
}

export async function buildWhereStale() {
  const built = existsSync(builtMark) ? statSync(builtMark).mtimeMs : 0
  if (buildInputs.some((path) => newest(join(root, path)) > built)) await build()
}

/** A folder's own date counts too: it tells that a file was removed. */
function newest(path) {
  const entry = statSync(path)
  if (!entry.isDirectory()) return entry.mtimeMs
  return Math.max(entry.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))))
}

export async function build() {
  rmSync(builtMark, { force: true })
  const { default: configuration } = await import('../../webpack.config.js')
  await compile(configuration)
  writeFileSync(join(dist, 'serviceWorker.js'), emptyServiceWorkerText())
  writeFileSync(builtMark, '')
}

/** @param configuration Of webpack. */
export async function compile(configuration) {
  console.log('Building.')
  const started = Date.now()
  const { default: webpack } = await import('webpack')
  const compiler = webpack(configuration)
  const stats = await new Promise((resolve, reject) => {
    compiler.run((error, result) => (error ? reject(error) : resolve(result)))
  })
  await new Promise((resolve) => compiler.close(resolve))
  if (stats.hasErrors()) throw new Failure(stats.toString({ preset: 'errors-only', colors: false }))
  console.log(`Built in ${((Date.now() - started) / 1000).toFixed(1)} s.`)
}
