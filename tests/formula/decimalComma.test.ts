import { describe, expect, test } from 'vitest'
import { numbers, quantity, share, text } from '../../src/core/definition/parameter'
import { commaFormula, pointFormula, pointNumber } from '../../src/formula/decimalComma'
import { textInFormula, textOfArgument, typedArgument } from '../../src/pane/typedArgument'

const litres = quantity('L', { text: 'litres' })
const rate = share({ text: 'a share' })
const weeks = numbers('weeks', { text: 'weeks' })
const unit = text({ text: 'a unit' })

describe('what is typed by whoever takes the comma for the decimal mark', () => {
  test.each([
    ['1.5', '1,5'],
    ['1234.5', '1.234,5'],
    ['1234.5', '1234,5'],
    ['1500000', '1.500.000'],
    ['1500', '1.500'],
    ['0.5', ',5'],
    ['-2.25', '-2,25'],
    ['1.500 L', '1,500 L'],
    ['4.38 in3', '4,38 in3'],
    ['15.5 %', '15,5 %'],
    ['65', '65'],
    ['1', '1,'],
    ['12.345', '12,345'],
  ])('reads %s of %s', (read, typed) => {
    expect(pointNumber(typed)).toBe(read)
  })

  test.each(['0.15', '1.5 L', '0.500', '1,500.25', '1,5,5', '1.23.4', '1234.567', 'Peat, fine', '', '1/2'])(
    'leaves %s as it is, for the argument reader',
    (typed) => {
      expect(pointNumber(typed)).toBe(typed)
    },
  )

  test.each([
    ['1.5', litres, '1,5'],
    ['"1.500 L"', litres, '1,500 L'],
    ['15.5 %', rate, '15,5 %'],
    ['{1.5;2;2500}', weeks, '1,5; 2; 2.500'],
    ['A1*1.5', litres, '=A1*1,5'],
    ['MAX(A1,2.5)/2', litres, 'MAX(A1;2,5)/2'],
    ['"1,5 a"', unit, '1,5 a'],
    ['Prices!B4', litres, 'Prices!B4'],
  ] as const)('stands as %s in a formula', (formulaText, parameter, typed) => {
    expect(textInFormula(typedArgument(parameter, typed, ','))).toBe(formulaText)
  })

  test.each([
    ['1,5', litres, '1.5'],
    ['1,500 L', litres, '"1.500 L"'],
    ['="1,500 L"', litres, '"1,500 L"'],
    ['15,5 %', rate, '15.5 %'],
    ['1,5; 2; 2500', weeks, '{1.5;2;2500}'],
    ['=A1*1,5', litres, 'A1*1.5'],
    ['=MAX(A1;2,5)/2', litres, 'MAX(A1,2.5)/2'],
    ['1.5', unit, '"1.5"'],
  ] as const)('is shown again as %s', (shown, parameter, formulaText) => {
    expect(textOfArgument(parameter, formulaText, ',')).toBe(shown)
  })
})

test.each([
  ['STICK.BAGS(A1,1.5,,0.05)', 'STICK.BAGS(A1;1,5;;0,05)'],
  ['IF(A1>0.5,"a;b, 1.5","c")', 'IF(A1>0,5;"a;b, 1.5";"c")'],
  ["SUM('Beds, 1.5'!A1:B2,{1.5,2;3,4})", "SUM('Beds, 1.5'!A1:B2;{1,5.2;3.4})"],
])('%s is written %s, and read again as it was', (formula, written) => {
  expect(commaFormula(formula)).toBe(written)
  expect(pointFormula(written)).toBe(formula)
})
