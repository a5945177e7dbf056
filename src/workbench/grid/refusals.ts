/**
 * Why cells refuse. The grid keeps an error value of a cell but never the sentence that came with it, so the
 * sentences are kept here, by the cell whose formula called the function.
 */
import { ICommandService, type ICellData, type Injector, type Nullable } from '@univerjs/core'
import { SetFormulaCalculationNotificationMutation, SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import { movesPlaces } from './cacheGuard'

export interface Place {
  readonly workbook: string
  readonly sheet: string
  /** From 0, as the grid counts. */
  readonly row: number
  readonly column: number
}

interface Reason {
  readonly code: string
  readonly sentence: string
}

export class Refusals {
  private readonly byCell = new Map<string, readonly Reason[]>()
  /** The cell whose formula is being calculated: all its functions are called before those of the next cell. */
  private calculating: string | undefined

  /** Called between the calculations of two cells, so that one cell calculated twice in a row is seen as such. */
  cellIsDone(): void {
    this.calculating = undefined
  }

  refused(place: Place, code: string, sentence: string): void {
    const cell = this.begin(place)
    const reasons = this.byCell.get(cell) ?? []
    if (!reasons.some((reason) => reason.sentence === sentence)) this.byCell.set(cell, [...reasons, { code, sentence }])
  }

  /** One formula may call several functions: an answer of one does not take back what another refused. */
  answered(place: Place): void {
    this.begin(place)
  }

  forget(place: Place): void {
    this.byCell.delete(key(place))
  }

  forgetAll(): void {
    this.byCell.clear()
  }

  get isEmpty(): boolean {
    return this.byCell.size === 0
  }

  /**
   * Why the cell shows this error. Undefined where the error is not ours: a formula can catch a refusal (IFERROR)
   * and still fail for another reason.
   */
  sentence(place: Place, shownError: string): string | undefined {
    const reasons = this.byCell.get(key(place))?.filter(({ code }) => code === shownError) ?? []
    return reasons.length === 0 ? undefined : reasons.map(({ sentence }) => sentence).join(' ')
  }

  /** What the cell said when it was last calculated no longer holds. */
  private begin(place: Place): string {
    const cell = key(place)
    if (cell !== this.calculating) {
      this.byCell.delete(cell)
      this.calculating = cell
    }
    return cell
  }
}

/** By its text, because the package that names it draws on a canvas and does not load in Node. */
const setRangeValues = 'sheet.mutation.set-range-values'

/** Keeps the refusals true while the workbook is calculated and edited. */
export function keepRefusals(injector: Injector, refusals: Refusals): void {
  const commands = injector.get(ICommandService)
  commands.onCommandExecuted(({ id, params }, options) => {
    // The engine reports its progress only between two cells.
    if (id === SetFormulaCalculationStartMutation.id || id === SetFormulaCalculationNotificationMutation.id) refusals.cellIsDone()
    // A cell that holds something else now: if it calls no function any more, none will take the sentence back.
    if (id === setRangeValues && options?.['fromFormula'] !== true) forgetRewritten(refusals, params as Rewritten)
    // Cells stand elsewhere now; guardFormulaCaches has all of them calculated again, which finds every sentence anew.
    if (movesPlaces(id)) refusals.forgetAll()
  })
}

interface Rewritten {
  readonly unitId: string
  readonly subUnitId: string
  readonly cellValue?: Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>>>>
}

function forgetRewritten(refusals: Refusals, { unitId, subUnitId, cellValue = {} }: Rewritten): void {
  for (const [row, cells] of Object.entries(cellValue)) {
    for (const [column, cell] of Object.entries(cells)) {
      const onlyStyled = cell && !('v' in cell) && !('f' in cell)
      if (!onlyStyled) refusals.forget({ workbook: unitId, sheet: subUnitId, row: Number(row), column: Number(column) })
    }
  }
}

function key({ workbook, sheet, row, column }: Place): string {
  return `${workbook}\n${sheet}\n${row}\n${column}`
}
