/** What all sections of the pane share: their names, and words for cells. */
export const frame = {
  sections: { Season: 'Season', Functions: 'Functions', Working: 'Working', Check: 'Check', Compare: 'Compare', Library: 'Library' },
  gettingReady: { Season: 'Getting the season ready', Library: 'Getting the library ready', Compare: 'Getting the charts ready' },
  /** "B4 on Season". */
  place: (address: string, sheet: string) => `${address} on ${sheet}`,
  readingTheWorkbook: 'Reading the workbook',
  caution: 'Caution.',
}
