/** The command itself, as npm starts it: what a process of its own is for shows only there. */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, expect, it } from 'vitest'
import { writeXlsx } from '../../src/workbench/xlsx/writeXlsx'
import type { Cell } from '../../src/workbook/book'

const folder = mkdtempSync(join(tmpdir(), 'sticksheet-'))
afterAll(() => rmSync(folder, { recursive: true }))

async function fileOf(rows: number): Promise<string> {
  const sheet = { name: 'S', widths: [], frozenRows: 0, frozenColumns: 0 }
  const cells = Array.from({ length: rows }, (_, row): Cell[] => [{ value: row }, { formula: `=A${row + 1}+1` }])
  const file = join(folder, `${rows}.xlsx`)
  writeFileSync(file, await writeXlsx({ names: [], sheets: [{ ...sheet, rows: cells }] }))
  return file
}

function recalc(file: string, megabytes: number) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['src/start/typescript.mjs', 'src/start/recalc.ts', file, '--out', join(folder, 'out.xlsx')],
    { encoding: 'utf8', env: { ...process.env, NODE_OPTIONS: `--max-old-space-size=${megabytes}` } },
  )
  return { status, stdout, stderr }
}

it('A workbook that needs more memory than may be used ends with one sentence and 2, and writes nothing.', async () => {
  const { status, stdout, stderr } = recalc(await fileOf(25_000), 100)
  expect(stderr).toMatch(
    /^The workbook needs more memory than the \d+ MB that may be used here, so nothing is written\. Let Excel calculate it, split it, or allow more: NODE_OPTIONS=--max-old-space-size=\d+\n$/,
  )
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
})

it('One that does not is calculated, printed and written.', async () => {
  const { status, stdout, stderr } = recalc(await fileOf(3), 1000)
  expect(stdout).toMatch(/ B3 +3\n$/)
  expect(stderr).toMatch(/out\.xlsx is written/)
  expect(status).toBe(0)
})

it.each(['SIGKILL', 'SIGSEGV', 'SIGTERM'])(
  'One that is broken off by %s ends with one sentence and 2, and writes nothing.',
  async (signal) => {
    const out = join(folder, 'ended.xlsx')
    // This stands for the system: the process that calculates ends itself as soon as it begins.
    const ending = join(folder, 'ending.mjs')
    writeFileSync(ending, `if (process.send) process.kill(process.pid, '${signal}')`)
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      ['--import', pathToFileURL(ending).href, '--import', 'tsx', 'src/start/recalc.ts', await fileOf(3), '--out', out],
      { encoding: 'utf8' },
    )
    expect(stderr).toBe(
      `The calculation was broken off (${signal}), so nothing is written. Where the computer's memory is short, close other programs, let Excel calculate the workbook, or split it.\n`,
    )
    expect({ status, stdout, written: existsSync(out) }).toEqual({ status: 2, stdout: '', written: false })
  },
)
