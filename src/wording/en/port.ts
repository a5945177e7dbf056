/** What a workbook could not do, as one sentence that says what to do about it. */
const says = (detail: string) => (detail === '' ? '' : ` (it says “${detail.trim().replace(/\.$/, '')}”)`)

export const port = {
  cellEditMode: (_detail: string) => 'Press Enter or Esc in the cell first, then try again.',
  protectedSheet: (_detail: string) =>
    'This sheet is protected: unprotect it or select a cell on another sheet, then try again.',
  protectedWorkbook: (_detail: string) =>
    'The structure of this workbook is protected, so it takes no new sheets: unprotect it on the Review tab, or open another workbook.',
  nameTaken: (detail: string) =>
    `The workbook already holds ${detail}, and nothing of yours is overwritten: rename or delete that first, or open an empty workbook.`,
  bookRefused: (detail: string) =>
    `The workbook did not take the sheets${says(detail)} and is as it was: try again, or open an empty workbook.`,
  partLeft: (detail: string) => `Only part was written and could not be undone: delete ${detail}, then try again.`,
  cellChanged: (detail: string) =>
    `${detail} holds something else by now, so nothing was changed: look at it, then try again.`,
  partChanged: (detail: string) =>
    `The workbook changed only a part and did not change it back: look at ${detail}, and undo there (Ctrl+Z) what is not as it was.`,
  columnFilled: (detail: string) =>
    `Excel filled the column ${detail} of a table with one formula, so all was put back as it was: choose values, or switch off “Fill formulas in tables to create calculated columns” in Excel’s AutoCorrect options.`,
  noSelection: (_detail: string) => 'Select a cell in the sheet first, then try again.',
  hostFailed: (detail: string) =>
    `The workbook did not take it${says(detail)}: nothing was changed. Try again, or somewhere else.`,
  /** Where nothing was to be written. */
  notRead: (detail: string) => `The workbook could not be read${says(detail)}: try again.`,
}
