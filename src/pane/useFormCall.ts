import { useEffect, useState } from 'react'
import type { CellFunction } from '../core/definition/definition'
import { tryCall, type Tried } from '../derived/tryCall'
import { textInFormula, typedArgument, type TypedArgument } from './typedArgument'
import type { WorkbookPort } from '../workbook/port'
import { useSettings } from './settings/useSettings'
import { usePortSentence } from './usePortSentence'
import { useProblemSentence } from './useProblemSentence'

export interface FormCall {
  /** In en-US form, with its leading "=". */
  readonly formula: string
  /** Undefined while cells are read, and where a formula among the arguments must be calculated by the sheet. */
  readonly tried: Tried | undefined
  readonly needsSheet: boolean
  /** Why the cells could not be read; empty where they were. */
  readonly failure: string
}

/** The call that the texts of a form stand for, tried with what the cells hold now. */
export function useFormCall(
  definition: CellFunction,
  texts: readonly string[],
  sheet: string,
  port: WorkbookPort,
): FormCall {
  const { decimalMark } = useSettings().settings
  const portSentence = usePortSentence()
  const problemSentence = useProblemSentence()
  const typed = Object.values(definition.parameters).map((parameter, index) =>
    typedArgument(parameter, texts[index] ?? '', decimalMark),
  )
  const needsSheet = typed.some(({ kind }) => kind === 'formula')
  const formula = `=STICK.${definition.id}(${typed.map(textInFormula).join(',').replace(/,+$/, '')})`
  const [tried, setTried] = useState<Tried>()
  const [failure, setFailure] = useState('')

  useEffect(() => {
    let isCurrent = true
    const show = (result: Tried | undefined, why = '') => {
      if (!isCurrent) return
      setTried(result)
      setFailure(why)
    }
    const read = () => {
      if (needsSheet) return show(undefined)
      Promise.all(typed.map((argument) => valueOf(argument, sheet, port))).then(
        (args) => show(tryCall(definition, args, problemSentence)),
        (error: unknown) => show(undefined, portSentence(error, 'reading')),
      )
    }
    read()
    const stop = port.onSelectionChange(read)
    return () => {
      isCurrent = false
      stop()
    }
    // The formula says all that was typed.
  }, [definition, formula, sheet, port, problemSentence, portSentence])
  return { formula, tried, needsSheet, failure }
}

/** A name that the workbook does not have is given as text, which the argument reader refuses by that text. */
async function valueOf(argument: TypedArgument, sheet: string, port: WorkbookPort): Promise<unknown> {
  switch (argument.kind) {
    case 'value':
      return argument.value
    case 'cells':
      return (await port.valuesOf(argument.reference, sheet)) ?? argument.reference
    default:
      return null
  }
}
