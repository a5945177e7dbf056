import type { Definition } from '../core/definition/definition'
import type { CallOutcome } from './call'

/** A call of a cell function as a host made it. */
export interface MadeCall {
  readonly definition: Definition
  readonly args: readonly unknown[]
  readonly outcome: CallOutcome
}
