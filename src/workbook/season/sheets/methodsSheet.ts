import { benchCost } from '../../../functions/cost/benchCost'
import { labourCost } from '../../../functions/cost/labourCost'
import { rootingCost } from '../../../functions/cost/rootingCost'
import { reuseCost } from '../../../functions/reuse/reuseCost'
import { bedFill } from '../../../functions/volume/bedFill'
import { blocks } from '../../../functions/volume/blocks'
import { fill } from '../../../functions/volume/fill'
import { water } from '../../../functions/volume/water'
import { cautionRows } from '../cautionRows'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { figureOf } from '../table/figures'
import { countOf, lookUp, sumWhere, type ColumnOf, type RowOf } from '../table/table'
import type { Check } from '../table/checks'
import { tableSheet, type TableSheet, type Typed } from '../table/tableSheet'
import { batches } from '../tables/batches'
import { blends } from '../tables/blends'
import { containers } from '../tables/containers'
import { media } from '../tables/media'
import { methods } from '../tables/methods'
import { orders } from '../tables/orders'
import { setup } from '../tables/setup'

type Method = RowOf<typeof methods>

const figure = (key: Parameters<typeof figureOf<typeof setup>>[1]) => figureOf(setup, key)
const ofContainer = ({ container }: Method, column: ColumnOf<typeof containers>) =>
  lookUp(containers, container, column)
/** A blank cell that is looked up stays blank in one host and is 0 in another. */
const orNothing = (cell: string) => `${cell}+0`
const isBed = (r: Method) => `${ofContainer(r, 'kind')}="bed"`
const isVessel = (r: Method) => `${ofContainer(r, 'kind')}="vessel"`
const days = ({ weeks }: Method) => `7*${weeks}`
const litreOfM3 = '/1000'

/** Money for each piece that a person handles, over the cuttings in it. */
function work(pace: string, share: string): string {
  return `${call(labourCost, { unitsPerHour: pace, wagePerHour: figure('wage'), onCostShare: figure('onCosts') })}${share}`
}

/** What stands for as many cuttings as fill one container, and serves all its rounds. */
const pieceOf = (r: Method) => ({
  firstCost: r.first,
  rounds: r.rounds,
  washCost: r.wash,
  topUpShare: r.topUp,
  lossShare: r.broken,
  endValue: r.endValue,
  yearlyInterest: figure('yearlyInterest'),
  roundsPerYear: figure('roundsPerYear'),
})

