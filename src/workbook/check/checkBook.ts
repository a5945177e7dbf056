import type { Definition } from '../../core/definition/definition'
import { found } from '../../wording/en/findings'
import type { OpenBook } from '../openBook'
import { checkCalls } from './checkCalls'
import { checkColumns } from './checkColumns'
import { checkErrors } from './checkErrors'
import { checkPriceDays } from './checkPriceDays'
import type { Finding } from './finding'

/** All that was forgotten or looks wrong in a workbook: errors first, then doubts, each in the order of the sheets. */
export function checkBook(book: OpenBook, definitions: readonly Definition[], words = found): readonly Finding[] {
  const doubts = book.sheets.flatMap((sheet) => [...checkColumns(sheet, words), ...checkCalls(sheet, definitions, words)])
  return [...checkErrors(book, words), ...doubts, ...checkPriceDays(book, words)]
}
