import { expect, test } from 'vitest'
import { plainCell } from '../../src/derived/plainCell'
import { catalogue } from '../../src/functions/catalogue'

const plain = (formula: string) => plainCell(formula, catalogue)

test('A formula without calls of ours stays as it is, letter by letter.', () => {
  const formula = '=SUM( A1:B2 )*\'Order "book"\'!C1&"STICK.BAGS(1,2)"'
  expect(plain(formula)).toEqual({ formula })
})

test('A call becomes its plain formula, with nothing around it where it is the whole of the cell.', () => {
  expect(plain('=STICK.PERLINER(A1,B1:C1)')).toEqual({ formula: '=A1/PRODUCT(B1:C1)' })
})

test('A call within a formula is kept together by brackets, in any letters and with blanks between.', () => {
  expect(plain('=2^stick.perliner( A1 , B1:C1 )')).toEqual({ formula: '=2^(A1/PRODUCT(B1:C1))' })
})

test('A call within a call is replaced first, and commas within brackets and array constants part no arguments.', () => {
  expect(plain('=STICK.PERLINER(STICK.PERLINER(MAX(A1,2),{0.5,0.9}),B1)')).toEqual({
    formula: '=MAX(A1,2)/PRODUCT({0.5,0.9})/PRODUCT(B1)',
  })
})

test('An @ before a call, which Excel shows in older workbooks, goes where the function fills one cell, and else takes the first.', () => {
  expect(plain('=@STICK.PERLINER(A1,B1:C1)')).toEqual({ formula: '=A1/PRODUCT(B1:C1)' })
  expect(plain('=2*@STICK.PERLINER(A1,B1:C1)')).toEqual({ formula: '=2*(A1/PRODUCT(B1:C1))' })
  expect(plain('=@STICK.BLENDPARTS(A1,B1:B3,0)')).toMatchObject({
    formula: expect.stringMatching(/^=INDEX\(.+,1,1\)$/) as unknown,
  })
})

test('What the user rounds stays rounded as the user says; only our own counts lose the dust.', () => {
  expect(plain('=STICK.TRAYS(ROUNDUP(A1,2),72)')).toEqual({ formula: '=ROUNDUP(ROUND(ROUNDUP(A1,2)/72,9),0)' })
})

test('A function that has no plain formula is named once, with the reason and its check.', () => {
  const result = plain('=STICK.CUTTINGS(A1,B1:B3,0.9)+STICK.CUTTINGS(A2,B1:B3,0.9)')
  expect(result).toMatchObject({
    without: [
      {
        id: 'CUTTINGS',
        reason: expect.stringContaining('no formula') as unknown,
        check: expect.stringContaining('BINOM.DIST') as unknown,
      },
    ],
  })
})

test.each([
  ['cells of a closed workbook', "=STICK.PERLINER('C:\\Prices\\[Order book.xlsx]May'!A1,B1:B3)"],
  ['semicolons between the arguments', '=STICK.PERLINER(A1;B1:B3)'],
])(
  'What the parser does not know, such as %s, leaves the function without a plain formula instead of throwing into the pane.',
  (_, formula) => {
    expect(plain(formula)).toEqual({ without: [{ id: 'PERLINER' }] })
  },
)
