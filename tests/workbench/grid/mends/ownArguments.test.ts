import fc from 'fast-check'
import { expect, it } from 'vitest'
import { giveOwnArguments } from '../../../../src/workbench/grid/mends/ownArguments'
import { without } from '../univerInNode'
import { withCells } from './openCells'

const sorted = { A1: 3, A2: 1, A3: 2, B1: 10, B2: 20, B3: 30, C1: '=SORT(A1:A3)', D1: '=SUMPRODUCT(A1:A3,B1:B3)' }
const short = { A1: 1, A2: 5, A3: 7, B1: 'x', B2: 'y', B3: 'x', C1: '=SUMIF(B1:B3,"x",A1)', D1: '=SUM(A1,10)' }

// 3·10 + 1·20 + 2·30, whatever else reads the three.
it('A column that one formula sorts stands in its order for all others.', () =>
  withCells({ ...sorted, C5: '=SORT(A1:A3,1,-1)', C9: '=A1' }, ({ values }) =>
    expect(values('C1', 'C2', 'C3', 'D1', 'C5', 'C9')).toEqual([1, 2, 3, 110, 3, 3]),
  ))

// Microsoft's documentation of SUMIF: the sum range begins with its first cell and is as large as the criteria range.
it('A sum range that is too short or too long is as large as the criteria range, and its cells stay as they are.', () =>
  withCells(
    {
      ...short,
      C2: '=SUMIF(B1:B3,"x",A1:A9)',
      C3: '=AVERAGEIF(B1:B3,"x",A1)',
      C4: '=SUMIF(B1:B3,"x",A1:A2)',
      D2: '=SUM(A1:A2)',
      D3: '=SUM(A1:A9)',
    },
    async ({ values, type }) => {
      expect(values('C1', 'C2', 'C3', 'C4')).toEqual([8, 8, 4, 8])
      expect(values('D1', 'D2', 'D3')).toEqual([11, 6, 13])
      // A3 is in none of the references.
      await type('A3', 9)
      expect(values('C1', 'C2', 'C3', 'C4')).toEqual([10, 10, 5, 10])
      expect(values('D1', 'D2', 'D3')).toEqual([11, 6, 15])
    },
  ))

/** Functions that give cells back in another order, or others in their place. */
const rearranging = ['SORT(#)', 'SORT(#,1,-1)', 'SORTBY(#,B1:B4)', 'UNIQUE(#)', 'TOCOL(#)', 'TAKE(#,-2)', 'DROP(#,1)']
  .concat([
    'IFERROR(#,0)',
    'IFNA(#,0)',
    'TRANSPOSE(#)',
    'FILTER(#,#>1)',
    'IF(#>1,#,0)',
    'CHOOSEROWS(#,2,1)',
    'SUMIF(#,1,B1)',
  ])
  .concat(['SUMIF(B1:B4,1,A1)', 'AVERAGEIF(B1:B4,2,A2)', 'EXPAND(#,5,2,0)', 'LARGE(#,1)', 'RANK(A1,#)', 'MEDIAN(#)'])

it('Whatever formulas make of cells, others read the cells as they were typed.', () => {
  const number = fc.integer({ min: 1, max: 4 })
  const four = fc.array(number, { minLength: 4, maxLength: 4 })
  const formulas = fc.array(fc.constantFrom(...rearranging), { minLength: 1, maxLength: 4 })
  return fc.assert(
    fc.asyncProperty(four, four, formulas, async (first, second, used) => {
      const typed = first.flatMap((_one, row) => [
        [`A${row + 1}`, first[row]!] as const,
        [`B${row + 1}`, second[row]!] as const,
      ])
      const others = used.map(
        (formula, index) => [`D${index * 6 + 1}`, `=${formula.replaceAll('#', 'A1:A4')}`] as const,
      )
      const read = {
        C1: '=SUMPRODUCT(A1:A4,B1:B4)',
        C50: '=SUMPRODUCT(A1:A4,B1:B4)',
        C51: '=SUM(A1)',
        C52: '=SUM(A2:A3)',
      }
      const right = first.reduce((sum, one, row) => sum + one * second[row]!, 0)
      await withCells({ ...Object.fromEntries(typed), ...Object.fromEntries(others), ...read }, ({ values }) =>
        expect(values('C1', 'C50', 'C51', 'C52')).toEqual([right, right, first[0]!, first[1]! + first[2]!]),
      )
    }),
    { numRuns: 40 },
  )
})

it('Without the mend the library sorts the column for all, and makes a cell three cells long.', async () => {
  await withCells(sorted, ({ value }) => expect(value('D1')).toBe(140), without(giveOwnArguments))
  await withCells(short, ({ value }) => expect(value('D1')).toBe(23), without(giveOwnArguments))
})
