import { bags } from '../../../functions/buying/bags'
import { packPrice } from '../../../functions/buying/packPrice'
import { units } from '../../../functions/volume/units'
import { weightToLitres } from '../../../functions/volume/weightToLitres'
import { cautionRows } from '../cautionRows'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { sumWhere, type RowOf } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { components } from '../tables/components'
import { media } from '../tables/media'
import { methods } from '../tables/methods'

const isVolume = ({ unit }: RowOf<typeof media>) => `ISNUMBER(MATCH(${unit},{"L","m3","ft3","yd3"},0))`
const orOne = (cell: string) => `IF(LEN(${cell})=0,1,${cell})`

export function mediaSheet(mark: string, rows: Typed<typeof media>, open: number): NamedSheet {
  return tableSheet(
    media,
    {
      title: 'Media',
      about: [
        'What a loose litre costs by the time it reaches the bench, what the season takes, and the packs to buy for it.',
      ],
      cautions: cautionRows(bags, packPrice, weightToLitres),
      totals: ['toBuy', 'cost'],
      needs: ({ size, density }) => [
        [`${size}<=0`, '"Pack size: more than 0"'],
        [`${density}<=0`, '"Dry density: more than 0"'],
      ],
      results: {
        declared: (r) => {
          const kilograms = call(units, { quantity: r.size, fromUnit: r.unit, toUnit: '"kg"' })
          const byDensity = call(weightToLitres, {
            weightKg: kilograms,
            bulkDensityKgM3: r.density,
            moistureShare: r.water,
          })
          return `IF(${isVolume(r)},${call(units, { quantity: r.size, fromUnit: r.unit, toUnit: '"L"' })},IF(LEN(${r.labelYield})>0,${kilograms}*${r.labelYield},${byDensity}))`
        },
        litre: (r) =>
          call(packPrice, {
            packPrice: r.price,
            packVolumeL: r.declared,
            expansion: r.expansion,
            deliveryPerPack: r.delivery,
            wasteShare: r.waste,
          }),
        needed: (r) =>
          `${sumWhere(methods, 'litres', 'medium', r.name)}+${sumWhere(components, 'needed', 'medium', r.name)}`,
        withWaste: (r) => `${r.needed}/(1-${r.waste})`,
        toBuy: (r) =>
          call(bags, {
            neededL: r.withWaste,
            bagVolumeL: r.declared,
            expansion: r.expansion,
            onHandL: r.onHand,
            orderMultiple: r.multiple,
            minimumBags: r.minimum,
          }),
        cost: (r) => `ROUND(${r.toBuy}*(${r.price}+${r.delivery}),2)`,
        leftOver: (r) => `${r.onHand}+${r.toBuy}*${r.declared}*${orOne(r.expansion)}-${r.withWaste}`,
      },
    },
    mark,
    rows,
    open,
  )
}
