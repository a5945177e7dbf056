/** Around the pane in the browser: the bar, the line of the selected cell, and what is asked before a workbook goes. */
export const workbench = {
  newWorkbook: {
    button: 'New',
    heading: 'Begin with an empty workbook',
    warning: 'The open workbook will be closed. Save it first if you want to keep it.',
    agree: 'Begin',
  },
  openFile: {
    button: 'Open .xlsx',
    heading: 'Open another workbook',
    agree: 'Choose a file',
    picker: 'Excel file to open',
    isOpen: (file: string) => `${file} is open`,
    cannotShow: 'The workbench cannot show or save these parts of it:',
    fileStays: 'The file itself stays as it is.',
    notRead: (file: string) => `${file} could not be read`,
    unchanged: 'The workbook that was open is unchanged.',
  },
  saveFile: {
    button: 'Save .xlsx',
    leavesOut: 'A saved copy leaves something out',
    holdsMore: 'The file that you opened also holds the following, which a copy saved here will not:',
    keepOriginal: 'Keep the original as well.',
    agree: 'Save the copy',
    notSaved: (file: string) => `${file} could not be saved`,
    as: 'Save as',
    changed: (file: string) => `${file} has changed`,
    wouldReplace:
      'Another program or another tab has written it, moved it or deleted it since it was opened or saved here. Saving puts this workbook in its place.',
    replace: 'Replace it',
    notAllowed: 'The browser was not allowed to write the file. Save again and allow it, or save as another file.',
  },
  /** What a tab left behind unsaved. */
  keptWork: {
    heading: (file: string) => `${file} was not saved`,
    stood: (title: string, time: string) =>
      `This browser has kept ${title === '' ? 'it' : `“${title}”`} as it stood on ${time}.`,
    mayBeOpen: 'It may still be open in another tab.',
    choose: 'Open it and save it, or throw it away for good.',
    open: 'Open it',
    throwAway: 'Throw it away',
    later: 'Decide later',
  },
  /** Where the box of names leads nowhere. */
  noPlace: {
    heading: (typed: string) => `There is no place ${typed}`,
    instead:
      'Nothing was selected. Type the name of cells, a cell such as B4, or a sheet and a cell such as Orders!B4.',
  },
  notCalculated: {
    heading: 'The last change was not calculated',
    old: 'What follows from it still shows the results of before: do not use them.',
    instead: 'Take the change back with Ctrl+Z, or save the workbook and load this page again. What went wrong:',
  },
  formulas: {
    heading: 'Replace formulas?',
    goes: (sheet: string, address: string) => `1 cell on ${sheet} would lose its formula: ${address}.`,
    go: (sheet: string, count: number, addresses: string, more: number) =>
      `${count} cells on ${sheet} would lose their formulas: ${addresses}${more > 0 ? ` and ${more} more` : ''}.`,
    replaced: 'What is replaced no longer calculates.',
    agree: 'Replace',
    keep: 'Keep the formulas',
  },
  openWorkbook: 'Open workbook',
  unsaved: (file: string) => `${file}, not saved`,
  notice: 'Notice',
  notKept: 'This browser cannot keep unsaved work: save often.',
  cancel: 'Cancel',
  close: 'Close',
  show: 'Show',
  sheet: 'Sheet',
  pane: 'Pane',
  nextPart: 'next part',
  whichParts: ': bar, sheet or pane',
  /** As the key is called on a keyboard. */
  pageDown: 'Page Down',
  nextSheet: 'next sheet',
  dark: 'Dark',
  gettingReady: 'Getting the sheet ready',
  typedEarly: 'The sheet was not ready yet, so what you typed was left out. Type it again.',
  noSheet: 'The sheet could not be shown',
  selectedCell: 'Selected cell',
  list: (sheet: string, address: string) => `List for ${address} on ${sheet}`,
  openList: 'Choose from the list (Alt+Down)',
  emptyList: 'The list is empty.',
  empty: 'empty',
  gives: (formula: string, value: string) => `${formula} gives ${value}`,
}
