/** What was stuck, and how many saleable liners came of it. */
export interface Batch {
  readonly stuck: number
  readonly saleable: number
}

export interface PastBatches {
  readonly species: string
  readonly batches: readonly Batch[]
}

/** Invented counts. */
export const pastBatches: readonly [PastBatches, PastBatches] = [
  {
    species: 'Pelargonium',
    batches: [
      { stuck: 2_400, saleable: 2_078 },
      { stuck: 1_800, saleable: 1_512 },
      { stuck: 3_000, saleable: 2_631 },
      { stuck: 2_400, saleable: 2_021 },
      { stuck: 2_100, saleable: 1_834 },
      { stuck: 2_700, saleable: 2_252 },
      { stuck: 1_500, saleable: 1_307 },
      { stuck: 2_400, saleable: 2_066 },
    ],
  },
  {
    species: 'Lavandula',
    batches: [
      { stuck: 3_200, saleable: 2_604 },
      { stuck: 2_500, saleable: 1_917 },
      { stuck: 2_800, saleable: 2_319 },
      { stuck: 3_000, saleable: 2_272 },
      { stuck: 2_200, saleable: 1_812 },
      { stuck: 3_400, saleable: 2_695 },
      { stuck: 2_600, saleable: 2_164 },
      { stuck: 3_100, saleable: 2_431 },
    ],
  },
]

/** The name by which the order book calls the spread between the batches of a species. */
export function spreadName(species: string): string {
  return `${species}Spread`
}
