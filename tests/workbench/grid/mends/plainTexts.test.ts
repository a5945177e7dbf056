import { LRUMap } from '@univerjs/core'
import { expect, it, vi } from 'vitest'
import { engineMends } from '../../../../src/workbench/grid/mends/engineMends'
import { rememberPlainTexts } from '../../../../src/workbench/grid/mends/plainTexts'
import { without } from '../univerInNode'
import { resultsOf, withCells } from './openCells'

/** As the grid keeps truths. */
const [yes, no] = [1, 0]

const readers = 50

/** How often the library remembers nothing of a text that so many formulas hold; once as it is made a value. */
async function timesTried(text: string, mends = engineMends): Promise<number> {
  const asked = vi.spyOn(LRUMap.prototype, 'get')
  try {
    const formulas = Array.from({ length: readers }, (_, place) => `=IF(A${place + 1}=1,1,"${text}")`)
    expect(await resultsOf(formulas, { A7: 1 }, mends)).toEqual(formulas.map((_, place) => (place === 6 ? 1 : text)))
    const { calls, results } = asked.mock
    return calls.filter(([key], call) => key === text && results[call]!.value === undefined).length
  } finally {
    asked.mockRestore()
  }
}

it('A text that stands in many formulas is tried as a number once.', async () => {
  expect(await timesTried('Coir block')).toBe(1 + 1)
})

it('Without the mend the library tries it for each formula.', async () => {
  expect(await timesTried('Perlite bag', without(rememberPlainTexts))).toBe(1 + readers)
})

it('Texts that are numbers, truths, errors and arrays stay what they were, however often they are met.', async () => {
  const kinds = ['=ISTEXT(A1)', '=A1&"!"', '=SUM("20%"+0)', '=N(TRUE)', '=ISERROR("#N/A"+0)', '="2024-03-01"+0']
  const results = [yes, 'Coir block!', 0.2, 1, yes, 45352]
  expect(await resultsOf([...kinds, ...kinds], { A1: 'Coir block' })).toEqual([...results, ...results])
})

it('A cell whose text is typed over by a number, and back, is read as what it holds.', async () => {
  const seen = await withCells({ A1: 'x1', B1: '=ISTEXT(A1)', C1: '=A1=5' }, async ({ type, values }) => {
    const first = values('B1', 'C1')
    await type('A1', 5)
    const second = values('B1', 'C1')
    await type('A1', 'x1')
    return [first, second, values('B1', 'C1')]
  })
  expect(seen).toEqual([
    [yes, no],
    [no, yes],
    [yes, no],
  ])
})
