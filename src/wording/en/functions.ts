/** The section Functions: the list, the text of a function, its form and its examples. */
const counted = (count: number, noun: string) => `${count} ${noun}${count === 1 ? '' : 's'}`

export const functions = {
  search: 'Search the functions',
  searchHint: 'Search, such as perlite, tray, reuse',
  clearSearch: 'Clear the search',
  found: 'Found',
  count: (count: number) => counted(count, 'function'),
  countFound: (count: number) => `${counted(count, 'function')} found`,
  noneFound: (query: string) =>
    `No function found for “${query}”. Try fewer or other words, such as bag, tray, peat or wash.`,
  noCell: 'No cell is selected.',
  selected: (place: string) => `Selected: ${place}`,
  /** Between the cell and the first of the functions that it uses. */
  uses: ', uses ',
  usedHere: 'the selected cell uses it',

  example: 'Example',
  moreExamples: 'More examples',
  fillIn: 'Fill it in',
  comesOut: 'What comes out',
  inShapeOf: (argument: string) => `, in the shape of ${argument}`,
  howCounted: 'How it is counted',

  take: 'Take',
  takeHint: 'Take the selected cells',
  takeFor: (argument: string) => `Take the selection for ${argument}`,
  ifLeftOut: (value: string) => `${value} if left out`,
  mayBeLeftOut: 'may be left out',
  suchAs: (example: string) => `such as ${example}`,
  result: 'Result',
  gives: 'gives',
  table: 'The table that it gives',
  needsSheet: 'A formula stands among the arguments: the sheet shows the result.',
  cellShows: (error: string) => `One of the cells shows ${error}.`,
  stillNeeded: (names: readonly string[]) => `Still needed: ${names.join(', ')}`,
  selectTarget: 'Select the cell for the result.',
  goesInto: (place: string) => `It goes into ${place}.`,
  goesIntoReplacing: (place: string) => `It goes into ${place} and replaces what stands there.`,
  changeFormula: 'Change the formula',
  putIntoSheet: 'Put into the sheet',
  putInstead: (place: string) => `Put into ${place} instead`,
  clearForm: 'Clear the form',
  putInto: (place: string) => `Put into ${place}.`,

  putIntoSelected: 'Put into the selected cell',
  source: (source: string) => `Source: ${source}`,
  selectFirst: 'Select a cell in the sheet first.',
  isEmpty: (place: string) => `${place} is empty.`,
  replaces: (place: string) => `This replaces what ${place} holds now.`,
  fills: (rows: number, columns: number) =>
    `It fills ${counted(rows, 'row')} and ${counted(columns, 'column')} from there.`,
}
