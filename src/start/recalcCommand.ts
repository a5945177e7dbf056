/**
 * Calculates a workbook with the functions of the catalogue, without Excel, and prints what its formulas give. For
 * checks that run by themselves, and for an accountant without the add-in.
 */
import { largest } from '../core/quantity/largest'
import { open, readFile, rename, rm, stat } from 'node:fs/promises'
import { basename, dirname, extname, join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { witnessLines } from './witnessLines'
import { askWitness } from './askWitness'
import { files } from '../wording/en/files'
import { found } from '../wording/en/findings'
import { refusalsIn, type CellRefusal } from '../workbook/check/refusalsIn'
import { tracedErrors, type TracedError } from '../workbook/check/tracedErrors'
import type { Disagreement, NoTestimony, Testimony } from '../workbook/check/testimony'
import type { OpenBook } from '../workbook/openBook'
import type { CellPlace } from '../workbook/cellPlace'
import { calculateBook, type OnProgress } from '../workbench/engine/calculate'
import { type KeptResult, withKeptResults } from '../workbench/xlsx/keptResults'
import { putResults, type WithResults } from '../workbench/xlsx/putResults'
import { readXlsx } from '../workbench/xlsx/readXlsx'
import { resultsOf, type Result, type SheetResults } from '../workbench/xlsx/results'
import { XlsxProblem } from '../workbench/xlsx/xlsxProblem'

const help = `Calculates a workbook with the STICK functions and prints what its formulas give.

  npm run recalc -- FILE.xlsx [--out OUT.xlsx] [--json] [--witness]

  --out OUT.xlsx  also writes the workbook with the new results; all else in it stays as it is.
                  FILE.xlsx itself is overwritten only if you name it here.
  --json          prints JSON. Say "npm run --silent recalc" to have nothing else on the output.
  --witness       has a second engine calculate every formula once more, and lists the cells where the two differ,
                  and how many formulas the second was not given, and why.
  --help          prints this.

What cannot be calculated here as Excel does keeps the result that the file stores, and so does all that reads it.
Ends with 0 if every formula was calculated, with 1 if a function refused its input, a cell shows an error or keeps its
stored result, or the witness comes to another result (each such cell is listed), and with 2 if the file could not be
read or written, or needs more memory than half of what the computer has: NODE_OPTIONS=--max-old-space-size=8000
allows 8000 MB.
`

/** Something that the user can put right, said in a sentence. */
class UsageProblem extends Error {}

interface Wish {
  readonly file: string
  readonly out: string | undefined
  readonly json: boolean
  readonly witness: boolean
}

/** Where a command was typed, and where its words go. */
export interface Terminal {
  /** File names are meant from here. */
  readonly folder: string
  print(text: string): void
  complain(text: string): void
  /** How far it is, for who waits and looks on. */
  progress?(text: string): void
}

/** Does what the words of the command line ask for, and gives the number with which the program ends. */
export async function recalc(words: string[], terminal: Terminal): Promise<number> {
  try {
    return await calculateAndPrint(words, terminal)
  } catch (problem) {
    // Any other failure is a mistake of the program's, and its trace is wanted.
    if (!(problem instanceof XlsxProblem || problem instanceof UsageProblem)) throw problem
    terminal.complain(`${problem.message}\n`)
    return 2
  }
}

async function calculateAndPrint(words: string[], terminal: Terminal): Promise<number> {
  const wish = readWish(words)
  if (wish === 'help') {
    terminal.print(help)
    return 0
  }
  const bytes = await readInput(wish.file, terminal)
  const read = await readXlsx(bytes)
  const { book } = read
  const onProgress: OnProgress = (formula, formulas) =>
    terminal.progress?.(`${wish.file}: formula ${formula} of ${formulas} is calculated`)
  const everything = await calculateBook(book, onProgress).catch((problem: unknown) => {
    throw new UsageProblem(`${wish.file} cannot be calculated here: ${(problem as Error).message}.`)
  })
  const { book: calculated, kept } = withKeptResults(read, everything)
  const sheets = resultsOf(book, calculated)
  const errors = tracedErrors(calculated)
  const testimony = wish.witness ? await askWitness(withoutFormulas(calculated, kept)) : undefined
  terminal.print(wish.json ? asJson(wish.file, sheets, refusalsIn(calculated), kept, testimony) : asText(sheets))
  for (const line of [...errorLines(errors), ...keptLines(kept), ...witnessLines(testimony)])
    terminal.complain(`${line}\n`)
  if (wish.out !== undefined) await writeOut(wish.out, await putResults(bytes, calculated, kept), terminal)
  return errors.length + kept.length + disagreementsIn(testimony).length > 0 ? 1 : 0
}

function readWish(words: string[]): Wish | 'help' {
  const { values, positionals } = parse(words)
  if (values.help === true) return 'help'
  const [file, ...more] = positionals
  if (file === undefined || more.length > 0) throw new UsageProblem('Name one workbook: npm run recalc -- FILE.xlsx')
  if (values.out !== undefined && extname(values.out).toLowerCase() !== extname(file).toLowerCase()) {
    throw new UsageProblem(
      `--out must end in ${extname(file)}, as the workbook does: Excel opens no file whose ending does not fit.`,
    )
  }
  return { file, out: values.out, json: values.json === true, witness: values.witness === true }
}

function parse(words: string[]) {
  try {
    return parseArgs({
      args: words,
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        json: { type: 'boolean' },
        witness: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    })
  } catch (problem) {
    throw new UsageProblem(`${(problem as Error).message} Say --help to see what there is.`)
  }
}

async function readInput(file: string, { folder }: Terminal): Promise<Uint8Array> {
  try {
    return await readFile(resolve(folder, file))
  } catch (problem) {
    throw new UsageProblem(`${file} cannot be read: ${reasonOf(problem)}.`)
  }
}

/** Written beside its goal and moved there once it is on the disk, so that no half a workbook is ever left. */
async function writeOut(
  out: string,
  { bytes, breaksSignature }: WithResults,
  { folder, complain }: Terminal,
): Promise<void> {
  const goal = resolve(folder, out)
  const beside = join(dirname(goal), `.${basename(goal)}.${process.pid}.tmp`)
  try {
    await writeThrough(beside, bytes, (await stat(goal).catch(() => undefined))?.mode ?? 0o666)
    await rename(beside, goal)
  } catch (problem) {
    await rm(beside, { force: true })
    throw new UsageProblem(`${out} cannot be written: ${reasonOf(problem)}.`)
  }
  complain(`${out} is written: the workbook with new results and all else as it was.\n`)
  if (breaksSignature) complain('Its digital signature is no longer valid.\n')
}

/** Until the disk has it: else a crash could leave the new name with nothing behind it. */
async function writeThrough(file: string, bytes: Uint8Array, mode: number): Promise<void> {
  const handle = await open(file, 'w', mode)
  try {
    await handle.writeFile(bytes)
    await handle.sync()
  } finally {
    await handle.close()
  }
}

function reasonOf(problem: unknown): string {
  const { code, message } = problem as NodeJS.ErrnoException
  const reasons: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file or folder',
    EACCES: 'that is not permitted',
    EPERM: 'that is not permitted',
    EISDIR: 'it is a folder',
    ENOSPC: 'the disk is full',
    EBUSY: 'another program has it open',
  }
  return reasons[code ?? ''] ?? message
}

