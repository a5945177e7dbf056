import type { Grid } from '../../workbench/grid/grid'
import { describeBrowser } from '../../workbench/grid/describeBrowser'
import type { WorkbookPort } from '../../workbook/port'
import { hearWitness } from './hearWitness'

/**
 * The port to a grid that is still on its way, for a pane that is there before: what is asked waits for the grid. What
 * changes it, or asks for calls, waits until it is calculated too.
 */
export function gridToCome(shown: Promise<Grid>, calculated: Promise<Grid>): WorkbookPort {
  return {
    host: 'workbench',
    selectedCell: async () => (await shown).selectedCell(),
    callsOfSelectedCell: async () => (await calculated).callsOfSelectedCell(),
    calculate: async () => (await calculated).calculate(),
    putFormula: async (formula, place) => (await calculated).putFormula(formula, place),
    putCells: async (changes) => (await calculated).putCells(changes),
    selectedRange: async () => (await shown).selectedRange(),
    isEmpty: async () => (await shown).isEmpty(),
    read: async () => (await calculated).read(),
    readRows: async (sheet, first, last) => (await shown).readRows(sheet, first, last),
    names: async () => (await shown).names(),
    add: async (book) => (await calculated).add(book),
    removeSheet: async (sheet) => (await calculated).removeSheet(sheet),
    describeHost: describeBrowser,
    witness: hearWitness,
    saveCopy: async (change) => (await calculated).saveCopy(change),
    insertRows: async (place, count) => (await calculated).insertRows(place, count),
    select: async (place) => (await calculated).select(place),
    valuesOf: async (reference, sheet) => (await shown).valuesOf(reference, sheet),
    onSelectionChange: (listener) => listenOnceThere(shown, listener),
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
