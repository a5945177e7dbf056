/** The section Season. */
export const season = {
  about:
    'Builds a season into the open workbook: order book, rooting methods, calendar, buying, cost per liner, quotes and review, each reading the others.',
  undo: {
    workbench: 'Your own sheets stay as they are, and one undo takes the season away again.',
    excel: 'Your own sheets stay as they are, and undo, or deleting the new sheets, takes the season away again.',
  },
  build: { demo: 'Build the demo season', empty: 'Build an empty season' },
  aboutSeason: {
    demo: 'All figures in it are invented, to show how the sheets work together.',
    empty: 'The cells in boxes wait for your figures. What is read from them fills in as you type.',
  },
  currency: (currency: string) => `Its currency is ${currency}; on Setup you type another.`,
  announcement: (sheets: readonly string[], names: number, firstName: string) =>
    `This adds ${sheets.length} sheets after your own: ${sheets.slice(0, -1).join(', ')} and ${sheets.at(-1)}. They bring ${names} names for cells, such as ${firstName}.`,
  addThese: (sheets: number) => `Add these ${sheets} sheets`,
  doNotAdd: 'Do not add',
  adding: 'Adding the sheets',
  added: (sheets: number) => `Added ${sheets} sheets. Type into the cells in boxes; all else follows.`,
  another: 'Build another season',
  today: 'This season now',
  complete: 'complete',
  noRows: 'nothing typed yet',
  rowsComplete: (rows: number) => (rows === 1 ? '1 row, complete' : `${rows} rows, complete`),
  rowsLack: (rows: number, first: string) =>
    `${rows === 1 ? '1 row is' : `${rows} rows are`} not complete. First: ${first}`,
  /** What it comes to, as the sheet Season calls it. */
  answer: {
    liners: 'Liners ordered',
    expected: 'Saleable liners to expect',
    buying: 'Buying, everything',
    rooting: 'Rooting cost of the season',
    perLiner: 'For each liner ordered',
  },
  readAgain: 'Read the season again',
  work: {
    heading: (week: string) => `The week ${week}`,
    noWork: 'The work of the week',
    lacks: (sentence: string) => `The sheet Monday cannot say what is to be done: ${sentence}.`,
    sticking: 'To stick',
    cuttings: 'cuttings',
    into: (pieces: string, container: string) => `into ${pieces} × ${container}`,
    filledWith: (medium: string) => `filled with ${medium}`,
    nothing: 'nothing',
    standing: 'Standing since before',
    until: (day: string) => `until ${day}`,
    summary: (litres: string, hours: string, deliver: string) =>
      `To mix: ${litres} L loose. Setting out and sticking: ${hours} hours. To deliver: ${deliver} liners.`,
    mayGoOn: 'A list is as long as the rows drawn for it and may go on: see the sheet Monday.',
    cautions: 'Cautions for this work',
    another: 'Ask about another week',
  },
  weeks: {
    titles: {
      bench: 'Bench, week by week',
      ground: 'Ground for beds, week by week',
      hours: 'Work of setting out and sticking, week by week',
    },
    units: { bench: 'm2', ground: 'm2', hours: 'hours' },
    week: 'week',
    taken: 'taken',
    left: 'left',
    tooMuch: 'more than there is',
    thereIs: (amount: string, unit: string) => `there is: ${amount} ${unit}`,
    limit: 'there is',
    putChartOf: (title: string) => `Put this chart into the sheet: ${title}`,
    most: (taken: string, unit: string, week: string, thereIs: string) =>
      `The fullest week is ${week} with ${taken} ${unit} of ${thereIs}.`,
    fits: 'Every week fits.',
    doesNotFit: (weeks: number, first: string) =>
      weeks === 1 ? `One week does not fit: ${first}.` : `${weeks} weeks do not fit, ${first} first.`,
  },
  rows: 'More rows',
  aboutRows: 'Further rows go above the last one of a table, so that totals, names and all other sheets count them.',
  sheet: 'Sheet',
  howMany: 'Rows',
  rowsTaken: (most: number) => `Type a whole number from 1 to ${most}.`,
  addRows: 'Add rows',
  noTable: (sheet: string) => `This workbook has no sheet ${sheet} of a season yet: build a season first.`,
  rowsReady: (place: string) => `The rows are ready, the first at ${place}: type into their boxes.`,
}
