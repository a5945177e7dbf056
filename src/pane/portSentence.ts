import { PortProblem } from '../workbook/port'

/** What a workbook could not do, as one sentence that says what to do about it. */
export function portSentence(error: unknown, doing: 'reading' | 'writing' = 'writing'): string {
  const problem = error instanceof PortProblem ? error : new PortProblem('hostFailed', error instanceof Error ? error.message : String(error))
  switch (problem.code) {
    case 'cellEditMode':
      return 'Press Enter or Esc in the cell first, then try again.'
    case 'protectedSheet':
      return 'This sheet is protected: unprotect it or select a cell on another sheet, then try again.'
    case 'protectedWorkbook':
      return 'The structure of this workbook is protected, so it takes no new sheets: unprotect it on the Review tab, or open another workbook.'
    case 'nameTaken':
      return `The workbook already holds ${problem.detail}, and nothing of yours is overwritten: rename or delete that first, or open an empty workbook.`
    case 'bookRefused':
      return `The workbook did not take the sheets${quoted(problem.detail)} and is as it was: try again, or open an empty workbook.`
    case 'partLeft':
      return `The workbook took only a part and did not let go of it again: delete ${problem.detail}, then try again.`
    case 'noSelection':
      return 'Select a cell in the sheet first, then try again.'
    case 'hostFailed':
      return doing === 'reading'
        ? `The workbook could not be read${quoted(problem.detail)}: try again.`
        : `The workbook did not take it${quoted(problem.detail)}: nothing was changed. Try again, or somewhere else.`
  }
}

function quoted(detail: string): string {
  return detail === '' ? '' : ` (it says “${detail.trim().replace(/\.$/, '')}”)`
}
