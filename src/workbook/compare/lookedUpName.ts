import { placeOf, type CellFunction, type Parameters } from '../../core/definition/definition'
import { onlyCall } from '../../formula/onlyCall'
import { waitedFor } from '../../formula/waiting'
import type { OpenBook, OpenCell } from '../openBook'
import { sheetNamed } from '../sheetNamed'
import { cellsRead, isOneCell } from '../working/cellsRead'
import type { ChartedCell } from './chartedCells'

/**
 * What an argument is the cost of, where it is looked up by one name: "Rockwool" where its cell holds
 * =INDEX(Costs,MATCH(E5,Names,0)) and that word stands in E5.
 */
export function lookedUpName<P extends Parameters>(
  { sheet, address, id }: ChartedCell,
  definition: CellFunction<P>,
  parameter: keyof P & string,
  book: OpenBook,
): string | undefined {
  const { formula = '' } = sheetNamed(book, sheet)?.cells.get(address) ?? {}
  const written = onlyCall(formula, id)?.[placeOf(definition, parameter)]
  if (written === undefined) return undefined
  const given = oneCellsRead(`=${written}`, sheet, book)
  const behind = given.flatMap((read) => oneCellsRead(waitedFor(read.cell.formula), read.sheet, book))
  const [name, ...others] = new Set(
    [...given, ...behind]
      .map(({ cell: { value } }) => value)
      .filter((value) => typeof value === 'string' && value !== ''),
  )
  return others.length === 0 ? (name as string | undefined) : undefined
}

interface Read {
  readonly sheet: string
  readonly cell: OpenCell
}

function oneCellsRead(formula: string, sheet: string, book: OpenBook): readonly Read[] {
  return cellsRead(formula, sheet, book.names)
    .filter(({ range }) => isOneCell(range))
    .flatMap((read): Read[] => {
      const cell = sheetNamed(book, read.sheet)?.cells.get(read.address)
      return cell === undefined ? [] : [{ sheet: read.sheet, cell }]
    })
}
