/** The section Library, without its entries. */
export const library = {
  materials: 'Materials',
  noSource: 'Common practice, no source',
  putIntoASheet: 'Put into a sheet',
  putEntry: (name: string) => `Put into a sheet: ${name}`,
  added: (sheet: string) => `Added the sheet ${sheet}. Type your own figures into the boxed cells; the results fill in as you do.`,
  goTo: (sheet: string) => `Go to ${sheet}`,
  adding: 'Adding the sheet',
  sheetTitle: (name: string) => `${name}: rows to begin with`,
  sheetAbout: 'Type your own figures into the boxed cells. What reads them shows nothing until they are filled. A band is for orientation, and nothing here is a price.',
  sheetHeadings: ['What it is', 'Unit', 'Figure', 'What to type', 'Usual band', 'Where the band is from'],
  component: (label: string, place: number) => `${label}: component ${place}`,
  wanted: (range: string, unit: string) => (unit === 'share' ? `share ${range}: 0.15 or 15%` : range.includes('number') ? range : `number ${range}`),
  typeThat: (wanted: string, unit: string) => (unit === 'share' ? `Type a ${wanted}.` : `Type a ${wanted}; its unit is ${unit}.`),
}
