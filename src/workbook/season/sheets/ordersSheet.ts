import { onTrack } from '../../../functions/review/onTrack'
import { stickDay } from '../../../functions/weeks/stickDay'
import { perLiner } from '../../../functions/cost/perLiner'
import { batchSpread } from '../../../functions/counting/batchSpread'
import { cuttings } from '../../../functions/counting/cuttings'
import { trays } from '../../../functions/counting/trays'
import type { NamedSheet } from '../cells'
import { standingResults } from './standingResults'
import { call } from '../table/call'
import { figureOf } from '../table/figures'
import { all, lookUp, notComplete, onlyWhere, sumWhere, type ColumnOf, type RowOf } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { batches } from '../tables/batches'
import { containers } from '../tables/containers'
import { methods } from '../tables/methods'
import { orders } from '../tables/orders'
import { past } from '../tables/past'
import { setup } from '../tables/setup'

type Order = RowOf<typeof orders>

const ofMethod = ({ method }: Order, column: ColumnOf<typeof methods>) => lookUp(methods, method, column)
const ofContainer = ({ container }: Order, column: ColumnOf<typeof containers>) => lookUp(containers, container, column)

export function ordersSheet(mark: string, rows: Typed<typeof orders>, open: number): NamedSheet {
  return tableSheet(
    orders,
    {
      title: 'Order book',
      about: [
        'What was promised, the cuttings to stick for it and when, what they stand in, and what rooting them costs. Rates multiply, losses divide.',
      ],
      totals: ['liners', 'cuttings', 'batched', 'planned', 'expected', 'short', 'cost', 'hours'],
      needs: ({ liners, weeks, strike, grading, spread }) => [
        ['SetupState<>"ready"', '"see Setup"'],
        [`${liners}<>INT(${liners})`, '"Ordered: a whole number"'],
        [`${weeks}<=0`, '"Lead time: more than 0"'],
        [`AND(LEN(${spread})=0,${notComplete(past)}>0)`, '"Batch spread: Past is not complete"'],
        [`COUNTIF(${strike}:${grading},0)>0`, '"Rates: more than 0"'],
        [`COUNTIF(${strike}:${grading},">1")>0`, '"Rates: at most 100 %"'],
      ],
      results: {
        stickDay: (r) => call(stickDay, { deliveryDay: r.delivery, stageWeeks: r.weeks }),
        note: (r) =>
          `IF(${r.stickDay}<${figureOf(setup, 'firstDay')},"to be stuck before the season begins",IF(${r.weeks}<${ofMethod(r, 'weeks')},"lead time shorter than rooting","in time"))`,
        strikeUsed: (r) => orOf(r.strike, ofMethod(r, 'strike')),
        pottingOnUsed: (r) => orOf(r.pottingOn, ofMethod(r, 'pottingOn')),
        gradingUsed: (r) => orOf(r.grading, ofMethod(r, 'grading')),
        rate: (r) => `${r.strikeUsed}*${r.pottingOnUsed}*${r.gradingUsed}`,
        confidenceUsed: (r) =>
          orOf(r.confidence, `IF(LEN(${figureOf(setup, 'confidence')})>0,${figureOf(setup, 'confidence')},"")`),
        spreadUsed: spreadOf,
        cuttings: (r) =>
          call(cuttings, {
            liners: r.liners,
            stageRates: r.rate,
            confidence: r.confidenceUsed,
            batchSpread: r.spreadUsed,
          }),
        batched: (r) =>
          `IF(COUNTIFS(${all(batches, 'line')},${r.line},${all(batches, 'state')},"<>ready")>0,NA(),${sumWhere(batches, 'cuttings', 'line', r.line)})`,
        planned: (r) => `MAX(0,${r.cuttings}-${r.batched})`,
        pieces: piecesOf,
        expected: (r) => `${sumWhere(batches, 'expected', 'line', r.line)}+${r.planned}*${r.rate}`,
        chance: chanceOf,
        short: (r) => `MAX(0,ROUNDDOWN(${r.liners}-${r.expected},0))`,
        again: againOf,
        againBy: (r) => `IF(${r.again}=0,"",${r.stickDay})`,
        costPerCutting: (r) => ofMethod(r, 'cost'),
        costPerLiner: (r) => call(perLiner, { costPerCutting: r.costPerCutting, stageRates: r.rate }),
        cost: (r) => `ROUND(${r.cuttings}*${r.costPerCutting},2)`,
        ...standingResults<Order>((r) => r.stickDay),
        hours: (r) => `${r.planned}/${ofMethod(r, 'stuckPerHour')}+${r.pieces}/${ofMethod(r, 'setPerHour')}`,
      },
    },
    mark,
    rows,
    open,
  )
}

/** Each line starts a new container. */
function piecesOf(r: Order): string {
  return call(trays, {
    cuttings: r.planned,
    cellsPerTray: ofContainer(r, 'places'),
    spareShare: ofMethod(r, 'spare'),
  })
}

/** What was typed, else another figure. */
const orOf = (cell: string, other: string) => `IF(LEN(${cell})>0,${cell},${other})`

/** Typed, else of the past batches of the species, where there are two; nothing where there are not. */
function spreadOf({ species, spread }: Order): string {
  const ofPast = (column: ColumnOf<typeof past>) => onlyWhere(past, column, 'species', species)
  return `IF(LEN(${spread})>0,${spread},IF(COUNTIFS(${all(past, 'species')},${species},${all(past, 'state')},"ready")<2,"",${call(batchSpread, { stuck: ofPast('stuck'), taken: ofPast('saleable') })}))`
}

/** The batches as last counted, and what is still to plan as one batch more. */
function outlookOf({ line, liners, planned, rate, spreadUsed }: Order) {
  return {
    liners,
    growing: `VSTACK(${onlyWhere(batches, 'alive', 'line', line)},${planned})`,
    ratesLeft: `VSTACK(${onlyWhere(batches, 'rateLeft', 'line', line)},${rate})`,
    batchSpread: spreadUsed,
  }
}

/** The chance is the second column of its table, below its heading. */
const chanceOf = (r: Order) => `INDEX(${call(onTrack, outlookOf(r))},2,2)`

/** The third column: what brings the chance up to the confidence, or the average where none is wanted. */
function againOf(r: Order): string {
  const table = call(onTrack, { ...outlookOf(r), newRates: r.rate, confidence: r.confidenceUsed })
  return `IF(${r.batched}=0,0,INDEX(${table},2,3))`
}
