/** The invented price list of the media. Densities are dry and loose: common practice, no source. */
export interface Medium {
  readonly product: string
  readonly soldAs: string
  readonly price: number
  readonly delivery: number
  readonly size: number
  readonly unit: string
  /** By volume; by the loose litres that the label promises from a kilogram; or by weight and density. */
  readonly measured: 'by volume' | 'by litres per kg' | 'by weight'
  readonly litresPerKg?: number
  readonly density: number
  readonly waterShare?: number
  readonly expansion: number
  readonly waste: number
  readonly source: string
  /** Invented, like the day of the price. */
  readonly supplier: string
  /** As year-month-day. */
  readonly priceOf: string
  readonly onHand: number
  readonly orderMultiple: number
  readonly leastOrder: number
}

export const priceList: readonly Medium[] = [
  {
    product: 'Peat',
    soldAs: 'compressed bale',
    price: 21.8,
    delivery: 1.1,
    size: 3.8,
    unit: 'ft3',
    measured: 'by volume',
    density: 95,
    expansion: 1.85,
    waste: 0.03,
    onHand: 120,
    orderMultiple: 1,
    leastOrder: 0,
    supplier: 'Fenbridge',
    priceOf: '2026-01-12',
    source: 'Expansion: own test of one bale; 1.67 to 2.0 is common practice, no source',
  },
  {
    product: 'Coir',
    soldAs: 'pressed brick',
    price: 6.9,
    delivery: 0.35,
    size: 5,
    unit: 'kg',
    measured: 'by litres per kg',
    litresPerKg: 13,
    density: 80,
    expansion: 1,
    waste: 0.02,
    onHand: 0,
    orderMultiple: 4,
    leastOrder: 0,
    supplier: 'Fenbridge',
    priceOf: '2026-01-12',
    source: 'Litres per kg: from the label; 12 to 15 is common practice, no source',
  },
  {
    product: 'Perlite',
    soldAs: 'loose bag',
    price: 14.2,
    delivery: 0.8,
    size: 100,
    unit: 'L',
    measured: 'by volume',
    density: 100,
    expansion: 1,
    waste: 0.04,
    onHand: 250,
    orderMultiple: 1,
    leastOrder: 10,
    supplier: 'Quayside',
    priceOf: '2025-12-03',
    source: 'Density: common practice, no source',
  },
  {
    product: 'Vermiculite',
    soldAs: 'loose bag',
    price: 23.5,
    delivery: 0.8,
    size: 100,
    unit: 'L',
    measured: 'by volume',
    density: 110,
    expansion: 1,
    waste: 0.03,
    onHand: 60,
    orderMultiple: 1,
    leastOrder: 0,
    supplier: 'Quayside',
    priceOf: '2025-12-03',
    source: 'Density: 64 to 160 kg/m3 is common practice, no source',
  },
  {
    product: 'Sharp sand',
    soldAs: 'bulk bag',
    price: 52,
    delivery: 9.5,
    size: 800,
    unit: 'kg',
    measured: 'by weight',
    density: 1600,
    waterShare: 0.05,
    expansion: 1,
    waste: 0.02,
    onHand: 300,
    orderMultiple: 1,
    leastOrder: 0,
    supplier: 'Gravelhope',
    priceOf: '2025-10-20',
    source: 'Density of dry sand: about 1,600 kg/m3 is common practice, no source',
  },
  {
    product: 'Premix',
    soldAs: 'loose bag',
    price: 13.9,
    delivery: 0.6,
    size: 70,
    unit: 'L',
    measured: 'by volume',
    density: 160,
    expansion: 1,
    waste: 0.03,
    onHand: 140,
    orderMultiple: 3,
    leastOrder: 12,
    supplier: 'Hillside',
    priceOf: '2026-01-26',
    source: 'Density: common practice, no source',
  },
]
