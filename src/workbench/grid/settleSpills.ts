/**
 * Calculates what reads spilled cells until none of them changes any more. The grid's engine calculates the readers of
 * what has spilled once, and no others: where a formula spilled into fewer cells than before, or refused, its readers
 * kept the old numbers, and where one spill led to the next, the last of them were old or empty, all without an error.
 */
import { ICommandService, type ICellData, type Injector, type IUnitRange, type Nullable } from '@univerjs/core'
import { type ISetArrayFormulaDataMutationParams, SetArrayFormulaDataMutation, SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import { endsCalculation } from './endsCalculation'

/** In the options of a calculation that goes on with the one before it. */
export const goesOn = 'sticksheetGoesOn'

/** So many spills may lead to each other. What is another number at every calculation, such as a random one, would never settle. */
const mostRounds = 20

interface SpilledCell {
  readonly at: IUnitRange
  readonly value: ICellData['v']
}

export function settleSpills(injector: Injector): void {
  const commands = injector.get(ICommandService)
  let known: ReadonlyMap<string, SpilledCell> = new Map()
  let changed: IUnitRange[] = []
  let calculating: readonly IUnitRange[] = []
  let rounds = 0

  commands.onCommandExecuted(({ id, params }, options) => {
    if (id === SetArrayFormulaDataMutation.id) {
      const now = spilledCells(params as ISetArrayFormulaDataMutationParams)
      changed.push(...changedCells(known, now))
      known = now
    } else if (id === SetFormulaCalculationStartMutation.id && options?.[goesOn] !== true) {
      // What was edited meanwhile is calculated in the place of ours, which comes after it.
      changed.push(...calculating)
      calculating = []
      rounds = 0
    } else if (endsCalculation(id, params)) {
      calculating = rounds < mostRounds ? changed : []
      changed = []
      rounds += 1
      if (calculating.length > 0) commands.syncExecuteCommand(SetFormulaCalculationStartMutation.id, { dirtyRanges: calculating }, { onlyLocal: true, [goesOn]: true })
    }
  })
}

/** Without the cells of the formulas themselves, whose readers the engine knows. */
function spilledCells({ arrayFormulaCellData, arrayFormulaRange }: ISetArrayFormulaDataMutationParams): ReadonlyMap<string, SpilledCell> {
  const cells = new Map<string, SpilledCell>()
  for (const [unitId, sheets] of Object.entries(arrayFormulaCellData)) {
    for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
      for (const [row, columns] of Object.entries(rows ?? {})) {
        for (const [column, cell] of Object.entries<Nullable<ICellData>>(columns ?? {})) {
          if (!cell || arrayFormulaRange[unitId]?.[sheetId]?.[Number(row)]?.[Number(column)]) continue
          const range = { startRow: Number(row), endRow: Number(row), startColumn: Number(column), endColumn: Number(column) }
          cells.set(`${unitId}\n${sheetId}\n${row}\n${column}`, { at: { unitId, sheetId, range }, value: cell.v })
        }
      }
    }
  }
  return cells
}

function changedCells(before: ReadonlyMap<string, SpilledCell>, now: ReadonlyMap<string, SpilledCell>): readonly IUnitRange[] {
  const isOther = (than: ReadonlyMap<string, SpilledCell>) => ([place, { value }]: [string, SpilledCell]) => than.get(place)?.value !== value
  const gone = [...before].filter(([place]) => !now.has(place))
  return [...gone, ...[...now].filter(isOther(before))].map(([, { at }]) => at)
}
