/** The six ways of rooting that stand side by side, each in its own column of the sheet Ways. */
export const sixWays = {
  water: { name: 'Water', column: 'C' },
  peat: { name: 'Peat, coir and perlite', column: 'D' },
  vermiculite: { name: 'Vermiculite', column: 'E' },
  sand: { name: 'Sand bed', column: 'F' },
  premix: { name: 'Premix', column: 'G' },
  rockwool: { name: 'Rockwool', column: 'H' },
} as const

export type Way = keyof typeof sixWays
export type WayName = (typeof sixWays)[Way]['name']

export const wayKeys = Object.keys(sixWays) as readonly Way[]
