/** The columns a table of the season can have: what is typed into one, or that it is calculated. */
import type { Allowed } from '../../book'
import { allowedBy, formats } from '../cells'
import { all, type Column, type Table, type Unit, type Words } from './table'

/** Money for each of something: "EUR per liner". */
export const money = (per = ''): Unit => ({ money: per === '' ? '' : ` per ${per}` })

type More = Partial<Omit<Column, 'heading' | 'unit' | 'filling' | 'format'>>

export const text = (heading: string, unit = '', more: More = {}): Column => ({
  heading,
  unit,
  filling: 'text',
  width: 18,
  ...more,
})

/** A text that may stay blank. */
export const openText = (heading: string, unit = '', more: More = {}): Column => ({
  ...text(heading, unit, more),
  filling: 'text or blank',
})

export const figure = (heading: string, unit: Unit, format: string, more: More = {}): Column => ({
  heading,
  unit,
  filling: format === formats.share ? 'share' : 'number',
  format,
  allowed: takenBy(format),
  ...more,
})

/** A figure that may stay blank; `blankIs` says what that means. */
export const openFigure = (heading: string, unit: Unit, format: string, blankIs: string, more: More = {}): Column => ({
  ...figure(heading, unit, format, more),
  filling: format === formats.share ? 'share or blank' : 'number or blank',
  note: [more.note, `Blank: ${blankIs}.`].filter(Boolean).join(' '),
})

/** A share that may be more than all. */
export const anyShare = (heading: string, unit: Unit, more: More = {}): Column => ({
  ...figure(heading, unit, formats.share, { allowed: { from: 0, sentence: 'Type a share: 0.5 or 50%.' }, ...more }),
  filling: 'number',
})

/** The same where less than nothing has a meaning too, such as what is paid for taking something away. */
export const signedFigure = (
  heading: string,
  unit: Unit,
  format: string,
  blankIs: string,
  more: More = {},
): Column => ({
  ...openFigure(heading, unit, format, blankIs, { allowed: { from: -1e9, sentence: 'Type a number.' }, ...more }),
  filling: 'any number or blank',
})

/** A figure that must be typed, and may be less than nothing. */
export const anyFigure = (heading: string, unit: Unit, format: string, more: More = {}): Column => ({
  ...figure(heading, unit, format, { allowed: { from: -1e9, sentence: 'Type a number.' }, ...more }),
  filling: 'any number',
})

/** One of a few words. */
export const choiceOf = (heading: string, words: Words, more: More = {}): Column => ({
  ...text(heading, '', more),
  words,
  allowed: { list: words.name, sentence: `Type one of these: ${words.words.join(', ')}.` },
})

/** One of the rows of another table, by its key. */
export const oneOf = (heading: string, isIn: Table, more: More = {}): Column => ({
  ...text(heading, '', more),
  isIn,
  allowed: {
    list: all(isIn, isIn.key),
    sentence: `Type it as it is written on ${isIn.sheet}, or choose it from the list.`,
  },
})

export const result = (heading: string, unit: Unit, format?: string, more: More = {}): Column => ({
  heading,
  unit,
  filling: 'calculated',
  ...(format === undefined ? {} : { format }),
  ...more,
})

function takenBy(format: string): Allowed {
  const taken = allowedBy(format)
  if (taken !== undefined) return taken
  if (format === formats.count) return { from: 0, whole: true, sentence: 'Type a whole number, 0 or more.' }
  return { from: 0, sentence: 'Type a number, 0 or more, without its unit.' }
}
