import { ICommandService, type Injector } from '@univerjs/core'
import { FormulaExecutedStateType, type ISetFormulaCalculationNotificationMutation, SetFormulaCalculationNotificationMutation } from '@univerjs/engine-formula'

/** Resolves when the next calculation is done and its results are known. The engine says so even where nothing was to do. */
export function nextCalculation(injector: Injector): Promise<void> {
  return new Promise((resolve) => {
    const listening = injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      if (id !== SetFormulaCalculationNotificationMutation.id) return
      const state = (params as ISetFormulaCalculationNotificationMutation).functionsExecutedState
      // A calculation is stopped only to begin again with what was edited meanwhile.
      if (state === undefined || state === FormulaExecutedStateType.STOP_EXECUTION) return
      listening.dispose()
      resolve()
    })
  })
}
