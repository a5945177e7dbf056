import type { Book } from './book'

/** The names that a workbook has given away. In Excel a table has one of them too. */
export interface NamesInUse {
  readonly sheets: readonly string[]
  readonly names: readonly string[]
}

/** What of a book cannot be added because the workbook has a sheet or a name called so, however it is capitalised. */
export function takenBy({ sheets, names }: NamesInUse, book: Book): readonly string[] {
  const ofSheets = new Set(sheets.map(plain))
  const ofNames = new Set(names.map(plain))
  return [
    ...book.sheets.filter(({ name }) => ofSheets.has(plain(name))).map(({ name }) => `the sheet ${name}`),
    ...book.names.filter(({ name }) => ofNames.has(plain(name))).map(({ name }) => `the name ${name}`),
    ...book.sheets
      .flatMap(({ tables = [] }) => tables)
      .filter(({ name }) => ofNames.has(plain(name)))
      .map(({ name }) => `the table ${name}`),
  ]
}

/** The most that are listed one by one; a season built twice would list over a hundred. */
const mostListed = 6

export function listed(things: readonly string[]): string {
  if (things.length > mostListed)
    return `${things.slice(0, mostListed).join(', ')} and ${things.length - mostListed} more`
  return [things.slice(0, -1).join(', '), things.at(-1)].filter(Boolean).join(' and ')
}

const plain = (name: string): string => name.toLowerCase()
