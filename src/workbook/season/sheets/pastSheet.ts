import type { NamedSheet } from '../cells'
import { tableSheet, type Typed } from '../table/tableSheet'
import { past } from '../tables/past'

export function pastSheet(mark: string, rows: Typed<typeof past>, open: number): NamedSheet {
  return tableSheet(
    past,
    {
      title: 'Past batches',
      about: [
        'What was stuck in earlier seasons, and the liners that could be sold. Two or more batches of a species give the batch spread that Orders uses.',
      ],
      needs: ({ stuck, saleable }) => [
        [`${stuck}<=0`, '"Stuck: more than 0"'],
        [`${saleable}>${stuck}`, '"Saleable: more than were stuck"'],
      ],
      results: {},
    },
    mark,
    rows,
    open,
  )
}
