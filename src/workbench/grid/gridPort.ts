import { PortProblem, type WorkbookPort } from '../../workbook/port'
import { listed, takenBy } from '../../workbook/taken'
import type { Grid } from './grid'

/** @param giveFile Hands the user the bytes of an .xlsx file. */
export function gridPort(grid: Grid, giveFile: (bytes: Uint8Array) => void): WorkbookPort {
  return {
    host: 'workbench',
    async selectedCell() {
      const cell = grid.selectedCell()
      if (cell === undefined) throw new PortProblem('noSelection')
      const { sheet, address, formula, value, error } = cell
      return { sheet, address, formula, value: error ?? value }
    },
    callsOfSelectedCell: async () => grid.callsOfSelectedCell().map(({ definition, args }) => ({ id: definition.id, args })),
    calculate: () => grid.calculate(),
    async putFormula(formula, place) {
      if (grid.isEditing()) throw new PortProblem('cellEditMode')
      if (grid.selectedCell() === undefined) throw new PortProblem('noSelection')
      if (!await grid.write(formula, place)) throw new PortProblem('hostFailed')
    },
    async putCells(changes) {
      if (grid.isEditing()) throw new PortProblem('cellEditMode')
      const other = changes.find((change) => change.was !== undefined && grid.formulaAt(change) !== change.was)
      if (other !== undefined) throw new PortProblem('cellChanged', other.address)
      if (changes.length > 0 && !await grid.putCells(changes)) throw new PortProblem('hostFailed')
    },
    async selectedRange() {
      const range = grid.selectedRange()
      if (range === undefined) throw new PortProblem('noSelection')
      return range
    },
    isEmpty: async () => grid.isEmpty(),
    read: async () => grid.read(),
    readRows: async (sheet, first, last) => grid.readRows(sheet, first, last),
    names: async () => grid.names(),
    async add(book) {
      if (grid.isEditing()) throw new PortProblem('cellEditMode')
      const taken = takenBy(grid.namesInUse(), book)
      if (taken.length > 0) throw new PortProblem('nameTaken', listed(taken))
      await grid.add(book).catch((problem: unknown) => {
        throw new PortProblem('bookRefused', problem instanceof Error ? problem.message : String(problem))
      })
    },
    async saveCopy(change) {
      if (grid.isEditing()) throw new PortProblem('cellEditMode')
      const { writeXlsx } = await import('../xlsx/writeXlsx')
      const { book, calculated } = change(await grid.book(), grid.read())
      giveFile(await writeXlsx(book, calculated))
    },
    async insertRow(place) {
      if (grid.isEditing()) throw new PortProblem('cellEditMode')
      if (!await grid.insertRow(place)) throw new PortProblem('noSelection')
    },
    async select(place) {
      if (grid.isEditing()) throw new PortProblem('cellEditMode')
      if (!grid.select(place)) throw new PortProblem('noSelection')
    },
    valuesOf: async (reference, sheet) => grid.valuesOf(reference, sheet),
    setDecimalMark: (mark) => grid.setDecimalMark(mark),
    onSelectionChange: (listener) => grid.onChange(listener),
  }
}
