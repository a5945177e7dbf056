import { afterEach, expect, it } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { settleSpills } from '../../../../src/workbench/grid/mends/settleSpills'
import type { Book, Cell } from '../../../../src/workbook/book'
import { openGrid, type OpenGrid, without } from '../univerInNode'

let grid: OpenGrid

afterEach(() => grid.close())

/** A workbook with one sheet of one row. */
async function open(row: readonly (number | string)[], mends = engineMends): Promise<void> {
  grid = openGrid(mends)
  const cells = row.map((content): Cell =>
    typeof content === 'number' ? { value: content } : { formula: content, spills: true },
  )
  const book: Book = {
    names: [],
    sheets: [{ name: 'Sheet', widths: [], frozenRows: 0, frozenColumns: 0, rows: [cells] }],
  }
  await grid.calculated(() => grid.replace(book, 'book'))
}

const cell = (address: string) => grid.api.getActiveWorkbook()!.getActiveSheet().getRange(address)

const type = (address: string, content: number | string) => grid.calculated(() => cell(address).setValue(content))

it('Cells that read what no longer spills follow, whether the formula spills less or refuses.', async () => {
  await open([5, '=SEQUENCE(A1)', '=SUM(B1:B9)', '=B5'])
  const read = () => [cell('C1').getValue(), cell('D1').getValue()]
  expect(read()).toEqual([15, 5])
  for (const [typed, sum, last] of [
    [3, 6, 0],
    [1, 1, 0],
    [5, 15, 5],
    ['much', '#VALUE!', 0],
    [5, 15, 5],
  ] as const) {
    await type('A1', typed)
    expect(read(), `after ${typed}`).toEqual([sum, last])
  }
})

it.each([
  [
    'from left to right',
    '=SEQUENCE(3)*I1',
    '=A2',
    '=SEQUENCE(2)*B1',
    '=C2',
    '=SEQUENCE(2)*D1',
    '=E2',
    '=SEQUENCE(2)*F1',
    '=G2',
  ],
  [
    'from right to left',
    '=B2',
    '=SEQUENCE(2)*C1',
    '=D2',
    '=SEQUENCE(2)*E1',
    '=F2',
    '=SEQUENCE(2)*G1',
    '=H2',
    '=SEQUENCE(3)*I1',
  ],
])(
  'Spills that lead to each other %s are right to the last, when a workbook opens and after an edit.',
  async (direction, ...formulas) => {
    const last = direction === 'from left to right' ? 'H1' : 'A1'
    await open([...formulas, 5])
    // Each of the four takes the second cell of the one before it, which is twice what that one began with.
    expect(cell(last).getValue()).toBe(16 * 5)
    await type('I1', 7)
    expect(cell(last).getValue()).toBe(16 * 7)
  },
)

it('A spill that is another one at every calculation does not keep the grid from coming to an end.', async () => {
  await open(['=SEQUENCE(2)*RAND()', '=A2', 1])
  await type('C1', 2)
  expect(cell('C1').getValue()).toBe(2)
})

it('Without the mend the library keeps the old sum of cells into which a formula spills no more.', async () => {
  await open([5, '=SEQUENCE(A1)', '=SUM(B1:B9)'], without(settleSpills))
  expect(cell('C1').getValue()).toBe(15)
  await type('A1', 3)
  // It is 6 now.
  expect(cell('C1').getValue()).toBe(15)
})
