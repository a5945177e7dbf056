import { CELL_INVERTED_INDEX_CACHE as index } from '@univerjs/engine-formula'
import { expect, it, vi } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { indexSearchedRows } from '../../../../src/workbench/grid/mends/searchedRows'
import { without } from '../univerInNode'
import { withCells } from './openCells'

const cells = { A1: 1, A2: '=PRODUCT(A1,10)', A3: '=PRODUCT(A1,20)', A4: '=PRODUCT(A1,30)' }

/** How many values of column A the index holds at the end of a calculation. */
async function indexed(mends = engineMends): Promise<number | undefined> {
  const clear = index.clear.bind(index)
  const watch = vi.spyOn(index, 'clear')
  try {
    return await withCells(
      cells,
      async ({ grid, type }) => {
        const sheet = grid.api.getActiveWorkbook()!.getActiveSheet().getSheetId()
        let values: number | undefined
        watch.mockImplementation(() => {
          values = index.getCellValuePositions('book', sheet, 0)?.size ?? 0
          clear()
        })
        await type('A1', 2)
        return values
      },
      mends,
    )
  } finally {
    watch.mockRestore()
  }
}

it('Results that no lookup searches are in no index.', async () => {
  expect(await indexed()).toBe(0)
})

it('A lookup finds results that change after it has searched them.', async () => {
  const lookups = { C1: '=MATCH(60,A1:A4,0)', C2: '=COUNTIF(A1:A4,60)', C3: '=SUM((A1:A4=60)*1)' }
  const found = await withCells({ ...cells, ...lookups }, async ({ type, values }) => {
    await type('A1', 3)
    const at3 = values('C1', 'C2', 'C3')
    await type('A1', 6)
    return [at3, values('C1', 'C2', 'C3')]
  })
  expect(found).toEqual([
    [3, 1, 1],
    [2, 1, 1],
  ])
})

it('Without the mend the library indexes results that nobody searches.', async () => {
  expect(await indexed(without(indexSearchedRows))).toBe(3)
})
