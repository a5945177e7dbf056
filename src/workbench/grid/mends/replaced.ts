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

interface SharedMethod {
  readonly own: unknown
  /** What stands in its place, the first nearest to it, with the number of engines that need it. */
  readonly replacements: Map<(replaced: never) => unknown, number>
}

const sharedMethods = new WeakMap<object, Map<string, SharedMethod>>()

/** Puts a method in the place of one that all engines of a process share, as long as an engine lives that needs it. */
export function replaceShared<Name extends string, Method>(
  injector: Injector,
  owner: Record<Name, Method>,
  name: Name,
  replacement: (replaced: Method) => Method,
): void {
  const ofOwner = sharedMethods.get(owner) ?? new Map<string, SharedMethod>()
  sharedMethods.set(owner, ofOwner)
  const { own, replacements } = ofOwner.get(name) ?? { own: owner[name], replacements: new Map() }
  ofOwner.set(name, { own, replacements })
  const need = (change: 1 | -1) => {
    const engines = (replacements.get(replacement) ?? 0) + change
    if (engines === 0) replacements.delete(replacement)
    else replacements.set(replacement, engines)
    owner[name] = [...replacements.keys()].reduce(
      (method, replace) => replace(method as never) as Method,
      own as Method,
    )
  }
  need(1)
  const engine = injector.get(ICalculateFormulaService) as unknown as Disposable
  engine.disposeWithMe({ dispose: () => need(-1) })
}
