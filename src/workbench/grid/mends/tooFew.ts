/**
 * The deviation and the variance of a sample need two numbers; of fewer they are #DIV/0!. The grid's engine gave -0 for
 * cells that hold none. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type ArrayValueObject, type BaseValueObject, ErrorType, ErrorValueObject } from '@univerjs/engine-formula'
import { replaceFunctions } from './replaced'

export function needTwoNumbers(injector: Injector): void {
  replaceWhere(injector, ['STDEV', 'STDEV.S', 'VAR', 'VAR.S'], (cell) => cell.isNumber())
  // These count texts and truths too.
  replaceWhere(injector, ['STDEVA', 'VARA'], (cell) => !cell.isNull())
}

function replaceWhere(injector: Injector, names: readonly string[], isCounted: (cell: BaseValueObject) => boolean) {
  const countOf = (one: BaseValueObject) => {
    if (!one.isArray()) return 1
    const cells = (one as ArrayValueObject).getArrayValue().flat()
    return cells.filter((cell) => cell && isCounted(cell)).length
  }
  replaceFunctions(injector, names, (calculate) => (...given) => {
    const found = calculate(...given)
    const count = given.reduce((sum, one) => sum + countOf(one), 0)
    return found.isError() || count > 1 ? found : ErrorValueObject.create(ErrorType.DIV_BY_ZERO)
  })
}