/** Our own refusals first, because they say what to type; then the other sources; what only passes an error on is named in one line. */
function errorLines(errors: readonly TracedError[]): string[] {
  const refused = errors.filter(({ sentence }) => sentence !== undefined)
  const others = errors.filter(({ sentence, sources }) => sentence === undefined && sources.length === 0)
  const followers = errors.filter(({ sources }) => sources.length > 0)
  // Cells that read each other in a circle have no source.
  if (refused.length + others.length === 0)
    return followers.map(
      (one) => `${placeText(one)}  ${one.code}  The formula reads ${placeText(one.sources[0]!)}, which shows an error.`,
    )
  return [
    ...refused.map((one) => `${placeText(one)}  ${one.code}  ${one.sentence ?? ''}`),
    ...others.map((one) => `${placeText(one)}  ${one.code}  ${found.shows(one.code)}`),
    ...(followers.length === 0 ? [] : [followersLine(followers)]),
  ]
}

const namedFollowers = 5

function followersLine(followers: readonly CellPlace[]): string {
  const named = followers.slice(0, namedFollowers).map(placeText).join(', ')
  const more = followers.length > namedFollowers ? ` and ${followers.length - namedFollowers} more` : ''
  return followers.length === 1
    ? `1 cell reads one of these and shows its error: ${named}.`
    : `${followers.length} cells read one of these and show its error: ${named}${more}.`
}

