/** The workbook that is open in Excel. */
import type { WorkbookPort } from '../workbook/port'
import { addBook } from './addBook'
import { addChart } from './addChart'
import type { CallLog } from './callLog'
import { describeHost } from './describeHost'
import { insertRows } from './insertRows'
import { onSelectionChange } from './onSelectionChange'
import { putCells } from './putCells'
import { loadNames, namesOfCells } from './names'
import { isEmpty, readRows, readWorkbook } from './readWorkbook'
import { asOneUndo, run } from './run'
import { select, selectedCell, selectedRange } from './selection'
import { tablesOf } from './tables'
import { valuesOf } from './valuesOf'

export function excelPort(log: CallLog): WorkbookPort {
  return {
    host: 'excel',

    selectedCell,

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
    selectedRange,
    isEmpty: () => run(isEmpty),
    read: () => run((context) => readWorkbook(context, log)),
    readRows: (sheet, first, last) => run((context) => readRows(context, log, sheet, first, last)),

    names: () =>
      run(async (context) => {
        const { names } = context.workbook
        loadNames(names)
        await context.sync()
        return namesOfCells(names, tablesOf(context))
      }),

    add: addBook,
    removeSheet: (sheet) =>
      run(async (context) => {
        context.workbook.worksheets.getItem(sheet).delete()
        await context.sync()
      }, asOneUndo()),
    describeHost,
    insertRows,
    addChart,
    select,
    valuesOf,
    onSelectionChange: (listener) => onSelectionChange(log, listener),
  }
}
