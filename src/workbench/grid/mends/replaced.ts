/** Ways to put something in the place of a part of the grid's engine. */
import type { Disposable, Injector } from '@univerjs/core'
import {
  type BaseFunction,
  type BaseValueObject,
  ICalculateFormulaService,
  IFunctionService,
} from '@univerjs/engine-formula'

export type Calculate = (...given: readonly BaseValueObject[]) => BaseValueObject

/** Puts another calculation in the place of that of each of these functions; a name that is no function is an error. */
export function replaceFunctions(
  injector: Injector,
  names: readonly string[],
  replacement: (calculate: Calculate, replaced: BaseFunction) => Calculate,
): void {
  const functions = injector.get(IFunctionService)
  for (const name of names) {
    const replaced = functions.getExecutor(name)
    if (!replaced) throw new Error(`The engine has no function ${name}`)
    replaced.calculate = replacement(
      replaced.calculate.bind(replaced) as Calculate,
      replaced,
    ) as BaseFunction['calculate']
  }
}

const users = new WeakMap<object, { count: number; readonly restore: () => void }>()

/** Puts a method in the place of one that all engines of a process share, as long as an engine lives that needs it. */
export function replaceShared<Name extends string, Method>(
  injector: Injector,
  owner: Record<Name, Method>,
  name: Name,
  replacement: (replaced: Method) => Method,
): void {
  const own = owner[name]
  const known = users.get(replacement) ?? { count: 0, restore: () => (owner[name] = own) }
  if (known.count === 0) owner[name] = replacement(own)
  known.count += 1
  users.set(replacement, known)
  const engine = injector.get(ICalculateFormulaService) as unknown as Disposable
  engine.disposeWithMe({
    dispose: () => {
      known.count -= 1
      if (known.count > 0) return
      known.restore()
      users.delete(replacement)
    },
  })
}
