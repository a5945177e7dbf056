import { formats } from '../cells'
import { figure, money, openFigure, result, text } from '../table/column'
import { declareFigures } from '../table/figures'

const building = 'Fill in all three where the rate is built from them.'

/** What is typed once for the whole nursery and season. */
export const setup = declareFigures({
  sheet: 'Setup',
  typed: {
    nursery: text('Nursery', '', { note: 'Its name, as it stands at the top of Season' }),
    firstDay: figure('First day of the season', 'year-month-day', formats.day, {
      note: 'The calendar begins with the week in which it lies (ISO 8601: weeks start on Monday) and may run over the end of the year',
    }),
    longestPriceAge: openFigure('Oldest price that may pass', 'days', formats.count, '180', {
      note: 'Check in the pane names prices that are older when the season begins.',
    }),
    currency: text('Currency', 'ISO 4217', { note: 'As it is to stand beside figures: EUR, GBP, USD' }),
    wage: figure('Wage', money('hour'), formats.price, { note: 'Without what the employer pays on top' }),
    onCosts: figure('On-costs', 'share of the wage', formats.share, { note: 'What the employer pays on top' }),
    hours: figure('Hours there are', 'hours per week', formats.count, {
      note: 'Of all who propagate, in an ordinary week; the calendar says which week takes more',
    }),
    benchArea: figure('Bench area there is', 'm2', formats.count, { note: 'Benches alone, without the paths' }),
    benchLoad: openFigure('Load that a bench carries', 'kg per m2', formats.count, 'not asked', {
      note: 'Ask the maker of the bench: wet media are heavy.',
    }),
    bedArea: figure('Ground for beds there is', 'm2', formats.count, {
      note: '0 where no method stands on the ground',
    }),
    benchRateTyped: openFigure(
      'Bench rate',
      money('m2 and week'),
      formats.price,
      'built from heat, water and overheads below',
      { note: 'What a square metre of bench costs a week, with heat and the overheads of the house.' },
    ),
    heat: openFigure('Heat', money('m2 and week'), formats.price, 'the rate is typed above', { note: building }),
    mist: openFigure('Mist: water and power', money('m2 and week'), formats.price, 'the rate is typed above', {
      note: building,
    }),
    overheads: openFigure('Overheads of the house', money('m2 and week'), formats.price, 'the rate is typed above', {
      note: `${building} Rent, repairs, depreciation.`,
    }),
    groundRate: figure('Rate for ground', money('m2 and week'), formats.price, {
      note: 'The same for a bed on the ground, without heated benches',
    }),
    benchUse: figure('Bench and ground that is used', 'share', formats.share, {
      note: 'What stands full on average; the rest is paid for too, by what stands there',
    }),
    confidence: openFigure(
      'Confidence wanted',
      'chance',
      formats.share,
      'the average decides, and half of the lines end short',
      {
        note: 'The chance of having enough that an order line gets which names none of its own.',
      },
    ),
    yearlyInterest: figure('Interest', 'share per year', formats.share, {
      note: 'On what is paid for trays and beds that serve several rounds',
    }),
    roundsPerYear: figure('Rounds in a year', 'rounds', formats.measure, {
      note: 'How often a tray or bed is filled in a year',
    }),
    water: figure('Water', money('m3'), formats.price, { note: 'Metered; on no buying list' }),
    acid: figure('Acid for soaking rockwool', money('m3 of water'), formats.price, {
      note: '0 where there is none. Follow the label; acid into water, never water into acid, and never near bleach',
    }),
  },
  results: {
    benchRate: result('Bench rate that is used', money('m2 and week'), formats.price, {
      note: 'The one typed, else heat, mist and overheads together',
    }),
    hourCost: result('An hour of work', money('hour'), formats.price, { note: 'Wage and on-costs' }),
  },
})
