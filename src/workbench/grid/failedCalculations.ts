import type { Injector } from '@univerjs/core'
import { ICalculateFormulaService } from '@univerjs/engine-formula'

interface Service {
  execute(formulas: object): Promise<void>
}

/**
 * Tells of a calculation that failed, whose results are those of before: faults.ts catches what formulas do, so it is
 * for what nobody thought of. To be called once the mends have done their work.
 */
export function onFailedCalculation(injector: Injector, tell: (problem: unknown) => void): void {
  const service = injector.get(ICalculateFormulaService) as unknown as Service
  const execute = service.execute.bind(service)
  service.execute = (formulas) => execute(formulas).catch(tell)
}
