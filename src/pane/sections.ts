/** The sections of the pane, in the order of a season's work. */
export const sections = ['Season', 'Functions', 'Working', 'Check', 'Compare', 'Library', 'Settings'] as const

export type Section = (typeof sections)[number]
