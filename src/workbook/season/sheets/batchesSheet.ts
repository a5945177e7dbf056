import { trays } from '../../../functions/counting/trays'
import type { NamedSheet } from '../cells'
import { standingResults } from './standingResults'
import { call } from '../table/call'
import { lookUp, type ColumnOf, type RowOf } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { batches } from '../tables/batches'
import { containers } from '../tables/containers'
import { methods } from '../tables/methods'
import { orders } from '../tables/orders'

type Batch = RowOf<typeof batches>

const ofLine = ({ line }: Batch, column: ColumnOf<typeof orders>) => lookUp(orders, line, column)
const ofMethod = ({ method }: Batch, column: ColumnOf<typeof methods>) => lookUp(methods, method, column)
const ofContainer = ({ container }: Batch, column: ColumnOf<typeof containers>) => lookUp(containers, container, column)

export function batchesSheet(mark: string, rows: Typed<typeof batches>, open: number): NamedSheet {
  return tableSheet(
    batches,
    {
      title: 'Batches',
      about: [
        'Each sticking of an order line, as planned and as counted. What is counted changes what can be expected.',
      ],
      totals: ['cuttings', 'expected', 'asPlanned', 'difference', 'hours'],
      needs: ({ cuttings, rooted, potted, saleable }) => [
        [`AND(LEN(${rooted})>0,${rooted}>${cuttings})`, '"Rooted: more than were stuck"'],
        [
          `AND(LEN(${potted})>0,${potted}>IF(LEN(${rooted})>0,${rooted},${cuttings}))`,
          '"Potted on: more than there were"',
        ],
        [
          `AND(LEN(${saleable})>0,${saleable}>IF(LEN(${potted})>0,${potted},IF(LEN(${rooted})>0,${rooted},${cuttings})))`,
          '"Saleable: more than there were"',
        ],
      ],
      results: {
        species: (r) => ofLine(r, 'species'),
        method: (r) => ofLine(r, 'method'),
        alive: (r) => lastCounted(r, [r.saleable, r.potted, r.rooted, r.cuttings]),
        rateLeft: (r) => {
          const [strike, pottingOn, grading] = (['strikeUsed', 'pottingOnUsed', 'gradingUsed'] as const).map((key) =>
            ofLine(r, key),
          )
          return lastCounted(r, ['1', grading!, `${pottingOn}*${grading}`, `${strike}*${pottingOn}*${grading}`])
        },
        expected: (r) => `${r.alive}*${r.rateLeft}`,
        asPlanned: (r) => `${r.cuttings}*${ofLine(r, 'rate')}`,
        difference: (r) => `${r.expected}-${r.asPlanned}`,
        pieces: (r) =>
          call(trays, {
            cuttings: r.cuttings,
            cellsPerTray: ofContainer(r, 'places'),
            spareShare: ofMethod(r, 'spare'),
          }),
        ...standingResults<Batch>((r) => r.day),
        hours: (r) => `${r.cuttings}/${ofMethod(r, 'stuckPerHour')}+${r.pieces}/${ofMethod(r, 'setPerHour')}`,
      },
    },
    mark,
    rows,
    open,
  )
}

/** By the last count that was made: of saleable liners, potted plants, rooted cuttings, or none. */
function lastCounted({ saleable, potted, rooted }: Batch, [ifSaleable, ifPotted, ifRooted, ifNone]: string[]): string {
  return `IF(LEN(${saleable})>0,${ifSaleable},IF(LEN(${potted})>0,${ifPotted},IF(LEN(${rooted})>0,${ifRooted},${ifNone})))`
}
