import type { Parameters, Step, StepFunction } from './definition'
import { readsName, type Environment, type Value } from '../expression/expression'

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

/** The arguments of a function of numbers, each by its name. */
export type Numbers<P extends Parameters> = { readonly [K in keyof P]: Value }

/** The result of a function for arguments that were read already. */
export function resultOfSteps<P extends Parameters>({ body }: StepFunction<P>, args: Numbers<P>): Value {
  return runSteps(body.steps, { ...args })
}

/** What each of the steps gives, by its name. */
export function valuesOfSteps<S extends string>(
  steps: readonly Step<S>[],
  args: Readonly<Environment>,
): Readonly<Record<S, Value>> {
  const environment: Environment = { ...args }
  runSteps(steps, environment)
  return environment as Record<S, Value>
}

/** The steps before the first that reads an argument, the same whatever it is, and the steps from there on. */
export function splitWhereRead<P extends Parameters, S extends string>(
  { body: { steps } }: StepFunction<P, S>,
  argument: keyof P & string,
): readonly [before: readonly Step<S>[], from: readonly Step<S>[]] {
  const first = steps.findIndex(({ expression }) => readsName(expression.tree, argument))
  return [steps.slice(0, first), steps.slice(first)]
}
