/**
 * Takes the empty text of a formula for a text. Within a calculation the grid's engine takes the result "" for a blank
 * cell, and once it is stored for a text: where B1 was =IF(ISBLANK(A1),"",A1), =B1>1 was FALSE when a workbook was
 * opened and TRUE after the next edit, ISBLANK(B1) was TRUE and B1*5 was 0 in place of #VALUE!. An empty text that a
 * formula spilled was taken for a blank for ever. Seen with univer 0.25.1.
 */
import { CellValueType, type ICellData, type Injector, type Nullable } from '@univerjs/core'
import { BaseReferenceObject } from '@univerjs/engine-formula'
import { replaceShared } from './replaced'

type Read = (this: BaseReferenceObject, row: number, column: number) => Nullable<ICellData>

export function keepEmptyTexts(injector: Injector): void {
  replaceShared(injector, BaseReferenceObject.prototype as { getCellData: Read }, 'getCellData', readingEmptyTexts)
}

/** By its formula the engine knows a cell that is not blank. A result has none, and only results are read here so. */
const notBlank: ICellData = { f: '=""', v: '', t: CellValueType.STRING }

function readingEmptyTexts(read: Read): Read {
  return function readCell(row, column) {
    const cell = read.call(this, row, column)
    if (!cell || cell.v !== '' || cell.f) return cell
    return isResult(this, row, column) ? notBlank : cell
  }
}

/** What was typed and then emptied holds an empty text too, and is blank. */
function isResult(reference: BaseReferenceObject, row: number, column: number): boolean {
  return [
    reference.getCurrentRuntimeSheetData(),
    reference.getCurrentRuntimeActiveArrayFormulaCellData(),
    reference.getCurrentActiveArrayFormulaCellData(),
  ].some((results) => results?.getValue(row, column)?.v === '')
}
