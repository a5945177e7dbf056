import type { Book } from '../../src/workbook/book'
import type { OpenBook, OpenCell } from '../../src/workbook/openBook'
import { calculateBook } from '../../src/workbench/engine/calculate'
import { placeOf } from '../../src/workbench/xlsx/address'

/** A book as a host would hand it over: calculated by the grid's engine. */
export async function openBook(book: Book): Promise<OpenBook> {
  const { sheets } = await calculateBook(book)
  return {
    names: book.names,
    sheets: sheets.map(({ name, cells, calls }, index) => ({
      name,
      cells: new Map([...cells].map(([address, { value, error, sentence, spill }]): [string, OpenCell] => {
        const { row, column } = placeOf(address)
        const formula = book.sheets[index]?.rows[row - 1]?.[column - 1]?.formula ?? ''
        return [address, {
          row: row - 1, column: column - 1, formula, value: error === undefined ? value : { kind: 'cellError', code: error }, calls: calls.get(address) ?? [], ...(sentence && { sentence }), ...(formula !== '' && spill && { spill }),
        }]
      })),
    })),
  }
}
