import { blendCost } from '../../../functions/blend/blendCost'
import { cautionRows } from '../cautionRows'
import type { NamedSheet } from '../cells'
import { lookUp, sumWhere } from '../table/table'
import { tableSheet, type Typed } from '../table/tableSheet'
import { blends } from '../tables/blends'
import { components } from '../tables/components'
import { media } from '../tables/media'

export function componentsSheet(mark: string, rows: Typed<typeof components>, open: number): NamedSheet {
  return tableSheet(
    components,
    {
      title: 'Components',
      about: ['What goes into each blend: a row for each medium, in parts by loose volume.'],
      cautions: cautionRows(blendCost),
      needs: ({ parts }) => [[`${parts}<=0`, '"Parts: more than 0"']],
      results: {
        litre: ({ medium }) => lookUp(media, medium, 'litre'),
        density: ({ medium }) => lookUp(media, medium, 'density'),
        needed: ({ blend, parts }) =>
          `IF(${lookUp(blends, blend, 'state')}<>"ready",NA(),${lookUp(blends, blend, 'needed')}*${parts}/${sumWhere(components, 'parts', 'blend', blend)}/(1-${lookUp(blends, blend, 'shrink')}))`,
      },
    },
    mark,
    rows,
    open,
  )
}
