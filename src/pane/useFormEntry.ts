import { useEffect, useRef, useState } from 'react'
import type { Definition } from '../core/definition/definition'
import { callArguments } from '../formula/callArguments'
import type { CellPlace } from '../workbook/cellPlace'
import type { SelectedCell } from '../workbook/port'
import { useSettings } from './settings/useSettings'
import { remarked, textOfArgument } from './typedArgument'

export interface FormEntry {
  /** What is typed for each argument. */
  readonly texts: readonly string[]
  /** The cell that the call goes into. */
  readonly target: CellPlace | undefined
  /** Whether the selected cell holds a call of the function already. */
  readonly isInCell: boolean
  change(index: number, text: string): void
  clear(): void
  aimAt(target: CellPlace): void
}

/** What stands in the form of a function, and for which cell. */
export function useFormEntry(definition: Definition, cell: SelectedCell | undefined): FormEntry {
  const { decimalMark } = useSettings().settings
  const parameters = Object.values(definition.parameters)
  const [texts, setTexts] = useState<readonly string[]>(() => parameters.map(() => ''))
  const [target, setTarget] = useState<CellPlace>()
  const inCell = cell && callArguments(cell.formula, definition.id)
  const cellKey = cell && `${cell.sheet}!${cell.address}`

  // A cell that holds this very call is opened for change. Typing goes on while other cells are selected to be picked.
  useEffect(() => {
    if (cell === undefined) return
    if (inCell !== undefined) {
      setTexts(parameters.map((parameter, index) => textOfArgument(parameter, inCell[index] ?? '', decimalMark)))
      setTarget({ sheet: cell.sheet, address: cell.address })
    } else if (target === undefined) {
      setTarget({ sheet: cell.sheet, address: cell.address })
    }
    // Only another cell, or another formula in it, begins anew.
  }, [cellKey, cell?.formula])

  const typedWith = useRef(decimalMark)
  // What is typed already means the same when the setting changes.
  useEffect(() => {
    const before = typedWith.current
    typedWith.current = decimalMark
    if (before !== decimalMark)
      setTexts((typed) => typed.map((text, index) => remarked(parameters[index]!, text, before, decimalMark)))
  }, [decimalMark])

  return {
    texts,
    target,
    isInCell: inCell !== undefined,
    change: (index, text) => setTexts((before) => before.map((one, at) => (at === index ? text : one))),
    clear: () => setTexts(parameters.map(() => '')),
    aimAt: setTarget,
  }
}
