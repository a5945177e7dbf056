import { blendCost } from '../../../functions/blend/blendCost'
import { blendWeight } from '../../../functions/blend/blendWeight'
import { labourCost } from '../../../functions/cost/labourCost'
import { cautionRows } from '../cautionRows'
import type { NamedSheet } from '../cells'
import { call } from '../table/call'
import { figureOf } from '../table/figures'
import { all, notComplete, onlyWhere, sumWhere, type ColumnOf } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { blends } from '../tables/blends'
import { components } from '../tables/components'
import { methods } from '../tables/methods'
import { setup } from '../tables/setup'

export function blendsSheet(mark: string, rows: Typed<typeof blends>, open: number): NamedSheet {
  const ofBlend = (column: ColumnOf<typeof components>, blend: string) => onlyWhere(components, column, 'blend', blend)
  return tableSheet(
    blends,
    {
      title: 'Blends',
      about: [
        'Mixes of your own: what a finished litre costs and weighs, and how many the season takes. What goes into one stands on Components.',
      ],
      cautions: cautionRows(blendCost, blendWeight),
      needs: ({ name, before, after }) => [
        [`${figureOf(setup, 'currency')}=""`, '"see Setup"'],
        [`COUNTIF(${all(components, 'blend')},${name})=0`, '"Nothing of it on Components"'],
        // A row that names no blend may belong to any.
        [`${notComplete(components)}>0`, '"Components are not complete"'],
        [`OR(${after}<=0,${before}<${after})`, '"Test mix: it cannot be more than its parts"'],
      ],
      results: {
        shrink: (r) => `1-${r.after}/${r.before}`,
        litre: (r) =>
          call(blendCost, {
            parts: ofBlend('parts', r.name),
            pricesPerLitre: ofBlend('litre', r.name),
            mixShrink: r.shrink,
            addedCostPerM3: `${r.additives}+IF(LEN(${r.pace})=0,0,${call(labourCost, {
              unitsPerHour: r.pace,
              wagePerHour: figureOf(setup, 'wage'),
              onCostShare: figureOf(setup, 'onCosts'),
            })})`,
          }),
        dry: (r) =>
          call(blendWeight, {
            parts: ofBlend('parts', r.name),
            bulkDensitiesKgM3: ofBlend('density', r.name),
            mixShrink: r.shrink,
          }),
        watered: (r) =>
          `IF(LEN(${r.held})=0,"",${call(blendWeight, {
            parts: ofBlend('parts', r.name),
            bulkDensitiesKgM3: ofBlend('density', r.name),
            mixShrink: r.shrink,
            waterHeldShare: r.held,
          })})`,
        needed: (r) => sumWhere(methods, 'litres', 'medium', r.name),
      },
    },
    mark,
    rows,
    open,
  )
}
