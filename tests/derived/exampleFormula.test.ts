import { describe, expect, it } from 'vitest'
import type { ExampleArgument } from '../../src/core/definition/definition'
import { exampleFormula } from '../../src/derived/exampleFormula'
import { catalogue } from '../../src/functions/catalogue'

const [anyDefinition] = catalogue

function formulaOf(...given: readonly ExampleArgument[]): string {
  if (anyDefinition === undefined) throw new Error('the catalogue is empty')
  return exampleFormula({ ...anyDefinition, id: 'FILL' }, { text: '', given, gives: 0, source: 'definition' })
}

describe('the formula of an example', () => {
  it('writes numbers plainly and separates them with commas', () => {
    expect(formulaOf(72, 65, 0.1)).toBe('=STICK.FILL(72,65,0.1)')
  })

  it('writes exponents as a spreadsheet does', () => {
    expect(formulaOf(1e21, 1e-7)).toBe('=STICK.FILL(1E+21,1E-7)')
  })

  it('writes a range as a column of an array constant', () => {
    expect(formulaOf([4, 1, 0.5])).toBe('=STICK.FILL({4;1;0.5})')
  })

  it('quotes texts and doubles the quotes inside them', () => {
    expect(formulaOf(72, '4.38 in3', '12"')).toBe('=STICK.FILL(72,"4.38 in3","12""")')
  })

  it('keeps the place of a blank between arguments and drops blanks at the end', () => {
    expect(formulaOf(72, null, 0.1, null, null)).toBe('=STICK.FILL(72,,0.1)')
  })
})
