/** What STANDING and PEAK have in common: from which week to which each start takes up its containers. */
import { number, numbers } from '../../core/definition/parameter'
import { zero, type Decimal } from '../../core/quantity/decimal'
import { roundUpToWhole } from '../../core/quantity/rounding'
import { days, weekOf } from './calendar'

/** Twenty years. What is held for longer is more likely a day typed for a number of weeks. */
const mostWeeksHeld = 1040
/** Up to it, with the 15 digits of a cell, sums stay exact. */
const mostOfOneStart = 1_000_000_000

export const stayParameters = {
  startDays: numbers('day', { text: 'the day of each start, one cell a start', ...days }),
  weeksHeld: numbers('weeks', { text: 'the weeks that each start stands', atMost: mostWeeksHeld, example: 3 }),
  amounts: numbers('any', {
    text: 'what each start takes up: containers, or m2 of bench',
    atMost: mostOfOneStart,
    example: 40,
  }),
  turnroundWeeks: number('weeks', {
    text: 'weeks between two uses, for clearing and washing',
    default: 0,
    atLeast: 0,
    atMost: mostWeeksHeld,
  }),
}

interface Starts {
  readonly startDays: readonly Decimal[]
  readonly weeksHeld: readonly Decimal[]
  readonly amounts: readonly Decimal[]
  readonly turnroundWeeks: Decimal
}

interface Change {
  readonly week: number
  /** What stands from that week on, up to the next change. */
  readonly standing: Decimal
}

/** The weeks in which something comes or goes, in order; none where nothing ever stands. After the last, nothing does. */
export function changesOf({ startDays, weeksHeld, amounts, turnroundWeeks }: Starts): readonly Change[] {
  const byWeek = new Map<number, Decimal>()
  const change = (week: number, by: Decimal) => byWeek.set(week, (byWeek.get(week) ?? zero).add(by))
  startDays.forEach((day, start) => {
    const [held, amount] = [weeksHeld[start]!, amounts[start]!]
    if (held.isZero() || amount.isZero()) return
    const week = weekOf(day)
    change(week, amount)
    change(week + roundUpToWhole(held.add(turnroundWeeks)).toNumber(), amount.neg())
  })
  let standing = zero
  return [...byWeek].sort(([a], [b]) => a - b).map(([week, by]) => ({ week, standing: (standing = standing.add(by)) }))
}

/** Each start in weeks, for the plain formulas: from its first week until it is free again. */
export const plainStays =
  'heldEach, FILTER(TOCOL(weeksHeld), LEN(TOCOL(weeksHeld)) > 0), amountEach, FILTER(TOCOL(amounts), LEN(TOCOL(amounts)) > 0), ' +
  'startWeek, INT((FILTER(TOCOL(startDays), LEN(TOCOL(startDays)) > 0) - 2) / 7), ' +
  'freeWeek, startWeek + IF(heldEach > 0, ROUNDUP(heldEach + turnroundWeeks, 0), 0)'

export const standingIn = (week: string) => `SUM((startWeek <= ${week}) * (freeWeek > ${week}) * amountEach)`
