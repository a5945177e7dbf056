import { defineByMethod, type TextsOf } from '../../core/definition/definition'
import { number, numbers } from '../../core/definition/parameter'
import { roundUpToWhole } from '../../core/quantity/rounding'
import { dayOf, days } from './calendar'

export const stickDay = defineByMethod({
  id: 'STICKDAY',
  subject: 'weeks',
  parameters: {
    deliveryDay: number('day', { text: 'the day on which the liners must be ready', ...days }),
    stageWeeks: numbers('weeks', { text: 'the weeks that each stage takes, one cell a stage', example: 6 }),
  },
  result: { name: 'stickDay', unit: 'day' },
  method: ({ deliveryDay, stageWeeks }) => {
    const weeks = stageWeeks.reduce((sum, stage) => sum.add(stage))
    const daysBefore = roundUpToWhole(weeks.mul(7))
    const value = dayOf(deliveryDay).sub(daysBefore)
    if (value.lt(days.atLeast))
      return {
        problem: {
          code: 'beforeFirstDay',
          parameter: 'stageWeeks',
          other: 'deliveryDay',
          days: daysBefore.toSignificantDigits(15).toString(),
        },
      }
    return {
      value,
      working: () => [
        {
          name: 'weeks',
          text: 'from sticking to delivery',
          formula: 'SUM(stageWeeks)',
          value: weeks,
          unit: 'weeks',
        },
        {
          name: 'daysBefore',
          text: 'the same in whole days',
          formula: 'ROUNDUP(7 * weeks, 0)',
          value: daysBefore,
          unit: 'days',
        },
        {
          name: 'stickDay',
          text: 'the day to stick on',
          formula: 'INT(deliveryDay) - daysBefore',
          value,
          unit: 'day',
        },
      ],
    }
  },
})

export const stickDayText: TextsOf<typeof stickDay> = {
  summary: 'The day to stick on, so that the liners are ready on the day of delivery.',
  convention:
    'Each week is 7 days, over the end of a year too, and a part of a day counts as a whole one, so that nothing is late. A time of day does not count. The result is the number of a day; format its cell as a date.',
  result: 'the day to stick on',
  plain: () => ({ formula: 'INT(deliveryDay) - ROUNDUP(7 * SUM(stageWeeks), 0)' }),
  examples: [
    {
      text: 'Delivery on Monday 8 March 2027 after 6 weeks of rooting and 8 of growing on: Monday 30 November 2026',
      given: ['2027-03-08', [6, 8]],
      gives: 46356,
      source: 'definition',
    },
    {
      text: 'Half a week more is 4 days',
      given: ['2027-03-08', [6, 8.5]],
      gives: 46352,
      source: 'definition',
    },
  ],
}
