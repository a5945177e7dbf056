import { ICommandService, type Injector } from '@univerjs/core'
import { SetFormulaCalculationStartMutation } from '@univerjs/engine-formula'
import { endsCalculation } from './endsCalculation'
import { goesOn } from './settleSpills'

/** Resolves when the next calculation is done, and what goes on with it for the readers of spilled cells. */
export function nextCalculation(injector: Injector): Promise<void> {
  return new Promise((resolve) => {
    let hasGoneOn = false
    const listening = injector.get(ICommandService).onCommandExecuted(({ id, params }, options) => {
      // It begins before this hears of the end of the one before it, because settleSpills has listened for longer.
      if (id === SetFormulaCalculationStartMutation.id && options?.[goesOn] === true) hasGoneOn = true
      if (!endsCalculation(id, params)) return
      if (hasGoneOn) {
        hasGoneOn = false
        return
      }
      resolve()
      // Not while the grid tells its listeners, or it would pass over the next of them: two may wait for one calculation.
      queueMicrotask(() => listening.dispose())
    })
  })
}
