import { FORMULA_REF_TO_ARRAY_CACHE as copies } from '@univerjs/engine-formula'
import { expect, it, vi } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { readQuickly } from '../../../../src/workbench/grid/mends/quickReads'
import { without } from '../univerInNode'
import { withCells } from './openCells'

const rows = 1100

/** Running totals of as many ones: half the square of their number of values is read. */
const totals = Object.fromEntries(
  Array.from({ length: rows }, (_, place) => place + 1).flatMap((row): [string, string | number][] => [
    [`A${row}`, 1],
    [`B${row}`, `=SUM(A$1:A${row})`],
  ]),
)

/** The most values of blocks that were kept at once, and what the last total came to. */
async function kept(mends = engineMends): Promise<{ readonly most: number; readonly last: unknown }> {
  let most = 0
  const clear = copies.clear.bind(copies)
  const watch = vi.spyOn(copies, 'clear').mockImplementation(() => {
    let values = 0
    copies.forEach((copy) => (values += copy.getRowCount() * copy.getColumnCount()))
    most = Math.max(most, values)
    clear()
  })
  try {
    return await withCells(totals, ({ value }) => ({ most, last: value(`B${rows}`) }), mends)
  } finally {
    watch.mockRestore()
  }
}

it('Running totals are right, and keep no more than half a million values at once.', async () => {
  const { most, last } = await kept()
  expect(last).toBe(rows)
  expect(most).toBeLessThanOrEqual(500_000)
})

it('Without the mend the library keeps all that they read.', async () => {
  expect((await kept(without(readQuickly))).most).toBe((rows * (rows + 1)) / 2)
})

it('What a spill no longer fills is blank, and what another fills instead is read.', async () => {
  const cells = { A1: 3, B1: '=SEQUENCE(A1)', C1: '=SUM(B1:B5)', C2: '=COUNT(B1:B5)' }
  const seen = await withCells(cells, async ({ type, values }) => {
    const before = values('C1', 'C2')
    await type('A1', 2)
    return [before, values('C1', 'C2')]
  })
  expect(seen).toEqual([
    [6, 3],
    [3, 2],
  ])
})
