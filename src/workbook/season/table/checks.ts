/** What keeps a row or a sheet from being complete. */
import { all, lookUp, type Column, type Table } from './table'

/** When it is not complete, and what is then said, both as formulas. */
export type Check = readonly [when: string, sentence: string]

/** "ready", or the first sentence that holds. */
export function firstOf(checks: readonly Check[]): string {
  return checks.reduceRight((rest, [when, sentence]) => `IF(${when},${sentence},${rest})`, '"ready"')
}

/** A word that is not on its list, and a row of another table that is missing or not complete. */
export function checksOfEntry({ isIn, isAwaited, words, heading, filling }: Column, cell: string): readonly Check[] {
  if (words !== undefined) return [[`ISNA(MATCH(${cell},${words.name},0))`, `"${heading}: choose from the list"`]]
  if (isIn === undefined) return []
  const given = (condition: string) => (filling === 'text' ? condition : `IF(LEN(${cell})>0,${condition})`)
  const keys = all<Table>(isIn, isIn.key)
  // 101 as a number and as a text look alike, and only COUNTIF takes the one for the other.
  const isOtherKind: Check = [
    given(`IF(ISNA(MATCH(${cell},${keys},0)),COUNTIF(${keys},${cell})>0)`),
    `"${heading}: a text here or on ${isIn.sheet}, a number there"`,
  ]
  const isMissing: Check = [given(`ISNA(MATCH(${cell},${keys},0))`), `"${heading}: not on ${isIn.sheet}"`]
  const isNotReady: Check = [
    given(`${lookUp(isIn, cell, 'state')}<>"ready"`),
    `"${heading}: not complete on ${isIn.sheet}"`,
  ]
  return isAwaited ? [isOtherKind, isMissing] : [isOtherKind, isMissing, isNotReady]
}

/** What was typed and is missing, no number, or outside of what it may be. */
export function checksOfFigure({ heading, filling }: Column, cell: string): readonly Check[] {
  const sentence = `"${heading}: type ${filling}"`
  const isOutside = filling.startsWith('share') ? `OR(${cell}<0,${cell}>1)` : `${cell}<0`
  switch (filling) {
    case 'text':
      return [[`LEN(${cell})=0`, sentence], isPadded(heading, cell), isPattern(heading, cell)]
    case 'text or blank':
      return [isPadded(heading, cell)]
    case 'number':
    case 'share':
      return [[`IF(ISNUMBER(${cell}),${isOutside},TRUE)`, sentence]]
    case 'number or blank':
    case 'share or blank':
      return [[`IF(ISNUMBER(${cell}),${isOutside},LEN(${cell})>0)`, sentence]]
    case 'any number':
      return [[`NOT(ISNUMBER(${cell}))`, sentence]]
    case 'any number or blank':
      return [[`AND(LEN(${cell})>0,NOT(ISNUMBER(${cell})))`, sentence]]
    default:
      return []
  }
}

/** Such a name looks like that of another row and is none. */
function isPadded(heading: string, cell: string): Check {
  return [`LEN(TRIM(CLEAN(${cell})))<LEN(${cell})`, `"${heading}: a space or a line break too many"`]
}

/** Formulas that look a name up would read these signs as a pattern or a comparison, and find other rows. */
function isPattern(heading: string, cell: string): Check {
  const signs = `SUMPRODUCT(--ISNUMBER(FIND({"*","?","~"},${cell})))>0`
  return [
    `OR(${signs},ISNUMBER(FIND(LEFT(${cell}),"<>=")))`,
    `"${heading}: without * ? ~, and without < > = at its start"`,
  ]
}
