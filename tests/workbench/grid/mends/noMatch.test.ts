import { expect, it } from 'vitest'
import { giveZeroForNoMatch } from '../../../../src/workbench/grid/mends/noMatch'
import { without } from '../univerInNode'
import { resultsOf, withCells } from './openCells'

const cells = { A1: 5, A2: 7, A3: 'x', B1: 1, B2: 2, B3: 3 }

// Microsoft's documentation of MINIFS and MAXIFS: 0 where no cells match.
const right = [
  ['=MINIFS(A1:A3,B1:B3,">9")', 0],
  ['=MAXIFS(A1:A3,B1:B3,">9")', 0],
  ['=MINIFS(A1:A3,B1:B3,3)', 0],
  ['=MAXIFS(A1:A3,B1:B3,3)', 0],
  ['=MINIFS(A1:A3,B1:B3,"<3")', 5],
  ['=MAXIFS(A1:A3,B1:B3,"<3")', 7],
] as const

it('The least and the most of nothing are 0.', async () => {
  expect(
    await resultsOf(
      right.map(([formula]) => formula),
      cells,
    ),
  ).toEqual(right.map(([, result]) => result))
})

it('Several criteria at once have an answer each.', () =>
  withCells({ ...cells, C1: '=MINIFS(A1:A3,B1:B3,B1:B3)', D1: '=MAXIFS(A1:A2,B1:B2,B2:B3)' }, ({ values }) =>
    expect(values('C1', 'C2', 'C3', 'D1', 'D2')).toEqual([5, 7, 0, 7, 0]),
  ))

it('Without the mend the library gives an empty text.', async () => {
  expect(await resultsOf(['=MINIFS(A1:A3,B1:B3,">9")'], cells, without(giveZeroForNoMatch))).toEqual([''])
})
