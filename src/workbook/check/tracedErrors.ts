import { isCellError } from '../../core/definition/problem'
import { namedRanges, rangesRead, type RangeRead } from '../../formula/rangesRead'
import type { OpenBook, OpenCell } from '../openBook'
import type { CellPlace } from '../cellPlace'

/** A cell that shows an error, and where it comes from. */
export interface TracedError extends CellPlace {
  readonly code: string
  /** Why one of our functions refused; such a cell passes nothing on. */
  readonly sentence: string | undefined
  /** The cells in error that it reads; none where the error begins here. */
  readonly sources: readonly CellPlace[]
}

interface CellInError extends CellPlace {
  readonly cell: OpenCell
  readonly code: string
}

export function tracedErrors(book: OpenBook): readonly TracedError[] {
  const names = namedRanges(book.names)
  const inError = book.sheets.flatMap(({ name, cells }) =>
    [...cells].flatMap(([address, cell]): CellInError[] =>
      isCellError(cell.value) ? [{ sheet: name, address, cell, code: cell.value.code }] : [],
    ),
  )
  const errorsIn = errorsByPlace(inError)
  return inError.map(({ sheet, address, cell: { formula, sentence }, code }) => {
    const ranges = sentence === undefined && formula !== '' ? rangesRead(formula, sheet, names) : []
    return { sheet, address, code, sentence, sources: [...new Set(ranges.flatMap(errorsIn))] }
  })
}

/** Looks them up by place, since a broken sheet may hold thousands of cells that all read each other. */
function errorsByPlace(inError: readonly CellInError[]): (range: RangeRead) => readonly CellInError[] {
  const bySheet = new Map<string, Map<number, Map<number, CellInError>>>()
  for (const one of inError) {
    const columns = bySheet.get(one.sheet.toLowerCase()) ?? new Map<number, Map<number, CellInError>>()
    bySheet.set(one.sheet.toLowerCase(), columns)
    columns.set(
      one.cell.column,
      (columns.get(one.cell.column) ?? new Map<number, CellInError>()).set(one.cell.row, one),
    )
  }
  return ({ sheet, top, left, bottom, right }) =>
    [...(bySheet.get(sheet.toLowerCase()) ?? [])]
      .filter(([column]) => column >= left && column <= right)
      .flatMap(([, byRow]) =>
        bottom - top < byRow.size
          ? Array.from({ length: bottom - top + 1 }, (_, row) => byRow.get(top + row)).filter(
              (one) => one !== undefined,
            )
          : [...byRow.values()].filter(({ cell }) => cell.row >= top && cell.row <= bottom),
      )
}
