import { IDefinedNamesService } from '@univerjs/engine-formula'
import { RedoCommandId, UndoCommandId } from '@univerjs/core'
import { expect, it } from 'vitest'
import { guardFormulaCaches } from '../../../../src/workbench/grid/mends/cacheGuard'
import type { Book, Cell } from '../../../../src/workbook/book'
import { openGrid, type OpenGrid, without } from '../univerInNode'

/** Where the names of each workbook lie at first; the same names lie elsewhere in the other. */
const places = {
  first: { Alpha: 'B4:B9', Beta: 'C10:D14', Gamma: 'E3:E8' },
  second: { Alpha: 'C6:C12', Beta: 'B2:E4', Gamma: 'D15:D20' },
} as const
type WorkbookId = keyof typeof places
const workbookIds: [WorkbookId, WorkbookId] = ['first', 'second']
const roundsOfOneWorkbook = 15

const dataRows = 24
const dataColumns = 7

/** A sheet of numbers, and one that adds up the same cells twice: by their name, and by their address. */
function bookOf(id: WorkbookId, random: () => number): Book {
  const data = Array.from({ length: dataRows }, () =>
    Array.from({ length: dataColumns }, (): Cell => ({ value: Math.floor(random() * 1e6) })),
  )
  const entries = Object.entries(places[id])
  const bare = { widths: [], frozenRows: 0, frozenColumns: 0 }
  return {
    names: entries.map(([name, place]) => ({ name, refersTo: `Data!${absolute(place)}` })),
    sheets: [
      { ...bare, name: 'Data', rows: data },
      {
        ...bare,
        name: 'Sums',
        rows: entries.map(([name, place]) => [{ formula: `=SUM(${name})*2` }, { formula: `=SUM(Data!${place})*2` }]),
      },
    ],
  }
}

function absolute(place: string): string {
  return place.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2')
}

/** Numbers that look random and are the same in every run. */
function randomFrom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32
    return state / 2 ** 32
  }
}

/** One edit of a user at a random place. */
async function edit(grid: OpenGrid, id: WorkbookId, random: () => number): Promise<string> {
  const below = (limit: number): number => Math.floor(random() * limit)
  const workbook = grid.api.getWorkbook(id)!
  const sheet = workbook.getSheetByName('Data')!
  const subUnitId = sheet.getSheetId()
  const [row, column] = [below(16), below(4)]
  const block = (startRow: number, startColumn: number, height: number, width: number) => ({
    startRow,
    startColumn,
    endRow: startRow + height - 1,
    endColumn: startColumn + width - 1,
  })
  const edits: Record<string, () => unknown> = {
    insertRows: () => sheet.insertRows(row, 1 + below(3)),
    deleteRow: () => sheet.deleteRows(row, 1),
    insertColumn: () => sheet.insertColumns(column, 1),
    deleteColumn: () => sheet.deleteColumns(column + 6, 1),
    moveRow: () => sheet.moveRows(sheet.getRange(row, 0, 1, 1), below(16)),
    moveColumn: () => sheet.moveColumns(sheet.getRange(0, column, 1, 1), below(6)),
    cutAndPaste: () =>
      grid.execute('sheet.command.move-range', {
        fromUnitId: id,
        toUnitId: id,
        fromSubUnitId: subUnitId,
        toSubUnitId: subUnitId,
        fromRange: block(row, column, 2, 2),
        toRange: block(below(16), below(5), 2, 2),
      }),
    sort: () =>
      grid.execute('sheet.command.sort-range', {
        unitId: id,
        subUnitId,
        range: block(row, 0, 5, dataColumns),
        orderRules: [{ colIndex: column, type: 'asc' }],
        hasTitle: false,
      }),
    type: () => sheet.getRange(row, column).setValue(below(1e6)),
    undo: () => grid.execute(UndoCommandId, {}),
    redo: () => grid.execute(RedoCommandId, {}),
    moveName: () => moveName(grid, id, block(row, column, 1 + below(4), 1 + below(2))),
  }
  const names = Object.keys(edits)
  const chosen = names[below(names.length)]!
  await edits[chosen]!()
  return chosen
}

/** Gives the first name another place, and its companion by address with it. */
async function moveName(
  grid: OpenGrid,
  id: WorkbookId,
  {
    startRow,
    startColumn,
    endRow,
    endColumn,
  }: { startRow: number; startColumn: number; endRow: number; endColumn: number },
) {
  const workbook = grid.api.getWorkbook(id)!
  const place = workbook
    .getSheetByName('Data')!
    .getRange(startRow, startColumn, endRow - startRow + 1, endColumn - startColumn + 1)
    .getA1Notation()
  const known = grid.injector.get(IDefinedNamesService).getValueByName(id, 'Alpha')!
  await grid.execute('sheet.command.set-defined-name', {
    ...known,
    unitId: id,
    formulaOrRefString: `Data!${absolute(place)}`,
  })
  workbook
    .getSheetByName('Sums')!
    .getRange(0, 1)
    .setValue({ f: `=SUM(Data!${place})*2` })
}

/** How often a name and its address were compared, and where they disagreed. */
async function fuzz(seed: number, rounds: number, guarded: boolean): Promise<{ compared: number; wrong: string[] }> {
  const random = randomFrom(seed)
  const grid = guarded ? openGrid() : openGrid(without(guardFormulaCaches))
  const wrong: string[] = []
  let compared = 0
  try {
    const done: string[] = []
    for (let round = 0; round < rounds; round += 1) {
      // One workbook is open at a time, as in the workbench; now and then the other takes its place.
      if (round % roundsOfOneWorkbook === 0) {
        workbookIds.reverse()
        await grid.calculated(() => grid.replace(bookOf(workbookIds[0], random), workbookIds[0]))
      }
      const [id] = workbookIds
      await grid.calculated(async () => {
        done.push(await edit(grid, id, random))
        // Some edits find nothing to do; this one calculates for certain, and cannot be undone.
        const subUnitId = grid.api.getWorkbook(id)!.getSheetByName('Data')!.getSheetId()
        await grid.execute('sheet.mutation.set-range-values', {
          unitId: id,
          subUnitId,
          cellValue: { 40: { 12: { v: round } } },
        })
      })
      const sums = grid.api.getWorkbook(id)!.getSheetByName('Sums')!
      for (const row of [0, 1, 2]) {
        const [byName, byAddress] = [sums.getRange(row, 0), sums.getRange(row, 1)]
        compared += 1
        if (byName.getRawValue() !== byAddress.getRawValue()) {
          wrong.push(
            `${byName.getFormula()} is ${byName.getRawValue()}, ${byAddress.getFormula()} is ${byAddress.getRawValue()} after ${done.join(', ')}`,
          )
        }
      }
    }
  } finally {
    grid.close()
  }
  return { compared, wrong }
}

it('Every name stays in step with its address through edited cells and rows, undo, and one workbook after another.', async () => {
  const { compared, wrong } = await fuzz(7, 45, true)
  expect(compared).toBe(135)
  expect(wrong).toEqual([])
})

it('Without the mend the library lets names read other cells than their address after the same edits.', async () => {
  const { wrong } = await fuzz(7, 10, false)
  expect(wrong.length).toBeGreaterThan(0)
})
