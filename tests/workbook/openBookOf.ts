import { calculateBook } from '../../src/workbench/engine/calculate'
import type { Book } from '../../src/workbook/book'
import type { OpenBook } from '../../src/workbook/openBook'
import { openBookOf } from '../../src/workbook/openBookOf'

/** A book as a host would hand it over: calculated by the grid's engine. */
export async function openBook(book: Book): Promise<OpenBook> {
  return openBookOf(book, await calculateBook(book))
}
