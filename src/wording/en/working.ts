/** The section Calculation: how the number in the selected cell came about. */
import type { Place } from './frame'

const counted = (count: number, one: string, more: string) => (count === 1 ? `1 ${one}` : `${count} ${more}`)
/** Without a place the whole workbook is meant. */
const inside = (place: Place | undefined) =>
  place === undefined ? 'in this workbook' : `in ${place.address} on ${place.sheet}`
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
const cells = (count: number) => counted(count, 'cell', 'cells')

/** Why a cell gets no plain formula. */
type NoFormula =
  | { readonly kind: 'error'; readonly code: string; readonly sentence?: string }
  /** Without a reason where its arguments are written in a way that is not read here. */
  | { readonly kind: 'function'; readonly id: string; readonly reason?: string }
  | { readonly kind: 'unit'; readonly text: string }
  | { readonly kind: 'length' }

const unreadArgument =
  'One of its arguments cannot be read here, such as cells of a closed workbook. Copy them into this workbook first.'

function because(why: NoFormula): string {
  switch (why.kind) {
    case 'error':
      return `It shows ${why.code}${why.sentence === undefined ? '' : `: ${why.sentence}`}`
    case 'function':
      return `${why.id}: ${why.reason ?? unreadArgument}`
    case 'unit':
      return `It reads the text “${why.text}”, which plain Excel does not take for a number.`
    case 'length':
      return 'Its plain formula would be longer than Excel takes.'
  }
}

export const working = {
  heading: (place?: Place) =>
    place === undefined ? 'Calculation' : `Calculation of ${place.address} on ${place.sheet}`,
  selectCell: 'Select a cell in the sheet.',
  noFormula: 'This cell holds no formula. Select one that uses a STICK function.',
  noneOfOurs: 'This formula uses no STICK function.',
  unseen: 'Its functions have not been calculated since the workbook was opened or its rows moved.',
  calculate: 'Calculate the workbook',
  notReached: 'This formula did not use its STICK function for the current values.',
  ofFunction: (id: string) => `Calculation of STICK.${id}`,
  whatWentIn: 'What went in',
  leftOut: (text: string) => `${text} (left out, so this is assumed)`,
  stepByStep: 'Step by step',
  rounded:
    'Long numbers are rounded here. The cell keeps all digits, and so does the calculation when it is written to a sheet.',
  allDigits: 'Show all digits',
  fewerDigits: 'Show fewer digits',
  howCounted: 'How it is counted',
  checkFollows: 'This formula checks the answer:',
  unreadArgument,
  withoutTheAddIn: 'Without the add-in',
  cellsItReads: 'Cells it reads',
  readsNone: 'This formula names no cells of the workbook.',
  rangeSize: (rows: number, columns: number) =>
    rows === Infinity || columns === Infinity ? 'a whole column or row' : `${rows} × ${columns} cells`,
  goTo: (place: Place) => `Go to ${place.address} on ${place.sheet}`,
  backTo: (place: Place) => `Back to ${place.address} on ${place.sheet}`,
  holdsValue: (value: string) => `It holds ${value}.`,
  write: 'Write this calculation to a sheet',
  writing: 'Writing the calculation',
  written: (sheet: string) => `Written to the sheet “${sheet}”.`,
  toFormulas: 'Turn into plain formulas',
  toValues: 'Turn into values',
  aboutTurning: 'Turns the selected cells into formulas or values that Excel shows without the add-in.',
  reading: 'Reading the workbook',
  changing: 'Changing the cells',
  noneSelected: (place: Place | undefined) =>
    `No cell ${inside(place)} uses a STICK function, so there is nothing to turn.`,
  /** What is about to happen. */
  becomeFormulas: (count: number, place: Place | undefined) =>
    `${capital(inside(place))}, ${count === 1 ? '1 cell gets a plain formula' : `${count} cells get a plain formula each`}.`,
  becomeValues: (count: number, place: Place | undefined) =>
    `${capital(inside(place))}, ${count === 1 ? '1 cell becomes a value' : `${count} cells become values`}, which no longer ${count === 1 ? 'follows' : 'follow'} when an input changes.`,
  spilledToo: (count: number) =>
    `With what ${count === 1 ? 'it fills' : 'they fill'} beside and below, these are ${cells(count)}.`,
  stay: (count: number) =>
    `${count === 1 ? '1 cell stays' : `${count} cells stay`} as ${count === 1 ? 'it is' : 'they are'}.`,
  because,
  change: (count: number) => `Change ${count === 1 ? 'this cell' : `these ${count} cells`}`,
  doNotChange: 'Do not change',
  changedMeanwhile: 'The workbook changed meanwhile. This is what would happen now:',
  changed: (count: number) =>
    `${counted(count, 'cell is', 'cells are')} changed. Every cell of the workbook shows what it showed before.`,
  changedOthers: (count: number, places: string) =>
    `${counted(count, 'cell is', 'cells are')} changed, but not every cell shows what it showed before: look at ${places}. An undo takes the change back.`,
  undo: 'Ctrl+Z in the sheet takes it back.',
  aboutWorkbook:
    'For a workbook without the add-in: save a copy under another name, open that, and turn all its sheets here. A last sheet lists what became a value.',
  turnWorkbook: 'Turn all sheets into plain formulas',
  listedOn: (sheet: string) => `What became a value is listed on the sheet “${sheet}”.`,
  makeCopy: 'A copy of the workbook, as a file',
  aboutCopy:
    'The copy holds plain formulas and values only, and a last sheet that lists the values. The open workbook stays as it is.',
  making: 'Making the copy',
  copied: (formulas: number, values: number, sheet: string) =>
    `The copy is ready: ${cells(formulas)} with plain formulas, ${values} as values, listed on its sheet “${sheet}”.`,
}
