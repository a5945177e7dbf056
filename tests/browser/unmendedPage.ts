/** The grid without the mends that need a screen, for mends.test.ts: what the library does by itself. */
import { ICommandService, type Injector } from '@univerjs/core'
import { catalogue } from '../../src/functions/catalogue'
import { startGrid } from '../../src/workbench/grid/grid'
import { engineMends } from '../../src/workbench/grid/mends/engineMends'
import type { Mend } from '../../src/workbench/grid/mends/mend'
import type { Cell, Sheet } from '../../src/workbook/book'
import { frozenSheet } from './besideFrozen'
import { misplacedNotes } from './misplacedNotes'
import { notedSheet } from './notedSheet'

declare global {
  interface Window {
    /** The commands of the grid since the test emptied the list. */
    commands?: string[]
    /** Lets rows come and go, and gives the cells whose note is not beside them then. */
    misplacedNotes?: () => Promise<string[]>
  }
}

const commands: string[] = []

let library: Injector

/** No mend, but like one it is given the library. */
const tellCommands: Mend = (injector) => {
  library = injector
  injector.get(ICommandService).onCommandExecuted(({ id }) => commands.push(id))
}

const sheet = (name: string, rows: Cell[][]): Sheet => ({ name, widths: [], frozenRows: 0, frozenColumns: 0, rows })
const names = [{ name: 'Price', refersTo: "'Typed'!$F$5" }]
const book = {
  names,
  sheets: [sheet('Typed', []), sheet('Other', [[], [{ formula: '=RAND()' }]]), frozenSheet, notedSheet],
}
const grid = await startGrid(document.getElementById('grid')!, catalogue, book, {
  dark: false,
  decimalMark: '.',
  giveFile: () => undefined,
  aboutFormulas: () => Promise.resolve('replace'),
  onNoPlace: () => undefined,
  onNotCalculated: () => undefined,
  mends: [...engineMends, tellCommands],
})
window.commands = commands
window.misplacedNotes = () => misplacedNotes(grid, library)
window.focusGrid = () => grid.focus()
window.port = grid
