import { expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { fillFixedArrays } from '../../../../src/workbench/grid/mends/fixedArrays'
import type { Book, Cell } from '../../../../src/workbook/book'
import { openGrid, without } from '../univerInNode'

const fixed = (formula: string, rows: number, columns: number): Cell => ({ formula, fills: { rows, columns } })
const typed = (value: number): Cell => ({ value })

const rows: readonly (readonly (Cell | undefined)[])[] = [
  [typed(2), fixed('=A1:A3*10', 2, 1), fixed('=A1*7', 3, 1), fixed('=A1:A2', 3, 2), undefined, fixed('=A1:A3', 1, 1)],
  [typed(3), undefined, undefined, undefined, undefined, typed(50)],
  [typed(5), typed(99), undefined, undefined],
  [{ formula: '=SUM(B1:C3)' }, { formula: '=COUNT(D1:E3)' }],
]
const book: Book = { names: [], sheets: [{ name: 'S', widths: [], frozenRows: 0, frozenColumns: 0, rows }] }

async function valuesWith(mends: typeof engineMends): Promise<unknown[][]> {
  const grid = openGrid(mends)
  try {
    await grid.calculated(() => grid.replace(book, 'book'))
    return grid.api.getActiveWorkbook()!.getActiveSheet().getRange('A1:F4').getValues()
  } finally {
    grid.close()
  }
}

// Microsoft, "Guidelines and examples of array formulas": what is too long is cut, what is too short is #N/A, and one
// value, row or column is repeated.
it('An array formula of fixed size fills its own cells and no others.', async () =>
  expect(await valuesWith(engineMends)).toEqual([
    [2, 20, 14, 2, 2, 2],
    [3, 30, 14, 3, 3, 50],
    [5, 99, 14, '#N/A', '#N/A', null],
    [191, 4, null, null, null, null],
  ]))

it('Without the mend the library lets it spill.', async () => {
  const [first, second] = await valuesWith(without(fillFixedArrays))
  expect([first![1], first![5]]).toEqual(['#SPILL!', '#SPILL!'])
  expect(second![2]).toBeNull()
})
