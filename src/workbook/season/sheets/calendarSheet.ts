import type { NamedSheet } from '../cells'
import { figureOf } from '../table/figures'
import { mondayOf } from '../table/mondayOf'
import { rowsSheet } from '../table/rowsSheet'
import { all } from '../table/table'
import { batches } from '../tables/batches'
import { calendar } from '../tables/calendar'
import { orders } from '../tables/orders'
import { setup } from '../tables/setup'

/** Two months more than a year, so that what is stuck at its end is seen to the day it leaves the bench. */
export const weeksShown = 61

/** What begins in a week: of the lines still to plan, and of the batches. */
function begun(monday: string, ofOrders: 'planned' | 'pieces' | 'hours', ofBatches: 'cuttings' | 'pieces' | 'hours') {
  return `SUMIF(${all(orders, 'from')},${monday},${all(orders, ofOrders)})+SUMIF(${all(batches, 'from')},${monday},${all(batches, ofBatches)})`
}

/** What stands in a week. */
function standing(monday: string, area: 'benchM2' | 'groundM2'): string {
  return [orders, batches]
    .map((table) => {
      const name = (key: 'from' | 'until' | 'benchM2' | 'groundM2') =>
        table === orders ? all(orders, key) : all(batches, key)
      return `SUMIFS(${name(area)},${name('from')},"<="&${monday},${name('until')},">"&${monday})`
    })
    .join('+')
}

export function calendarSheet(mark: string): NamedSheet {
  const firstDay = figureOf(setup, 'firstDay')
  const tooMuch = (left: string, what: string, unit: string) =>
    `IF(${left}<0,"${what}: "&TEXT(0-${left},"#,##0")&" ${unit} too many. ","")`
  return rowsSheet(
    calendar,
    {
      title: 'Calendar',
      about: [
        'Week by week: what is stuck and what stands, against the room and the hours there are. A part of a week takes the whole week.',
      ],
      results: {
        monday: (_, before) =>
          before === undefined
            ? `IF(ISNUMBER(${firstDay}),${mondayOf(firstDay)},"")`
            : `IF(LEN(${before.monday})=0,"",${before.monday}+7)`,
        week: ({ monday }) => `IF(LEN(${monday})=0,"",YEAR(${monday}+3)&"-W"&TEXT(INT((${monday}+3-DATE(YEAR(${monday}+3),1,1))/7)+1,"00"))`,
        toStick: ({ monday }) => ifWeek(monday, begun(monday, 'planned', 'cuttings')),
        pieces: ({ monday }) => ifWeek(monday, begun(monday, 'pieces', 'pieces')),
        bench: ({ monday }) => ifWeek(monday, standing(monday, 'benchM2')),
        benchThere: ({ monday }) => ifWeek(monday, figureOf(setup, 'benchArea')),
        benchLeft: ({ monday, bench, benchThere }) => ifWeek(monday, `${benchThere}-${bench}`),
        ground: ({ monday }) => ifWeek(monday, standing(monday, 'groundM2')),
        groundThere: ({ monday }) => ifWeek(monday, figureOf(setup, 'bedArea')),
        groundLeft: ({ monday, ground, groundThere }) => ifWeek(monday, `${groundThere}-${ground}`),
        hours: ({ monday }) => ifWeek(monday, begun(monday, 'hours', 'hours')),
        hoursThere: ({ monday }) => ifWeek(monday, figureOf(setup, 'hours')),
        hoursLeft: ({ monday, hours, hoursThere }) => ifWeek(monday, `${hoursThere}-${hours}`),
        deliveries: ({ monday }) =>
          ifWeek(
            monday,
            `SUMIFS(${all(orders, 'liners')},${all(orders, 'delivery')},">="&${monday},${all(orders, 'delivery')},"<"&${monday}+7)`,
          ),
        note: ({ monday, benchLeft, groundLeft, hoursLeft }) =>
          ifWeek(
            monday,
            `TRIM(${tooMuch(benchLeft, 'Bench', 'm2')}&${tooMuch(groundLeft, 'Ground', 'm2')}&${tooMuch(hoursLeft, 'Work', 'hours')})`,
          ),
      },
    },
    mark,
    weeksShown,
  )
}

/** Nothing as long as the season has no first day, or Setup lacks what the week is held against. */
function ifWeek(monday: string, formula: string): string {
  return `IF(OR(LEN(${monday})=0,SetupState<>"ready"),"",${formula})`
}
