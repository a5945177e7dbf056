/** Adds the sheets and names of a book to the workbook in Excel: all of them, or none. */
import { addressOf } from '../formula/address'
import type { Allowed, Book, Cell, Sheet } from '../workbook/book'
import { dayText } from '../core/quantity/day'
import { PortProblem, type PortProblemCode } from '../workbook/port'
import { realTables } from '../workbook/realTables'
import { listed, takenBy, type NamesInUse } from '../workbook/taken'
import { asText } from './asText'
import { looksInExcel, type LookInExcel } from './looks'
import { asOneUndo, knows, run } from './run'

export async function addBook(book: Book): Promise<void> {
  let begun = false
  try {
    await run(async (context) => {
      await refuseWhatCannotBeAdded(context, book)
      begun = true
      await write(context, book)
    }, asOneUndo())
  } catch (problem) {
    if (begun) await takeBack(book)
    throw asProblemOfBook(problem)
  }
}

async function refuseWhatCannotBeAdded(context: Excel.RequestContext, book: Book): Promise<void> {
  const { protection } = context.workbook
  protection.load(['protected'])
  const inUse = await namesInUse(context)
  if (protection.protected) throw new PortProblem('protectedWorkbook')
  const taken = takenBy(inUse, book)
  if (taken.length > 0) throw new PortProblem('nameTaken', listed(taken))
}

async function namesInUse(context: Excel.RequestContext): Promise<NamesInUse> {
  const { worksheets, names, tables } = context.workbook
  for (const collection of [worksheets, names, tables]) collection.load(['items/name'])
  await context.sync()
  const called = ({ name }: { readonly name: string }) => name
  return { sheets: worksheets.items.map(called), names: [...names.items.map(called), ...tables.items.map(called)] }
}

/**
 * Excel takes no message above 5 MB. A message is sent once so many bytes wait, so the longest has one parcel more,
 * and the marks of its transport. A season is far below: it goes in one message, which is one undo in any Excel.
 */
const mostOfMessage = 3_000_000
/** Cells are written in blocks of at most so many bytes, so that a sheet may be longer than a message. */
const mostOfParcel = 500_000
/** What an order about some cells takes at most, with the address of the cells. */
const sizeOfOrder = 6_000

async function write(context: Excel.RequestContext, book: Book): Promise<void> {
  const { application, worksheets, names } = context.workbook
  let waiting = 0
  const sendWhenMany = async (size: number) => {
    waiting += size
    if (waiting < mostOfMessage) return
    waiting = 0
    await context.sync()
  }
  application.suspendApiCalculationUntilNextSync()
  // Sheets and names first: Excel refuses a formula that reads a sheet which is not there.
  const sheets = book.sheets.map((sheet) => ({ sheet, worksheet: worksheets.add(sheet.name) }))
  for (const { name, refersTo } of book.names) names.add(name, `=${refersTo}`)
  for (const { sheet, worksheet } of sheets) {
    await writeContents(worksheet, sheet, sendWhenMany)
    await setAppearance(worksheet, sheet, sendWhenMany)
    addTables(worksheet, sheet)
  }
  await context.sync()
}

/** Counts what was just ordered, and sends it once much waits. */
type Sent = (size: number) => Promise<void>

interface Parcel {
  readonly top: number
  readonly rows: Sheet['rows']
  readonly size: number
}

/** The rows in parcels that fit into a message. */
function* parcelsOf(rows: Sheet['rows']): Generator<Parcel> {
  let top = 0
  let size = 0
  for (const [index, row] of rows.entries()) {
    const sizeOfRow = bytesOf(JSON.stringify(row))
    if (index > top && size + sizeOfRow > mostOfParcel) {
      yield { top, rows: rows.slice(top, index), size }
      top = index
      size = 0
    }
    size += sizeOfRow
  }
  if (top < rows.length) yield { top, rows: rows.slice(top), size }
}

function bytesOf(text: string): number {
  return new TextEncoder().encode(text).length
}

async function writeContents(worksheet: Excel.Worksheet, { rows }: Sheet, sent: Sent): Promise<void> {
  const width = Math.max(0, ...rows.map((row) => row.length))
  if (width === 0) return
  for (const parcel of parcelsOf(rows)) {
    const range = worksheet.getRangeByIndexes(parcel.top, 0, parcel.rows.length, width)
    // Excel leaves a cell alone where null stands.
    const ofEach = (of: (cell: Cell) => string | number | boolean | undefined) =>
      parcel.rows.map((row) =>
        Array.from({ length: width }, (_, column) => {
          const cell = row[column]
          return (cell && of(cell)) ?? null
        }),
      )
    range.numberFormat = ofEach(({ format }) => format)
    range.formulas = ofEach(({ formula, value }) => formula ?? (typeof value === 'string' ? asText(value) : value))
    await sent(parcel.size)
  }
}

async function setAppearance(worksheet: Excel.Worksheet, sheet: Sheet, sent: Sent): Promise<void> {
  sheet.widths.forEach((width, column) => {
    worksheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = pointsOf(width)
  })
  freeze(worksheet, sheet)
  for (const [name, look] of Object.entries(looksInExcel)) {
    for (const areas of areasOf(worksheet, sheet, (cell) => cell.look === name)) {
      draw(areas, look)
      await sent(sizeOfOrder)
    }
  }
  for (const allowed of allowedIn(sheet)) {
    for (const areas of areasOf(
      worksheet,
      sheet,
      (cell) => cell.allowed !== undefined && isSame(cell.allowed, allowed),
    )) {
      allow(areas, allowed)
      await sent(sizeOfOrder)
    }
  }
  if (!knows('1.18')) return
  for (const { row, column, cell } of cellsOf(sheet)) {
    if (cell.note === undefined) continue
    worksheet.notes.add(worksheet.getRangeByIndexes(row, column, 1, 1), cell.note)
    await sent(sizeOfOrder + bytesOf(cell.note))
  }
}

