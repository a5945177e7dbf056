/** What the pane writes onto sheets. It is in English whatever the language of the pane, because a saved workbook is read by others. */
import type { Place } from './frame'
import { working } from './working'

const counted = (count: number, one: string, more: string) => (count === 1 ? `1 ${one}` : `${count} ${more}`)

export const sheets = {
  /** How a cell was calculated, for an auditor. */
  working: {
    called: (address: string) => `Calculation of ${address}`,
    title: (place: Place) => `Calculation of ${place.address} on ${place.sheet}`,
    formula: 'Formula',
    result: 'Result when this was written',
    argument: 'What went in',
    readAs: 'Read as',
    given: 'As given',
    leftOut: 'left out, so this is assumed',
    step: 'Step by step',
    quantity: 'Value',
    unit: 'Unit',
    expression: 'How',
    meaning: 'What it is',
    convention: 'How it is counted',
    cellRead: 'Cells read',
    place: 'Where',
    name: 'Name',
    more: (count: number) => (count === Infinity ? 'and all cells after them' : `and ${count} more`),
    recalculated: 'Recalculated now, without the add-in',
    plainFormula: 'Plain formula',
    plainGives: 'The plain formula gives',
    cellShows: 'The cell shows',
    difference: 'Difference',
    cellsThatDiffer: 'Cells that differ',
    noPlainFormula: (id: string) => `${id} has no plain formula`,
    check: 'Check of the answer',
    answerHolds: 'The answer passes the check',
  },
  /** The list in a workbook that needs no add-in any more. */
  copy: {
    sheet: 'Without the add-in',
    formulas: (count: number) =>
      `${counted(count, 'cell holds a plain formula', 'cells hold plain formulas')} in place of a function of the add-in.`,
    values: (count: number) =>
      count === 0
        ? 'No cell had to become a value.'
        : `${counted(count, 'cell holds a value', 'cells hold values')} instead, which no longer ${count === 1 ? 'follows' : 'follow'} when an input changes:`,
    headings: ['Sheet', 'Cell', 'Value', 'Why it is no formula'],
    because: working.because,
  },
  /** The rows to begin with for an entry of the library. */
  library: {
    title: (name: string) => `${name}: rows to begin with`,
    about:
      'Type your own figures into the boxed cells; results stay blank until those are filled. A usual range is for orientation, and nothing here is a price.',
    headings: ['What it is', 'Unit', 'Figure', 'What to type', 'Usual range', 'Where the range is from'],
    component: (label: string, place: number) => `${label}: component ${place}`,
    wanted: (range: string, unit: string) =>
      unit === 'share' ? `share ${range}: 0.15 or 15%` : range.includes('number') ? range : `number ${range}`,
    typeThat: (wanted: string, unit: string) =>
      unit === 'share' ? `Type a ${wanted}.` : `Type a ${wanted}; its unit is ${unit}.`,
  },
}
