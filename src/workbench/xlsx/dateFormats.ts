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
    return (
      before +
      outsideAndInside
        .map((piece, index) => (index % 2 === 0 ? piece.replace(escapedLetter, `${mark}$1${mark}`) : piece))
        .join(mark) +
      after
    )
  })
}
