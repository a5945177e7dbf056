/** The section Check: what was found in the workbook, and how to get there. */
const counted = (count: number, one: string) => (count === 1 ? `1 ${one}` : `${count} ${one}s`)

export const check = {
  unseen: 'Some functions have not been calculated since the workbook was opened, so their inputs are not checked yet.',
  calculateAndCheck: 'Calculate and check',
  kinds: { error: 'Error', warning: 'Warning' },
  nothing: 'Nothing was found. That is no proof: rates, prices and measures are still yours to check.',
  count: (errors: number, warnings: number) =>
    `${counted(errors, 'error')}, ${counted(warnings, 'warning')}. A warning can be harmless: check the cell.`,
  again: 'Check again',
}
