import type { NamedSheet } from '../cells'
import { headings, text, title } from '../cells'
import { absoluteAddress } from '../../../formula/address'
import type { Words } from '../table/table'

/** The words to choose from, which the list in a cell reads. */
export function listsSheet(lists: readonly (Words & { readonly heading: string })[]): NamedSheet {
  const height = Math.max(...lists.map(({ words }) => words.length))
  const above = [
    [title('Lists')],
    [text('The words that some cells take. They are read as they stand: change none.')],
    headings(...lists.map(({ heading }) => heading)),
  ]
  return {
    sheet: {
      name: 'Lists',
      widths: lists.map(() => 26),
      frozenRows: above.length,
      frozenColumns: 0,
      rows: [
        ...above,
        ...Array.from({ length: height }, (_, row) =>
          lists.map(({ words }) => (words[row] === undefined ? undefined : text(words[row]))),
        ),
      ],
    },
    names: lists.map(({ name, words }, column) => ({
      name,
      refersTo: `Lists!${absoluteAddress({ top: above.length, bottom: above.length + words.length - 1, left: column, right: column })}`,
    })),
  }
}
