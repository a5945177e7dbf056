/** The section Library, without its entries. */
export const library = {
  about: 'For orientation only: measure your own, and take prices from your own invoices. There are none here.',
  sixWays: 'Six rooting methods',
  materials: 'Materials',
  noSource: 'Common practice, no source',
  putIntoASheet: 'Put into a sheet',
  putEntry: (name: string) => `Put into a sheet: ${name}`,
  added: (sheet: string) =>
    `Added the sheet ${sheet}. Type your own figures into the boxed cells; the results fill in as you do.`,
  goTo: (sheet: string) => `Go to ${sheet}`,
  adding: 'Adding the sheet',
  /** The texts of the entries are English already. */
  ofEntry: (text: string): string => text,
}
