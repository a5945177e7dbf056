/** The page in which the contract of the port is tried: the grid alone, with the port within reach of the test. */
import { catalogue } from '../../src/functions/catalogue'
import { type GridOptions, startGrid } from '../../src/workbench/grid/grid'
import type { WorkbookPort } from '../../src/workbook/port'

declare global {
  interface Window {
    port?: WorkbookPort
    /** Puts the keyboard where the test types. */
    focusGrid?: () => void
    /** The ways to stop the listeners of the test, by their number. */
    stops?: Map<number, () => void>
    tellTest?: (listener: number) => void
  }
}

const book = { names: [], sheets: [{ name: 'Season 1', widths: [], frozenRows: 0, frozenColumns: 0, rows: [] }] }
const options: GridOptions = {
  dark: false,
  decimalMark: '.',
  giveFile: () => undefined,
  aboutFormulas: () => Promise.resolve('replace'),
  onNoPlace: () => undefined,
  onNotCalculated: () => undefined,
}
const grid = await startGrid(document.getElementById('grid')!, catalogue, book, options)
window.focusGrid = () => grid.focus()
window.stops = new Map()
window.port = grid
