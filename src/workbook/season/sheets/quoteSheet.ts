import { benchCost } from '../../../functions/cost/benchCost'
import { labourCost } from '../../../functions/cost/labourCost'
import { linerCost } from '../../../functions/cost/linerCost'
import { linerPrice } from '../../../functions/cost/linerPrice'
import { mediumCost } from '../../../functions/cost/mediumCost'
import { quote } from '../../../functions/cost/quote'
import { cautionRows } from '../cautionRows'
import { formats, type NamedSheet } from '../cells'
import { call } from '../table/call'
import type { Check } from '../table/checks'
import { money } from '../table/column'
import { figureOf, type FigureOf } from '../table/figures'
import { figuresSheet, whenReady, type FiguresSheet, type TypedFigures } from '../table/figuresSheet'
import { spilled } from '../table/spilled'
import { all, type ColumnOf, countReady, lookUp, notComplete } from '../table/table'
import { quoting } from '../tables/answers'
import { blends } from '../tables/blends'
import { breaks } from '../tables/breaks'
import { methods } from '../tables/methods'
import { setup } from '../tables/setup'

const at = (key: FigureOf<typeof quoting>) => figureOf(quoting, key)
const ofMethod = (column: ColumnOf<typeof methods>) => lookUp(methods, at('method'), column)
const [quantities, margins] = [all(breaks, 'quantity'), all(breaks, 'margin')]

function work(pace: string): string {
  return call(labourCost, {
    unitsPerHour: pace,
    wagePerHour: figureOf(setup, 'wage'),
    onCostShare: figureOf(setup, 'onCosts'),
  })
}

const price = (cost: string, margin: string) => call(linerPrice, { costPerLiner: cost, margin, priceStep: at('step') })

/** The stages in the order in which a liner goes through them. */
const stageCosts = ['rooting', 'potting', 'growing', 'grading'] as const
const stageRates = [ofMethod('strike'), ofMethod('pottingOn'), at('growingRate'), at('gradingRate')] as const
const beside = (cells: readonly string[]) => `HSTACK(${cells.join(',')})`

const floor = call(linerCost, { stageCosts: beside(stageCosts.map(at)), stageRates: beside(stageRates) })
const rootingAlone = `${at('rooting')}/(${stageRates.join('*')})`

/** What a liner costs stage by stage, its price, and what is left of an order that asks for less. */
const results: FiguresSheet<typeof quoting>['results'] = {
  rooting: ofMethod('cost'),
  potting: `${at('pot')}+${call(mediumCost, { cuttingVolumeMl: at('potMl'), costPerLitre: lookUp(blends, at('blend'), 'litre'), settle: at('settle'), spill: at('spill') })}+${work(at('pottedPerHour'))}`,
  growing: `${at('growingMaterial')}+${work(at('tendedPerHour'))}+${call(benchCost, { weeks: at('growingWeeks'), cuttingsPerM2: at('growingPerM2'), ratePerM2Week: figureOf(setup, 'benchRate'), benchUseShare: figureOf(setup, 'benchUse') })}`,
  grading: `${at('label')}+${work(at('gradedPerHour'))}`,
  gradingRate: `${ofMethod('grading')}/${at('growingRate')}`,
  floor,
  later: `${at('floor')}-${rootingAlone}`,
  price: price(at('floor'), at('margin')),
  markup: `${at('price')}/${at('floor')}-1`,
  reached: `SUMPRODUCT(MAX((${quantities}<=${at('liners')})*ISNUMBER(${quantities})*IF(ISNUMBER(${quantities}),${quantities},0)))`,
  listed: `IF(${at('reached')}=0,"no price break applies",${price(`${at('floor')}+${at('fixed')}/${at('reached')}`, `INDEX(${margins},MATCH(${at('reached')},${quantities},0))`)})`,
  lessened: `IF(${at('reached')}=0,"no price break applies",${price(`${at('listed')}*(1-${at('discount')})`, '0')})`,
  orderFloor: `${at('floor')}+${at('fixed')}/${at('liners')}`,
  marginLeft: `IF(${at('reached')}=0,"–",1-${at('orderFloor')}/${at('lessened')})`,
  moneyLeft: `IF(${at('reached')}=0,"–",(${at('lessened')}-${at('orderFloor')})*${at('liners')})`,
  leastPrice: price(at('orderFloor'), at('leastMargin')),
  largestDiscount: `IF(${at('reached')}=0,"–",MAX(1-${at('leastPrice')}/${at('listed')},0))`,
  answer: `IF(${at('reached')}=0,"Fewer than any quantity on Breaks",IF(${at('lessened')}<${at('orderFloor')},"No: below the floor",IF(${at('lessened')}<${at('leastPrice')},"Offer "&FIXED(${at('leastPrice')}),"Take it")))`,
}

const needs: readonly Check[] = [
  [`${notComplete(breaks)}>0`, '"Breaks are not complete"'],
  [`${countReady(breaks)}=0`, '"No quantity on Breaks"'],
  [`${at('growingRate')}<${ofMethod('grading')}`, '"Growing on loses more than grading on Methods allows"'],
  [`OR(${at('margin')}>=1,${at('leastMargin')}>=1)`, '"Margin: below 100 %"'],
  [`${at('liners')}<1`, '"Liners of the order: at least 1"'],
]

export function quoteSheet(mark: string, typed: TypedFigures<typeof quoting>, listed: number): NamedSheet {
  return figuresSheet(
    quoting,
    {
      title: 'Quote',
      about: [
        'What a saleable liner costs over all its stages, which is the floor of any price, and what to ask for it by the size of the order.',
      ],
      cautions: cautionRows(mediumCost, benchCost),
      sections: {
        liners: 'A customer asks for a discount',
        rooting: 'What each stage costs',
        floor: 'The price',
        reached: 'The discount',
      },
      needs,
      results,
      tables: [
        spilled(quote, {
          name: 'QuoteTable',
          formula: whenReady(
            quoting,
            call(quote, {
              costPerLiner: at('floor'),
              quantities,
              margins,
              setupCost: at('fixed'),
              priceStep: at('step'),
            }),
          ),
          formats: {
            quantity: formats.count,
            price: formats.price,
            total: formats.price,
            marginKept: formats.share,
            markup: formats.share,
            floor: formats.each,
            warning: undefined,
          },
          units: {
            quantity: 'The quote: liners',
            price: money('liner'),
            total: money(),
            marginKept: 'of the price',
            markup: 'of the cost',
            floor: money('liner'),
            warning: '',
          },
          height: listed,
        }),
      ],
    },
    mark,
    typed,
  )
}
