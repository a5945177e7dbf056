/** The section Season. */
export const season = {
  about:
    'Builds a season into the open workbook: order book, ways of rooting, prices, buying list, cost per liner, quotes and review, each reading the others.',
  undo: {
    workbench: 'Your own sheets stay as they are, and one undo takes the season away again.',
    excel: 'Your own sheets stay as they are, and undo, or deleting the new sheets, takes the season away again.',
  },
  build: { demo: 'Build the demo season', empty: 'Build an empty season' },
  aboutSeason: {
    demo: 'All figures in it are invented, to show how the sheets work together.',
    empty: 'The cells in boxes wait for your figures. What is read from them fills in as you type.',
  },
  currency: (currency: string) =>
    `Its units say ${currency}; another currency is chosen in Settings, before it is built.`,
  announcement: (sheets: readonly string[], names: number, firstName: string) =>
    `This adds ${sheets.length} sheets after your own: ${sheets.slice(0, -1).join(', ')} and ${sheets.at(-1)}. They bring ${names} names for cells, such as ${firstName}.`,
  addThese: (sheets: number) => `Add these ${sheets} sheets`,
  doNotAdd: 'Do not add',
  adding: 'Adding the sheets',
  added: (sheets: number) => `Added ${sheets} sheets. Type into the cells in boxes; all else follows.`,
  another: 'Build another season',
  orderBook: 'Order book',
  aboutLine: 'A further line goes above the last one, so that totals, names and all other sheets count it.',
  addLine: 'Add an order line',
  noOrderBook: 'This workbook has no order book yet: build a season first.',
  lineReady: (place: string) =>
    `The line is ready at ${place}: type its species, liners, way of rooting, weeks and rates.`,
}
