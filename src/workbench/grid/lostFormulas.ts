/**
 * Asks where a change of several cells puts values, or nothing, over formulas: a list pasted one column too far to the
 * right would take results away without a word. The grid changes cells in many ways, but each of them puts the way back
 * on the list of undos, with the cells as they were: so what was lost is read there, whatever took it. Until the answer
 * the change stands, and is taken back as a whole where the answer is no.
 */
import {
  generateRandomId,
  type ICellData,
  ICommandService,
  type IMutationInfo,
  type Injector,
  type IUndoRedoItem,
  IUndoRedoService,
  IUniverInstanceService,
  type Nullable,
  type Workbook,
} from '@univerjs/core'
import {
  type IMoveRangeMutationParams,
  type IRemoveColMutationParams,
  type IRemoveRowsMutationParams,
  InsertColMutation,
  InsertRowMutation,
  type ISetRangeValuesMutationParams,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  ReorderRangeMutation,
  SetRangeValuesMutation,
} from '@univerjs/preset-sheets-core'
import { addressOf } from '../../formula/address'

export interface LostFormulas {
  readonly sheet: string
  /** Without dollar signs, row by row. */
  readonly addresses: readonly string[]
  /** Whether the other cells of the change can stay without these: not where cells were moved, whose values would go. */
  readonly canKeep: boolean
}

export type AskAboutFormulas = (lost: LostFormulas) => Promise<Answer>
type Answer = 'replace' | 'keep' | 'cancel'

/** What was agreed to in the pane already. */
const agreed = new WeakSet<Injector>()

/** Changes cells without a question. */
export function asAgreed<Result>(injector: Injector, act: () => Result): Result {
  agreed.add(injector)
  try {
    return act()
  } finally {
    agreed.delete(injector)
  }
}

export function askAboutFormulas(injector: Injector, ask: AskAboutFormulas): void {
  const undos = injector.get(IUndoRedoService)
  const seen = new WeakSet<IUndoRedoItem>()
  undos.undoRedoStatus$.subscribe(() => {
    const item = undos.pitchTopUndoElement()
    if (!item || seen.has(item)) return
    seen.add(item)
    const lost = agreed.has(injector) ? undefined : lostBy(injector, item)
    if (lost !== undefined) void ask(lost).then((answer) => follow(answer, item, lost))
  })

  function follow(answer: Answer, item: IUndoRedoItem, { putBack }: Lost): void {
    if (answer === 'cancel') {
      // The list takes an item away by its id; the grid gives few of them one.
      item.id ??= generateRandomId()
      undos.rollback(item.id, item.unitID)
    } else if (answer === 'keep') {
      // The undo of the whole change puts the same formulas back; a redo has to keep them again.
      injector.get(ICommandService).syncExecuteCommand(putBack.id, putBack.params)
      item.redoMutations.push(putBack)
    }
  }
}

interface Lost extends LostFormulas {
  readonly putBack: IMutationInfo<ISetRangeValuesMutationParams>
}

type Cells = Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>>>>

/** Whole rows or columns come, go or change places: formulas go with them. */
const ofWholeRows = new Set([
  InsertRowMutation.id,
  InsertColMutation.id,
  RemoveRowMutation.id,
  RemoveColMutation.id,
  MoveRowsMutation.id,
  MoveColsMutation.id,
  ReorderRangeMutation.id,
])

function shiftsCells(open: Workbook, { id, params }: IMutationInfo): boolean {
  if (id !== RemoveRowMutation.id && id !== RemoveColMutation.id) return ofWholeRows.has(id)
  // What is pasted over the edge of a sheet adds rows and columns behind all others.
  const { subUnitId, range } = params as IRemoveRowsMutationParams | IRemoveColMutationParams
  const sheet = open.getSheetBySheetId(subUnitId)
  return id === RemoveRowMutation.id
    ? range.endRow + 1 < (sheet?.getRowCount() ?? 0)
    : range.endColumn + 1 < (sheet?.getColumnCount() ?? 0)
}

/** Of a change that was made already, by what would take it back. */
function lostBy(injector: Injector, { unitID: unitId, undoMutations: takeBack }: IUndoRedoItem): Lost | undefined {
  const open = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId)
  if (!open || takeBack.some((one) => shiftsCells(open, one))) return undefined
  const canKeep = !takeBack.some(({ id }) => id === MoveRangeMutation.id)
  const places = new Set<string>()
  const lost: Lost[] = []
  for (const { id, params } of takeBack) {
    // What a move takes along are formulas that read the moved cells.
    const before = !canKeep && id === SetRangeValuesMutation.id ? undefined : cellsBefore(id, params)
    const worksheet = before && open.getSheetBySheetId(before.sheet)
    if (!before || !worksheet) continue
    const addresses: string[] = []
    const cellValue: Record<number, Record<number, ICellData>> = {}
    for (const { row, column, cell } of listed(before.cells)) {
      const place = `${before.sheet}\n${addressOf(row, column)}`
      const isNew = !places.has(place)
      places.add(place)
      if (!isNew || !cell?.f || worksheet.getCellRaw(row, column)?.f) continue
      addresses.push(addressOf(row, column))
      const inRow = (cellValue[row] ??= {})
      inRow[column] = cell
    }
    const putBack = { id: SetRangeValuesMutation.id, params: { unitId, subUnitId: before.sheet, cellValue } }
    if (addresses.length > 0) lost.push({ sheet: worksheet.getName(), addresses, canKeep, putBack })
  }
  // Whoever types over one cell, or empties it, sees what goes.
  return places.size > 1 ? lost[0] : undefined
}

function cellsBefore(id: string, params: object): { readonly sheet: string; readonly cells: Cells } | undefined {
  if (id === SetRangeValuesMutation.id) {
    const { subUnitId, cellValue = {} } = params as ISetRangeValuesMutationParams
    return { sheet: subUnitId, cells: cellValue }
  }
  if (id !== MoveRangeMutation.id) return undefined
  // What is moved back comes from where it was moved to, and leaves there what stood there before.
  const { from } = params as IMoveRangeMutationParams
  return { sheet: from.subUnitId, cells: from.value as Cells }
}

function listed(cells: Cells) {
  return Object.entries(cells).flatMap(([row, columns]) =>
    Object.entries(columns).map(([column, cell]) => ({ row: Number(row), column: Number(column), cell })),
  )
}
