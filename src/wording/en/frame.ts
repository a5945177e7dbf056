/** A cell, or cells, of a sheet. */
export interface Place {
  readonly address: string
  readonly sheet: string
}

/** What all sections of the pane share: their names, and words for cells. */
export const frame = {
  sections: {
    Season: 'Season',
    Functions: 'Functions',
    Working: 'Calculation',
    Check: 'Check',
    Compare: 'Compare',
    Library: 'Library',
    Settings: 'Settings',
  },
  gettingReady: {
    Season: 'Getting the season ready',
    Functions: 'Getting the functions ready',
    Working: 'Getting the calculation ready',
    Check: 'Getting the check ready',
    Library: 'Getting the library ready',
    Compare: 'Getting the charts ready',
    Settings: 'Getting the settings ready',
  },
  sectionFailed:
    'This part of the pane could not be fetched or shown. What stands in the workbook stays, and the other parts go on. If showing it again does not help: in Excel, close the pane and open it again; in the browser, save the workbook first and then load the page again.',
  notStarted:
    'Sticksheet did not start. It needs a browser of 2023 or newer: Chrome or Edge 111, Firefox 115, Safari 16.4. If yours is newer, load the page again.',
  noOffice:
    'Sticksheet did not start: the script office.js, which every add-in needs, could not be fetched from Microsoft. Check the connection, or whether something keeps appsforoffice.microsoft.com out; then open the pane again.',
  showAgain: 'Show it again',
  /** "B4 on Season". */
  place: ({ address, sheet }: Place) => `${address} on ${sheet}`,
  mayBeOld: 'Cells may have changed since this was read.',
  readingTheWorkbook: 'Reading the workbook',
  caution: 'Caution.',
  /** Instead of an empty value in a working. */
  blank: '(blank)',
  inputShows: (error: string) => `One of its input cells shows ${error}.`,
  selectedCell: 'the selected cell',
  /** A unit of money, "money per liner", in a currency: "EUR per liner". */
  inCurrency: (unit: string, currency: string) => unit.replace('money', () => currency),
}
