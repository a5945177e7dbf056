import { quote } from '../../functions/cost/quote'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import { mediumCost } from '../../functions/cost/mediumCost'
import {
  formats,
  heading,
  headings,
  headOf,
  input,
  priced,
  result,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { sixWays } from './sixWays'
import { aboveTable, letterOf, spilledTable } from './spilledTable'

/** Invented margins: the larger the order, the smaller the share of the price that is kept. */
const breaks: readonly { readonly quantity: number; readonly margin: number }[] = [
  { quantity: 250, margin: 0.42 },
  { quantity: 500, margin: 0.38 },
  { quantity: 1_000, margin: 0.34 },
  { quantity: 2_500, margin: 0.31 },
  { quantity: 5_000, margin: 0.28 },
]

interface Stage {
  readonly name: string
  readonly material: Cell
  readonly perHour: Cell
  readonly weeks: Cell
  readonly perM2: Cell
  readonly survive: (row: number) => Cell
}

const dash = text('–')

/** From the cutting to the liner on the lorry: what it costs, what it loses, and what to ask for it. */
export function quoteSheet(): NamedSheet {
  const letters = breaks.map((_, index) => String.fromCharCode('B'.charCodeAt(0) + index))
  const ofWay = (range: string, row: number) => `INDEX(${range},MATCH($B$${row},WayName,0))`
  const acrossBreaks = (row: number) => `$${letters[0]}$${row}:$${letters.at(-1)}$${row}`
  const { rows, at } = layOut({
    ...headOf(
      'Quote',
      'What a saleable liner costs over all its stages, which is the floor of any price, and what to ask for it by the size of the order.',
    ),
    gap: blank,
    asked: () => headings('What is quoted', 'Figure', 'Unit', '', 'Where it comes from', '', '', '', ''),
    way: () => line('Way of rooting', input(sixWays.premix.name), '', 'One of the six on Ways'),
    potVolume: () =>
      line(
        'Volume of a pot',
        input(270, formats.count),
        'mL',
        'A square pot of 8 cm. Filled with the peat blend of Blends. Invented',
      ),
    settle: () => line('Settling', input(0.1, formats.share), 'share of height', 'As on Ways'),
    spill: () => line('Spilt while filling', input(0.03, formats.share), 'share of loose mix', 'As on Ways'),
    potPrice: () => line('Pot', result(`=${priced('PotPrice')}`, formats.each), 'EUR a pot', 'Prices'),
    label: () =>
      line(
        'Label',
        result(`=${priced('LabelPrice')}`, formats.each),
        'EUR a label',
        'Prices. Paid for every plant that is graded',
      ),
    margin: () =>
      line(
        'Margin wanted',
        input(0.35, formats.share),
        'share of the price',
        'Invented. Margin is a share of the price, markup a share of the cost',
      ),
    step: () => line('Prices end on', input(0.01, formats.price), 'EUR', 'Rounded up to whole steps'),
    setup: () =>
      line('Paid once an order', input(28, formats.price), 'EUR', 'Papers, picking, plant passport, pallet. Invented'),
    gapBetween: blank,
    stageUnits: () =>
      headings('', 'EUR each', 'an hour', 'EUR each', 'weeks', 'per m2', 'EUR each', 'EUR each', 'share'),
    stageHeading: () => headings('Stage', 'Material', 'Done', 'Labour', 'Bench', 'Plants', 'Bench', 'Cost', 'Survive'),
    stages: {
      height: 4,
      rows: (at) => {
        const blendUsed = `STICK.MEDIUMCOST(B${at.potVolume},PeatBlendCost,B${at.settle},B${at.spill})`
        const stages: readonly Stage[] = [
          {
            name: 'Sticking and rooting',
            material: result(`=${ofWay('WayCostPerCutting', at.way)}`, formats.each),
            perHour: dash,
            weeks: dash,
            perM2: dash,
            survive: () => result(`=${ofWay('WayStrike', at.way)}`, formats.share),
          },
          {
            name: 'Potting on',
            material: result(`=B${at.potPrice}+${blendUsed}`, formats.each),
            perHour: input(420, formats.count),
            weeks: dash,
            perM2: dash,
            survive: () => result(`=${ofWay('WayPottingOn', at.way)}`, formats.share),
          },
          {
            name: 'Growing on',
            material: input(0.009, formats.each),
            perHour: input(1500, formats.count),
            weeks: input(6, formats.count),
            perM2: input(110, formats.count),
            survive: () => input(0.98, formats.share),
          },
          {
            name: 'Grading',
            material: result(`=B${at.label}`, formats.each),
            perHour: input(650, formats.count),
            weeks: dash,
            perM2: dash,
            survive: (row) =>
              result(
                `=IF(${ofWay('WayGradeOut', at.way)}>I${row - 1},"growing on loses more than grade-out",${ofWay('WayGradeOut', at.way)}/I${row - 1})`,
                formats.share,
              ),
          },
        ]
        return stages.map(({ name, material, perHour, weeks, perM2, survive }, index) => {
          const row = at.stages + index
          return [
            text(name),
            material,
            perHour,
            perHour === dash ? dash : result(`=STICK.LABOURCOST(C${row},Wage,OnCosts)`, formats.each),
            weeks,
            perM2,
            weeks === dash ? dash : result(`=STICK.BENCHCOST(E${row},F${row},BenchRate,BenchUse)`, formats.each),
            total(`=SUM(B${row},D${row},G${row})`, formats.each),
            survive(row),
          ]
        })
      },
    },
    stageNote: () => [
      text(
        'A stage is paid for all plants that enter it: the survivors bear what was spent early. Rooting has its labour and bench in it. Growing on: feed, water; what survives it is a part of the grade-out rate on Ways.',
      ),
    ],
    gapAbove: blank,
    answer: () => headings('The price', 'Figure', 'Unit', '', 'Where it comes from', '', '', '', ''),
    cost: (at) =>
      line(
        'Floor: cost of a liner',
        total(`=STICK.LINERCOST(H${at.stages}:H${at.stageNote - 1},I${at.stages}:I${at.stageNote - 1})`, formats.each),
        'EUR a liner',
        'Without selling, the office, profit and liners left unsold: below it money is lost',
      ),
    laterCost: (at) =>
      line(
        'Of that, after rooting',
        result(`=B${at.cost}-STICK.PERLINER(H${at.stages},I${at.stages}:I${at.stageNote - 1})`, formats.each),
        'EUR a liner',
        'The floor less what rooting costs',
      ),
    price: (at) =>
      line(
        'Price at the margin wanted',
        total(`=STICK.LINERPRICE(B${at.cost},B${at.margin},B${at.step})`, formats.price),
        'EUR a liner',
        'Cost / (1 - margin), rounded up',
      ),
    markup: (at) =>
      line(
        'That is a markup of',
        result(`=B${at.price}/B${at.cost}-1`, formats.share),
        'share of the cost',
        'The same price, read the other way',
      ),
    gapBelow: blank,
    quantities: () => [
      heading('Order of so many liners'),
      ...breaks.map(({ quantity }) => input(quantity, formats.count)),
    ],
    margins: () => [heading('Margin, share of the price'), ...breaks.map(({ margin }) => input(margin, formats.share))],
    marginNote: () => [
      text(
        'What is paid once is spread over the order. One just below a break can cost more than the break itself: offer the break instead.',
      ),
    ],
    gapAsked: blank,
    order: () => headings('An order that asks for less', 'Figure', 'Unit', '', 'Where it comes from', '', '', '', ''),
    liners: () => line('Liners of the order', input(12_000, formats.count), 'liners', 'Invented'),
    off: () => line('Asked to come off', input(0.08, formats.share), 'share of the price', 'Invented'),
    leastMargin: () =>
      line(
        'Least margin',
        input(0.24, formats.share),
        'share of the price',
        'Invented: below it the order is not taken',
      ),
    reached: (at) =>
      line(
        'Quantity it reaches',
        result(
          `=SUMPRODUCT(MAX((${acrossBreaks(at.quantities)}<=B${at.liners})*${acrossBreaks(at.quantities)}))`,
          formats.count,
        ),
        'liners',
        'The largest of those above that is no more than the order; 0 where it reaches none',
      ),
    listed: (at) =>
      line(
        'Price listed for so many',
        result(
          `=STICK.LINERPRICE(B${at.cost}+B${at.setup}/B${at.reached},INDEX(${acrossBreaks(at.margins)},MATCH(B${at.reached},${acrossBreaks(at.quantities)},0)),B${at.step})`,
          formats.price,
        ),
        'EUR a liner',
        'That of the quantity it reaches',
      ),
    lessened: (at) =>
      line(
        'Price with that off',
        result(`=STICK.LINERPRICE(B${at.listed}*(1-B${at.off}),0,B${at.step})`, formats.price),
        'EUR a liner',
        'Rounded up to whole steps',
      ),
    orderFloor: (at) =>
      line(
        'Floor of this order',
        result(`=B${at.cost}+B${at.setup}/B${at.liners}`, formats.each),
        'EUR a liner',
        'With its part of what is paid once',
      ),
    marginLeft: (at) =>
      line(
        'Margin left',
        result(`=1-B${at.orderFloor}/B${at.lessened}`, formats.share),
        'share of the price',
        'After what was asked to come off',
      ),
    moneyLeft: (at) =>
      line(
        'Left of the whole order',
        total(`=(B${at.lessened}-B${at.orderFloor})*B${at.liners}`, formats.price),
        'EUR',
        'For selling, the office and profit',
      ),
    leastPrice: (at) =>
      line(
        'Least price',
        result(`=STICK.LINERPRICE(B${at.orderFloor},B${at.leastMargin},B${at.step})`, formats.price),
        'EUR a liner',
        'The floor at the least margin, rounded up to whole steps',
      ),
    mostOff: (at) =>
      line(
        'Most that can come off',
        result(`=MAX(1-B${at.leastPrice}/B${at.listed},0)`, formats.share),
        'share of the price',
        'From the listed price down to the least price',
      ),
    answerToOrder: (at) =>
      line(
        'Answer',
        total(
          `=IF(B${at.reached}=0,"Fewer than any quantity above",IF(B${at.lessened}<B${at.orderFloor},"No: below the floor",IF(B${at.lessened}<B${at.leastPrice},"Offer "&TEXT(B${at.leastPrice},"0.00"),"Take it")))`,
        ),
        '',
        'Take it at the price asked, offer the least price instead, or leave it',
      ),
    cautions: cautionLines(mediumCost),
    gapLast: blank,
    quoteHeading: () => [
      ...aboveTable(quote, {
        quantity: 'The quote: liners',
        price: 'EUR a liner',
        total: 'EUR',
        marginKept: 'of the price',
        markup: 'of the cost',
        floor: 'EUR a liner',
        warning: '',
      }),
      ...headings('', ''),
    ],
    quote: {
      height: breaks.length + 1,
      rows: (at) =>
        spilledTable(
          quote,
          `=STICK.QUOTE(B${at.cost},${acrossBreaks(at.quantities)},${acrossBreaks(at.margins)},B${at.setup},B${at.step})`,
          {
            quantity: formats.count,
            price: formats.price,
            total: formats.price,
            marginKept: formats.share,
            markup: formats.share,
            floor: formats.each,
            warning: undefined,
          },
          breaks.length,
        ),
    },
  })
  const name = naming('Quote')
  return {
    sheet: {
      name: 'Quote',
      widths: [28, 13, 13, 13, 13, 13, 13, 13, 13],
      frozenRows: at.invented,
      frozenColumns: 0,
      rows,
    },
    names: [
      name('FloorPrice', 'B', at.cost),
      name('CostAfterRooting', 'B', at.laterCost),
      name('LinerPrice', 'B', at.price),
      name('AnswerToOrder', 'B', at.answerToOrder),
      name('OrderMarginLeft', 'B', at.marginLeft),
      name('QuoteTable', 'A', at.quote),
      name('LargestPriceEach', letterOf(quote, 'price'), at.quote + breaks.length),
      name('QuoteWarnings', letterOf(quote, 'warning'), at.quote + 1, at.quote + breaks.length),
    ],
  }
}

function line(label: string, cell: Cell, unit: string, how: string): Row {
  return [text(label), cell, text(unit), undefined, text(how)]
}
