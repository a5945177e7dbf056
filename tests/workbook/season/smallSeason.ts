/** A season with a row or two in each table, quick to calculate: invented. */
import { serialOf } from '../../../src/core/quantity/day'
import { vellimoor } from '../../../src/workbook/season/data/vellimoor'
import type { SeasonData } from '../../../src/workbook/season/season'

const named = <Row extends { readonly name?: unknown }>(rows: readonly Row[], ...names: readonly string[]) =>
  rows.filter(({ name }) => names.includes(String(name)))

export const smallSeason: SeasonData = {
  ...vellimoor,
  containers: named(vellimoor.containers, 'Washed tray, 104', 'Thin tray, 104'),
  media: named(vellimoor.media, 'Peat', 'Perlite', 'Premix'),
  blends: named(vellimoor.blends, 'Peat and perlite'),
  components: vellimoor.components.filter(({ blend }) => blend === 'Peat and perlite'),
  methods: named(vellimoor.methods, 'Own mix, 104 cells', 'Premix in thin trays'),
  orders: vellimoor.orders.filter(({ line }) => [101, 111, 112].includes(Number(line))),
  batches: vellimoor.batches,
  past: vellimoor.past.filter(({ species }) => species === 'Lavandula'),
  stock: [{ species: 'Fuchsia', perFlush: 12, flushes: 6, perPlant: 2.1 }],
  breaks: vellimoor.breaks.slice(0, 2),
  offers: vellimoor.offers.slice(0, 2),
  periods: [{ name: '1', from: serialOf('2026-02-16'), until: serialOf('2026-03-16'), price: 13.1 }],
  review: vellimoor.review.slice(0, 3),
  risk: { ...vellimoor.risk, draws: 100 },
  open: {
    containers: 1,
    media: 1,
    blends: 1,
    components: 1,
    methods: 1,
    orders: 1,
    batches: 1,
    past: 1,
    stock: 1,
    doubts: 0,
    breaks: 1,
    offers: 1,
    periods: 1,
    review: 1,
  },
}
