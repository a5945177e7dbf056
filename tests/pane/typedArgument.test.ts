import { describe, expect, test } from 'vitest'
import { number, numbers, quantity, share, shares, text, texts } from '../../src/core/definition/parameter'
import { callArguments } from '../../src/formula/callArguments'
import { textOfArgument, typedArgument } from '../../src/pane/typedArgument'

const litres = quantity('L', { text: 'litres' })
const rate = share({ text: 'a share' })
const rates = shares({ text: 'shares' })
const unit = text({ text: 'a unit' })
const names = texts({ text: 'names' })
const day = number('day', { text: 'a day' })
const days = numbers('day', { text: 'days' })

describe('what is typed for an argument', () => {
  test.each([
    ['a number', litres, '65', 65, '65'],
    ['a decimal comma', litres, '0,15', 0.15, '0.15'],
    ['a number with its unit', litres, '3.8 cu ft', '3.8 cu ft', '"3.8 cu ft"'],
    ['a share in per cent', rate, '15%', '15%', '15%'],
    ['a unit, though FT3 is also a cell', unit, 'ft3', 'ft3', '"ft3"'],
    ['per cent as a text', unit, '15%', '15%', '"15%"'],
    ['a text in quotes', unit, '"L"', 'L', '"L"'],
    ['a date', day, '2027-03-01', '2027-03-01', '"2027-03-01"'],
    ['a word that is no number, for the argument reader to refuse', litres, 'a lot', 'a lot', '"a lot"'],
    ['a number with thousands or decimals, for the argument reader to refuse', litres, '1,500', '1,500', '"1,500"'],
  ] as const)('may be %s', (_, parameter, typed, value, formulaText) => {
    expect(typedArgument(parameter, typed)).toEqual({ kind: 'value', value, formulaText })
  })

  test('may be a list, for an argument that takes a range', () => {
    expect(typedArgument(rates, '0.9; 95%;0,8')).toEqual({
      kind: 'value',
      value: [[0.9], ['95%'], [0.8]],
      formulaText: '{0.9;"95%";0.8}',
    })
    expect(typedArgument(names, 'Peat; "Sand; sharp"; 60')).toEqual({
      kind: 'value',
      value: [['Peat'], ['Sand; sharp'], [60]],
      formulaText: '{"Peat";"Sand; sharp";60}',
    })
    expect(typedArgument(days, '2027-03-01; 2027-03-08', ',')).toMatchObject({
      value: [['2027-03-01'], ['2027-03-08']],
    })
    expect(typedArgument(names, 'Pot 4"; Pot 6"')).toMatchObject({ value: [['Pot 4"'], ['Pot 6"']] })
    expect(typedArgument(numbers('weeks', { text: 'weeks' }), '3')).toEqual({
      kind: 'value',
      value: 3,
      formulaText: '3',
    })
  })

  test.each([
    ['an address', litres, '$B$4'],
    ['a block', rates, 'B4:B9'],
    ['a cell of another sheet', litres, "'Order book'!B4"],
    ['a name', rates, 'OrderRates'],
    ['a cell for a text, in capitals', unit, 'C4'],
  ] as const)('may be %s', (_, parameter, typed) => {
    expect(typedArgument(parameter, typed)).toEqual({ kind: 'cells', reference: typed })
    expect(typedArgument(parameter, `=${typed}`)).toEqual({ kind: 'cells', reference: typed })
  })

  test('may be a formula that only the sheet can calculate, and may be nothing', () => {
    expect(typedArgument(litres, '=A1*2')).toEqual({ kind: 'formula', text: 'A1*2' })
    expect(typedArgument(rates, 'Rates[Strike]')).toEqual({ kind: 'formula', text: 'Rates[Strike]' })
    expect(typedArgument(rates, 'A1#')).toEqual({ kind: 'formula', text: 'A1#' })
    expect(typedArgument(litres, 'SUM(A1:A3)')).toEqual({ kind: 'formula', text: 'SUM(A1:A3)' })
    expect(typedArgument(number('days', { text: 'days' }), '  ')).toEqual({ kind: 'blank' })
  })
})

describe('a call in a cell', () => {
  test('is shown in the form as it would be typed there', () => {
    const args = callArguments('=STICK.BAGS( A1*2, "65 mL",,Prices!B4,{0.9;"95%"})', 'BAGS')
    expect(args?.map((argument) => textOfArgument(argument.includes('{') ? rates : litres, argument))).toEqual([
      '=A1*2',
      '65 mL',
      '',
      'Prices!B4',
      '0.9; 95%',
    ])
  })

  test.each([
    ['a text that is also an address', unit, '"M3"', '="M3"'],
    ['a text that is no address', unit, '"ft3"', 'ft3'],
    ['a number as text', litres, '"15"', '="15"'],
    ['a column of a table', rates, 'Rates[Strike]', 'Rates[Strike]'],
    ['a spilled range', rates, 'A1#', '=A1#'],
    ['a logical value', litres, 'TRUE', '=TRUE'],
    ['an error', litres, '#REF!', '#REF!'],
    ['a block of constants', rates, '{1,2;3,4}', '={1,2;3,4}'],
    ['a row of constants', rates, '{0.90,0.8}', '0.90; 0.8'],
    ['names with a semicolon or a quote', names, '{"Sand; sharp";"Pot 4"""}', '"Sand; sharp"; Pot 4"'],
    ['a share in per cent', rate, '15%', '15%'],
    ['per cent of a cell', rate, 'A1%', '=A1%'],
    ['cells of a sheet with an apostrophe', litres, "'O''Brien!x'!B4", "'O''Brien!x'!B4"],
  ] as const)('is shown so that it still means the same: %s', (_, parameter, written, shown) => {
    expect(textOfArgument(parameter, written)).toBe(shown)
  })

  test('is the same with the @ that Excel shows in older workbooks', () => {
    expect(callArguments('=@STICK.BAGS(A1,60)', 'BAGS')).toEqual(['A1', '60'])
  })

  test('is none of the form where more stands in the cell, or another function', () => {
    expect(callArguments('=STICK.BAGS(A1,60)+1', 'BAGS')).toBeUndefined()
    expect(callArguments('=STICK.BAGSX(A1,60)', 'BAGS')).toBeUndefined()
    expect(callArguments('=2', 'BAGS')).toBeUndefined()
    expect(callArguments('', 'BAGS')).toBeUndefined()
  })
})
