/**
 * PROPER, ASC and EXACT of a blank cell and of TRUE, which are an empty text and "TRUE" where a text is asked for. Of a
 * blank the grid's engine gave 0 for PROPER and ASC, and an empty text was not EXACT to it; PROPER(TRUE) was TRUE
 * itself. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type BaseValueObject, StringValueObject } from '@univerjs/engine-formula'
import { cellByCell } from './cellByCell'
import { replaceFunctions } from './replaced'

export function takeBlankTexts(injector: Injector): void {
  replaceFunctions(
    injector,
    ['PROPER', 'ASC', 'EXACT'],
    (calculate, asked) =>
      (...given) =>
        calculate(...given.map((one) => cellByCell(asked, [one], asText))),
  )
}

function asText(cell: BaseValueObject): BaseValueObject {
  if (cell.isNull()) return StringValueObject.create('')
  return cell.isBoolean() ? StringValueObject.create(cell.getValue() ? 'TRUE' : 'FALSE') : cell
}
