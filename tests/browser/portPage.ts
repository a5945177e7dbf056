/** The page in which the contract of the port is tried: the grid alone, with the port within reach of the test. */
import type { Injector } from '@univerjs/core'
import { catalogue } from '../../src/functions/catalogue'
import { type GridOptions, startGrid } from '../../src/workbench/grid/grid'
import { allMends } from '../../src/workbench/grid/mends/mends'
import type { WorkbookPort } from '../../src/workbook/port'
import { misplacedNotes } from './misplacedNotes'

declare global {
  interface Window {
    port?: WorkbookPort
    /** Puts the keyboard where the test types. */
    focusGrid?: () => void
    /** The ways to stop the listeners of the test, by their number. */
    stops?: Map<number, () => void>
    tellTest?: (listener: number) => void
    /** Lets rows come and go, and gives the cells whose note is not beside them then. */
    misplacedNotes?: () => Promise<string[]>
  }
}

const book = { names: [], sheets: [{ name: 'Season 1', widths: [], frozenRows: 0, frozenColumns: 0, rows: [] }] }
let library: Injector
const options: GridOptions = {
  dark: false,
  decimalMark: '.',
  giveFile: () => undefined,
  aboutFormulas: () => Promise.resolve('replace'),
  onNoPlace: () => undefined,
  onNotCalculated: () => undefined,
  mends: [...allMends, (injector) => (library = injector)],
}
const grid = await startGrid(document.getElementById('grid')!, catalogue, book, options)
window.focusGrid = () => grid.focus()
window.stops = new Map()
window.port = grid
window.misplacedNotes = () => misplacedNotes(grid, library)
