/** Writes a book as an .xlsx file, with results to show wherever nothing recalculates it. */
import { Workbook, type CellErrorValue, type Cell as FileCell, type Worksheet } from '@cj-tech-master/excelts'
import { BufferReader, editZip, RemoteZipReader } from '@cj-tech-master/excelts/archive'
import { isCellError } from '../../core/definition/problem'
import { addressOf, blockAddress, blockIn, positionOf, positionsIn } from '../../formula/address'
import type { Book, Cell, DefinedName, Sheet } from '../../workbook/book'
import type { OpenBook, OpenCell, OpenSheet } from '../../workbook/openBook'
import { type RealTable, realTables } from '../../workbook/realTables'
import { ruleOf } from './allowed'
import { isArrayFormula } from './arrayEvaluation'
import { calculatedColumns, withArrayMarks } from './calculatedColumns'
import { isWholeFormula, toFileSpelling, tokensOf } from './formulaSpelling'
import { optionsOf } from './layout'
import { lookStyles } from './looks'
import { ourselves } from './properties'
import { spillOf } from './spill'

// The same book gives the same bytes: neither the day nor the time zone of the writing is stored.
const dayInProperties = new Date(Date.UTC(2000, 0, 1))
const dayInArchive = new Date(2000, 0, 1)

export async function writeXlsx(book: Book, calculated?: OpenBook): Promise<Uint8Array> {
  const workbook = new Workbook()
  const { author = ourselves, ...properties } = book.properties ?? {}
  Object.assign(workbook, properties)
  workbook.creator = author
  workbook.lastModifiedBy = ourselves
  workbook.created = dayInProperties
  workbook.modified = dayInProperties
  // Excel has the last word on its own functions, and may know newer ones than the workbench.
  workbook.calcProperties.fullCalcOnLoad = true
  // Excel is known to fail on printing a workbook without a view of it.
  const activeTab = Math.max(
    0,
    book.sheets.findIndex(({ name }) => name === book.shown),
  )
  workbook.views = [{ x: 0, y: 0, width: 24_000, height: 14_000, firstSheet: 0, activeTab, visibility: 'visible' }]

  const oneCellNames = new Set(book.names.filter(standsForOneCell).map(({ name }) => name.toLowerCase()))
  const namesOneCell = (name: string) => oneCellNames.has(name.toLowerCase())
  for (const sheet of book.sheets) {
    addSheet(
      workbook,
      sheet,
      calculated?.sheets.find(({ name }) => name === sheet.name),
      namesOneCell,
    )
  }
  for (const { name, refersTo } of book.names) workbook.definedNames.addFormula(name, toFileSpelling(refersTo))
  return asWrittenByUs(
    await workbook.xlsx.writeBuffer({ zip: { modTime: dayInArchive, timestamps: 'dos' }, validate: false }),
  )
}

/** The library says that a version of Excel wrote the file, and who reads it would expect what Excel writes. */
async function asWrittenByUs(bytes: Uint8Array): Promise<Uint8Array> {
  const written = await RemoteZipReader.fromReader(new BufferReader(bytes))
  const archive = await editZip(bytes, { timestamps: 'dos' })
  const change = async (path: string, by: (text: string) => string) => {
    const text = new TextDecoder().decode(await written.extractEntry(written.getEntry(path)!))
    archive.set(path, by(text), { modTime: dayInArchive })
  }
  const name = '<Application>Sticksheet</Application>'
  await change('docProps/app.xml', (text) => text.replace(/<Application>.*?<\/Application>/, name))
  await change('xl/workbook.xml', (text) => text.replace(/<fileVersion [^>]*\/>/, ''))
  const tables = written.listFiles().filter((path) => path.startsWith('xl/tables/'))
  for (const path of tables) await change(path, withArrayMarks)
  return archive.bytes()
}

