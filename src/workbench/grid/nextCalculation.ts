import { ICommandService, type Injector } from '@univerjs/core'
import { SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import { endsCalculation } from './endsCalculation'
import { goesOn } from './mends/settleSpills'

/** Resolves when the next calculation is done, and what goes on with it for the readers of spilled cells. */
export function nextCalculation(injector: Injector): Promise<void> {
  return new Promise((resolve) => {
    let hasGoneOn = false
    const resolveUnlessGoneOn = (): void => {
      if (hasGoneOn) {
        hasGoneOn = false
        return
      }
      listening.dispose()
      resolve()
    }
    const listening = injector.get(ICommandService).onCommandExecuted(({ id, params }, options) => {
      if (id === SetFormulaCalculationStartMutation.id && options?.[goesOn] === true) hasGoneOn = true
      // Once all listeners have heard of the end: settleSpills is one of them, and begins what goes on.
      if (endsCalculation(id, params)) queueMicrotask(resolveUnlessGoneOn)
    })
  })
}
