/**
 * What is the same to a lookup, and to UNIQUE. The grid's engine found a blank key where VLOOKUP or HLOOKUP looked for
 * a blank cell, a 0 or an empty text, and gave what stands beside it; Excel looks for 0 and finds no blank. A column that
 * was looked through before gave the text "12" to a lookup of the number, and the number to one of the text. UNIQUE took
 * "a" and "A" for two, and 1 and "1" for one. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  IFunctionService,
  NumberValueObject,
} from '@univerjs/engine-formula'
import { replaceShared } from './replaced'

/** The private parts of the engine that are repaired here. */
interface Lookup {
  equalSearch(
    sought: BaseValueObject,
    keys: ArrayValueObject,
    results: ArrayValueObject,
    isFirst?: boolean,
  ): BaseValueObject
}

type Equal = (this: ArrayValueObject, sought: BaseValueObject) => BaseValueObject

interface Placed {
  readonly r: number
  readonly valueObject: BaseValueObject
}

interface Unique {
  /** The rows of each value that is there more than once. */
  _getRepeatRowsByObjects(cells: readonly Placed[]): readonly (readonly number[])[]
}

export function findSameValues(injector: Injector): void {
  replaceShared(injector, ArrayValueObject.prototype as { isEqual: Equal }, 'isEqual', findingSameKinds)
  const functions = injector.get(IFunctionService)
  for (const name of ['VLOOKUP', 'HLOOKUP']) findNoBlankKeys(functions.getExecutor(name) as unknown as Lookup)
  const unique = functions.getExecutor('UNIQUE') as unknown as Unique
  unique._getRepeatRowsByObjects = (cells) => {
    const rows = new Map<string, number[]>()
    for (const { r, valueObject } of cells) rows.set(keyOf(valueObject), [...(rows.get(keyOf(valueObject)) ?? []), r])
    return [...rows.values()].filter(({ length }) => length > 1)
  }
}

/** A criterion does not come here, and takes the one for the other. */
function findingSameKinds(isEqual: Equal): Equal {
  return function findEqual(sought) {
    const found = isEqual.call(this, sought)
    const mayBeBoth = !sought.isArray() && sought.getValue() !== '' && !Number.isNaN(Number(sought.getValue()))
    if (!found.isArray() || !mayBeBoth) return found
    return (found as ArrayValueObject).mapValue((isFound, row, column) => {
      if (isFound.getValue() !== true) return isFound
      const cell = this.get(row, column)
      return BooleanValueObject.create(!cell || typeof cell.getValue() === typeof sought.getValue())
    })
  }
}

function findNoBlankKeys(lookup: Lookup): void {
  const search = lookup.equalSearch.bind(lookup)
  lookup.equalSearch = (value, keys, results, isFirst) => {
    const sought = value.isNull() ? NumberValueObject.create(0) : value
    // A blank equals 0, an empty text and FALSE only.
    if (sought.getValue()) return search(sought, keys, results, isFirst)
    let found: BaseValueObject | undefined
    keys.iterator((key, row, column) => {
      if (key && keyOf(key) === keyOf(sought)) found = results.get(row, column) ?? NumberValueObject.create(0)
      return found === undefined
    })
    return found ?? ErrorValueObject.create(ErrorType.NA)
  }
}

function keyOf(cell: BaseValueObject): string {
  if (cell.isNull()) return 'blank'
  const value = cell.isError() ? (cell as ErrorValueObject).getErrorType() : cell.getValue()
  return `${typeof value} ${String(value).toLowerCase()}`
}
