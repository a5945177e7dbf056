/** A season in which nothing is typed but conventions and the words that a list of rows begins with. */
import type { SeasonData } from '../season'
import { doubtful } from '../tables/doubts'

export function empty(currency: string): SeasonData {
  return {
    mark: 'Type into the boxed cells. What reads them shows nothing until they are filled.',
    setup: { currency },
    containers: [],
    media: [],
    blends: [],
    components: [],
    methods: [],
    orders: [],
    batches: [],
    past: [],
    stock: [],
    doubts: doubtful.words.map((figure) => ({ figure })),
    breaks: [],
    offers: [],
    periods: [],
    review: [],
    compare: { cuttings: 1_000 },
    reuse: {},
    monday: {},
    mixing: {},
    risk: { draws: 10_000, seed: 1, sure: 0.9 },
    quote: { step: 0.01 },
    surplus: {},
    cheapest: {},
    timing: {},
    open: {
      containers: 8,
      media: 10,
      blends: 5,
      components: 15,
      methods: 8,
      orders: 20,
      batches: 15,
      past: 15,
      stock: 8,
      doubts: 0,
      breaks: 8,
      offers: 10,
      periods: 8,
      review: 20,
    },
  }
}
