/**
 * The six rooting methods and their materials, for orientation: what differs between them, bands that a figure of
 * one's own usually lies in, and the cautions. No price stands here, because none would be a price of today.
 */
import type { SourceKey } from '../../sources/bibliography'
import type { Caution } from '../../wording/cautions'

export interface Band {
  readonly of: string
  readonly range: string
  /** The argument that it is a band of, where a function of the entry takes it. */
  readonly parameter?: string
  /** Absent where it is common practice, without a source. */
  readonly sources?: readonly SourceKey[]
}

export interface LibraryEntry {
  readonly name: string
  readonly text: string
  readonly bands: readonly Band[]
  /** Functions that cost it. */
  readonly functions: readonly string[]
  readonly cautions: readonly Caution[]
}

/** What loose mix does in trays: common practice, no source. */
const fillingBands: readonly Band[] = [
  { of: 'height that loose mix drops when it is firmed and watered', range: '5 to 15 %', parameter: 'settle' },
  { of: 'loose mix that is spilt at a filling line', range: '2 to 5 %', parameter: 'spill' },
]

/** What all cuttings are dipped in, and what they stand under. */
const whileRooting: readonly Caution[] = ['hormone', 'mist', 'electricity']

export const waysOfRooting: readonly LibraryEntry[] = [
  {
    name: 'Water',
    text: 'Vessels without any medium, for plants that root easily. It costs changes of water, the time for them, and liquid hormone; roots made in water break when they are potted, so count the losses of potting on.',
    bands: [
      { of: 'days between two changes of the water', range: '3 to 7 days', parameter: 'changeEveryDays' },
      { of: 'days until the cuttings are rooted', range: '14 to 28 days', parameter: 'days' },
    ],
    functions: ['WATER', 'REUSECOST', 'ROOTINGCOST'],
    cautions: ['water', 'hormone', 'electricity', 'disinfectant'],
  },
  {
    name: 'Peat or coir with perlite',
    text: 'Own mix in trays. It costs the parts, what vanishes in mixing, lime and wetting agent, mixing labour, the tray with its washing, and breakage.',
    bands: [
      {
        of: 'sum of the parts that vanishes, three of bark, one of peat, one of sand',
        range: '15 to 20 %',
        sources: ['rootmaker-faq'],
        parameter: 'mixShrink',
      },
      ...fillingBands,
    ],
    functions: ['BLENDCOST', 'BLENDPARTS', 'FILL', 'TRAYS', 'MEDIUMCOST'],
    cautions: ['dust', 'weight', 'lime', 'mixer', ...whileRooting, 'disinfectant'],
  },
  {
    name: 'Vermiculite',
    text: 'One material alone in trays. It holds much water and packs down when it is pressed, so fill loosely and count the settling.',
    bands: fillingBands,
    functions: ['FILL', 'TRAYS', 'MEDIUMCOST'],
    cautions: ['dust', 'vermiculite', ...whileRooting, 'disinfectant'],
  },
  {
    name: 'Sand bed',
    text: 'A bed on the ground or on a bench built for it, used for many rounds. It costs the fill by weight or volume, topping up, steaming or washing between rounds, washing the roots before potting, and losses at transplanting.',
    bands: [
      { of: 'dry density', range: 'about 1,600 kg/m3', parameter: 'bulkDensityKgM3' },
      { of: 'cuttings stuck on a square metre, by the size of the leaf', range: '300 to 600' },
    ],
    functions: ['BEDFILL', 'WEIGHTTOLITRES', 'BLENDWEIGHT', 'REUSECOST', 'BREAKEVEN'],
    cautions: ['sand', 'bed', 'weight', ...whileRooting, 'disinfectant', 'steam'],
  },
  {
    name: 'Bought premix',
    text: 'A ready mix in trays. It costs more a litre and saves the mixing labour.',
    bands: fillingBands,
    functions: ['BAGS', 'BUYPLAN', 'FILL', 'TRAYS'],
    cautions: ['dust', 'bags', 'weight', ...whileRooting, 'disinfectant'],
  },
  {
    name: 'Rockwool',
    text: 'Blocks in sheets, used once. It costs soaking before use and disposal afterwards; the plant is potted with its block.',
    bands: [],
    functions: ['BLOCKS', 'ROOTINGCOST', 'COMPARE'],
    cautions: ['fibres', 'acid', ...whileRooting],
  },
]

export const materials: readonly LibraryEntry[] = [
  {
    name: 'Peat',
    text: 'Sold in pressed bales that declare fewer litres than they open to. Measure the expansion on one bale of your own; the label or your test wins over any band.',
    bands: [
      {
        of: 'loose litres from one declared litre',
        range: '1.67 to 2.0',
        sources: ['rootmaker-faq', 'keith-peat-bales'],
        parameter: 'expansion',
      },
      { of: 'water held, in times its dry weight', range: '10 to 20' },
      { of: 'pH', range: '3.5 to 4.5' },
    ],
    functions: ['PACKPRICE', 'BAGS'],
    cautions: ['dust', 'weight'],
  },
  {
    name: 'Coir',
    text: 'Sold in pressed bricks by weight; the label says how many loose litres a kilogram gives.',
    bands: [{ of: 'loose litres from one kilogram', range: '12 to 15' }],
    functions: ['PACKPRICE', 'UNITS'],
    cautions: ['dust', 'weight'],
  },
  {
    name: 'Perlite',
    text: 'Sold loose in bags. It takes room in a mix and holds little water.',
    bands: [{ of: 'pH', range: '6.6 to 7.5' }],
    functions: ['BLENDPARTS', 'BLENDCOST'],
    cautions: ['dust'],
  },
  {
    name: 'Vermiculite',
    text: 'Sold loose in bags.',
    bands: [
      { of: 'dry density', range: '64 to 160 kg/m3', parameter: 'bulkDensitiesKgM3' },
      { of: 'water held, in times its dry weight', range: '2 to 5' },
    ],
    functions: ['BLENDWEIGHT'],
    cautions: ['dust', 'vermiculite'],
  },
  {
    name: 'Sharp sand',
    text: 'Sold by weight, moist. Take the water out of the weight before you reckon litres.',
    bands: [{ of: 'dry density', range: 'about 1,600 kg/m3', parameter: 'bulkDensityKgM3' }],
    functions: ['WEIGHTTOLITRES'],
    cautions: ['sand', 'bed', 'weight'],
  },
  {
    name: 'Rockwool',
    text: 'Sold by the carton of sheets. Unbuffered it is alkaline, so it is soaked in acidified water first.',
    bands: [{ of: 'pH, unbuffered', range: '7 to 8.5' }],
    functions: ['BLOCKS'],
    cautions: ['fibres', 'acid'],
  },
]
