/** What becomes of cells that use our functions, for people without the add-in: plain formulas, or values. */
import { isCellError } from '../../core/definition/problem'
import type { Definition } from '../../core/definition/definition'
import { addressesIn, blockOf } from '../../formula/address'
import { idsCalled } from '../../formula/idsCalled'
import { plainCell } from '../../derived/plainCell'
import { holds, type RangeRead } from '../../formula/rangesRead'
import type { OpenCell, OpenSheet } from '../openBook'

export type Into = 'formulas' | 'values'

export interface PlainFate {
  readonly sheet: string
  readonly address: string
  readonly cell: OpenCell
  readonly becomes: 'formula' | 'value' | 'left'
  /** Where it becomes a formula. */
  readonly formula?: string
  /** Why it becomes no formula; absent where a value was asked for. */
  readonly because?: NoFormula
}

export type NoFormula =
  | { readonly kind: 'error'; readonly code: string; readonly sentence?: string }
  /** A function that has no plain formula, with the reason of its definition where that is why. */
  | { readonly kind: 'function'; readonly id: string; readonly reason?: string }
  | { readonly kind: 'unit'; readonly text: string }
  | { readonly kind: 'length' }

/** The longest formula that Excel takes, in characters. */
const longestFormula = 8192

/** @param within Only cells of this block; all where it is missing. */
export function plainFates(
  sheet: OpenSheet,
  into: Into,
  definitions: readonly Definition[],
  within?: RangeRead,
): readonly PlainFate[] {
  const spilled = spilledCells(sheet)
  return [...sheet.cells].flatMap(([address, cell]) => {
    const isMeant = within === undefined || holds(within, sheet.name, cell.row, cell.column)
    // Some hosts show the formula in every cell that it fills.
    if (!isMeant || idsCalled(cell.formula).length === 0 || spilled.has(address)) return []
    return [{ sheet: sheet.name, address, cell, ...fateOf(cell, sheet, into, definitions) }]
  })
}

function fateOf(
  cell: OpenCell,
  { cells }: OpenSheet,
  into: Into,
  definitions: readonly Definition[],
): Pick<PlainFate, 'becomes' | 'formula' | 'because'> {
  const { formula, spill, sentence } = cell
  const shown = [cell, ...cellsFilledBy(spill).map((address) => cells.get(address))]
  const value = shown.map((one) => one?.value).find(isCellError)
  // A plain formula could give a number where our function refuses, and that refusal would be lost.
  if (value !== undefined)
    return { becomes: 'left', because: { kind: 'error', code: value.code, ...(sentence && { sentence }) } }
  if (into === 'values') return { becomes: 'value' }
  const plain = plainCell(formula, definitions)
  if ('without' in plain) {
    const { id, reason } = plain.without[0]!
    return { becomes: 'value', because: { kind: 'function', id, ...(reason !== undefined && { reason }) } }
  }
  const text = textWithUnit(cell, definitions)
  if (text !== undefined) return { becomes: 'value', because: { kind: 'unit', text } }
  if (plain.formula.length > longestFormula) return { becomes: 'value', because: { kind: 'length' } }
  return { becomes: 'formula', formula: plain.formula }
}

/**
 * A text that a call took for a number, such as "65 mL" in a cell: plain Excel reads none. What is written into the
 * formula itself is turned into a number there, but not within an array constant.
 */
function textWithUnit({ formula, calls }: OpenCell, definitions: readonly Definition[]): string | undefined {
  const written = formula.replace(/\{[^}]*\}/g, '')
  for (const { id, args } of calls ?? []) {
    const parameters = Object.values(definitions.find((one) => one.id === id)?.parameters ?? {})
    for (const [index, argument] of args.entries()) {
      if (parameters[index]?.takes !== 'number') continue
      const text = [argument].flat(2).find((value): value is string => typeof value === 'string' && value.trim() !== '')
      if (text !== undefined && !written.includes(`"${text}"`)) return text
    }
  }
  return undefined
}

/** All cells that a formula elsewhere fills. */
function spilledCells({ cells }: OpenSheet): ReadonlySet<string> {
  const spilled = new Set<string>()
  for (const [address, { spill }] of cells) {
    for (const other of cellsFilledBy(spill)) if (other !== address) spilled.add(other)
  }
  return spilled
}

/** Its own cell included; none where a formula fills its own cell alone. */
export function cellsFilledBy(spill: string | undefined): readonly string[] {
  const block = spill === undefined ? undefined : blockOf(spill)
  return block === undefined ? [] : addressesIn(block)
}
