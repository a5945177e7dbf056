import {
  FormulaExecutedStateType,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
} from '@univerjs/engine-formula'

/** Whether the command says that a calculation is done and its results are known. The engine says so even where nothing was to do. */
export function endsCalculation(id: string, params: object | undefined): boolean {
  if (id !== SetFormulaCalculationNotificationMutation.id) return false
  const state = (params as ISetFormulaCalculationNotificationMutation).functionsExecutedState
  // A calculation is stopped only to begin again with what was edited meanwhile.
  return state !== undefined && state !== FormulaExecutedStateType.STOP_EXECUTION
}
