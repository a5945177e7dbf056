import { blockOf } from '../formula/address'
import type { Book } from './book'
import type { CalculatedBook } from './calculated'
import type { OpenBook, OpenCell } from './openBook'

/** A book with its results, as a host would hand it over. */
export function openBookOf(book: Book, { sheets }: CalculatedBook): OpenBook {
  return {
    names: book.names,
    sheets: sheets.map(({ name, cells, calls }, index) => ({
      name,
      cells: new Map([...cells].map(([address, { value, error, sentence, spill }]): [string, OpenCell] => {
        const { top: row, left: column } = blockOf(address)!
        const { formula = '', look } = book.sheets[index]?.rows[row]?.[column] ?? {}
        return [address, {
          row, column, formula, ...(look === 'heading' && { isHeading: true as const }), value: error === undefined ? value : { kind: 'cellError', code: error }, calls: calls.get(address) ?? [], ...(sentence && { sentence }), ...(formula !== '' && spill && { spill }),
        }]
      })),
    })),
  }
}
