/**
 * What the second engine calculates as Excel does where an argument is many cells. Found by trying each function on
 * three cells, and on one after the other (IronCalc 0.8.4): of the others it takes the first cell alone, or refuses.
 */

/** Of an argument or a result: one cell, cells of a sheet as they stand, or values made of many cells. */
export type Extent = 'one' | 'cells' | 'array'

interface Taking {
  /** The places of the arguments, from 0, that may be many; all of them where it is left out. */
  readonly at?: (place: number) => boolean
  /** Only cells as they stand, no values made of them. */
  readonly onlyCells?: true
  readonly gives: 'one' | 'same' | 'array'
}

const each = (taking: Taking, names: string): readonly (readonly [string, Taking])[] =>
  names.split(' ').map((name) => [name, taking] as const)

const first = (place: number) => place === 0
const second = (place: number) => place === 1
const evenOnes = (place: number) => place % 2 === 0
const firstAndOddOnes = (place: number) => place === 0 || place % 2 === 1

const takings: ReadonlyMap<string, Taking> = new Map([
  ...each({ gives: 'one' }, 'SUM PRODUCT MIN MAX SUMPRODUCT SUMSQ COUNTA MEDIAN STDEV STDEV.S STDEV.P VAR VAR.S VAR.P'),
  ...each({ gives: 'one' }, 'TEXTJOIN CONCAT REDUCE'),
  ...each({ gives: 'one', onlyCells: true }, 'COUNT AVERAGE AND OR COUNTBLANK ROWS COLUMNS NPV'),
  ...each({ gives: 'one', onlyCells: true }, 'AVERAGEA MAXA MINA MODE GEOMEAN HARMEAN DEVSQ AVEDEV KURT SKEW STDEVP'),
  ...each({ gives: 'one', onlyCells: true }, 'VARP COVAR CORREL SLOPE INTERCEPT RSQ SUMX2MY2 SUMXMY2 GCD LCM XNPV'),
  ...each({ gives: 'one', at: first }, 'LARGE SMALL PERCENTILE PERCENTILE.INC QUARTILE QUARTILE.INC'),
  ...each({ gives: 'one', at: first, onlyCells: true }, 'PERCENTRANK PERCENTILE.EXC QUARTILE.EXC TRIMMEAN'),
  ...each({ gives: 'one', at: first, onlyCells: true }, 'COUNTIF IRR'),
  ...each({ gives: 'one', at: second, onlyCells: true }, 'RANK RANK.EQ RANK.AVG'),
  ...each({ gives: 'one', at: evenOnes, onlyCells: true }, 'COUNTIFS SUMIF AVERAGEIF'),
  ...each({ gives: 'one', at: firstAndOddOnes, onlyCells: true }, 'SUMIFS AVERAGEIFS MINIFS MAXIFS'),
  ...each({ gives: 'one', at: second }, 'MATCH XMATCH VLOOKUP HLOOKUP'),
  ...each({ gives: 'one', at: (place) => place === 1 || place === 2 }, 'XLOOKUP LOOKUP'),
  ...each({ gives: 'one', at: (place) => place === 2, onlyCells: true }, 'NETWORKDAYS WORKDAY'),
  ...each({ gives: 'one', at: first }, 'INDEX'),
  ...each({ gives: 'same' }, 'IF IFERROR ABS SIGN EXP SIN SQRT LN LOG10 YEAR MONTH DAY WEEKDAY DATE'),
  ...each({ gives: 'same' }, 'LEFT MID RIGHT UPPER LOWER LET'),
  ...each({ gives: 'array' }, 'FILTER SORT SORTBY UNIQUE TRANSPOSE TAKE DROP VSTACK HSTACK TOCOL TOROW'),
  ...each({ gives: 'array' }, 'CHOOSE CHOOSECOLS CHOOSEROWS WRAPROWS EXPAND MAP BYROW BYCOL LAMBDA'),
  ...each({ gives: 'array', at: first }, 'OFFSET'),
  ...each({ gives: 'array', at: () => false }, 'SEQUENCE'),
])

/** What a call gives; undefined where it is given more than the second engine takes. */
export function extentOfCall(name: string, args: readonly Extent[]): Extent | undefined {
  const taking = takings.get(name)
  const isTaken = args.every(
    (extent, place) =>
      extent === 'one' ||
      (taking !== undefined && (taking.at?.(place) ?? true) && (extent === 'cells' || taking.onlyCells === undefined)),
  )
  if (!isTaken) return undefined
  if (taking?.gives !== 'same') return taking?.gives ?? 'one'
  return widest(args)
}

/** Of what is made of several parts: values, where one of them is many. */
export function widest(parts: readonly Extent[]): Extent {
  return parts.every((extent) => extent === 'one') ? 'one' : 'array'
}
