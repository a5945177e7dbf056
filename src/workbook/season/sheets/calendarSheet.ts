import { standing } from '../../../functions/weeks/standing'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { figureOf, stateOf } from '../table/figures'
import { mondayOf } from '../table/mondayOf'
import { rowsOf, rowsSheet } from '../table/rowsSheet'
import { countReady, onlyReady, type ColumnOf } from '../table/table'
import { batches } from '../tables/batches'
import { calendar } from '../tables/calendar'
import { orders } from '../tables/orders'
import { setup } from '../tables/setup'

/** Two months more than a year, so that what is stuck at its end is seen to the day it leaves the bench. */
export const weeksShown = 61

type OfBatches = ColumnOf<typeof batches>

const firstDay = figureOf(setup, 'firstDay')
const at = (column: keyof typeof calendar.columns) => rowsOf(calendar, column)
const isThere = `${stateOf(setup)}="ready"`
const days = stacked('stickDay', 'day')

/** Of the lines still to plan, and below them of the batches. */
function stacked(ofOrders: ColumnOf<typeof orders>, ofBatches: OfBatches): string {
  return `VSTACK(${onlyReady(orders, ofOrders)},${onlyReady(batches, ofBatches)})`
}

/** What stands in each week; the amounts are the second column of STANDING, below its heading. */
function standsEachWeek(startDays: string, weeksHeld: string, amounts: string): string {
  const table = call(standing, { startDays, weeksHeld, amounts, firstDay, weeks: String(weeksShown) })
  const nothing = `0*SEQUENCE(${weeksShown})`
  return `IF(${isThere},IF(${countReady(orders)}=0,${nothing},CHOOSECOLS(DROP(${table},1),2)),"")`
}

/** What begins in each week is what would stand there for one. */
function beginsEachWeek(startDays: string, amounts: string): string {
  return standsEachWeek(startDays, `IF(ISNUMBER(${startDays}),1,"")`, amounts)
}

/** The same in each week. */
function alwaysThere(key: 'benchArea' | 'bedArea' | 'hours'): string {
  return `IF(${isThere},${figureOf(setup, key)}+0*SEQUENCE(${weeksShown}),"")`
}

const left = (there: string, taken: string) => `IF(${isThere},${there}-${taken},"")`

function tooMuch(rest: string, what: string, unit: string): string {
  return `IF(${rest}<0,"${what}: "&FIXED(ROUNDUP(0-${rest},0),0)&" ${unit} too many. ","")`
}

export function calendarSheet(mark: string): NamedSheet {
  const thursday = `(${at('monday')}+3)`
  const notes = [
    tooMuch(at('benchLeft'), 'Bench', 'm2'),
    tooMuch(at('groundLeft'), 'Ground', 'm2'),
    tooMuch(at('hoursLeft'), 'Work', 'hours'),
  ]
  return rowsSheet(
    calendar,
    {
      title: 'Calendar',
      about: [
        'Week by week: what is stuck and what stands, against the room and the hours there are. A part of a week takes the whole week.',
      ],
      results: {
        monday: `IF(${isThere},${mondayOf(firstDay)}+7*(SEQUENCE(${weeksShown})-1),"")`,
        // ISO 8601: the year of a week is that of its Thursday.
        week: `IF(${isThere},YEAR(${thursday})&"-W"&TEXT(INT((${thursday}-DATE(YEAR(${thursday}),1,1))/7)+1,"00"),"")`,
        toStick: beginsEachWeek(days, stacked('planned', 'cuttings')),
        pieces: beginsEachWeek(days, stacked('pieces', 'pieces')),
        bench: standsEachWeek(days, stacked('benchWeeks', 'benchWeeks'), stacked('benchM2', 'benchM2')),
        benchThere: alwaysThere('benchArea'),
        benchLeft: left(at('benchThere'), at('bench')),
        ground: standsEachWeek(days, stacked('groundWeeks', 'groundWeeks'), stacked('groundM2', 'groundM2')),
        groundThere: alwaysThere('bedArea'),
        groundLeft: left(at('groundThere'), at('ground')),
        hours: beginsEachWeek(days, stacked('hours', 'hours')),
        hoursThere: alwaysThere('hours'),
        hoursLeft: left(at('hoursThere'), at('hours')),
        deliveries: beginsEachWeek(onlyReady(orders, 'delivery'), onlyReady(orders, 'liners')),
        note: `IF(${isThere},TRIM(${notes.join('&')}),"")`,
      },
    },
    mark,
    weeksShown,
  )
}