/** After the contents: Excel gives a heading of its own to a table that it finds without one. */
function addTables(worksheet: Excel.Worksheet, sheet: Sheet): void {
  for (const { name, range } of realTables(sheet)) {
    const table = worksheet.tables.add(range, true)
    // A plain style without stripes: the looks of the cells say what is to be typed into.
    table.set({ name, style: 'TableStyleLight1', showBandedRows: false, showFilterButton: true })
  }
}

/** Excel's interface measures columns in points: 7 pixels a character and 5 for the edges, at 96 to the inch. */
function pointsOf(characters: number): number {
  return (characters * 7 + 5) * 0.75
}

function freeze(worksheet: Excel.Worksheet, { frozenRows, frozenColumns }: Sheet): void {
  const { freezePanes } = worksheet
  if (frozenRows > 0 && frozenColumns > 0)
    freezePanes.freezeAt(worksheet.getRangeByIndexes(0, 0, frozenRows, frozenColumns))
  else if (frozenRows > 0) freezePanes.freezeRows(frozenRows)
  else if (frozenColumns > 0) freezePanes.freezeColumns(frozenColumns)
}

function draw({ format }: Excel.RangeAreas, { font, fill, line, wraps }: LookInExcel): void {
  format.font.set(font)
  if (fill !== undefined) format.fill.color = fill
  if (wraps) format.wrapText = true
  for (const edge of line?.edges ?? []) {
    const border = format.borders.getItem(edge)
    border.style = 'Continuous'
    border.color = line!.colour
  }
}

function allow({ dataValidation }: Excel.RangeAreas, allowed: Allowed): void {
  dataValidation.rule = ruleOf(allowed)
  dataValidation.errorAlert = { showAlert: true, style: 'Stop', title: 'Sticksheet', message: allowed.sentence }
}

function ruleOf(allowed: Allowed): Excel.DataValidationRule {
  if ('list' in allowed) return { list: { inCellDropDown: true, source: `=${allowed.list}` } }
  const { from, to } = allowed
  if (allowed.day)
    return {
      date:
        to === undefined
          ? { formula1: written(from), operator: 'GreaterThanOrEqualTo' }
          : { formula1: written(from), formula2: written(to), operator: 'Between' },
    }
  const limits: Excel.BasicDataValidation =
    to === undefined
      ? { formula1: from, operator: 'GreaterThanOrEqualTo' }
      : { formula1: from, formula2: to, operator: 'Between' }
  return allowed.whole ? { wholeNumber: limits } : { decimal: limits }
}

/** Excel takes the day of a rule as it is written in ISO 8601. */
const written = (serial: number): string => dayText(serial) ?? ''

function allowedIn(sheet: Sheet): readonly Allowed[] {
  const different: Allowed[] = []
  for (const {
    cell: { allowed },
  } of cellsOf(sheet)) {
    if (allowed !== undefined && !different.some((other) => isSame(other, allowed))) different.push(allowed)
  }
  return different
}

function isSame(one: Allowed, other: Allowed): boolean {
  return JSON.stringify(one) === JSON.stringify(other)
}

/** An address of several cells may have 8192 characters; the fewer, the sooner Excel has read it. */
const longestAddress = 2000

/** Such cells one by one, so that a line at an edge is a line of each cell. */
function* areasOf(
  worksheet: Excel.Worksheet,
  sheet: Sheet,
  isSuch: (cell: Cell) => boolean,
): Generator<Excel.RangeAreas> {
  let address = ''
  for (const { row, column, cell } of cellsOf(sheet)) {
    if (!isSuch(cell)) continue
    const next = addressOf(row, column)
    if (address.length + next.length >= longestAddress) {
      yield worksheet.getRanges(address)
      address = ''
    }
    address = address === '' ? next : `${address},${next}`
  }
  if (address !== '') yield worksheet.getRanges(address)
}

interface PlacedCell {
  readonly row: number
  readonly column: number
  readonly cell: Cell
}

function* cellsOf({ rows }: Sheet): Generator<PlacedCell> {
  for (const [row, cells] of rows.entries()) {
    for (const [column, cell] of cells.entries()) if (cell !== undefined) yield { row, column, cell }
  }
}

/** None of these was there before, so whatever is called so now is ours. */
async function takeBack(book: Book): Promise<void> {
  const sheets = new Set(book.sheets.map(({ name }) => name))
  const names = new Set(book.names.map(({ name }) => name))
  const ours = (inUse: NamesInUse) => ({
    sheets: inUse.sheets.filter((name) => sheets.has(name)),
    names: inUse.names.filter((name) => names.has(name)),
  })
  try {
    // Also while the user types in a cell: Excel then takes it back once that has ended.
    await run(
      async (context) => {
        const left = ours(await namesInUse(context))
        // Names first: without their sheets Excel would show them as broken meanwhile.
        for (const name of left.names) context.workbook.names.getItem(name).delete()
        for (const name of left.sheets) context.workbook.worksheets.getItem(name).delete()
        await context.sync()
      },
      { delayForCellEdit: true },
    )
  } catch {
    throw new PortProblem('partLeft', listed([...sheets].map((name) => `the sheet ${name}`)))
  }
}

const problemOfBook: Partial<Record<PortProblemCode, PortProblemCode>> = {
  hostFailed: 'bookRefused',
  protectedSheet: 'protectedWorkbook',
}

function asProblemOfBook(problem: unknown): PortProblem {
  const { code, detail } = problem as PortProblem
  return new PortProblem(problemOfBook[code] ?? code, detail)
}
