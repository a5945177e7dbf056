/**
 * Calls a cell function with the arguments a host handed over. It never throws: this is the outermost
 * wrapper of every cell function in both hosts.
 */
import type { Definition } from '../core/definition/definition'

export type CallOutcome =
  | { readonly kind: 'value'; readonly value: CellResult }
  /** Excel shows a function's sentence for these two error values alone. */
  | { readonly kind: 'error'; readonly code: '#VALUE!' | '#N/A'; readonly sentence: string }
  /** An error value of an input cell, which comes through as it is. */
  | { readonly kind: 'cellError'; readonly code: string }

export type CellResult = number | string | readonly (readonly (number | string)[])[]

export function call(_definition: Definition, _args: readonly unknown[]): CallOutcome {
  throw new Error('being written')
}
