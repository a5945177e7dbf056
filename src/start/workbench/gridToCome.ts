import type { Grid } from '../../workbench/grid/grid'
import { describeBrowser } from '../../workbench/grid/describeBrowser'
import type { WorkbookPort } from '../../workbook/port'
import { hearWitness } from './hearWitness'

/** The port to a grid that is still on its way, for a pane that is there before: what is asked waits for the grid. */
export function gridToCome(coming: Promise<Grid>): WorkbookPort {
  return {
    host: 'workbench',
    selectedCell: async () => (await coming).selectedCell(),
    callsOfSelectedCell: async () => (await coming).callsOfSelectedCell(),
    calculate: async () => (await coming).calculate(),
    putFormula: async (formula, place) => (await coming).putFormula(formula, place),
    putCells: async (changes) => (await coming).putCells(changes),
    selectedRange: async () => (await coming).selectedRange(),
    isEmpty: async () => (await coming).isEmpty(),
    read: async () => (await coming).read(),
    readRows: async (sheet, first, last) => (await coming).readRows(sheet, first, last),
    names: async () => (await coming).names(),
    add: async (book) => (await coming).add(book),
    removeSheet: async (sheet) => (await coming).removeSheet(sheet),
    describeHost: describeBrowser,
    witness: hearWitness,
    saveCopy: async (change) => (await coming).saveCopy(change),
    insertRows: async (place, count) => (await coming).insertRows(place, count),
    select: async (place) => (await coming).select(place),
    valuesOf: async (reference, sheet) => (await coming).valuesOf(reference, sheet),
    onSelectionChange: (listener) => listenOnceThere(coming, listener),
  }
}

function listenOnceThere(coming: Promise<Grid>, listener: () => void): () => void {
  let isOver = false
  let stop = () => {}
  coming.then(
    (grid) => {
      if (!isOver) stop = grid.onSelectionChange(listener)
    },
    // Whoever asks the grid for something hears of it.
    () => undefined,
  )
  return () => {
    isOver = true
    stop()
  }
}
