/** What of the open workbook goes into a file, and what no file holds yet. */
import type { Book } from '../../workbook/book'
import type { OpenBook } from '../../workbook/openBook'
import { PortProblem, type WorkbookPort } from '../../workbook/port'
import { endsWithin } from './endsWithin'
import { gridToBook } from './gridToBook'
import type { OpenGrid } from './open'
import { readBook } from './read'
import { onEdit } from './watch'

export interface CalculatedBook {
  readonly book: Book
  /** Absent where the calculation did not end in time. */
  readonly results?: OpenBook
}

/** In milliseconds. A file without results is better than none: whatever opens it calculates anew. */
const longestWait = 20_000

export interface Saving {
  /** Replaces the open workbook; resolves once the new one is calculated. */
  open(book: Book): Promise<void>
  /** Takes in what is still being typed. */
  endTyping(): Promise<void>
  /** The workbook as it is now; what is still being typed is taken in first, and all is calculated. */
  calculated(): Promise<CalculatedBook>
  /** From now on only what differs from this book counts as unsaved. */
  markSaved(book: Book): void
  /** From now on the open workbook counts as unsaved, also as it is. */
  markUnsaved(): void
  /** The workbook as it is now, without what is still being typed; undefined where it is as it was opened or saved. */
  unsaved(): Book | undefined
  /** Calls back whenever something in the workbook was changed; returns the way to stop. */
  onEdit(listener: () => void): () => void
  /** Whether something would be lost: a change since the workbook was opened or saved, or what is being typed. */
  hasUnsaved(): boolean
}

/** Once the first workbook is calculated. */
export function saving(grid: OpenGrid): Saving {
  const { workbook, replace } = grid
  const bookNow = (): Book => gridToBook(workbook().save())
  // Whoever turns to another sheet has changed nothing.
  const asText = ({ shown: _, ...book }: Book): string => JSON.stringify(book)
  let kept: string | undefined = asText(bookNow())
  const unsaved = (): Book | undefined => {
    const book = bookNow()
    return asText(book) === kept ? undefined : book
  }
  const endTyping = async () => {
    await workbook().endEditingAsync(true)
  }
  return {
    async open(next) {
      await replace(next)
      kept = asText(bookNow())
    },
    endTyping,
    async calculated() {
      await endTyping()
      // What was just typed may still wait for its calculation, and a file must not hold the results of before.
      const isCalculated = await endsWithin(longestWait, grid.calculate())
      const shown = workbook().getActiveSheet().getSheetName()
      return { book: { ...bookNow(), shown }, ...(isCalculated && { results: readBook(grid) }) }
    },
    markSaved(saved) {
      kept = asText(saved)
    },
    markUnsaved() {
      kept = undefined
    },
    unsaved,
    onEdit: (listener) => onEdit(grid.injector, listener),
    hasUnsaved: () => workbook().isCellEditing() || unsaved() !== undefined,
  }
}

type Change = Parameters<NonNullable<WorkbookPort['saveCopy']>>[0]

/** The bytes of an .xlsx file that holds the open workbook, changed on the way. */
export async function copyOf({ calculated }: Saving, change: Change): Promise<Uint8Array> {
  const { writeXlsx } = await import('../xlsx/writeXlsx')
  const { book, results } = await calculated()
  // A copy holds values in the place of formulas, which must not be old.
  if (results === undefined) throw new PortProblem('hostFailed')
  const copy = change(book, results)
  return writeXlsx(copy.book, copy.calculated)
}
