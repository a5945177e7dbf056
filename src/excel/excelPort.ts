/** The workbook that is open in Excel. */
import type { CallInCell } from '../workbook/openBook'
import type { WorkbookPort } from '../workbook/port'
import { addBook } from './addBook'
import { ask } from './ask'
import { addChart } from './addChart'
import type { CallLog } from './callLog'
import { describeHost } from './describeHost'
import { insertRows } from './insertRows'
import { selectionChanges } from './selectionChanges'
import { putCells } from './putCells'
import { loadNames, namesOfCells } from './names'
import { isEmpty, readWorkbook, rowsReader } from './readWorkbook'
import { asOneUndo, run } from './run'
import { select, selectedCell, selectedRange } from './selection'
import { tablesOf } from './tables'
import { valuesOf } from './valuesOf'

export function excelPort(log: CallLog): WorkbookPort {
  return {
    host: 'excel',

    selectedCell,

    callsOfSelectedCell: () =>
      ask((context) => {
        const cell = context.workbook.getActiveCell()
        cell.load(['address'])
        return () => callsOf(cell, log)
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
    readRows: rowsReader(log),

    names: () =>
      ask((context) => {
        const { names } = context.workbook
        loadNames(names)
        return () => namesOfCells(names, tablesOf(context))
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
    onSelectionChange: selectionChanges(log),
  }
}

function callsOf({ address }: Excel.Range, log: CallLog): readonly CallInCell[] | undefined {
  const calls = log.of(address)
  return calls.length === 0 ? undefined : calls
}
