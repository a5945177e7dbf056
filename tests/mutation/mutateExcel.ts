/**
 * `npm run mutate:excel`: puts each fault of excelFaults.ts into a copy of the project, one at a time, runs the contract
 * suite there and tells which faults it did not notice. `-- 10 20` tries those from the tenth to the twentieth.
 */
import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { excelFaults, type Fault } from './excelFaults'

const root = join(import.meta.dirname, '..', '..')
const [first = 1, last = excelFaults.length] = process.argv.slice(2).map(Number)

const copy = mkdtempSync(join(tmpdir(), 'sticksheet-faults-'))
try {
  for (const part of ['src', 'tests', 'assets', 'package.json', 'tsconfig.json', 'vitest.config.ts'])
    cpSync(join(root, part), join(copy, part), { recursive: true })
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'), 'junction')
  if (isNoticed()) throw new Error('The contract suite is red without any fault.')
  const missed = excelFaults.slice(first - 1, last).filter((fault, index) => {
    const noticed = withFault(fault, () => isNoticed(firstTests(fault)) || isNoticed())
    console.log(`${noticed ? 'red  ' : 'GREEN'} ${first + index} ${fault.file}: ${fault.what}`)
    return !noticed
  })
  const tried = excelFaults.slice(first - 1, last).length
  console.log(`${tried - missed.length} of ${tried} faults turned the contract suite red.`)
  process.exitCode = missed.length === 0 ? 0 : 1
} finally {
  rmSync(copy, { recursive: true })
}

function withFault<T>({ file, from, to }: Fault, during: () => T): T {
  const path = join(copy, 'src', 'excel', file)
  const sound = readFileSync(path, 'utf8')
  writeFileSync(
    path,
    sound.replace(from, () => to),
  )
  try {
    return during()
  } finally {
    writeFileSync(path, sound)
  }
}

/** The tests that most likely notice it go first, without the two files that take longest. */
function firstTests({ file }: Fault): readonly string[] {
  return file === 'addBook.ts'
    ? ['tests/contract/addBookToExcel']
    : ['tests/contract', '--exclude', '**/addBookToExcel*', '--exclude', '**/trialInExcel*']
}

function isNoticed(tests: readonly string[] = ['tests/contract']): boolean {
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs')
  const { status } = spawnSync(process.execPath, [vitest, 'run', '--project', 'unit', '--bail', '1', ...tests], {
    cwd: copy,
    stdio: 'ignore',
  })
  return status !== 0
}
