import type { Step } from './definition'
import type { Environment, Value } from '../expression/expression'

/** Computes the steps in order, adds each to the environment, and returns the last. */
export function runSteps(steps: readonly Step[], environment: Environment): Value {
  let last: Value | undefined
  for (const { name, expression } of steps) {
    last = expression.evaluate(environment)
    environment[name] = last
  }
  if (last === undefined) throw new Error('a function needs at least one step')
  return last
}
