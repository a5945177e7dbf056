/**
 * MINIFS and MAXIFS give 0 where nothing matches, or where what matches holds no number. The grid's engine gave a text
 * that is empty, or infinity. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type BaseValueObject, NumberValueObject } from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

export function giveZeroForNoMatch(injector: Injector): void {
  replaceFunctions(
    injector,
    ['MINIFS', 'MAXIFS'],
    (calculate, asked) =>
      (...given) =>
        cellByCell(asked, [calculate(...given)], (found) =>
          isNumberOrError(found) ? found : NumberValueObject.create(0),
        ),
  )
}

/** In the place of the least of nothing, the engine puts a block that holds no number. */
function isNumberOrError(found: BaseValueObject): boolean {
  return found.isError() || (found.isNumber() && Number.isFinite(found.getValue()))
}