function placeText({ sheet, address }: CellPlace): string {
  return `${sheet}!${address}`
}

/** What keeps its stored result is for no engine to judge. */
function withoutFormulas(book: OpenBook, kept: readonly KeptResult[]): OpenBook {
  const places = new Set(kept.map(placeText))
  return {
    ...book,
    sheets: book.sheets.map((sheet) => ({
      ...sheet,
      cells: new Map(
        [...sheet.cells].map(([address, cell]) => [
          address,
          places.has(placeText({ sheet: sheet.name, address })) ? { ...cell, formula: '' } : cell,
        ]),
      ),
    })),
  }
}

function disagreementsIn(testimony: Testimony | NoTestimony | undefined): readonly Disagreement[] {
  return typeof testimony === 'object' ? testimony.disagreements : []
}

/** All of them by name, one line for each reason, and last what only reads them. */
function keptLines(kept: readonly KeptResult[]): string[] {
  const reasons = new Set(kept.map(({ why }) => why))
  return [...reasons]
    .sort((one, other) => Number(one === undefined) - Number(other === undefined))
    .map((reason) => {
      const places = kept.filter(({ why }) => why === reason)
      const because = reason === undefined ? 'because they read one of these' : `because ${files.kept[reason]}`
      return `Stored results stay, ${because}: ${places.map(placeText).join(', ')}.`
    })
}

function asJson(
  file: string,
  sheets: readonly SheetResults[],
  refusals: readonly CellRefusal[],
  kept: readonly KeptResult[],
  witness: Testimony | NoTestimony | undefined,
): string {
  return `${JSON.stringify({ file, sheets, refusals, kept, witness }, null, 2)}\n`
}

function asText(sheets: readonly SheetResults[]): string {
  if (sheets.length === 0) return 'The workbook has no formulas.\n'
  return sheets.map(({ name, results }) => `${name}\n${tableOf(results)}`).join('\n')
}

const widestLabel = 60

function tableOf(results: readonly Result[]): string {
  const labels = results.map(({ label }) =>
    label.length > widestLabel ? `${label.slice(0, widestLabel - 1)}…` : label,
  )
  const addressWidth = widest(results.map(({ address }) => address))
  const labelWidth = widest(labels)
  const shownWidth = widest(results.map(({ shown, rows }) => (rows === undefined ? shown : '')))
  return results
    .map(({ address, shown, rows }, index) => {
      const start = `  ${address.padEnd(addressWidth)}  ${(labels[index] ?? '').padEnd(labelWidth)}`
      if (rows === undefined) return `${start}  ${shown.padStart(shownWidth)}\n`
      return `${start}\n${spillOfRows(rows)
        .map((row) => `  ${' '.repeat(addressWidth)}  ${row}\n`)
        .join('')}`
    })
    .join('')
}

function widest(texts: readonly string[]): number {
  const lengths = texts.map((text) => text.length)
  return largest(lengths, 0)
}

function spillOfRows(rows: readonly (readonly string[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, column) => widest(rows.map((row) => row[column] ?? '')))
  return rows.map((row) =>
    row
      .map((text, column) => text.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  )
}
