import { compileInDoubles, type Slots } from '../expression/inDoubles'
import type { Step } from './definition'

/**
 * The steps of a function in doubles. The slots hold its arguments in the order of `names`; the steps write theirs
 * behind them, so one array serves any number of calls.
 */
export function stepsInDoubles(steps: readonly Step[], names: readonly string[]): (slots: Slots) => number | number[] {
  const slotOf = new Map([...names, ...steps.map(({ name }) => name)].map((name, slot) => [name, slot]))
  const runs = steps.map(({ expression }) => compileInDoubles(expression.tree, slotOf))
  const first = names.length
  const last = first + runs.length - 1
  return (slots) => {
    for (let step = 0; step < runs.length; step++) slots[first + step] = runs[step]!(slots)
    return slots[last]!
  }
}
