/**
 * Begins to calculate with the next frame. The grid waits a tenth of a second after each edit for further ones, which
 * was more than the demo season needs for its calculation. What is edited while it calculates is taken up after it
 * either way; see calculationsInTurn. Seen with univer 0.25.1.
 */
import { ICommandService, type Injector } from '@univerjs/core'
import {
  type ISetFormulaCalculationStartMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula'
import { TriggerCalculationController } from '@univerjs/sheets-formula'

/** The private parts of the library that are repaired here. */
interface Trigger {
  /** What was done since the last calculation began. */
  _waitingCommandQueue: readonly unknown[]
  /** Of the tenth of a second. */
  _setTimeoutKey: unknown
  _generateDirty(commands: readonly unknown[]): ISetFormulaCalculationStartMutation
  _mergeDirty(
    one: ISetFormulaCalculationStartMutation,
    other: ISetFormulaCalculationStartMutation,
  ): ISetFormulaCalculationStartMutation
  _executingDirtyData: ISetFormulaCalculationStartMutation
  /** Null while nothing is calculated. */
  readonly _executionInProgressParams: object | null
  _restartCalculation: boolean
}

const oneFrame = 16

export function calculatePromptly(injector: Injector): void {
  const commands = injector.get(ICommandService)
  const trigger = injector.get(TriggerCalculationController) as unknown as Trigger

  /** As the library does it. */
  const calculate = (): void => {
    const edited = trigger._generateDirty(trigger._waitingCommandQueue)
    trigger._waitingCommandQueue = []
    trigger._executingDirtyData = trigger._mergeDirty(trigger._executingDirtyData, edited)
    if (trigger._executionInProgressParams === null) {
      const start = { ...trigger._executingDirtyData }
      void commands.executeCommand(SetFormulaCalculationStartMutation.id, start, { onlyLocal: true })
    } else {
      trigger._restartCalculation = true
      void commands.executeCommand(SetFormulaCalculationStopMutation.id, {})
    }
  }

  let waiting: unknown
  commands.onCommandExecuted(() => {
    const last = trigger._waitingCommandQueue.at(-1)
    if (last === undefined || last === waiting) return
    waiting = last
    clearTimeout(trigger._setTimeoutKey as number)
    trigger._setTimeoutKey = setTimeout(calculate, oneFrame)
  })
}

/**
 * For a workbook that is shown with results of before, which the library would calculate before it draws it. Gives the
 * way to let it calculate.
 */
export function putOffCalculation(injector: Injector): () => void {
  const trigger = injector.get(TriggerCalculationController) as unknown as Trigger
  const listening = injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id !== SetTriggerFormulaCalculationStartMutation.id) return
    trigger._waitingCommandQueue = []
    clearTimeout(trigger._setTimeoutKey as number)
  })
  return () => listening.dispose()
}
