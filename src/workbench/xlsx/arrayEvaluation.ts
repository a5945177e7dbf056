/**
 * Whether Excel must store a formula as a dynamic array. Excel reads any other formula as one from before dynamic
 * arrays: where such a formula meets a range it takes one cell of it, and it shows an @ before the function. So
 * =SUM(A1:A3*B1:B3) would give another number and =STICK.BAGS(A1,60) would turn into =@STICK.BAGS(A1,60). Excel
 * itself stores each formula with a function of an add-in as a dynamic array, also where it fills one cell.
 *
 * A formula is plain only when that is certain: it calls functions that give one value, and its ranges stand
 * directly where such a function takes a range. All others are stored as dynamic arrays, which is never wrong.
 */
import { isFunction, isOperator, isWhitespace, tokenTypes, type Token } from '@borgar/fx'
import { tokensOf } from './formulaSpelling'

export const takeRanges = new Set(
  `
  AND AVERAGE AVERAGEIF AVERAGEIFS COLUMNS COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS HLOOKUP IRR LARGE LOOKUP MATCH MAX
  MAXIFS MEDIAN MIN MINIFS NPV OR PERCENTILE PRODUCT QUARTILE RANK ROWS SMALL STDEV STDEV.P STDEV.S SUBTOTAL SUM SUMIF
  SUMIFS SUMPRODUCT SUMSQ VAR VAR.P VAR.S VLOOKUP
`
    .trim()
    .split(/\s+/),
)

export const takeCells = new Set(
  `
  ABS CEILING CHAR CLEAN CODE DATE DATEVALUE DAY EDATE EOMONTH EXACT EXP FALSE FIND FIXED FLOOR FV HOUR IF IFERROR IFNA
  INT ISBLANK ISERR ISERROR ISLOGICAL ISNA ISNUMBER ISTEXT LEFT LEN LN LOG LOG10 LOWER MID MINUTE MOD MONTH MROUND N NA
  NOT NOW NPER PI PMT POWER PROPER PV RAND RATE REPLACE REPT RIGHT ROUND ROUNDDOWN ROUNDUP SEARCH SECOND SIGN SQRT
  SUBSTITUTE T TEXT TIME TODAY TRIM TRUE TRUNC UPPER VALUE WEEKDAY YEAR
`
    .trim()
    .split(/\s+/),
)

/** `namesOneCell` says whether a defined name stands for a single cell. */
export function isArrayFormula(formula: string, namesOneCell: (name: string) => boolean): boolean {
  const tokens = tokensOf(formula).filter((token) => !isWhitespace(token))
  const callers: (string | undefined)[] = []
  return tokens.some((token, index) => {
    const before = tokens[index - 1]
    const after = tokens[index + 1]
    if (isFunction(token)) {
      const name = token.value.toUpperCase()
      return !takeRanges.has(name) && !takeCells.has(name)
    }
    if (isOperator(token)) {
      if (token.value === '(')
        callers.push(before !== undefined && isFunction(before) ? before.value.toUpperCase() : undefined)
      if (token.value === ')') callers.pop()
      return ['{', '#', '@', ':'].includes(token.value)
    }
    if (!standsForSeveralCells(token, namesOneCell)) return false
    const isWholeArgument =
      (before?.value === '(' || before?.value === ',') && (after?.value === ')' || after?.value === ',')
    return !isWholeArgument || !takeRanges.has(callers.at(-1) ?? '')
  })
}

export function standsForSeveralCells(token: Token, namesOneCell: (name: string) => boolean): boolean {
  switch (token.type) {
    case tokenTypes.REF_RANGE:
      return token.value.includes(':')
    case tokenTypes.REF_NAMED:
      return !namesOneCell(token.value)
    case tokenTypes.REF_BEAM:
    case tokenTypes.REF_TERNARY:
    case tokenTypes.REF_STRUCT:
      return true
    default:
      return false
  }
}
