/** The sheets that answer a question: what is asked on each, and what it answers. */
import { rootingCost } from '../../../functions/cost/rootingCost'
import { bedFill } from '../../../functions/volume/bedFill'
import { blocks } from '../../../functions/volume/blocks'
import { fill } from '../../../functions/volume/fill'
import { water } from '../../../functions/volume/water'
import { formats } from '../cells'
import { figure, money, oneOf, openFigure, result } from '../table/column'
import { declareFigures } from '../table/figures'
import { blends } from './blends'
import { media } from './media'
import { methods } from './methods'
import { orders } from './orders'

export const compareMethods = declareFigures({
  sheet: 'Compare',
  typed: {
    cuttings: figure('Cuttings in a round', 'cuttings', formats.count, {
      note: 'Cost per round and cash in the table are for so many cuttings in every method',
    }),
  },
  results: {
    winner: result('Cheapest method', '', undefined, { note: 'First row of the table below' }),
    perLiner: result('Its rooting cost', money('saleable liner'), formats.each),
    from: result('Cheaper than single use from', 'round', formats.count, {
      note: 'Against the method in the next line',
    }),
    against: result('Single use compared with', '', undefined, { note: 'The cheapest method that serves one round' }),
    next: result('The next method', '', undefined, { note: 'Second row of the table' }),
    ahead: result('More expensive by', money('saleable liner'), formats.each, { note: 'Second row less first row' }),
  },
})

export const reuse = declareFigures({
  sheet: 'Reuse',
  typed: {
    reused: oneOf('Used again', methods, { note: 'A method whose container serves several rounds' }),
    single: oneOf('Single use', methods, { note: 'A method whose container serves one round' }),
  },
  results: {
    singleCost: result('Single use costs', money('cutting, round'), formats.each, {
      note: 'The rooting cost of a cutting, from Methods',
    }),
    everyRound: result('Used again: paid in every round', money('cutting, round'), formats.each, {
      note: 'Medium of the round, hormone, the cutting, labour, bench',
    }),
    firstRound: result('Used again: paid in the first round', money('cutting, round'), formats.each, {
      note: 'What the container costs over the places used, and the line above. The first use is not washed',
    }),
    laterRound: result('Used again: paid in each later round', money('cutting, round'), formats.each, {
      note: 'Washing or steaming, topping up, and what every round costs; paid at the start of the round',
    }),
    broken: result('Used again: broken', 'share per round', formats.share),
    endValue: result('Used again: worth at the end', money('cutting'), formats.each),
    rounds: result('Used again: rounds it serves', 'rounds', formats.count),
    singleRate: result('Overall rate in single use', 'share saleable', formats.share),
    reusedRate: result('Overall rate used again', 'share saleable', formats.share),
    pays: result('Pays from round', 'rounds', formats.count, {
      note: 'The first number of rounds at which a saleable liner is no more expensive than with single use',
    }),
    years: result('That is after', 'years', formats.measure),
    wholeLife: result('Average cost over its life', money('cutting, round'), formats.each, {
      note: 'Per round, with interest; accountants call it the equivalent cost. The same as Rooting cost on Methods',
    }),
    saved: result('Saving per round, over its life', money('saleable liner'), formats.each, {
      note: 'Single use less used again, each over its overall rate',
    }),
  },
})

export const monday = declareFigures({
  sheet: 'Monday',
  typed: {
    day: figure('Week of', 'year-month-day', formats.day, { note: 'Any day of the week that is asked about' }),
  },
  results: {
    week: result('Week', 'ISO 8601', undefined),
    cuttings: result('To stick', 'cuttings', formats.count),
    pieces: result('To fill', 'containers', formats.count),
    litres: result('To mix', 'L loose', formats.litres, {
      note: 'For these containers; a load of the mixer is on Mixing',
    }),
    hours: result('Work', 'hours', formats.litres, { note: 'Setting out and sticking' }),
    bench: result('Bench taken', 'm2', formats.litres),
    deliver: result('To deliver', 'liners', formats.count),
    note: result('What does not fit', '', undefined, { note: 'Calendar' }),
  },
})

/** Monday calls none of these, but who works by it does what they count. */
export const workedBy = [water, fill, bedFill, blocks, rootingCost] as const

/** What Monday lists below its figures, by the name of its corner. */
export const toStick = {
  name: 'MondayToStick',
  headings: {
    line: 'line',
    species: 'species',
    cuttings: 'cuttings',
    pieces: 'containers',
    container: 'container',
    medium: 'medium',
  },
} as const

export const standing = {
  name: 'MondayStanding',
  headings: { line: 'line', species: 'species', pieces: 'containers', container: 'container', until: 'until' },
} as const

export const mixing = declareFigures({
  sheet: 'Mixing',
  typed: {
    blend: oneOf('Blend', blends),
    litres: openFigure('Litres to mix', 'L finished', formats.count, 'all that the season takes'),
    mixer: figure('Mixer', 'L loose', formats.count, {
      note: 'What it takes at a time: all components together, before they shrink',
    }),
  },
  results: {
    mixed: result('Mixed', 'L finished', formats.count),
    loads: result('Loads', 'loads', formats.count, { note: 'The last one may be smaller' }),
  },
})

