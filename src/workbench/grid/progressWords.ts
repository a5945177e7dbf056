/** What the grid says of a long calculation; its own words for it are missing, so that it shows their keys. */
export const progressWords = {
  'sheets-formula': {
    progress: {
      analyzing: 'Reading the formulas',
      calculating: 'Calculating',
      'array-analysis': 'Reading what has spilled',
      'array-calculation': 'Calculating what has spilled',
      done: 'Calculated',
    },
  },
}
