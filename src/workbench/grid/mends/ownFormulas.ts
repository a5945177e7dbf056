/**
 * Gives every cell its own formula. The grid keeps a formula that was copied or filled once, in its first cell, and
 * in the others no more than an id of it: whoever reads the cells, to save or to check them, would find values there,
 * and in the saved file the copies would follow their inputs no more. Seen with univer 0.25.1.
 */
import { ICommandService, type ICellData, type Injector, type Nullable } from '@univerjs/core'
import { LexerTreeBuilder } from '@univerjs/engine-formula'

/** By its text, because the package that names it draws on a canvas and does not load in Node. */
const setRangeValues = 'sheet.mutation.set-range-values'

interface Written {
  readonly cellValue?: Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>>>>
}

/** The first cell of a copy or fill is written with the formula and the id, the others with or after it with the id. */
export function giveOwnFormulas(injector: Injector): void {
  const lexer = injector.get(LexerTreeBuilder)
  const firsts = new Map<string, First>()
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    if (id !== setRangeValues || options?.['fromFormula'] === true) return
    const sharing = cellsOf(params as Written)
    for (const { cell, row, column } of sharing) if (cell.f) firsts.set(cell.si!, { formula: cell.f, row, column })
    for (const { cell, row, column } of sharing) {
      const first = firsts.get(cell.si!)
      if (!first) continue
      cell.f ||= lexer.moveFormulaRefOffset(first.formula, column - first.column, row - first.row)
      cell.si = null
    }
  })
}

interface First {
  readonly formula: string
  readonly row: number
  readonly column: number
}

interface Sharing {
  readonly cell: ICellData
  readonly row: number
  readonly column: number
}

function cellsOf({ cellValue = {} }: Written): readonly Sharing[] {
  return Object.entries(cellValue).flatMap(([row, cells]) =>
    Object.entries(cells).flatMap(([column, cell]) =>
      cell?.si ? [{ cell, row: Number(row), column: Number(column) }] : [],
    ),
  )
}
