/** Formulas as people type them, over cells such as people have: for what the witness says of a workbook. */
import fc from 'fast-check'
import type { Book, Cell } from '../../../src/workbook/book'

const rows = 12

const text = fc.constantFrom('Salvia', 'salvia', 'Fuchsia', 'Pelargonium', 'peat', 'tray 77', 'A-1', '=""', 'ready')
const price = fc.integer({ min: -500, max: 90_000 }).map((cents) => cents / 100)
const day = fc.integer({ min: 45_600, max: 46_800 })
const count = fc.integer({ min: 0, max: 500 })

/** By column: names, counts, prices, days, texts with gaps, and anything. */
const contents: Readonly<Record<string, fc.Arbitrary<string | number | boolean | undefined>>> = {
  A: fc.constantFrom('Salvia', 'Fuchsia', 'Pelargonium', 'Hebe', 'Buxus'),
  B: count,
  C: fc.oneof({ weight: 9, arbitrary: price }, { weight: 1, arbitrary: fc.constant(undefined) }),
  D: day,
  E: fc.option(text, { nil: undefined }),
  F: fc.oneof(fc.constant(undefined), count, price, text, fc.boolean()),
}

const row = fc.integer({ min: 1, max: rows })
const oneOf = <T>(...all: readonly T[]) => fc.constantFrom(...all)
/** The parts one after the other. */
const written = (parts: TemplateStringsArray, ...of: readonly fc.Arbitrary<unknown>[]): fc.Arbitrary<string> =>
  fc.tuple(...of).map((all) => parts.reduce((sum, part, place) => sum + String(all[place - 1]) + part))

const cellOf = (...columns: readonly string[]) => written`${oneOf(...columns)}${row}`
const rangeOf = (...columns: readonly string[]) =>
  fc.tuple(oneOf(...columns), row, row).map(([column, one, other]) => {
    const [top, bottom] = [Math.min(one, other), Math.max(one, other)]
    return top === bottom ? `${column}1:${column}${rows}` : `${column}${top}:${column}${bottom}`
  })
const whole = (column: string) => fc.constant(`$${column}$1:$${column}$${rows}`)

const numberCell = fc.oneof(
  { weight: 6, arbitrary: cellOf('B', 'C') },
  { weight: 1, arbitrary: cellOf('D') },
  { weight: 1, arbitrary: cellOf('F') },
)
const literal = oneOf('1', '2', '0.5', '0.1', '100', '1.19', '12', '0', '10%', '3.333')
const key = fc.oneof(cellOf('A', 'E'), oneOf('"Salvia"', '"Hebe"', '"x"', '"fuchsia"'))
const compared = oneOf('=', '<>', '<', '>', '<=', '>=')
const criterion = fc.oneof(
  key,
  written`">${oneOf('0', '10', '99.5')}"`,
  written`"<="&${cellOf('B')}`,
  oneOf('"<>"', '""', '"S*"', '"?ebe"', '0', '"=12"'),
)

