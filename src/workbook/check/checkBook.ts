import type { Definition } from '../../core/definition/definition'
import type { OpenBook } from '../openBook'
import { checkCalls } from './checkCalls'
import { checkColumns } from './checkColumns'
import { checkErrors } from './checkErrors'
import { checkPriceDays } from './checkPriceDays'
import type { Finding } from './finding'

/** All that was forgotten or looks wrong in a workbook: errors first, then doubts, each in the order of the sheets. */
export function checkBook(book: OpenBook, definitions: readonly Definition[]): readonly Finding[] {
  const doubts = book.sheets.flatMap((sheet) => [...checkColumns(sheet), ...checkCalls(sheet, definitions)])
  return [...checkErrors(book), ...doubts, ...checkPriceDays(book)]
}
