/**
 * Faults of the kind that Excel would show and a kinder stand-in would not. `npm run mutate:excel` puts each into
 * `src/excel` and tells which of them the contract suite does not notice.
 */
export interface Fault {
  readonly what: string
  /** In `src/excel`. */
  readonly file: string
  /** Stands there once. */
  readonly from: string
  readonly to: string
}

const fault = (file: string, what: string, from: string, to: string): Fault => ({ file: `${file}.ts`, what, from, to })

export const excelFaults: readonly Fault[] = [
  fault(
    'addBook',
    'tables are added as if they had no headings',
    'tables.add(range, true)',
    'tables.add(range, false)',
  ),
  fault(
    'addBook',
    'a note is given its text for its cell',
    'notes.add(worksheet.getRangeByIndexes(row, column, 1, 1), cell.note)',
    'notes.add(cell.note, worksheet.getRangeByIndexes(row, column, 1, 1) as never)',
  ),
  fault('run', 'undo steps are joined on every Excel', "knows('1.20') ?", "knows('1.1') ?"),
  fault('run', 'undo steps are joined on no Excel', "knows('1.20') ?", "knows('1.99') ?"),
  fault('onSelectionChange', 'handlers are never removed', 'handler.remove()', 'void handler'),
  fault(
    'onSelectionChange',
    'the log is emptied by inserted rows only',
    'changeType !== Excel.DataChangeType.rangeEdited',
    'changeType === Excel.DataChangeType.rowInserted',
  ),
  fault(
    'onSelectionChange',
    'the log is emptied by every edit',
    'if (changeType !== Excel.DataChangeType.rangeEdited) log',
    'if (changeType) log',
  ),
  fault(
    'onSelectionChange',
    'going to another sheet is not heard',
    'worksheets.onActivated.add(notify)',
    'worksheets.onSelectionChanged.add(notify)',
  ),
  fault('onSelectionChange', 'a listener that has stopped is called', 'if (!stopped) listener()', 'listener()'),
  fault(
    'readWorkbook',
    'the used range of a sheet counts what is only formatted',
    'sheet.getUsedRangeOrNullObject(true)\n    loadPlace',
    'sheet.getUsedRangeOrNullObject()\n    loadPlace',
  ),
  fault(
    'readWorkbook',
    'the used range of some rows counts what is only formatted',
    ':${last + 1}`).getUsedRangeOrNullObject(true)',
    ':${last + 1}`).getUsedRangeOrNullObject()',
  ),
  fault(
    'readWorkbook',
    'a workbook in which something is only formatted is not empty',
    'worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject(true))',
    'worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject())',
  ),
  fault('readWorkbook', 'names of constants are taken for cells', "type === 'Range' && visible", 'visible'),
  fault(
    'readWorkbook',
    'hidden names are taken for those of a user',
    "type === 'Range' && visible",
    "type === 'Range'",
  ),
  fault('readWorkbook', 'sheets are found by capital letters', '=== sheet.toLowerCase()', '=== sheet'),
  fault('readWorkbook', 'a formula that fills its own cell spills', 'filled.cellCount > 1', 'filled.cellCount > 0'),
  fault('readWorkbook', 'a cell that waits is taken for an error', 'if (!waits ||', 'if (waits ||'),
  fault('readWorkbook', 'bold letters are asked of an Excel that cannot say', "knows('1.9') ?", "knows('1.1') ?"),
  fault('withoutSheet', 'an address ends at its first !', "address.lastIndexOf('!')", "address.indexOf('!')"),
  fault('readWorkbook', 'an answer above 5 MB is a failure', 'if (canBeSmaller &&', 'if (!canBeSmaller &&'),
  fault('readWorkbook', 'error values come as texts', "type === 'Error' ?", "type === 'Fault' ?"),
  fault('readWorkbook', 'a formula stands a row too low', 'row: rowIndex + down', 'row: rowIndex + down + 1'),
  fault('putCells', 'cells are put from below', 'sort(([a], [b]) => a - b)', 'sort(([a], [b]) => b - a)'),
  fault(
    'putCells',
    'cells between are emptied',
    'Array.from({ length: columns }, () => null)',
    "Array.from({ length: columns }, () => '')",
  ),
  fault(
    'putCells',
    'formulas that were changed meanwhile are written over',
    'if (other !== undefined)',
    'if (other === null)',
  ),
  fault('putCells', 'one message holds everything', 'mostOfMessage = 1_000_000', 'mostOfMessage = 100_000_000'),
  fault('putCells', 'nothing is taken back while a cell is typed in', '{ delayForCellEdit: true }', '{}'),
  fault('putCells', 'of several sheets the last stays changed', 'sheets.slice(0, begun)', 'sheets.slice(0, begun - 1)'),
  fault('insertRows', 'rows are inserted to the right', "insert('Down')", "insert('Right')"),
  fault('insertRows', 'what was typed is copied too', "content !== '' && !isFormula(content)", 'false'),
  fault('insertRows', 'rows that cannot be filled stay', "insertedRows().delete('Up')", 'void insertedRows()'),
  fault('addChart', 'series go along rows', "'Columns')", "'Rows')"),
  fault('addChart', 'a chart is not taken back', 'if (!before.has(name))', 'if (before.has(name))'),
  fault('addChart', 'bars are drawn from below', 'reversePlotOrder = true', 'reversePlotOrder = false'),
  fault('addBook', 'what may not be typed is only remarked on', "style: 'Stop'", "style: 'Information'"),
  fault('addBook', 'a list has no arrow', 'inCellDropDown: true', 'inCellDropDown: false'),
  fault('addBook', 'a day of a rule is its number', "dayText(serial) ?? ''", 'String(serial)'),
  fault('addBook', 'columns are as wide in pixels as in points', '* 0.75', '* 1'),
  fault('addBook', 'what is frozen is too long', 'freezeRows(frozenRows)', 'freezeRows(frozenRows + 1)'),
  fault(
    'addBook',
    'calculation is not suspended',
    'application.suspendApiCalculationUntilNextSync()',
    'void application',
  ),
  fault(
    'addBook',
    'names are written after the formulas that read them',
    'if (waiting < mostOfMessage) return',
    'if (waiting < 0) return',
  ),
  fault('addBook', 'a message is as long as it gets', 'mostOfMessage = 3_000_000', 'mostOfMessage = 300_000_000'),
  fault(
    'addBook',
    'names of tables are free',
    '[...names.items.map(called), ...tables.items.map(called)]',
    'names.items.map(called)',
  ),
  fault('addBook', 'a half of a book stays', 'if (begun) await takeBack(book)', 'if (!begun) await takeBack(book)'),
  fault('asText', 'TRUE is written as it is', '&& !/^(true|false)$/i.test(text)', ''),
  fault('callLog', 'an apostrophe in the name of a sheet stays doubled', `.replaceAll("''", "'")`, ''),
  fault('callLog', 'the name of the workbook stays before that of the sheet', String.raw`.replace(/^.*\]/, '')`, ''),
  fault('callLog', 'dollar signs make another cell', `.replaceAll('$', '')`, ''),
  fault('callLog', 'a cell keeps all of its calls', 'calls.length > mostCallsOfCell', 'calls.length > 1e9'),
  fault('callLog', 'the log keeps all cells', 'this.byCell.size > mostCells', 'this.byCell.size > 1e9'),
  fault('valuesOf', 'a quoted name of a sheet stays quoted', ".replace(/^'|'$/g, '')", ''),
  fault('valuesOf', 'an apostrophe of a sheet stays doubled', `.replaceAll("''", "'")`, ''),
  fault(
    'excelPort',
    'only what changed is calculated',
    'Excel.CalculationType.full',
    'Excel.CalculationType.recalculate',
  ),
  fault(
    'excelPort',
    'a formula goes to the active cell, whatever cell is named',
    'place === undefined',
    'place !== null',
  ),
  fault('run', 'a protected sheet is any failure', "AccessDenied: 'protectedSheet'", "Denied: 'protectedSheet'"),
  fault('run', 'a cell that is typed in is any failure', 'InvalidOperationInCellEditMode', 'CellEditMode'),
  fault('tables', 'the row of totals is one of a table', 'hasTotals: table.showTotals', 'hasTotals: false'),
  fault('tables', 'formulas keep their references to tables', "content.includes('[')", "content.includes('[[[')"),
  fault('putCells', 'a reference to a table comes back as an address', 'stood ??=', 'stood ??= one.change.was ??'),
  fault(
    'onSelectionChange',
    'a pane that is opened while a cell is typed in hears nothing',
    '{ delayForCellEdit: true }',
    '{}',
  ),
]
