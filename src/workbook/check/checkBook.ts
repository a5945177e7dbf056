import type { Definition } from '../../core/definition/definition'
import type { Words } from '../../wording/words'
import type { OpenBook } from '../openBook'
import { checkCalls } from './checkCalls'
import { checkColumns } from './checkColumns'
import { checkErrors } from './checkErrors'
import { checkNamedColumns } from './checkNamedColumns'
import { checkPriceDays } from './checkPriceDays'
import type { Finding } from './finding'

/** All that was forgotten or looks wrong in a workbook: errors first, then warnings, each in the order of the sheets. */
export function checkBook(
  book: OpenBook,
  definitions: readonly Definition[],
  found: Words['found'],
): readonly Finding[] {
  const warnings = book.sheets.flatMap((sheet) => [
    ...checkColumns(sheet, found),
    ...checkCalls(sheet, definitions, found),
  ])
  const hasWarning = new Set(warnings.map(({ sheet, address }) => `${sheet}!${address}`))
  const inNamed = checkNamedColumns(book, found).filter(({ sheet, address }) => !hasWarning.has(`${sheet}!${address}`))
  return [...checkErrors(book, found), ...warnings, ...inNamed, ...checkPriceDays(book, found)]
}