const formulas = fc.letrec<{ num: string; txt: string; yes: string; shallow: string }>((tie) => {
  const [num, txt, yes] = [tie('num'), tie('txt'), tie('yes')]
  const totals = [
    written`${oneOf('SUM', 'MIN', 'MAX', 'AVERAGE', 'COUNT', 'COUNTA', 'MEDIAN', 'COUNTBLANK')}(${rangeOf('B', 'C', 'F')})`,
    written`SUM(${num},${num},${rangeOf('C')})`,
    written`${oneOf('COUNTIF(', 'COUNTIFS(')}${whole('A')},${criterion})`,
    written`${oneOf('SUMIF', 'AVERAGEIF')}(${oneOf('$A$1:$A$12', '$E$1:$E$12', '$F$1:$F$12')},${criterion},${whole('C')})`,
    written`SUMIFS(${whole('C')},${whole('A')},${criterion},${whole('B')},${criterion})`,
    written`${oneOf('MAXIFS', 'MINIFS')}(${whole('C')},${whole('A')},${criterion})`,
    written`SUMPRODUCT(${whole('B')},${whole('C')})`,
    written`SUMPRODUCT((${whole('A')}=${key})*${whole('B')})`,
    written`SUMPRODUCT(--(${whole('A')}=${key}),${whole('C')})`,
    written`${oneOf('LARGE', 'SMALL')}(${rangeOf('B', 'C')},${oneOf('1', '2', '3')})`,
    written`SUM(IF(${whole('B')}>${num},${whole('C')},0))`,
    written`SUM(FILTER(${whole('B')},${whole('A')}=${key},0))`,
    written`INDEX(SORT(${whole('C')},1,-1),${oneOf('1', '2')})`,
  ]
  const found = [
    written`VLOOKUP(${key},$A$1:$F$12,${oneOf('2', '3', '4', '6')},FALSE)`,
    written`INDEX(${whole('C')},MATCH(${key},${whole('A')},0))`,
    written`XLOOKUP(${key},${whole('A')},${whole('B')},${num})`,
    written`INDEX($B$1:$C$12,${row},${oneOf('1', '2')})`,
    written`CHOOSE(${oneOf('1', '2')},${num},${num})`,
    written`SWITCH(${key},"Salvia",${num},"Hebe",${num},${num})`,
  ]
  const reckoned = [
    written`${oneOf('ROUND', 'ROUNDUP', 'ROUNDDOWN', 'TRUNC')}(${num},${oneOf('0', '1', '2', '-1')})`,
    written`${oneOf('INT', 'ABS', 'SIGN', '-', 'EXP(1)+', 'N')}(${num})`,
    written`MOD(${num},${oneOf('7', '12', '2.5')})`,
    written`${oneOf('CEILING', 'FLOOR')}(ABS(${num}),${oneOf('5', '0.5', '12')})`,
    written`SQRT(ABS(${num}))`,
    written`POWER(ABS(${num}),${oneOf('2', '0.5')})`,
    written`PMT(${oneOf('5%', '0.07/12')},${oneOf('10', '36')},${num})`,
    written`BINOM.DIST(${oneOf('60', '48')},${oneOf('70', '61')},${oneOf('0.5', '0.85')},${oneOf('TRUE', 'FALSE')})`,
    written`(${cellOf('B', 'C')})^${oneOf('2', '3')}`,
    written`${num}*(1-${oneOf('10%', 'C1', 'B2/1000')})`,
  ]
  const days = [
    written`${oneOf('YEAR', 'MONTH', 'DAY', 'ISOWEEKNUM', 'WEEKNUM')}(${cellOf('D')})`,
    written`WEEKDAY(${cellOf('D')},${oneOf('1', '2', '3')})`,
    written`EDATE(${cellOf('D')},${oneOf('1', '-3', '12')})`,
    written`EOMONTH(${cellOf('D')},${oneOf('0', '1')})`,
    written`DATE(2026,${oneOf('2', '14', '0')},${row})`,
    written`${cellOf('D')}-${cellOf('D')}`,
    written`NETWORKDAYS(${cellOf('D')},${cellOf('D')})`,
  ]
  const decided = [
    written`IF(${yes},${num},${num})`,
    written`IFERROR(${num},${num})`,
    written`IFERROR(${num}/${numberCell},0)`,
    written`IFS(${yes},${num},TRUE,${num})`,
    written`IFNA(${found[1]!},${num})`,
  ]
  const joined = written`${num}${oneOf('+', '-', '*', '/', '+', '-', '*')}${num}`
  return {
    shallow: fc.oneof(numberCell, literal, numberCell),
    num: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      tie('shallow'),
      joined,
      ...[totals, found, reckoned, days, decided].map((group) => fc.oneof(...group)),
      written`LEN(${oneOf('', 'TRIM', 'UPPER')}(${key}))`,
    ),
    txt: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      key,
      written`${txt}&" "&${txt}`,
      written`${txt}&${num}`,
      written`${oneOf('UPPER', 'LOWER', 'TRIM', 'PROPER')}(${txt})`,
      written`${oneOf('LEFT', 'RIGHT')}(${txt},${oneOf('1', '3')})`,
      written`MID(${txt},2,3)`,
      written`SUBSTITUTE(${txt},"a","o")`,
      written`TEXTJOIN(", ",TRUE,${rangeOf('A', 'E')})`,
      written`IF(${yes},${txt},"")`,
      written`TEXT(${num},"0.00")`,
    ),
    yes: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      written`${num}${compared}${num}`,
      written`${key}${oneOf('=', '<>')}${key}`,
      written`${oneOf('AND', 'OR')}(${numberCell}>${num},${cellOf('E')}="")`,
      written`${oneOf('ISNUMBER', 'ISBLANK', 'ISTEXT', 'ISERROR')}(${cellOf('C', 'E', 'F')})`,
      written`NOT(${cellOf('B')}>${num})`,
      written`COUNTIF(${whole('A')},${key})>0`,
    ),
  }
})

const formula = fc.oneof({ weight: 6, arbitrary: formulas.num }, formulas.txt, formulas.yes).map((one) => `=${one}`)

/** A workbook of typed cells with `count` formulas below each other in column H, some of which read others. */
export function usualBook(count: number): fc.Arbitrary<Book> {
  const typed = fc.tuple(...Object.values(contents).map((one) => fc.array(one, { minLength: rows, maxLength: rows })))
  const readers = fc.array(formula, { minLength: count, maxLength: count })
  return fc.tuple(typed, readers).map(([columns, all]) => {
    const cells = Array.from({ length: Math.max(rows, count) }, (_row, place): Cell[] => {
      const line = columns.map((column): Cell => {
        const value = column[place]
        if (value === undefined) return {}
        return String(value).startsWith('=') ? { formula: String(value) } : { value }
      })
      const own = all[place]
      // The dollar signs of a formula that is filled down stay; the others would move. None is filled down here.
      return own === undefined ? line : [...line, {}, { formula: own, spills: true }]
    })
    return { names: [], sheets: [{ name: 'Usual', widths: [], frozenRows: 0, frozenColumns: 0, rows: cells }] }
  })
}
