import { blendCost } from '../../functions/blend/blendCost'
import { blendWeight } from '../../functions/blend/blendWeight'
import { weightToLitres } from '../../functions/volume/weightToLitres'
import type { Cell } from '../book'
import { cautionLines } from './cautionLines'
import {
  formats,
  heading,
  headings,
  headOf,
  input,
  result,
  spilledOver,
  spilling,
  text,
  total,
  type NamedSheet,
  type Row,
} from './cells'
import { blank, layOut } from './layOut'
import { naming } from './names'
import { sixWays } from './sixWays'
import { tableIn } from './tableIn'

/** In the peat blend, in the coir blend, in the beds. */
type OfBlends<Value> = readonly [peat: Value, coir: Value, sand: Value]

const blends: OfBlends<string> = ['Peat and perlite', 'Coir and perlite', 'Sand for beds']
const columns: OfBlends<string> = ['D', 'E', 'F']

const components: readonly { readonly product: string; readonly parts: OfBlends<number> }[] = [
  { product: 'Peat', parts: [3, 0, 0] },
  { product: 'Coir', parts: [0, 3, 0] },
  { product: 'Perlite', parts: [2, 2, 0] },
  { product: 'Sharp sand', parts: [0, 0, 1] },
]

function line(label: string, unit: string, cells: OfBlends<Cell>, how = ''): Row {
  return [text(label), text(unit), undefined, ...cells, text(how)]
}

function inputs([peat, coir, sand]: OfBlends<number>, format: string): OfBlends<Cell> {
  return [input(peat, format), input(coir, format), input(sand, format)]
}

function inAll(cell: (column: string) => Cell): OfBlends<Cell> {
  const [peat, coir, sand] = columns
  return [cell(peat), cell(coir), cell(sand)]
}

function labour(column: string, mixedPerHour: number): Cell {
  return result(`=STICK.LABOURCOST(${column}${mixedPerHour},Wage,OnCosts)`, formats.price)
}