export const risk = declareFigures({
  sheet: 'Risk',
  typed: {
    method: oneOf('Method', methods),
    draws: figure('Draws', 'draws', formats.count, {
      note: 'Each takes a random value of every figure; the more of them, the smoother',
    }),
    seed: figure('Seed', 'number', formats.count, { note: 'The same seed gives the same odds on every machine' }),
    sure: figure('Confidence level shown', 'share of draws', formats.share, {
      note: 'One of the shares in the table below',
    }),
  },
  results: {
    atMost: result('It costs no more than', money('saleable liner'), formats.each, { note: 'In that share of draws' }),
    widest: result('Biggest uncertainty', '', undefined, { note: 'First row of the table below' }),
  },
})

export const quoting = declareFigures({
  sheet: 'Quote',
  typed: {
    method: oneOf('Method', methods),
    blend: oneOf('Blend in the pot', blends),
    potMl: figure('Volume of a pot', 'mL', formats.count),
    settle: figure('Settling', 'share of height', formats.share),
    spill: figure('Spilt while filling', 'share of loose mix', formats.share),
    pot: figure('Pot', money('pot'), formats.each),
    label: figure('Label', money('label'), formats.each, { note: 'Paid for every plant that is graded' }),
    pottedPerHour: figure('Potted on in an hour', 'plants', formats.count),
    growingMaterial: figure('Growing on: feed and water', money('plant'), formats.each),
    tendedPerHour: figure('Growing on: tended in an hour', 'plants', formats.count),
    growingWeeks: figure('Growing on', 'weeks', formats.measure),
    growingPerM2: figure('Growing on: plants', 'per m2', formats.count),
    growingRate: figure('Survive growing on', 'share', formats.share, {
      note: 'A part of those that pass grading on Methods',
    }),
    gradedPerHour: figure('Graded in an hour', 'plants', formats.count),
    margin: figure('Margin wanted', 'share of the price', formats.share, {
      note: 'Margin is a share of the price, markup a share of the cost',
    }),
    step: figure('Round prices up to a multiple of', money(), formats.price),
    fixed: figure('Fixed cost per order', money('order'), formats.price, {
      note: 'Papers, picking, plant passport, pallet',
    }),
    liners: figure('Liners of the order', 'liners', formats.count),
    discount: figure('Discount asked for', 'share of the price', formats.share),
    leastMargin: figure('Least margin', 'share of the price', formats.share, {
      note: 'Below it the order is not taken',
    }),
  },
  results: {
    rooting: result('Rooting', money('cutting'), formats.each, { note: 'All of it, from Methods' }),
    potting: result('Potting on', money('rooted plant'), formats.each, { note: 'Pot, blend and labour' }),
    growing: result('Growing on', money('potted plant'), formats.each, { note: 'Material, labour and bench' }),
    grading: result('Grading', money('grown plant'), formats.each, { note: 'Label and labour' }),
    gradingRate: result('Pass grading of those grown', 'share', formats.share, {
      note: 'Grading on Methods over what survives growing on',
    }),
    floor: result('Floor: cost of a saleable liner', money('liner'), formats.each, {
      note: 'Each stage is paid for all that enter it, so losses divide. Without selling, the office, profit and liners left unsold',
    }),
    later: result('Of that, after rooting', money('liner'), formats.each),
    price: result('Price at the margin wanted', money('liner'), formats.price, {
      note: 'Cost / (1 - margin), rounded up',
    }),
    markup: result('That is a markup of', 'share of the cost', formats.share),
    reached: result('Price break that applies', 'liners', formats.count, { note: '0 where the order reaches none' }),
    listed: result('List price at that quantity', money('liner'), formats.price),
    lessened: result('Price after discount', money('liner'), formats.price, {
      note: 'Rounded up to the multiple above',
    }),
    orderFloor: result('Floor of this order', money('liner'), formats.each, {
      note: 'Includes its share of the fixed cost',
    }),
    marginLeft: result('Margin left', 'share of the price', formats.share),
    moneyLeft: result('Margin on the whole order', money(), formats.price, {
      note: 'For selling, the office and profit',
    }),
    leastPrice: result('Least price', money('liner'), formats.price, {
      note: 'The floor at the least margin, rounded up to the multiple above',
    }),
    largestDiscount: result('Largest discount', 'share of the price', formats.share),
    answer: result('Answer', '', undefined),
  },
})

export const surplus = declareFigures({
  sheet: 'Surplus',
  typed: {
    line: oneOf('Order line', orders),
    penalty: figure('Goodwill lost by a missing liner', money('liner'), formats.each, { note: 'Beyond the lost sale' }),
    value: figure('A surplus liner brings', money('liner'), formats.each, {
      note: 'A late sale, less what it still costs',
    }),
  },
  results: {
    lost: result('A missing liner loses', money('liner'), formats.each, {
      note: 'Its price on Quote, less what it would still have cost, and the goodwill',
    }),
    pays: result('Most profitable number to stick', 'cuttings', formats.count, {
      note: 'Beyond it one more costs more than it is likely to earn',
    }),
    planned: result('Number on Orders', 'cuttings', formats.count),
    more: result('Difference: stick more (+) or fewer (-)', 'cuttings', '+#,##0_);-#,##0_);0_)'),
  },
})

