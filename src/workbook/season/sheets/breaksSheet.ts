import type { NamedSheet } from '../cells'
import { tableSheet, type Typed } from '../table/tableSheet'
import { breaks } from '../tables/breaks'

export function breaksSheet(mark: string, rows: Typed<typeof breaks>, open: number): NamedSheet {
  return tableSheet(
    breaks,
    {
      title: 'Price breaks',
      about: ['The quantities that Quote lists, from the smallest up, and the margin wanted for each.'],
      needs: ({ quantity, margin }) => [
        [`${quantity}<1`, '"Order of: at least 1"'],
        [`${margin}>=1`, '"Margin: below 100 %"'],
      ],
      results: {},
    },
    mark,
    rows,
    open,
  )
}
