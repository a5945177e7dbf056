import { placeOf, type CellFunction, type Parameters } from '../../core/definition/definition'
import { isBlank } from '../../core/definition/readArguments'
import { onlyCall } from '../../formula/onlyCall'
import { namedRanges, rangesRead } from '../../formula/rangesRead'
import { waitedFor } from '../../formula/waiting'
import { labelsOf } from '../labels'
import type { OpenBook } from '../openBook'
import { sheetNamed } from '../sheetNamed'
import type { ChartedCell } from './chartedCells'

/**
 * What the sheet itself calls the arguments that stand by name in a column: the words right of each name, else left of
 * it. One after the other, as the call was given them; undefined where there are none.
 */
export function wordsBeside<P extends Parameters>(
  { sheet, address, id, args }: ChartedCell,
  definition: CellFunction<P>,
  parameter: keyof P & string,
  book: OpenBook,
): readonly (string | undefined)[] {
  const place = placeOf(definition, parameter)
  const written = onlyCall(sheetNamed(book, sheet)?.cells.get(address)?.formula ?? '', id)?.[place]
  const names = namedRanges(book.names)
  const [range, ...more] = written === undefined ? [] : rangesRead(waitedFor(`=${written}`), sheet, names)
  if (range === undefined || range.left !== range.right || more.length > 0) return []
  const held = sheetNamed(book, range.sheet)
  const textAt = (row: number, column: number) => held && labelsOf(held.cells).textAt(range.top + row, column)
  const given = [args[place]].flat(2)
  return given.flatMap((name, row) =>
    isBlank(name) ? [] : [textAt(row, range.left + 1) ?? textAt(row, range.left - 1)],
  )
}
