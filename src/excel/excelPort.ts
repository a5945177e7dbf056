/** The workbook that is open in Excel. */
import { isAddress } from '../formula/address'
import type { WorkbookPort } from '../workbook/port'
import { addBook } from './addBook'
import { addChart } from './addChart'
import type { CallLog } from './callLog'
import { insertRow } from './insertRow'
import { putCells } from './putCells'
import {
  blankAsNull,
  isEmpty,
  loadNames,
  namesOfCells,
  readCell,
  readRows,
  readWorkbook,
  withoutSheet,
} from './readWorkbook'
import { run } from './run'

export function excelPort(log: CallLog): WorkbookPort {
  return {
    host: 'excel',

    selectedCell: () =>
      run(async (context) => {
        const cell = context.workbook.getActiveCell()
        cell.load(['address', 'formulas', 'values'])
        const sheet = context.workbook.worksheets.getActiveWorksheet()
        sheet.load(['name'])
        await context.sync()
        const formula: unknown = cell.formulas[0]?.[0]
        return {
          sheet: sheet.name,
          address: withoutSheet(cell.address),
          formula: typeof formula === 'string' && formula.startsWith('=') ? formula : '',
          value: blankAsNull(cell.values[0]?.[0]),
        }
      }),

    callsOfSelectedCell: () =>
      run(async (context) => {
        const cell = context.workbook.getActiveCell()
        cell.load(['address'])
        await context.sync()
        const calls = log.of(cell.address)
        return calls.length === 0 ? undefined : calls
      }),

    calculate: () =>
      run(async (context) => {
        context.workbook.application.calculate(Excel.CalculationType.full)
        await context.sync()
      }),

    putFormula: (formula, place) =>
      run(async (context) => {
        const cell =
          place === undefined
            ? context.workbook.getActiveCell()
            : context.workbook.worksheets.getItem(place.sheet).getRange(place.address)
        cell.formulas = [[formula]]
        await context.sync()
      }),

    putCells,

    selectedRange: () =>
      run(async (context) => {
        const range = context.workbook.getSelectedRange()
        range.load(['address'])
        const sheet = context.workbook.worksheets.getActiveWorksheet()
        sheet.load(['name'])
        await context.sync()
        return { sheet: sheet.name, address: withoutSheet(range.address) }
      }),

    isEmpty: () => run(isEmpty),

    read: () => run((context) => readWorkbook(context, log)),

    readRows: (sheet, first, last) => run((context) => readRows(context, log, sheet, first, last)),

    names: () =>
      run(async (context) => {
        const { names } = context.workbook
        loadNames(names)
        await context.sync()
        return namesOfCells(names)
      }),

    add: addBook,

    insertRow,

    addChart,

    select: ({ sheet, address }) =>
      run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(sheet)
        worksheet.activate()
        worksheet.getRange(address).select()
        await context.sync()
      }),

    valuesOf: (reference, sheet) =>
      run(async (context) => {
        const range = rangeOf(context, reference, sheet)
        range.load(['values', 'valueTypes'])
        try {
          await context.sync()
        } catch (problem) {
          const { code = '' } = problem as { code?: string }
          if (namesNoCells.has(code)) return undefined
          throw problem
        }
        return range.isNullObject
          ? undefined
          : range.values.map((row, index) =>
              row.map((value: unknown, column) => readCell(value, range.valueTypes[index]?.[column])),
            )
      }),

    onSelectionChange(listener) {
      // Excel takes a while to let go of a handler, so a listener that has stopped is not called meanwhile.
      let stopped = false
      const notify = async () => {
        if (!stopped) listener()
      }
      const notifyOfChange = async ({ changeType }: Excel.WorksheetChangedEventArgs) => {
        if (changeType !== Excel.DataChangeType.rangeEdited) log.forgetAll()
        await notify()
      }
      const registration = run(async (context) => {
        const { worksheets } = context.workbook
        const handlers = [
          worksheets.onSelectionChanged.add(notify),
          // Going to another sheet changes the active cell without a change of that sheet's selection.
          worksheets.onActivated.add(notify),
          worksheets.onChanged.add(notifyOfChange),
        ]
        await context.sync()
        return handlers
      })
      registration.catch((problem: unknown) => console.error('Excel does not tell which cell is selected.', problem))
      return () => {
        stopped = true
        void registration.then(remove, () => undefined)
      }
    },
  }
}

/** Excel's codes for a reference that is none, or whose sheet is not there. */
const namesNoCells = new Set(['InvalidArgument', 'InvalidReference', 'ItemNotFound'])

function rangeOf(context: Excel.RequestContext, reference: string, sheet: string): Excel.Range {
  const { worksheets, names } = context.workbook
  const end = reference.lastIndexOf('!')
  if (end >= 0)
    return worksheets
      .getItem(reference.slice(0, end).replace(/^'|'$/g, '').replaceAll("''", "'"))
      .getRange(reference.slice(end + 1))
  return isAddress(reference)
    ? worksheets.getItem(sheet).getRange(reference)
    : names.getItemOrNullObject(reference).getRangeOrNullObject()
}

type Handlers = readonly { remove(): void; readonly context: OfficeExtension.ClientRequestContext }[]

/** A handler can only be removed through the context that added it. */
async function remove(handlers: Handlers): Promise<void> {
  for (const handler of handlers) handler.remove()
  await handlers[0]?.context.sync()
}
