/** The second engine: IronCalc, in WebAssembly. Nothing outside this file knows which engine it is. */
import init, { type InitOutput, initSync, Model, type SyncInitInput } from '@ironcalc/wasm'
import { isCellError } from '../../core/definition/problem'
import type { Position } from '../../formula/address'
import type { ReadCell } from '../../workbook/openBook'

let code: InitOutput | undefined

/** Fetches the engine's code from beside the page's scripts. */
export async function fetchSecondEngine(): Promise<void> {
  code = await init()
}

/** Where the code is at hand. */
export function takeSecondEngine(bytes: SyncInitInput): void {
  code = initSync({ module: bytes })
}

/** Places count from 0. */
export interface SecondEngine {
  put(sheet: number, at: Position, content: ReadCell): void
  /** False where the engine cannot read it at all. */
  putFormula(sheet: number, at: Position, formula: string): boolean
  calculate(): void
  /** The cells that the formula fills, row by row. */
  results(sheet: number, at: Position): readonly (readonly ReadCell[])[]
  close(): void
}

/** More digits than are compared; a cell's own format may show a day or money. */
const allDigits = '0.################E+00'

/** Of 140 it writes 1.39999999999999E+02. */
const surelyWritten = 12

const cellTypes = { number: 1, text: 2, logical: 4, error: 16 }

/** Made for about so many cells. */
export function secondEngine(sheets: readonly string[], cells: number): SecondEngine {
  reserve(cells * bytesOfCell)
  const model = new Model('witness', 'en', 'UTC', 'en')
  model.pauseEvaluation()
  sheets.forEach((name, index) => {
    if (index > 0) model.newSheet()
    model.renameSheet(index, name)
  })
  return {
    put: (sheet, { row, column }, content) => {
      if (content !== null) model.setUserInput(sheet, row + 1, column + 1, typed(content))
    },
    putFormula: (sheet, { row, column }, formula) => {
      try {
        model.setUserInput(sheet, row + 1, column + 1, formula)
        return true
      } catch {
        return false
      }
    },
    calculate: () => {
      model.resumeEvaluation()
      model.evaluate()
    },
    results: (sheet, { row, column }) => {
      const { width, height } = filledBy(model, sheet, row + 1, column + 1)
      model.updateRangeStyle({ sheet, row: row + 1, column: column + 1, width, height }, 'num_fmt', allDigits)
      return Array.from({ length: height }, (_row, down) =>
        Array.from({ length: width }, (_cell, right) => valueAt(model, sheet, row + 1 + down, column + 1 + right)),
      )
    },
    close: () => model.free(),
  }
}

const bytesOfCell = 1500

/** Takes the memory at once: whenever the engine took a little more, the whole heap of the script would be searched. */
function reserve(bytes: number): void {
  const place = code!.__wbindgen_malloc(bytes, 1)
  code!.__wbindgen_free(place, bytes, 1)
}

/** As somebody would type it into a cell. */
function typed(content: NonNullable<ReadCell>): string {
  if (isCellError(content)) return content.code
  if (typeof content === 'string') return `'${content}`
  return String(content).toUpperCase()
}

function filledBy(model: Model, sheet: number, row: number, column: number): { width: number; height: number } {
  const structure = model.getCellArrayStructure(sheet, row, column)
  if (typeof structure === 'string' || !('DynamicAnchor' in structure)) return { width: 1, height: 1 }
  const [width, height] = structure.DynamicAnchor
  return { width, height }
}

function valueAt(model: Model, sheet: number, row: number, column: number): ReadCell {
  const text = model.getFormattedCellValue(sheet, row, column)
  switch (model.getCellType(sheet, row, column)) {
    case cellTypes.number:
      return Number(Number(text).toPrecision(surelyWritten))
    case cellTypes.logical:
      return text === 'TRUE'
    case cellTypes.error:
      return { kind: 'cellError', code: text }
    default:
      return text
  }
}

const known = new Map<string, boolean>()

/** Whether it has a function of that name: what is not known would be an error that a formula may catch. */
export function knowsFunction(name: string): boolean {
  const before = known.get(name)
  if (before !== undefined) return before
  const model = new Model('names', 'en', 'UTC', 'en')
  model.setUserInput(0, 1, 1, `=${name}()`)
  const isKnown = model.getFormattedCellValue(0, 1, 1) !== '#NAME?'
  model.free()
  known.set(name, isKnown)
  return isKnown
}
