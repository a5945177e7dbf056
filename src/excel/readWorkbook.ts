/** Reads the open workbook: what stands in the used cells, and the calls that the log knows of them. */
import type { OpenBook, OpenSheet } from '../workbook/openBook'
import type { WorkbookPort } from '../workbook/port'
import { isWaiting } from '../workbook/waiting'
import type { CallLog } from './callLog'
import { gathered } from './gathered'
import { loadNames, namesOfCells, namesOfSheet } from './names'
import { loadPlace, readSheets } from './readSheets'
import { run } from './run'
import { tablesOf } from './tables'

/** In milliseconds: so long a read waits for results, asking so often. What waits longer is read as it is. */
const [longestWait, betweenReads] = [20_000, 100]

/**
 * Excel shows an error value in a cell whose function it is still asking, so the workbook is read once none is left. How
 * long a large workbook takes to be read counts too, or a cell that waits for ever would hold it up for hours.
 */
export async function readWorkbook(
  context: Excel.RequestContext,
  log: CallLog,
  patience = longestWait,
): Promise<OpenBook> {
  const begun = Date.now()
  const book = await readOnce(context, log)
  const waits = book.sheets.some(({ cells }) => [...cells.values()].some(({ value }) => isWaiting(value)))
  if (!waits || patience <= 0) return book
  await new Promise((resolve) => setTimeout(resolve, betweenReads))
  return readWorkbook(context, log, patience - (Date.now() - begun))
}

async function readOnce(context: Excel.RequestContext, log: CallLog): Promise<OpenBook> {
  const { worksheets, names } = context.workbook
  worksheets.load(['items/name'])
  loadNames(names)
  await context.sync()
  const used = worksheets.items.map((sheet) => {
    const range = sheet.getUsedRangeOrNullObject(true)
    loadPlace(range)
    return { name: sheet.name, range, own: namesOfSheet(sheet) }
  })
  await context.sync()
  const tables = tablesOf(context)
  const sheets = await readSheets(used, log, tables)
  return { names: await namesOfCells(names, tables), sheets }
}

interface AskedRows {
  readonly sheet: string
  readonly first: number
  readonly last: number
}

/** See WorkbookPort. What is asked for at once is read at once. */
export function rowsReader(log: CallLog): WorkbookPort['readRows'] {
  const read = gathered((asked: readonly AskedRows[]) => run((context) => readRows(context, log, asked)))
  return (sheet, first, last) => read({ sheet, first, last })
}

async function readRows(
  context: Excel.RequestContext,
  log: CallLog,
  asked: readonly AskedRows[],
): Promise<readonly (OpenSheet | undefined)[]> {
  const used = asked.map(({ sheet, first, last }) => {
    const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet)
    worksheet.load(['name'])
    const range = worksheet.getRange(`${first + 1}:${last + 1}`).getUsedRangeOrNullObject(true)
    loadPlace(range)
    return { worksheet, range, own: namesOfSheet(worksheet) }
  })
  await context.sync()
  const there = used.filter(({ worksheet }) => !worksheet.isNullObject)
  const sheets = await readSheets(
    there.map(({ worksheet, ...one }) => ({ name: worksheet.name, ...one })),
    log,
    tablesOf(context),
  )
  return used.map((one) => sheets[there.indexOf(one)])
}

export async function isEmpty(context: Excel.RequestContext): Promise<boolean> {
  const { worksheets } = context.workbook
  worksheets.load(['items/name'])
  await context.sync()
  const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject(true))
  await context.sync()
  return used.every(({ isNullObject }) => isNullObject)
}
