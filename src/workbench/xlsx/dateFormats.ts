/**
 * The library takes a number for a date when its format has one of the letters y, m, d, h, s outside of quotation
 * marks, and rounds it to milliseconds. Excel itself writes 0.00 \m for metres. Quoted, the letter means the same,
 * and the number stays what it is.
 */
const formatCode = /(formatCode=")([^"]*)(")/g
const escapedLetter = /\\([A-Za-z])/g
const mark = '&quot;'

export function quoteEscapedLetters(styles: string): string {
  return styles.replace(formatCode, (_whole, before: string, code: string, after: string) => {
    const outsideAndInside = code.split(mark)
    return before + outsideAndInside.map((piece, index) => index % 2 === 0 ? piece.replace(escapedLetter, `${mark}$1${mark}`) : piece).join(mark) + after
  })
}

const millisecondsPerDay = 86_400_000
const daysFrom1900To1970 = 25_569
const finerThanMillisecond = 1e9

/** The date of a number that a cell holds; the other way round from `serialOf`. */
export function dateOf(serial: number): Date {
  return new Date(Math.round((serial - daysFrom1900To1970) * millisecondsPerDay))
}

/** A date as the number that a cell holds: days since the last day of 1899, as Excel counts them. */
export function serialOf(date: Date): number {
  const days = daysFrom1900To1970 + date.getTime() / millisecondsPerDay
  return Math.round(days * finerThanMillisecond) / finerThanMillisecond
}
