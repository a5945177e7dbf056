/** The section Check: what was found in the workbook, and how to get there. */
const counted = (count: number, one: string) => (count === 1 ? `1 ${one}` : `${count} ${one}s`)

export const check = {
  unseen: 'Some functions have not been calculated since the workbook was opened, so their inputs are not checked yet.',
  calculateAndCheck: 'Calculate and check',
  kinds: { error: 'Error', warning: 'Warning' },
  nothing: 'Nothing was found. That is no proof: rates, prices and measures are still yours to check.',
  count: (errors: number, warnings: number) =>
    `${counted(errors, 'error')}, ${counted(warnings, 'warning')}. A warning can be harmless: check the cell.`,
  left: (count: number, kind: 'error' | 'warning', sheet: string) =>
    `${counted(count, `more ${kind}`)} on ${sheet} ${count === 1 ? 'is' : 'are'} not listed here: mend these first, then check again.`,
  again: 'Check again',
  witness: {
    heading: 'A second engine',
    asking: 'A second engine calculates every formula once more',
    differ: (shown: string, second: string) =>
      `Two engines give different results: ${shown}, which the cell shows, and ${second}. Check it by hand.`,
    blank: 'nothing',
    said: (differing: number, judged: number) => {
      const results =
        differing === 0
          ? 'no result differs'
          : `${counted(differing, 'result')} ${differing === 1 ? 'differs' : 'differ'}`
      return `A second engine calculated ${counted(judged, 'formula')} once more: ${results}.`
    },
    notJudged: (count: number) => `It was not given ${counted(count, 'formula')}:`,
    reasons: {
      ownFunction: 'nothing but a function of Sticksheet, which has proofs of its own',
      unseenCall: 'with a function of Sticksheet whose result is not known',
      otherwise: 'with something that the second engine does otherwise than Excel',
      unknown: 'with something that the second engine does not know',
      error: 'reading an error, or without room to spill',
      changing: 'changing by itself, such as today’s date',
    },
    crashed: 'The second engine broke down, so these results have no second witness.',
    tookTooLong: 'The second engine took too long and was stopped, so these results have no second witness.',
  },
}
