/**
 * The calls that each cell's formula made of our functions. The grid keeps a cell's value or error, but neither the
 * sentence that came with a refusal nor the arguments that a working needs, so they are kept here.
 */
import { ICommandService, type ICellData, type Injector, type Nullable } from '@univerjs/core'
import { SetFormulaCalculationNotificationMutation, SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import type { MadeCall } from '../../derived/madeCall'
import { movesPlaces } from './movesPlaces'

export interface Place {
  readonly workbook: string
  readonly sheet: string
  /** From 0, as the grid counts. */
  readonly row: number
  readonly column: number
}

export class CellCalls {
  private readonly byCell = new Map<string, MadeCall[]>()
  private readonly refusing = new Set<string>()
  /** The cell whose formula is being calculated: all its functions are called before those of the next cell. */
  private calculating: string | undefined

  /** Called between the calculations of two cells, so that one cell calculated twice in a row is seen as such. */
  cellIsDone(): void {
    this.calculating = undefined
  }

  /** One formula may call several functions: what one answers does not take back what another refused. */
  made(place: Place, call: MadeCall): void {
    const cell = key(place)
    // What the cell did when it was last calculated no longer holds.
    if (cell !== this.calculating) this.forgetKey(cell)
    this.calculating = cell
    const calls = this.byCell.get(cell)
    if (calls === undefined) this.byCell.set(cell, [call])
    else calls.push(call)
    if (call.outcome.kind === 'error') this.refusing.add(cell)
  }

  /** In the order in which they were made: those within others first. */
  of(place: Place): readonly MadeCall[] {
    return this.byCell.get(key(place)) ?? []
  }

  forget(place: Place): void {
    this.forgetKey(key(place))
  }

  forgetAll(): void {
    this.byCell.clear()
    this.refusing.clear()
    this.calculating = undefined
  }

  get refuseNowhere(): boolean {
    return this.refusing.size === 0
  }

  /**
   * Why the cell shows this error. Undefined where the error is not ours: a formula can catch a refusal (IFERROR)
   * and still fail for another reason.
   */
  sentence(place: Place, shownError: string): string | undefined {
    if (!this.refusing.has(key(place))) return undefined
    const sentences = this.of(place).flatMap(({ outcome }) =>
      outcome.kind === 'error' && outcome.code === shownError ? [outcome.sentence] : [],
    )
    return sentences.length === 0 ? undefined : [...new Set(sentences)].join(' ')
  }

  private forgetKey(cell: string): void {
    this.byCell.delete(cell)
    this.refusing.delete(cell)
  }
}

/** By its text, because the package that names it draws on a canvas and does not load in Node. */
const setRangeValues = 'sheet.mutation.set-range-values'

/** Keeps the calls true while the workbook is calculated and edited. */
export function keepCellCalls(injector: Injector, calls: CellCalls): void {
  const commands = injector.get(ICommandService)
  commands.onCommandExecuted(({ id, params }, options) => {
    // The engine reports its progress only between two cells.
    if (id === SetFormulaCalculationStartMutation.id || id === SetFormulaCalculationNotificationMutation.id)
      calls.cellIsDone()
    // A cell that holds something else now: if it calls no function any more, none will take the old calls back.
    if (id === setRangeValues && options?.['fromFormula'] !== true) forgetRewritten(calls, params as Rewritten)
    // Cells stand elsewhere now; guardFormulaCaches has all of them calculated again, which makes every call anew.
    if (movesPlaces(id)) calls.forgetAll()
  })
}

interface Rewritten {
  readonly unitId: string
  readonly subUnitId: string
  readonly cellValue?: Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>>>>
}

function forgetRewritten(calls: CellCalls, { unitId, subUnitId, cellValue = {} }: Rewritten): void {
  for (const [row, cells] of Object.entries(cellValue)) {
    for (const [column, cell] of Object.entries(cells)) {
      const onlyStyled = cell && !('v' in cell) && !('f' in cell)
      if (!onlyStyled) calls.forget({ workbook: unitId, sheet: subUnitId, row: Number(row), column: Number(column) })
    }
  }
}

function key({ workbook, sheet, row, column }: Place): string {
  return `${workbook}\n${sheet}\n${row}\n${column}`
}