/** What each method takes and costs. */
const results: TableSheet<typeof methods>['results'] = {
  used: (r) => `${ofContainer(r, 'places')}*(1-${r.spare})`,
  loose: (r) =>
    `IF(${isBed(r)},${call(bedFill, { lengthM: ofContainer(r, 'bedLength'), widthM: ofContainer(r, 'bedWidth'), depthM: ofContainer(r, 'bedDepth'), settle: r.settle, spill: r.spill })},` +
    `IF(${isVessel(r)},${call(water, { vesselLitres: ofContainer(r, 'vesselLitres'), vessels: '1', changeEveryDays: r.waterChange, days: days(r) })},` +
    `IF(${r.kind}="rockwool",${r.soak},${call(fill, { vessels: ofContainer(r, 'places'), vesselVolumeMl: ofContainer(r, 'cell'), settle: r.settle, spill: r.spill })})))`,
  litre: (r) =>
    `IF(${isVessel(r)},${figure('water')}${litreOfM3},IF(${r.kind}="rockwool",(${figure('water')}+${figure('acid')})${litreOfM3},` +
    `IF(${countOf(blends, 'name', r.medium)}>0,${lookUp(blends, r.medium, 'litre')},${lookUp(media, r.medium, 'litre')})))`,
  first: (r) => `${ofContainer(r, 'price')}+IF(${isBed(r)},${r.loose}*${r.litre},0)`,
  rounds: (r) => ofContainer(r, 'rounds'),
  wash: (r) => orNothing(ofContainer(r, 'wash')),
  topUp: (r) => `IF(${isBed(r)},${ofContainer(r, 'topUp')}*${r.loose}*${r.litre}/${r.first},0)`,
  broken: (r) => orNothing(ofContainer(r, 'broken')),
  endValue: (r) => orNothing(ofContainer(r, 'endValue')),
  piece: (r) => `${call(reuseCost, pieceOf(r))}/${r.used}`,
  mediumCost: (r) => `IF(${isBed(r)},0,${r.loose}*${r.litre}/${r.used})`,
  labour: (r) =>
    `${work(r.stuckPerHour, '')}+${work(r.setPerHour, `/${r.used}`)}` +
    `+IF(LEN(${r.tendPerHour})=0,0,${work(r.tendPerHour, `/${r.used}`)}*IF(${isVessel(r)},${call(water, { vesselLitres: '1', vessels: '1', changeEveryDays: r.waterChange, days: days(r) })}-1,1))` +
    `+IF(LEN(${r.liftPerHour})=0,0,${r.strike}*${work(r.liftPerHour, '')})`,
  bench: (r) =>
    call(benchCost, {
      weeks: r.weeks,
      cuttingsPerM2: `${r.used}/${ofContainer(r, 'ground')}`,
      ratePerM2Week: `IF(${r.stands}="ground",${figure('groundRate')},${figure('benchRate')})`,
      benchUseShare: figure('benchUse'),
    }),
  otherCost: (r) => `${r.mediumCost}+${r.hormone}+${r.cutting}+${r.labour}+${r.bench}+${r.other}`,
  cost: (r) => `${r.piece}+${r.otherCost}`,
  rate: (r) => `${r.strike}*${r.pottingOn}*${r.grading}`,
  perLiner: (r) => {
    const { firstCost, rounds, ...later } = pieceOf(r)
    return call(rootingCost, {
      firstCost,
      rounds,
      cuttingsPerRound: r.used,
      yield: r.rate,
      otherCostPerCutting: r.otherCost,
      ...later,
    })
  },
  load: (r) => `IF(LEN(${r.weight})=0,"",${r.weight}/${ofContainer(r, 'ground')})`,
  heavy: (r) =>
    `IF(AND(${r.stands}="bench",ISNUMBER(${r.load}),ISNUMBER(${figure('benchLoad')}),${r.load}>${figure('benchLoad')}),"more than the bench carries","")`,
  filled: (r) => `${sumWhere(orders, 'pieces', 'method', r.name)}+${sumWhere(batches, 'pieces', 'method', r.name)}`,
  litres: (r) => {
    const share = `IF(${ofContainer(r, 'filled')}=0,0,${r.filled}/${ofContainer(r, 'filled')})`
    const bought = `${ofContainer(r, 'toBuy')}*${share}`
    const later = `MAX(0,${r.filled}-${bought})*${ofContainer(r, 'topUp')}`
    return `IF(OR(${isVessel(r)},${r.kind}="rockwool"),0,${r.loose}*IF(${isBed(r)},${bought}+${later},${r.filled}))`
  },
}

export function methodsSheet(mark: string, rows: Typed<typeof methods>, open: number): NamedSheet {
  return tableSheet(
    methods,
    {
      title: 'Methods',
      about: [
        'Rooting methods side by side: what each takes, and what it costs for a cutting stuck and for a saleable liner, from the cutting to the rooted plant.',
      ],
      cautions: cautionRows(water, fill, bedFill, blocks, reuseCost, benchCost, rootingCost),
      needs: needsOf,
      results,
    },
    mark,
    rows,
    open,
  )
}

function needsOf(r: Method): readonly Check[] {
  const hasMedium = `AND(${r.kind}<>"water",${r.kind}<>"rockwool")`
  return [
    ['SetupState<>"ready"', '"see Setup"'],
    [`AND(${r.kind}="water",${ofContainer(r, 'kind')}<>"vessel")`, '"Container: water needs a vessel"'],
    [
      `AND(${r.kind}="rockwool",${ofContainer(r, 'kind')}<>"block sheet")`,
      '"Container: rockwool comes in block sheets"',
    ],
    [
      `AND(${hasMedium},${ofContainer(r, 'kind')}<>"tray",${ofContainer(r, 'kind')}<>"bed")`,
      '"Container: a tray or a bed"',
    ],
    [`AND(${r.kind}="water",LEN(${r.waterChange})=0)`, '"Water changed every: type number"'],
    [`AND(${hasMedium},LEN(${r.medium})=0)`, '"Medium or blend: type text"'],
    [
      `IF(${hasMedium},${countOf(blends, 'name', r.medium)}+${countOf(media, 'name', r.medium)}=0)`,
      '"Medium: not on Blends or Media"',
    ],
    [
      `IF(${hasMedium},${countOf(blends, 'name', r.medium)}*${countOf(media, 'name', r.medium)}>0)`,
      '"Medium: on Blends and on Media too"',
    ],
    [
      `IF(${hasMedium},IF(${countOf(blends, 'name', r.medium)}>0,${lookUp(blends, r.medium, 'state')},${lookUp(media, r.medium, 'state')})<>"ready")`,
      '"Medium: not complete on its sheet"',
    ],
  ]
}
