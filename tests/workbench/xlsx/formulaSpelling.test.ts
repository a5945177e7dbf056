import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fromFileSpelling, isWholeFormula, toFileSpelling } from '../../../src/workbench/xlsx/formulaSpelling'

const bothWays: readonly (readonly [typed: string, inFile: string])[] = [
  ['=STICK.BAGS(A1,A2)', '_xldudf_STICK_BAGS(A1,A2)'],
  [
    '=ROUND(STICK.FILL(STICK.CELLVOLUME(B2,B3,B4),72),2)',
    'ROUND(_xldudf_STICK_FILL(_xldudf_STICK_CELLVOLUME(B2,B3,B4),72),2)',
  ],
  ['="STICK.BAGS("&A1', '"STICK.BAGS("&A1'],
  ['="say ""STICK.BAGS(""" & STICK.BAGS(1,2)', '"say ""STICK.BAGS(""" & _xldudf_STICK_BAGS(1,2)'],
  ["='STICK.BAGS(1)'!A1+STICK.BAGS(1,2)", "'STICK.BAGS(1)'!A1+_xldudf_STICK_BAGS(1,2)"],
  ["='It''s STICK.BAGS('!A1", "'It''s STICK.BAGS('!A1"],
  ['=XLOOKUP(A1,B:B,C:C)', '_xlfn.XLOOKUP(A1,B:B,C:C)'],
  ['=SORT(FILTER(A1:A9,A1:A9>0))', '_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,A1:A9>0))'],
  ['=TEXTJOIN(", ",TRUE,UNIQUE(A1:A9))', '_xlfn.TEXTJOIN(", ",TRUE,_xlfn.UNIQUE(A1:A9))'],
  ['=LET(loose,A1/0.85,STICK.BAGS(loose,60))', '_xlfn.LET(_xlpm.loose,A1/0.85,_xldudf_STICK_BAGS(_xlpm.loose,60))'],
  ['=LET(x,{1,2},y,x*2,SUM(x,y))', '_xlfn.LET(_xlpm.x,{1,2},_xlpm.y,_xlpm.x*2,SUM(_xlpm.x,_xlpm.y))'],
  ['=LAMBDA(a,b,a+b+loose)(1,2)', '_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b+loose)(1,2)'],
  [
    '=LET(double,LAMBDA(n,n*2),double(4))+n',
    '_xlfn.LET(_xlpm.double,_xlfn.LAMBDA(_xlpm.n,_xlpm.n*2),_xlpm.double(4))+n',
  ],
  ['=SUM(A1#)', 'SUM(_xlfn.ANCHORARRAY(A1))'],
  ['=SUM(A1:A9)*-5%', 'SUM(A1:A9)*-5%'],
]

describe('the spelling of formulas in a file', () => {
  it.each(bothWays)('stores %s as %s', (typed, inFile) => {
    expect(toFileSpelling(typed)).toBe(inFile)
  })

  it.each(bothWays)('reads %s back from %s', (typed, inFile) => {
    expect(fromFileSpelling(inFile)).toBe(typed)
  })

  it('reads the names of our functions in any case, as other programs may have written them', () => {
    expect(fromFileSpelling('_XLDUDF_stick_bags(A1,60)')).toBe('=STICK.BAGS(A1,60)')
    expect(toFileSpelling('=stick.bags(A1,60)')).toBe('_xldudf_STICK_BAGS(A1,60)')
  })

  it('leaves the functions of other add-ins alone', () => {
    expect(fromFileSpelling('_xldudf_OTHER_BAGS(A1)')).toBe('=_xldudf_OTHER_BAGS(A1)')
  })

  it('stores the sign for one cell of a range as the call that Excel reads back as that sign', () => {
    expect(toFileSpelling('=@A1:A9+@INDEX(A1:A9,2)')).toBe('_xlfn.SINGLE(A1:A9)+_xlfn.SINGLE(INDEX(A1:A9,2))')
  })

  it('keeps every formula over text literals that look like calls, whatever the text', () => {
    const literal = fc
      .string({
        unit: fc.constantFrom(
          'STICK.',
          'BAGS',
          '(',
          ')',
          '""',
          ',',
          "'",
          '!',
          '_xldudf_STICK_',
          '_xlfn.',
          ' ',
          'é',
          '#',
          '@',
          '{',
        ),
      })
      .map((text) => `"${text}"`)
    const cell = fc.constantFrom('A1', '$B$2', "'STICK.X('!C3", 'Prices!A1:B9', 'mixShrink', '0.15', 'TRUE')
    const formula = fc.letrec<{ formula: string }>((tie) => ({
      formula: fc.oneof(
        { depthSize: 'small', withCrossShrink: true },
        literal,
        cell,
        fc.tuple(tie('formula'), fc.constantFrom('+', '&', '<=', ' * '), tie('formula')).map((parts) => parts.join('')),
        fc
          .tuple(
            fc.constantFrom('STICK.BAGS', 'STICK.FILL', 'SUM', 'XLOOKUP', 'FILTER', 'IF'),
            fc.array(tie('formula'), { minLength: 1, maxLength: 3 }),
          )
          .map(([name, args]) => `${name}(${args.join(',')})`),
      ),
    })).formula
    fc.assert(
      fc.property(formula, (text) => {
        const inFile = toFileSpelling(`=${text}`)
        expect(fromFileSpelling(inFile)).toBe(`=${text}`)
        // What stands outside of quotation marks and quoted sheet names must be spelled as Excel stores it.
        const outside = inFile.replace(/"(?:[^"]|"")*"/g, '').replace(/'(?:[^']|'')*'!/g, '')
        expect(outside).not.toContain('STICK.')
      }),
      { numRuns: 1000 },
    )
  })

  it('knows half a formula from a whole one, because Excel does not open a file that holds half a one', () => {
    expect(['=IF(A1,', '=1,5', '=SUM(A1;B1)', '="open', '=)('].filter(isWholeFormula)).toEqual([])
    const whole = ['=A1', '=Sheet1!#REF!+1', '=SUM(A1:INDEX(A:A,3))', '=LET(x,1,x)', '=STICK.BAGS(A1,)', '=A1#']
    expect(whole.filter(isWholeFormula)).toEqual(whole)
  })
})