/** What the nursery makes up itself: cost and weight of a litre, and the litres of each component. */
export function blendsSheet(): NamedSheet {
  const { rows, at } = layOut({
    ...headOf(
      'Blends',
      'What the nursery makes up itself: parts, what vanishes in mixing, cost and weight of a litre, and the litres of each component.',
    ),
    gap: blank,
    units: () =>
      headings(
        'as on Prices',
        'EUR a loose L',
        'kg a m3',
        ...blends.map(() => 'parts by volume'),
        ...blends.map(() => 'L loose to use'),
      ),
    heading: () => headings('Component', 'Price', 'Dry density', ...blends, ...blends),
    components: {
      height: components.length,
      rows: (at) =>
        components.map(({ product, parts }, index) => {
          const row = at.components + index
          const last = at.components + components.length - 1
          // One formula fills the whole column: the litres spill in the shape of the parts.
          const litres = inAll((c) =>
            spilling(
              `=STICK.BLENDPARTS(${c}${at.wanted},${c}${at.components}:${c}${last},${c}${at.mixShrink})`,
              formats.litres,
            ),
          )
          return [
            text(product),
            result(`=INDEX(PricePerLooseLitre,MATCH(A${row},MediumName,0))`, formats.each),
            result(`=INDEX(LooseDensity,MATCH(A${row},MediumName,0))`, formats.count),
            ...inputs(parts, formats.measure),
            ...(index === 0 ? litres : inAll(() => spilledOver(formats.litres))),
          ]
        }),
    },
    sums: (at) => {
      const sum = (column: string) =>
        total(`=SUM(${column}${at.components}:${column}${at.components + components.length - 1})`, formats.litres)
      return [
        heading('All components'),
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
        sum('G'),
        sum('H'),
        sum('I'),
      ]
    },
    gapBetween: blank,
    perBlend: () => headings('For each blend', 'Unit', '–', ...blends, 'How it is worked out', '', ''),
    goesInto: () =>
      line('Goes into', 'way of rooting', [text(sixWays.peat.name), text(sixWays.peat.name), text(sixWays.sand.name)]),
    share: (at) =>
      line(
        'Share of the litres of that way',
        'share',
        [result(`=1-E${at.share}`, formats.share), input(0.3, formats.share), input(1, formats.share)],
        'So much of the trays is filled with the coir blend, the rest with the peat blend',
      ),
    wanted: (at) =>
      line(
        'Finished mix that is needed',
        'L',
        inAll((c) => result(`=INDEX(WayLitres,MATCH(${c}${at.goesInto},WayName,0))*${c}${at.share}`, formats.litres)),
        'Litres of the way from Ways, times the share',
      ),
    before: () =>
      line(
        'Test mix: components before mixing',
        'L loose',
        inputs([20, 20, 20], formats.measure),
        'Own test with a bucket; no constant exists for it (Acta Hort. 819:215-220)',
      ),
    after: () => line('Test mix: finished mix', 'L', inputs([18.6, 18.4, 20], formats.measure)),
    mixShrink: (at) =>
      line(
        'Mix shrink',
        'share',
        inAll((c) => result(`=1-${c}${at.after}/${c}${at.before}`, formats.share)),
        'Fine grains fill the pores of coarse ones. Shrink divides',
      ),
    additions: () => line('Lime, wetting agent, starter feed', 'EUR a m3', inputs([4.2, 2.4, 0], formats.price)),
    mixedPerHour: () =>
      line(
        'Mixed in an hour',
        'm3 an hour',
        [input(2.5, formats.measure), input(2.5, formats.measure), text('–')],
        'Invented; a dash: sand is not mixed',
      ),
    labour: (at) =>
      line(
        'Mixing labour',
        'EUR a m3',
        [labour('D', at.mixedPerHour), labour('E', at.mixedPerHour), text('–')],
        'Wage and on-costs are on Season. Premix is bought mixed and has none',
      ),
    added: (at) =>
      line(
        'Added cost',
        'EUR a m3',
        inAll((c) => result(`=SUM(${c}${at.additions},${c}${at.labour})`, formats.price)),
        'The two lines for a m3 above',
      ),
    cost: (at) =>
      line(
        'Cost of a finished litre',
        'EUR a L',
        inAll((c) =>
          total(
            `=STICK.BLENDCOST(${c}${at.components}:${c}${at.sums - 1},$B${at.components}:$B${at.sums - 1},${c}${at.mixShrink},${c}${at.added})`,
            formats.each,
          ),
        ),
        'Loose litres, delivery and waste included',
      ),
    dry: (at) =>
      line(
        'Dry weight',
        'kg a L',
        inAll((c) =>
          result(
            `=STICK.BLENDWEIGHT(${c}${at.components}:${c}${at.sums - 1},$C${at.components}:$C${at.sums - 1},${c}${at.mixShrink})`,
            formats.weight,
          ),
        ),
        'Weight adds up from the parts; air space and pH do not, and are not computed',
      ),
    held: () =>
      line(
        'Water held after watering',
        'share of volume',
        inputs([0.5, 0.5, 0.33], formats.share),
        'Measure your own; these: common practice, no source',
      ),
    watered: (at) =>
      line(
        'Watered weight',
        'kg a L',
        inAll((c) =>
          result(
            `=STICK.BLENDWEIGHT(${c}${at.components}:${c}${at.sums - 1},$C${at.components}:$C${at.sums - 1},${c}${at.mixShrink},${c}${at.held})`,
            formats.weight,
          ),
        ),
        'Plus the water held, at 1 kg to the litre',
      ),
    gapBelow: blank,
    cautions: cautionLines(blendCost, blendWeight, weightToLitres),
  })
  const name = naming('Blends')
  const last = at.sums - 1
  return {
    // The litres beside the table spill, which no table of Excel's may hold.
    sheet: {
      name: 'Blends',
      widths: [37, 17, 13, 22, 22, 19, 18, 18, 17],
      frozenRows: at.heading,
      frozenColumns: 1,
      rows,
      tables: [tableIn('BlendComponents', 'A', at.heading, columns[2], last)],
    },
    names: [
      name('BlendComponent', 'A', at.components, last),
      name('PeatBlendLitres', 'G', at.components, last),
      name('CoirBlendLitres', 'H', at.components, last),
      name('SandLitres', 'I', at.components, last),
      name('CoirShare', 'E', at.share),
      name('PeatBlendCost', 'D', at.cost),
      name('CoirBlendCost', 'E', at.cost),
      name('SandCost', 'F', at.cost),
      name('PeatBlendWeight', 'D', at.dry),
      name('CoirBlendWeight', 'E', at.dry),
      name('SandWeight', 'F', at.dry),
      name('PeatBlendHeld', 'D', at.held),
      name('CoirBlendHeld', 'E', at.held),
      name('SandHeld', 'F', at.held),
    ],
  }
}
