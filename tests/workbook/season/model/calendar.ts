/** Calendar: what is stuck and what stands in each week, against the room and the hours there are. */
import type { SeasonData } from '../../../../src/workbook/season/season'
import type { calendar } from '../../../../src/workbook/season/tables/calendar'
import { sum, type Fraction } from '../fraction'
import type { Sticking } from './orders'
import { mondayOf, typed, type Shown } from './typed'

type Week = Readonly<Record<Exclude<keyof typeof calendar.columns, 'note'>, Shown>>

/** "2026-W05": a week belongs to the year in which its Thursday lies (ISO 8601). */
export function isoWeekOf(monday: Fraction): string {
  const thursday = new Date(Date.UTC(1899, 11, 30 + Number(monday.above) + 3))
  const dayOfYear = (thursday.getTime() - Date.UTC(thursday.getUTCFullYear(), 0, 1)) / 86_400_000
  return `${thursday.getUTCFullYear()}-W${String(Math.floor(dayOfYear / 7) + 1).padStart(2, '0')}`
}

/** @param count How many weeks are shown. */
export function weeksOf(data: SeasonData, stuck: readonly Sticking[], count: number) {
  const { setup, orders } = data
  const first = mondayOf(typed(setup.firstDay))
  return Array.from({ length: count }, (_, index) => {
    const monday = first.plus(7 * index)
    const inWeek = stuck.filter(({ day }) => mondayOf(day).equals(monday))
    const stands = stuck.filter(({ from, until }) => !monday.isBelow(from) && monday.isBelow(until))
    const bench = sum(stands.map(({ benchM2 }) => benchM2))
    const onGround = stuck.filter(
      ({ from, groundWeeks }) => !monday.isBelow(from) && monday.isBelow(from.plus(groundWeeks.up().times(7))),
    )
    const ground = sum(onGround.map(({ groundM2 }) => groundM2))
    const hours = sum(inWeek.map((sticking) => sticking.hours))
    return {
      monday,
      week: isoWeekOf(monday),
      toStick: sum(inWeek.map(({ cuttings }) => cuttings)),
      pieces: sum(inWeek.map(({ pieces }) => pieces)),
      bench,
      benchThere: typed(setup.benchArea),
      benchLeft: typed(setup.benchArea).minus(bench),
      ground,
      groundThere: typed(setup.bedArea),
      groundLeft: typed(setup.bedArea).minus(ground),
      hours,
      hoursThere: typed(setup.hours),
      hoursLeft: typed(setup.hours).minus(hours),
      deliveries: sum(
        orders.filter(({ delivery }) => mondayOf(typed(delivery)).equals(monday)).map(({ liners }) => typed(liners)),
      ),
    } satisfies Week
  })
}

export type WeekRow = ReturnType<typeof weeksOf>[number]

export const doesNotFit = ({ benchLeft, groundLeft, hoursLeft }: WeekRow): boolean =>
  [benchLeft, groundLeft, hoursLeft].some((left) => left.isBelow(0))
