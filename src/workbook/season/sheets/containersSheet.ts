import { bags } from '../../../functions/buying/bags'
import { blocks } from '../../../functions/volume/blocks'
import { cellVolume } from '../../../functions/volume/cellVolume'
import { roundCell } from '../../../functions/volume/roundCell'
import { peak } from '../../../functions/weeks/peak'
import { cautionRows } from '../cautionRows'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { onlyWhere, sumWhere } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { batches } from '../tables/batches'
import { containers } from '../tables/containers'
import { orders } from '../tables/orders'

export function containersSheet(mark: string, rows: Typed<typeof containers>, open: number): NamedSheet {
  return tableSheet(
    containers,
    {
      title: 'Containers',
      about: [
        'Trays, beds, vessels and sheets of blocks, what they cost, and how many to buy: for the fullest week, not for the sum of all fillings.',
      ],
      cautions: cautionRows(blocks),
      totals: ['cost'],
      needs: ({ kind, placeMl, topLength, cellDepth, bedLength, bedWidth, bedDepth, vesselLitres, places, rounds }) => [
        [`${places}<=0`, '"Places: at least 1"'],
        [`${rounds}<1`, '"Rounds: at least 1"'],
        [
          `AND(${kind}="tray",LEN(${placeMl})=0,COUNT(${topLength},${cellDepth})<2)`,
          '"Volume of a cell, or its measures"',
        ],
        [`AND(${kind}="bed",COUNT(${bedLength},${bedWidth},${bedDepth})<3)`, '"Length, width and depth of the bed"'],
        [`AND(${kind}="vessel",LEN(${vesselLitres})=0)`, '"Litres of the vessel"'],
      ],
      results: {
        cell: (r) =>
          `IF(${r.kind}<>"tray","",IF(LEN(${r.placeMl})>0,${r.placeMl},IF(LEN(${r.topWidth})=0,` +
          `${call(roundCell, { topDiameterMm: r.topLength, depthMm: r.cellDepth, bottomDiameterMm: r.bottomLength })},` +
          `${call(cellVolume, { topLengthMm: r.topLength, topWidthMm: r.topWidth, depthMm: r.cellDepth, bottomLengthMm: r.bottomLength, bottomWidthMm: r.bottomWidth })})))`,
        filled: (r) =>
          `${sumWhere(orders, 'pieces', 'container', r.name)}+${sumWhere(batches, 'pieces', 'container', r.name)}`,
        peak: (r) => {
          const both = (ofOrders: 'stickDay' | 'benchWeeks' | 'pieces', ofBatches: 'day' | 'benchWeeks' | 'pieces') =>
            `VSTACK(${onlyWhere(orders, ofOrders, 'container', r.name)},${onlyWhere(batches, ofBatches, 'container', r.name)})`
          const most = call(peak, {
            startDays: both('stickDay', 'day'),
            weeksHeld: both('benchWeeks', 'benchWeeks'),
            amounts: both('pieces', 'pieces'),
            turnroundWeeks: r.turnround,
          })
          return `IF(${r.filled}=0,0,${most})`
        },
        needed: (r) => `IF(${r.rounds}=1,${r.filled},${r.peak}+ROUNDUP(${r.broken}*(${r.filled}-${r.peak}),0))`,
        toBuy: (r) => call(bags, { neededL: r.needed, bagVolumeL: '1', onHandL: r.onHand, orderMultiple: r.multiple }),
        cost: (r) => `ROUND(${r.toBuy}*${r.price},2)`,
      },
    },
    mark,
    rows,
    open,
  )
}
