import type { Words } from '../../wording/words'
import type { OpenBook } from '../openBook'
import { isWaiting } from '../waiting'
import type { Finding } from './finding'
import { tracedErrors } from './tracedErrors'

/** Cells that show an error: where it comes from, and which of the cells that only pass it on. */
export function checkErrors(book: OpenBook, found: Words['found']): readonly Finding[] {
  return tracedErrors(book).map(({ sheet, address, code, sentence, sources }) => {
    if (isWaiting({ kind: 'cellError', code })) return { sheet, address, kind: 'warning', sentence: found.waits() }
    const [source] = sources
    const origin =
      source === undefined
        ? found.shows(code)
        : found.follows(code, sources.length, `${source.sheet}!${source.address}`)
    return { sheet, address, kind: 'error', sentence: sentence ?? origin }
  })
}
