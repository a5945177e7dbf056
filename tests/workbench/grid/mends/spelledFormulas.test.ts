/** What the library makes of formulas that nobody spells anew for it; formulaForGrid.test.ts tries the spelled ones. */
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openGrid, type OpenGrid } from '../univerInNode'

let grid: OpenGrid

beforeAll(async () => {
  grid = openGrid()
  const sheet = { name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows: [[{ value: 2 }]] }
  await grid.calculated(() => grid.replace({ names: [{ name: 'Price', refersTo: 'S!$A$1' }], sheets: [sheet] }, 'book'))
})

afterAll(() => grid.close())

/** Beside A1, which holds 2 and is called Price. */
async function resultOf(formula: string): Promise<unknown> {
  const cell = grid.api.getActiveWorkbook()!.getActiveSheet().getRange('B1')
  await grid.calculated(() => cell.setValue({ f: formula }))
  return cell.getValue()
}

it.each([
  // 2 is more than 1.5 and than 0.5, and 0.5 is not less than 1E-15.
  ['=IF(A1>1.50,"more","not")', 'not'],
  ['=IF(A1>.5,"more","not")', 'not'],
  ['=IF(0.5<1E-15,"less","not")', 'less'],
  ['=COUNTIF(A1:A1,">1.50")', 0],
])('Without the mend the library answers %s with %s.', async (formula, wrong) => {
  expect(await resultOf(formula)).toBe(wrong)
})
