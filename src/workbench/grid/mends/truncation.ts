/**
 * TRUNC of what is below 0. The grid's engine gave 0 for TRUNC(-1) and -7 for TRUNC(-8): it adds a little before it
 * cuts off, which takes a negative whole number to the next one. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { NumberValueObject } from '@univerjs/engine-formula'
import { firstOf, numbersByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

export function truncateBelowZero(injector: Injector): void {
  replaceFunctions(
    injector,
    ['TRUNC'],
    (truncate, asked) =>
      (...given) =>
        numbersByCell(asked, given, (number, ...digits) => {
          const rest = digits.map((one) => NumberValueObject.create(one))
          const size = firstOf(truncate(NumberValueObject.create(Math.abs(number)), ...rest))
          return number < 0 && !size.isError() ? NumberValueObject.create(0 - Number(size.getValue())) : size
        }),
  )
}
