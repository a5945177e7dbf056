import { useEffect, useState } from 'react'
import { labelsOf } from '../workbook/labels'
import { mostRows, rowsBelowTotals } from '../workbook/sheetHeadings'
import type { OpenCell, ReadCell } from '../workbook/openBook'
import type { SelectedCell, WorkbookPort } from '../workbook/port'
import { cellsRead, isOneCell, type CellsRead } from '../workbook/working/cellsRead'

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
  const sheets = new Map(
    await Promise.all(
      [...new Set(read.map((cells) => cells.sheet))].map(async (name) => {
        const tops = read.filter((cells) => cells.sheet === name).map(({ range }) => range.top)
        const rows = await port.readRows(
          name,
          Math.max(0, Math.min(...tops) - mostRows),
          Math.max(...tops) + rowsBelowTotals,
        )
        return [name, rows?.cells ?? new Map<string, OpenCell>()] as const
      }),
    ),
  )
  return read.map((cells): ShownCells => {
    const held = sheets.get(cells.sheet)!
    const label = labelsOf(held).textOf(cells.range)
    return { ...cells, label, ...(isOneCell(cells.range) && { value: held.get(cells.address)?.value ?? null }) }
  })
}
