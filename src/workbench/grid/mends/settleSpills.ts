/**
 * Calculates what reads spilled cells until none of them changes any more. The grid's engine calculates the readers of
 * what has spilled once, and no others: where a formula spilled into fewer cells than before, or refused, its readers
 * kept the old numbers, and where one spill led to the next, the last of them were old or empty, all without an error:
 * after COMPARE refused, the season went on naming the cheapest way of before. Seen with univer 0.25.1.
 */
import { ICommandService, type ICellData, type Injector, type IUnitRange, type Nullable } from '@univerjs/core'
import {
  type ISetArrayFormulaDataMutationParams,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationStartMutation,
} from '@univerjs/engine-formula'
import { endsCalculation } from '../endsCalculation'
import { blockedSpills } from './blockedSpills'

/** In the options of a calculation that goes on with the one before it. */
export const goesOn = 'sticksheetGoesOn'

/**
 * So many spills may lead to each other. What is another number at every calculation, such as a random one, would
 * never settle.
 */
const mostRounds = 20

interface SpilledCell {
  readonly at: IUnitRange
  readonly value: ICellData['v']
}

export function settleSpills(injector: Injector): void {
  const commands = injector.get(ICommandService)
  let known: ReadonlyMap<string, SpilledCell> = new Map()
  let changed: readonly IUnitRange[] = []
  let calculating: readonly IUnitRange[] = []
  let rounds = 0

  commands.onCommandExecuted(({ id, params }, options) => {
    if (id === SetArrayFormulaDataMutation.id) {
      const spills = params as ISetArrayFormulaDataMutationParams
      const now = spilledCells(spills)
      changed = [...changed, ...changedCells(known, now), ...freedFormulas(spills, goneCells(known, now))]
      known = now
    } else if (id === SetFormulaCalculationStartMutation.id && options?.[goesOn] !== true) {
      // What was edited meanwhile is calculated in the place of ours, which comes after it.
      changed = [...changed, ...calculating]
      calculating = []
      rounds = 0
    } else if (endsCalculation(id, params)) {
      calculating = rounds < mostRounds ? changed : []
      changed = []
      rounds += 1
      if (calculating.length === 0) return
      const goOn = SetFormulaCalculationStartMutation.id
      commands.syncExecuteCommand(goOn, { dirtyRanges: calculating }, { onlyLocal: true, [goesOn]: true })
    }
  })
}

type Spills = ISetArrayFormulaDataMutationParams

/** Without the cells of the formulas themselves, whose readers the engine knows. */
function spilledCells({ arrayFormulaCellData, arrayFormulaRange }: Spills): ReadonlyMap<string, SpilledCell> {
  const cells = new Map<string, SpilledCell>()
  for (const [unitId, sheets] of Object.entries(arrayFormulaCellData)) {
    for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
      for (const [row, columns] of Object.entries(rows ?? {})) {
        for (const [column, cell] of Object.entries<Nullable<ICellData>>(columns ?? {})) {
          if (!cell || arrayFormulaRange[unitId]?.[sheetId]?.[Number(row)]?.[Number(column)]) continue
          const [inRow, inColumn] = [Number(row), Number(column)]
          const range = { startRow: inRow, endRow: inRow, startColumn: inColumn, endColumn: inColumn }
          cells.set(`${unitId}\n${sheetId}\n${row}\n${column}`, { at: { unitId, sheetId, range }, value: cell.v })
        }
      }
    }
  }
  return cells
}

type SpilledCells = ReadonlyMap<string, SpilledCell>

function changedCells(before: SpilledCells, now: SpilledCells): readonly IUnitRange[] {
  const other = [...now].filter(([place, { value }]) => before.get(place)?.value !== value)
  return [...goneCells(before, now), ...other.map(([, { at }]) => at)]
}

function goneCells(before: SpilledCells, now: SpilledCells): readonly IUnitRange[] {
  return [...before].filter(([place]) => !now.has(place)).map(([, { at }]) => at)
}

/** The cells of formulas that could not spill because of others that are gone. */
function freedFormulas(spills: Spills, gone: readonly IUnitRange[]): readonly IUnitRange[] {
  if (gone.length === 0) return []
  return blockedSpills(spills.arrayFormulaRange, spills.arrayFormulaCellData)
    .filter((blocked) => gone.some((cell) => covers(blocked, cell)))
    .map(({ unitId, sheetId, range: { startRow, startColumn } }) => {
      const range = { startRow, endRow: startRow, startColumn, endColumn: startColumn }
      return { unitId, sheetId, range }
    })
}

function covers({ unitId, sheetId, range }: IUnitRange, cell: IUnitRange): boolean {
  const { startRow, startColumn } = cell.range
  if (unitId !== cell.unitId || sheetId !== cell.sheetId || startRow < range.startRow || startRow > range.endRow)
    return false
  return startColumn >= range.startColumn && startColumn <= range.endColumn
}
