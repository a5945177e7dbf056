import { useEffect, useState } from 'react'
import { blockAddress } from '../formula/address'
import { quotedSheet } from '../formula/reference'
import type { RangeRead } from '../formula/rangesRead'
import type { ReadCell } from '../workbook/openBook'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { cellsRead, isOneCell, type CellsRead } from '../workbook/working/cellsRead'
import { labelOf } from '../workbook/working/labelOf'

export interface ShownCells extends CellsRead {
  /** What the sheet calls them; empty where it does not say. */
  readonly label: string
  /** Of a single cell. */
  readonly value?: ReadCell
}

/** What the selected cell's formula reads; undefined while that is looked up, and where the host cannot tell. */
export function useCellsRead(port: WorkbookPort, cell: SelectedCell | undefined): readonly ShownCells[] | undefined {
  const [shown, setShown] = useState<readonly ShownCells[]>()
  useEffect(() => {
    let isCurrent = true
    const show = (answer: readonly ShownCells[] | undefined) => {
      if (isCurrent) setShown(answer)
    }
    if (cell === undefined || cell.formula === '') show([])
    else lookUp(port, cell).then(show, () => show(undefined))
    return () => {
      isCurrent = false
    }
    // A cell is read anew whenever it or its content changes, and is another object then.
  }, [port, cell])
  return shown
}

async function lookUp(port: WorkbookPort, { formula, sheet }: SelectedCell): Promise<readonly ShownCells[]> {
  const read = cellsRead(formula, sheet, await port.names())
  return Promise.all(read.map(async (cells): Promise<ShownCells> => {
    const { top, left } = cells.range
    const within = (block: Pick<RangeRead, 'top' | 'left'>) => `${quotedSheet(cells.sheet)}!${blockAddress({ ...block, bottom: top, right: left })}`
    // The row up to the cell and the column down to it hold whatever could name it, and the cell itself.
    const [row = [[]], column = []] = await Promise.all([port.valuesOf(within({ top, left: 0 }), sheet), port.valuesOf(within({ top: 0, left }), sheet)])
    const valueAt = (atRow: number, atColumn: number): ReadCell => (atColumn === left ? column[atRow]?.[0] : row[0]?.[atColumn]) ?? null
    const label = labelOf(cells.range, valueAt)
    return isOneCell(cells.range) ? { ...cells, label, value: valueAt(top, left) } : { ...cells, label }
  }))
}