export const cheapest = declareFigures({
  sheet: 'Cheapest',
  typed: { medium: oneOf('Medium', media) },
  results: {
    needed: result('Needed', 'L loose', formats.litres, { note: 'Media: with waste, less the stock' }),
    listed: result('By the price list', money(), formats.price, { note: 'Media: what its row costs' }),
    planned: result('The order below', money(), formats.price),
    saved: result('Saved by the order below', money(), formats.price, {
      note: 'Media goes by the price list all the same',
    }),
  },
})

export const timing = declareFigures({
  sheet: 'Timing',
  typed: {
    method: oneOf('Method', methods, { note: 'One that fills trays with a medium as it is bought' }),
    delivery: figure('Freight of a delivery', money('order'), formats.price, {
      note: 'In place of the delivery of each pack on Media',
    }),
    holding: figure('Storage cost of a pack', money('period'), formats.price),
  },
  results: {
    medium: result('Medium', '', undefined),
    perContainer: result('Litres in a container', 'L loose', formats.litres),
    pack: result('Litres in a pack', 'L loose', formats.litres, { note: 'Waste taken off' }),
    onHand: result('Packs in stock', 'packs', formats.count, { note: 'The whole packs of what is on hand on Media' }),
    missed: result('Containers outside the periods', 'containers', formats.count, {
      note: 'Must be 0: else a sticking day lies outside the periods',
    }),
  },
})

export const overview = declareFigures({
  sheet: 'Season',
  typed: {},
  results: {
    complete: result('Complete', '', undefined),
    lines: result('Order lines', 'lines', formats.count),
    liners: result('Liners ordered', 'liners', formats.count),
    cuttings: result('Cuttings to stick', 'cuttings', formats.count),
    expected: result('Saleable liners to expect', 'liners', formats.count, {
      note: 'On average, with what was counted; more than ordered where a confidence was asked for',
    }),
    firstDay: result('First sticking day', 'year-month-day', formats.day),
    lastDay: result('Last sticking day', 'year-month-day', formats.day),
    media: result('Media to buy', money(), formats.price, { note: 'Media: rounded to the cent, then added' }),
    containers: result('Containers to buy', money(), formats.price, {
      note: 'Containers: for the fullest week, less those on hand',
    }),
    buying: result('Buying, everything', money(), formats.price, {
      note: 'Cash to pay this season for media and containers',
    }),
    rooting: result('Rooting cost of the season', money(), formats.price, {
      note: 'Orders: everything up to the rooted plant',
    }),
    perLiner: result('Rooting cost for each liner ordered', money('liner'), formats.each),
    fullWeeks: result('Weeks that do not fit', 'weeks', formats.count, { note: 'Calendar: bench, ground or hours' }),
    firstFull: result('The first of them', '', undefined, { note: 'Calendar' }),
    outside: result('Cuttings outside the calendar', 'cuttings', formats.count, {
      note: 'Must be 0: else some are stuck before the season begins, or after the weeks of Calendar',
    }),
    undelivered: result('Liners delivered outside the calendar', 'liners', formats.count, {
      note: '0 where every delivery lies within the weeks of Calendar',
    }),
    late: result('Lines not in time', 'lines', formats.count, {
      note: 'Orders: to be stuck before the season begins, or lead time shorter than rooting',
    }),
    heavy: result('Methods too heavy for the bench', 'methods', formats.count, {
      note: 'Methods: of those whose watered weight is typed, where Setup says what a bench carries',
    }),
    short: result('Liners short by the counts', 'liners', formats.count, {
      note: 'Batches: lines that are expected to end below what was ordered',
    }),
    winner: result('Cheapest method', '', undefined, { note: 'Compare: one species in all methods' }),
    winnerCost: result('Its rooting cost', money('saleable liner'), formats.each),
    next: result('The next method', '', undefined, { note: 'Compare' }),
    ahead: result('More expensive by', money('saleable liner'), formats.each),
    pays: result('Reuse pays from round', 'rounds', formats.count, { note: 'Reuse: the two methods compared there' }),
    atMost: result('It costs no more than', money('saleable liner'), formats.each, {
      note: 'Risk: in the share of draws asked for there',
    }),
    widest: result('Biggest uncertainty', '', undefined, { note: 'Risk' }),
    floor: result('Floor: cost of a saleable liner', money('liner'), formats.each, { note: 'Quote' }),
    price: result('Price at the margin wanted', money('liner'), formats.price, { note: 'Quote' }),
    answer: result('A customer asks for a discount', '', undefined, { note: 'Quote' }),
    variance: result('Spent beyond the standard', money(), formats.price, { note: 'Review. Positive is adverse' }),
  },
})
