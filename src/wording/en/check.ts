/** The section Check: what was found in the workbook, and how to get there. */
export const check = {
  again: 'Check again',
}
