/** Vellimoor with all that is odd and allowed: parts of weeks, packs of other units, batches beyond the plan, blanks. */
import { serialOf } from '../../../../src/core/quantity/day'
import { vellimoor } from '../../../../src/workbook/season/data/vellimoor'
import type { SeasonData } from '../../../../src/workbook/season/season'

type Rows = readonly { readonly name?: unknown }[]

/** The rows with other entries in those that are named. */
function changed<R extends Rows>(rows: R, changes: Readonly<Record<string, Partial<R[number]>>>): R[number][] {
  return rows.map((row) => ({ ...row, ...changes[String(row.name)] }))
}

/** An order of few liners that goes by the rates of its method. */
const order = (line: string, species: string, liners: number, delivery: string, method: string, weeks: number) => ({
  line,
  species,
  liners,
  delivery: serialOf(delivery),
  method,
  weeks,
})

const { confidence: _none, benchRateTyped: _built, ...setup } = vellimoor.setup
const batch = (name: string, line: string, day: string, cuttings: number) => ({
  name,
  line,
  day: serialOf(day),
  cuttings,
})

export const oddSeason: SeasonData = {
  ...vellimoor,
  setup: { ...setup, firstDay: serialOf('2026-01-28'), heat: 0.2, mist: 0.07, overheads: 0.15, roundsPerYear: 1.5 },
  containers: changed(vellimoor.containers, {
    'Washed tray, 104': { turnround: 0.5, multiple: 25, onHand: 0 },
    'Thin tray, 104': { onHand: 30 },
    'Bed, 6 m x 1.2 m': { onHand: 2, broken: 0.03, multiple: 2 },
  }),
  media: changed(vellimoor.media, {
    Peat: { size: 0.25, unit: 'yd3', expansion: 1.1 },
    Coir: { size: 11, unit: 'lb' },
    Perlite: { multiple: 4, minimum: 10, expansion: 1.1, onHand: 330 },
    'Sharp sand': { size: 0.8, unit: 't', onHand: 0 },
    Premix: { expansion: 1.1, onHand: 231, minimum: 14 },
  }),
  blends: [
    { name: 'Peat and perlite', before: 20, after: 18.6, lime: 3 },
    { name: 'Coir and perlite', before: 20, after: 20, pace: 2.5 },
  ],
  methods: [
    ...changed(vellimoor.methods, {
      'Own mix, 104 cells': { weeks: 4.5, other: 0.002, tendPerHour: 200 },
      Water: { waterChange: 7 },
      Rockwool: { weeks: 3.5 },
    }),
    {
      ...vellimoor.methods.find(({ name }) => name === 'Sand bed'),
      name: 'Premix bed',
      kind: 'premix',
      medium: 'Premix',
      spare: 0.1,
    },
  ],
  orders: [
    order('1', 'Fuchsia', 900, '2026-04-15', 'Own mix, 104 cells', 7.5),
    { ...order('2', 'Fuchsia', 700, '2026-04-24', 'Own mix, 104 cells', 4), confidence: 0.9 },
    { ...order('3', 'Lavandula', 2_000, '2026-06-03', 'Own mix, 104 cells', 10), confidence: 0.9 },
    { ...order('4', 'Hebe', 1_500, '2026-06-10', 'Premix in thin trays', 9), confidence: 0.8, spread: 0.05 },
    { ...order('5', 'Buddleja', 4_000, '2026-07-08', 'Sand bed', 9), strike: 0.8, confidence: 0.75 },
    order('6', 'Cornus', 3_000, '2026-07-15', 'Premix bed', 10),
    order('7', 'Coleus', 800, '2026-02-20', 'Water', 6),
    { ...order('8', 'Salvia', 1_200, '2026-05-06', 'Rockwool', 6), pottingOn: 0.9 },
    order('9', 'Ligustrum', 600, '2027-06-16', 'Vermiculite', 8),
    order('10', 'Salvia', 1_000, '2026-09-16', 'Own mix, 60 cells', 8),
  ],
  batches: [
    { ...batch('3 a', '3', '2026-03-24', 900), rooted: 790, potted: 720, saleable: 700 },
    { ...batch('3 b', '3', '2026-03-26', 900), rooted: 810, potted: 770 },
    { ...batch('3 c', '3', '2026-04-02', 500), rooted: 420 },
    batch('4 a', '4', '2026-04-20', 2_600),
    { ...batch('5 a', '5', '2026-05-05', 4_000), rooted: 2_600 },
    batch('10 a', '10', '2027-05-12', 1_300),
  ],
  past: [
    { species: 'Fuchsia', stuck: 500, saleable: 450 },
    { species: 'Hebe', stuck: 400, saleable: 300 },
    { species: 'Salvia', stuck: 500, saleable: 450 },
    { species: 'Salvia', stuck: 500, saleable: 450 },
    { species: 'Lavandula', stuck: 800, saleable: 690 },
    { species: 'Lavandula', stuck: 950, saleable: 700 },
    { species: 'Lavandula', stuck: 700, saleable: 600 },
  ],
  stock: [
    { species: 'Fuchsia', perFlush: 2.5, flushes: 3, perPlant: 2.1 },
    { species: 'Hebe', perFlush: 4, flushes: 2, usable: 0.8, spare: 0.1, perPlant: 3, work: 800, kept: 1_000 },
  ],
  review: [
    { item: '3', kind: 'work', actualQuantity: 4, actualPrice: 19.9 },
    { item: '3', kind: 'cuttings', actualQuantity: 2_300, actualPrice: 0.06 },
    { item: 'Thin tray, 104', kind: 'container', actualQuantity: 50, actualPrice: 0.46 },
    { item: 'Perlite', kind: 'medium', actualQuantity: 1, actualPrice: 15 },
    { item: 'Premix', kind: 'medium', actualQuantity: 10, actualPrice: 12 },
  ],
  reuse: { reused: 'Own mix, 60 cells', single: 'Premix in thin trays' },
  mixing: { blend: 'Coir and perlite', litres: 1_000, mixer: 250 },
  risk: { method: 'Sand bed', draws: 200, seed: 3, sure: 0.5 },
  quote: { ...vellimoor.quote, method: 'Sand bed', step: 0.05, liners: 100 },
  surplus: { line: '4', penalty: 0.1, value: 0 },
  cheapest: { medium: 'Perlite' },
  offers: [
    {
      pack: 'Bag 100 L',
      medium: 'Perlite',
      supplier: 'A',
      litres: 100,
      price: 12,
      breakFrom: 5,
      breakPrice: 9,
      delivery: 20,
    },
    { pack: 'Bag 55 L', medium: 'Perlite', supplier: 'A', litres: 55, price: 6, multiple: 3, delivery: 20 },
    { pack: 'Bag 90 L', medium: 'Perlite', supplier: 'B', litres: 90, price: 11, available: 2 },
  ],
  timing: { method: 'Premix in thin trays', delivery: 1, holding: 4 },
  periods: [
    { name: 'early', from: serialOf('2026-04-01'), until: serialOf('2026-04-20'), price: 15 },
    { name: 'late', from: serialOf('2026-04-20'), until: serialOf('2026-05-11'), price: 12 },
  ],
}
