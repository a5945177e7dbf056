/**
 * Finds a sheet whatever its capitals, as Excel does. For the grid's engine ='PLAN A'!A1 read no sheet where it is
 * called Plan A, and made every other formula that reads Plan A #VALUE! too. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { BaseReferenceObject } from '@univerjs/engine-formula'
import { replaceShared } from './replaced'

type Find = (this: BaseReferenceObject, sheets: Parameters<BaseReferenceObject['setForcedSheetId']>[0]) => void

export function findSheets(injector: Injector): void {
  replaceShared(
    injector,
    BaseReferenceObject.prototype as { setForcedSheetId: Find },
    'setForcedSheetId',
    findingSheets,
  )
}

function findingSheets(find: Find): Find {
  return function findSheet(sheets) {
    find.call(this, sheets)
    const name = this.getForcedSheetName()?.toLowerCase()
    if (!name || this.getForcedSheetId() !== undefined) return
    const inWorkbook = Object.entries(sheets[this.getUnitId()] ?? {})
    const id = inWorkbook.find(([other]) => other.toLowerCase() === name)?.[1]
    if (id) this.setForcedSheetIdDirect(id)
  }
}
