/**
 * Keeps results out of the index of a column that nobody searches. The grid's engine notes in which rows of a column
 * each value stands, for lookups; into that index it puts every result of every column, and looks for the row's old
 * value under each other value of the column first, so that a column of twice as many different results took four times
 * as long. What is noted of rows that no lookup has been through is never read: the first lookup notes them itself.
 * Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { CELL_INVERTED_INDEX_CACHE as index } from '@univerjs/engine-formula'
import { replaceShared } from './replaced'

type Put = typeof index.set

export function indexSearchedRows(injector: Injector): void {
  replaceShared<'set', Put>(injector, index, 'set', putSearched)
}

function putSearched(put: Put): Put {
  return (workbook, sheet, column, value, row, isResult) => {
    const isUnread = isResult === true && index.shouldContinueBuildingCache(workbook, sheet, column, row)
    if (!isUnread) put.call(index, workbook, sheet, column, value, row, isResult)
  }
}
