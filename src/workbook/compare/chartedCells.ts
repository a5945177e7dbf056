/** Where a workbook calls the functions whose results the pane draws. */
import { callArguments } from '../../formula/callArguments'
import { idsCalled } from '../../formula/idsCalled'
import { waitedFor } from '../../formula/waiting'
import type { OpenBook, OpenCell } from '../openBook'
import type { CellPlace } from '../cellPlace'

const chartedIds = ['COMPARE', 'ROOTINGCOST', 'REUSELEDGER', 'BREAKEVEN', 'SWINGS', 'ODDS'] as const
export type ChartedId = (typeof chartedIds)[number]

/** One call; a cell whose formula makes several is there once for each. */
export interface ChartedCell extends CellPlace {
  /** From 0. */
  readonly row: number
  readonly column: number
  readonly id: ChartedId
  readonly args: readonly unknown[]
  /** True where the formula is the call alone, or waits to be, so that the cells show its result as it is. */
  readonly alone: boolean
}

export interface ChartedCells {
  readonly cells: readonly ChartedCell[]
  /** True where a formula names one of the functions and the host has not seen it calculated. */
  readonly someUnseen: boolean
}

export function chartedCells(book: OpenBook): ChartedCells {
  const all = book.sheets.flatMap((sheet) =>
    [...sheet.cells].map(([address, cell]) => ({ sheet: sheet.name, address, cell })),
  )
  return {
    cells: all.flatMap(({ sheet, address, cell }) =>
      callsOf(cell).map(({ id, args }): ChartedCell => ({
        sheet,
        address,
        row: cell.row,
        column: cell.column,
        id,
        args,
        alone: callArguments(waitedFor(cell.formula), id) !== undefined,
      })),
    ),
    someUnseen: all.some(({ cell: { formula, calls } }) => calls === undefined && idsCalled(formula).some(isCharted)),
  }
}

/** A cell that waits for others shows nothing, though a host may have tried the call. */
function callsOf({
  calls = [],
  value,
}: OpenCell): readonly { readonly id: ChartedId; readonly args: readonly unknown[] }[] {
  if (value === '') return []
  return calls.flatMap(({ id, args }) => (isCharted(id) ? [{ id, args }] : []))
}

function isCharted(id: string): id is ChartedId {
  return (chartedIds as readonly string[]).includes(id)
}
