import type { english } from './en/words'

/** What the pane says, whatever the language: texts, and functions that put names and numbers into them. */
export type Words = typeof english
