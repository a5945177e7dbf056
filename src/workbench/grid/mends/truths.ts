/**
 * AND, OR, XOR and NOT of texts. Of a text that is given to them, Excel takes TRUE and FALSE for what they say, and
 * gives #VALUE! for any other; of a text in a cell, AND, OR and XOR take none, and NOT as before (the first two by
 * Microsoft's documentation of AND: "If an array or reference argument contains text or empty cells, those values are
 * ignored"; that a given "TRUE" is taken is from memory). The grid's engine left a given text out, so that
 * OR("x",TRUE) was TRUE, and took "TRUE" for no truth. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  type ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
} from '@univerjs/engine-formula'
import { truthOf } from './branches'
import { cellByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

type Given = BaseValueObject | BaseReferenceObject

const joined: Readonly<Record<string, (truths: readonly boolean[]) => boolean>> = {
  AND: (truths) => truths.every(Boolean),
  OR: (truths) => truths.some(Boolean),
  XOR: (truths) => truths.filter(Boolean).length % 2 === 1,
}

export function readTruths(injector: Injector): void {
  replaceFunctions(injector, ['AND', 'OR', 'XOR'], (_join, asked) => {
    asked.needsReferenceObject = true
    return (...given: readonly Given[]) => {
      const truths: boolean[] = []
      for (const one of given) {
        for (const truth of truthsOf(one)) {
          if (typeof truth !== 'boolean') return truth
          truths.push(truth)
        }
      }
      return truths.length === 0
        ? ErrorValueObject.create(ErrorType.VALUE)
        : BooleanValueObject.create(joined[asked.name]!(truths))
    }
  })
  replaceFunctions(
    injector,
    ['NOT'],
    (_not, asked) =>
      (...given) =>
        given.length === 1
          ? cellByCell(asked, given, (cell) => {
              const truth = truthOf(cell)
              return typeof truth === 'boolean' ? BooleanValueObject.create(!truth) : truth
            })
          : ErrorValueObject.create(ErrorType.NA),
  )
}

/** Up to the first error. */
function truthsOf(given: Given): readonly (boolean | BaseValueObject)[] {
  const value = given.isReferenceObject()
    ? (given as BaseReferenceObject).toArrayValueObject()
    : (given as BaseValueObject)
  if (!value.isArray()) return [truthOf(value)]
  const cells = (value as ArrayValueObject).getArrayValue().flat()
  return cells.flatMap((cell) => (!cell || cell.isNull() || cell.isString() ? [] : [truthOf(cell)]))
}