function addSheet(
  workbook: Workbook,
  sheet: Sheet,
  calculated: OpenSheet | undefined,
  namesOneCell: (name: string) => boolean,
): void {
  const worksheet = workbook.addWorksheet(sheet.name, optionsOf(sheet))
  // Before the cells, because the library empties those of a new table.
  for (const table of realTables(sheet)) addTable(worksheet, table, calculatedColumns(sheet, table, namesOneCell))
  sheet.widths.forEach((width, index) => {
    worksheet.getColumn(index + 1).width = width
  })
  sheet.rows.forEach((row, rowIndex) =>
    row.forEach((cell, columnIndex) => {
      if (cell === undefined) return
      const address = addressOf(rowIndex, columnIndex)
      writeCell(worksheet.getCell(address), cell, calculated?.cells.get(address), namesOneCell)
    }),
  )
  for (const cell of calculated?.cells.values() ?? []) {
    const spill = spillOf(cell)
    if (calculated !== undefined && spill !== undefined) writeSpilledValues(worksheet, calculated, spill)
  }
}

/** A plain style without stripes: the looks of the cells say what is to be typed into. */
function addTable(
  worksheet: Worksheet,
  { name, range, headings, top, bottom }: RealTable,
  calculated: readonly (string | undefined)[],
): void {
  worksheet.addTable({
    name,
    ref: range.split(':')[0] ?? range,
    headerRow: true,
    style: { theme: 'TableStyleLight1', showRowStripes: false },
    columns: headings.map((heading, index) => {
      const formula = calculated[index]
      return { name: heading, filterButton: true, ...(formula !== undefined && { calculatedColumnFormula: formula }) }
    }),
    rows: Array.from({ length: bottom - top }, () => headings.map(() => null)),
  })
}

function writeCell(
  target: FileCell,
  cell: Cell,
  calculated: OpenCell | undefined,
  namesOneCell: (name: string) => boolean,
): void {
  if (cell.look !== undefined) Object.assign(target, lookStyles[cell.look])
  if (cell.format !== undefined) target.numFmt = cell.format
  if (cell.note !== undefined) target.note = cell.note
  if (cell.allowed !== undefined) target.dataValidation = ruleOf(cell.allowed)
  if (cell.formula === undefined) {
    if (cell.value !== undefined) target.value = cell.value
    return
  }
  if (!isWholeFormula(cell.formula)) {
    target.value = cell.formula
    return
  }
  const formula = toFileSpelling(cell.formula)
  const result = calculated === undefined ? undefined : resultOf(calculated)
  const stored = { formula, ...(result !== undefined && { result }) }
  const spill = spillOf(calculated)
  if (cell.fills !== undefined) {
    const { row, column } = positionOf(target.address)
    const [bottom, right] = [row + cell.fills.rows - 1, column + cell.fills.columns - 1]
    target.value = { ...stored, shareType: 'array', ref: blockAddress({ top: row, left: column, bottom, right }) }
    return
  }
  const isArray = cell.spills === true || spill !== undefined || isArrayFormula(cell.formula, namesOneCell)
  target.value = isArray
    ? { ...stored, shareType: 'array', ref: spill ?? target.address, isDynamicArray: true }
    : stored
}

/** The cells that a formula spills over hold values only. */
function writeSpilledValues(worksheet: Worksheet, calculated: OpenSheet, spill: string): void {
  for (const { row, column } of positionsIn(blockIn(spill))) {
    const address = addressOf(row, column)
    const cell = worksheet.getCell(address)
    if (cell.formula === undefined) cell.value = resultOf(calculated.cells.get(address)) ?? null
  }
}

function resultOf(cell: OpenCell | undefined): string | number | boolean | CellErrorValue | undefined {
  // Only the workbench has this one.
  if (isCellError(cell?.value) && cell.value.code === '#CYCLE!') return undefined
  if (isCellError(cell?.value)) return { error: cell.value.code as CellErrorValue['error'] }
  return cell?.value ?? undefined
}

function standsForOneCell({ refersTo }: DefinedName): boolean {
  const tokens = tokensOf(`=${refersTo}`)
  return tokens.length === 2 && tokens[1]?.type === 'range' && !refersTo.includes(':')
}
