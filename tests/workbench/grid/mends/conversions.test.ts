import { expect, it } from 'vitest'
import { convertByDefinition } from '../../../../src/workbench/grid/mends/conversions'
import { without } from '../univerInNode'
import { expectResults, resultsOf } from './openCells'

// NIST Handbook 44, appendix C: a gallon is 231 cubic inches, a bushel 2,150.42, a teaspoon 1/768 of a gallon, a barrel
// 42 gallons, a pound 7,000 grains and 0.45359237 kg, a long ton 2,240 pounds; 100 F are (100 - 32) / 1.8 C.
const right = [
  ['=CONVERT(100,"F","C")', 37.7777777778],
  ['=CONVERT(1.23456,"C","K")', 274.38456],
  ['=CONVERT(0,"K","F")', -459.67],
  ['=CONVERT(768,"tsp","gal")', 1],
  ['=CONVERT(256,"tbs","gal")', 1],
  ['=CONVERT(1,"bushel","in3")', 2150.42],
  ['=CONVERT(1,"bushel","l")', 35.2390701669],
  ['=CONVERT(1,"barrel","gal")', 42],
  ['=CONVERT(1,"lbm","grain")', 7000],
  ['=CONVERT(1,"brton","lbm")', 2240],
  ['=CONVERT(1,"lcwt","lbm")', 112],
  ['=CONVERT(1,"gal","l")', 3.785411784],
  ['=CONVERT(1,"ft3","l")', 28.316846592],
  ['=CONVERT(1,"C","l")', '#N/A'],
] as const

it('Units are converted by their definitions.', () =>
  expectResults(
    right.map(([formula, value]) => [`=IFERROR(ROUND(${formula.slice(1)},10),${formula.slice(1)})`, value]),
  ))

it('Without the mend the library rounds.', async () => {
  const formulas = ['=CONVERT(100,"F","C")', '=ROUND(CONVERT(1,"bushel","l"),6)']
  expect(await resultsOf(formulas, {}, without(convertByDefinition))).toEqual([37.78, 35.23907])
  expect(await resultsOf(['=ROUND(CONVERT(768,"tsp","gal"),8)'], {}, without(convertByDefinition))).not.toEqual([1])
})
