import { PortProblem } from '../workbook/port'

/** What a workbook could not do, as one sentence that says what to do about it. */
export function portSentence(error: unknown): string {
  const problem = error instanceof PortProblem ? error : new PortProblem('hostFailed', error instanceof Error ? error.message : String(error))
  switch (problem.code) {
    case 'cellEditMode':
      return 'Press Enter or Esc in the cell first, then try again.'
    case 'protectedSheet':
      return 'This sheet is protected: unprotect it or select a cell on another sheet, then try again.'
    case 'noSelection':
      return 'Select a cell in the sheet first, then try again.'
    case 'hostFailed':
      return `The workbook did not take the formula${quoted(problem.detail)}: select another cell, then try again.`
  }
}

function quoted(detail: string): string {
  return detail === '' ? '' : ` (it says “${detail.trim().replace(/\.$/, '')}”)`
}
