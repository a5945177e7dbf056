import { describe, expect, it } from 'vitest'
import { isArrayFormula } from '../../../src/workbench/xlsx/arrayEvaluation'

const namesOneCell = (name: string) => name === 'mixShrink'

describe('which formulas Excel must store as dynamic arrays', () => {
  it.each([
    '=A1*B1',
    '=SUM(A1:A9)',
    '=SUMIF(A1:A9,">0",B1:B9)',
    '=ROUND(A1*mixShrink,2)',
    '=IF(A1>0,SUM( A1:A9 ),"none")',
    '="A1:A9"',
    '=SUM(A:A)',
  ])('%s is plain: no range meets anything that takes one cell', (formula) => {
    expect(isArrayFormula(formula, namesOneCell)).toBe(false)
  })

  it.each([
    '=STICK.BAGS(A1,60)',
    '=SUM(A1:A9*B1:B9)',
    '=SUM(ROUND(A1:A9,0))',
    '=SUM(IF(A1:A9>0,1,0))',
    '=prices*2',
    '=SUM({1,2}*2)',
    '=FILTER(A1:A9,B1:B9)',
    '=INDEX(A1:A9,2)',
    '=A1:A9',
    '=SUM(A1#)',
    '=NOSUCH(1)',
    '=SUM(Prices[Each]*2)',
  ])('%s is an array, because an old formula would take one cell of a range or show an @', (formula) => {
    expect(isArrayFormula(formula, namesOneCell)).toBe(true)
  })
})
