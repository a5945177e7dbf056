import { variance } from '../../functions/review/variance'
import type { Cell } from '../book'
import {
  formats,
  heading,
  headings,
  headOf,
  input,
  ofTable,
  priced,
  result,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { letterOf, spilledTable } from './spilledTable'
import { tableIn } from './tableIn'

interface Item {
  readonly name: string
  readonly unit: string
  readonly standardQuantity: string
  readonly standardPrice: string
  /** Invented, as if counted and invoiced at the season's end. */
  readonly actualQuantity: number
  readonly actualPrice: number
}

const ofMedium = (range: string, product: string) => `INDEX(${range},MATCH("${product}",MediumName,0))`

/** Whole packs that Ways and Blends take, waste included, whatever was in stock. */
function packs(product: string): string {
  return `=ROUNDUP(${ofMedium('MediumWithWaste', product)}/${ofMedium('DeclaredLitres', product)}/${ofMedium('Expansion', product)},0)`
}

function medium(product: string, unit: string, actualQuantity: number, actualPrice: number): Item {
  return {
    name: product,
    unit,
    standardQuantity: packs(product),
    standardPrice: `=${priced(ofMedium('PackPrice', product))}+${ofMedium('PackDelivery', product)}`,
    actualQuantity,
    actualPrice,
  }
}

const items: readonly Item[] = [
  {
    name: 'Cuttings',
    unit: 'cuttings',
    standardQuantity: '=SUM(OrderCuttings)',
    standardPrice: `=${priced('CuttingItself')}`,
    actualQuantity: 186_400,
    actualPrice: 0.0625,
  },
  {
    name: 'Sticking labour',
    unit: 'hours',
    standardQuantity: '=ROUNDUP(SUMPRODUCT(WayCuttings/WayStuckPerHour),0)',
    standardPrice: `=ROUND(${priced('Wage')}*(1+OnCosts),2)`,
    actualQuantity: 171,
    actualPrice: 19.9,
  },
  medium('Premix', 'bags', 31, 14.1),
  medium('Peat', 'bales', 6, 23.6),
  medium('Vermiculite', 'bags', 11, 23.9),
]

/** Rows of one item below its heading: standard, actual, difference. */
const rowsOfItem = 3
/** Where the variances of an item begin, right of its figures. */
const corner = 'F'
const [amount, reads] = [letterOf(variance, 'amount', corner), letterOf(variance, 'reads', corner)]

/** At the season's end: where more, or less, was spent than the standard allows. */
export function reviewSheet(): NamedSheet {
  const blocks = items.map((_, index) => index * (1 + rowsOfItem + 1))
  const { rows, at } = layOut({
    ...headOf(
      'Review',
      'At the end of the season: where more or less was spent than this workbook allows, because the price differed or because the usage did.',
    ),
    convention: () => [
      text(
        'Price: difference in price x actual quantity. Usage: difference in quantity x standard price. Together: the whole difference, to the cent.',
      ),
    ],
    sign: () => [
      text(
        'Positive is adverse: more was spent. Standard: what the workbook allows for the liners ordered, for these five items alone. The actual figures are invented, as if counted and invoiced at the end of the season.',
      ),
    ],
    gap: blank,
    units: () => headings('', 'EUR', 'EUR', 'EUR', 'EUR', 'EUR', ''),
    heading: () => headings('Where the money went', 'Standard', 'Actual', 'Price', 'Usage', 'Together', 'So it is'),
    summary: {
      height: items.length,
      rows: (at) =>
        items.map(({ name }, index) => {
          const block = at.blocks + blocks[index]!
          const [standard, actual] = [block + 1, block + 1 + 1]
          return [
            text(name),
            result(`=D${standard}`, formats.price),
            result(`=D${actual}`, formats.price),
            result(ofTable(`${corner}${block}`, `${amount}${standard}`), formats.price),
            result(ofTable(`${corner}${block}`, `${amount}${actual}`), formats.price),
            result(ofTable(`${corner}${block}`, `${amount}${actual + 1}`), formats.price),
            result(ofTable(`${corner}${block}`, `${reads}${actual + 1}`)),
          ]
        }),
    },
    sums: (at) => [
      heading('All five'),
      ...['B', 'C', 'D', 'E', 'F'].map((column) =>
        total(`=SUM(${column}${at.summary}:${column}${at.sums - 1})`, formats.price),
      ),
    ],
    gapBetween: blank,
    unexplained: (at) => [
      text('Left unexplained'),
      result(`=ROUND(C${at.sums}-B${at.sums}-F${at.sums},2)`, formats.price),
      text('EUR: actual less standard less both variances. Must be 0'),
    ],
    largest: (at) => [
      text('Largest difference'),
      result(
        `=IF(MAX(F${at.summary}:F${at.sums - 1})>0,INDEX(A${at.summary}:A${at.sums - 1},MATCH(MAX(F${at.summary}:F${at.sums - 1}),F${at.summary}:F${at.sums - 1},0)),"nothing is adverse")`,
      ),
      text('Most adverse of the five'),
    ],
    gapBelow: blank,
    blocks: {
      height: items.length * (1 + rowsOfItem + 1),
      rows: (at) => items.flatMap((item, index) => block(item, at.blocks + blocks[index]!)),
    },
  })
  const name = naming('Review')
  return {
    sheet: {
      name: 'Review',
      widths: [26, 16, 14, 14, 14, 14, 14, 14],
      frozenRows: at.invented,
      frozenColumns: 0,
      rows,
      tables: [tableIn('ReviewLines', 'A', at.heading, 'G', at.sums - 1)],
    },
    names: [
      name('ReviewPrice', 'D', at.sums),
      name('ReviewUsage', 'E', at.sums),
      name('ReviewTotal', 'F', at.sums),
      name('ReviewLargest', 'B', at.largest),
      name('ReviewUnexplained', 'B', at.unexplained),
    ],
  }
}

function block(
  { name, unit, standardQuantity, standardPrice, actualQuantity, actualPrice }: Item,
  row: number,
): readonly Row[] {
  const [standard, actual] = [row + 1, row + 1 + 1]
  const table = spilledTable(
    variance,
    `=STICK.VARIANCE(B${standard},C${standard},B${actual},C${actual})`,
    { variance: undefined, amount: formats.price, reads: undefined },
    rowsOfItem,
  )
  const less = (column: string, format: string) => result(`=${column}${actual}-${column}${standard}`, format)
  const left: readonly (readonly Cell[])[] = [
    headings(name, unit, 'EUR each', 'EUR') as readonly Cell[],
    [
      text(`${name}, standard`),
      result(standardQuantity, formats.count),
      result(standardPrice, formats.each),
      result(`=B${standard}*C${standard}`, formats.price),
    ],
    [
      text(`${name}, actual, invented`),
      input(actualQuantity, formats.count),
      input(actualPrice, formats.each),
      result(`=B${actual}*C${actual}`, formats.price),
    ],
    [
      text(`${name}, difference`),
      less('B', formats.count),
      less('C', formats.each),
      total(`=D${actual}-D${standard}`, formats.price),
    ],
  ]
  return [...left.map((cells, index) => [...cells, undefined, ...(table[index] ?? [])]), []]
}
