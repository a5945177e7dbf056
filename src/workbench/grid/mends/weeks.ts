/**
 * Weeks of the calendar, and months. The grid's engine gives ISOWEEKNUM, and WEEKNUM with the kind 21, one week too low
 * in years that begin on a Friday or Saturday, and 54 on days of their January; EDATE(DATE(2021,1,31),1) was the 3rd of
 * March, where Excel gives the last day of February, and #VALUE! for a day that a cell holds as a text; and WORKDAY.INTL
 * counted from the year 1900 where the day or the number of days stood in a cell. Seen with univer 0.25.1.
 */
import type { Injector } from '@univerjs/core'
import { type BaseValueObject, ErrorType, ErrorValueObject, NumberValueObject } from '@univerjs/engine-formula'
import { dateOf, serialOf } from '../../../core/quantity/day'
import { cellByCell, columnsOf, firstOf, numberOf, rowsOf } from './cellByCell'
import { replaceFunctions } from './replaced'
import { asNumbers } from './textNumbers'

export function countWeeks(injector: Injector): void {
  replaceFunctions(
    injector,
    ['ISOWEEKNUM'],
    (weekOf, asked) => (days) => cellByCell(asked, [days], (day) => isoWeek(weekOf(day), day)),
  )
  replaceFunctions(injector, ['WEEKNUM'], (weekOf) => (...given) => {
    const [day, kind] = given.map(firstOf)
    const week = weekOf(...given)
    return day && kind && Math.floor(Number(kind.getValue())) === 21 ? isoWeek(week, day) : week
  })
  replaceFunctions(
    injector,
    ['WORKDAY.INTL'],
    (workday) =>
      (day, days, ...rest) =>
        workday(onlyCell(day), onlyCell(days), ...rest),
  )
  replaceFunctions(
    injector,
    ['EDATE'],
    (later, asked) => (days, months) =>
      cellByCell(asked, [asNumbers(asked, days), asNumbers(asked, months)], (day, by) =>
        sameDay(firstOf(later(day, by)), day, by),
      ),
  )
}

/** The engine refuses several. */
function onlyCell(given: BaseValueObject): BaseValueObject {
  return rowsOf(given) === 1 && columnsOf(given) === 1 ? firstOf(given) : given
}

/** The engine says what is no day. */
function isoWeek(found: BaseValueObject, cell: BaseValueObject): BaseValueObject {
  const day = numberOf(cell)
  return found.isError() || typeof day !== 'number' ? found : NumberValueObject.create(isoWeekOf(Math.floor(day)))
}

/** A week belongs to the year of its Thursday (ISO 8601). Day 2 was a Monday to Excel, which counts days from 1900. */
function isoWeekOf(day: number): number {
  const thursday = day + 3 - ((((day - 2) % 7) + 7) % 7)
  if (thursday < 1) return 52
  const year = dateOf(thursday).getUTCFullYear()
  return Math.floor((thursday - (year === 1900 ? 1 : dayOf(year, 0, 1))) / 7) + 1
}

function sameDay(found: BaseValueObject, cell: BaseValueObject, months: BaseValueObject): BaseValueObject {
  const [day, by] = [numberOf(cell), numberOf(months)]
  // Up to its 60th day, Excel's calendar has a leap year that there was not.
  if (found.isError() || typeof day !== 'number' || typeof by !== 'number' || day < 61) return found
  const from = dateOf(Math.floor(day))
  const [year, month] = [from.getUTCFullYear(), from.getUTCMonth() + Math.trunc(by)]
  const moved = Math.min(dayOf(year, month, from.getUTCDate()), dayOf(year, month + 1, 0))
  if (moved < 0) return ErrorValueObject.create(ErrorType.NUM)
  return NumberValueObject.create(moved, found.getPattern())
}

function dayOf(year: number, month: number, dayOfMonth: number): number {
  return serialOf(new Date(Date.UTC(year, month, dayOfMonth)))
}
