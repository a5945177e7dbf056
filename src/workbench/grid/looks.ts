/**
 * How each look is drawn in the grid. The grid inverts the lightness of colours in the dark theme, so every pair
 * here was chosen to be readable both ways.
 */
import { BooleanNumber, BorderStyleTypes, type IBorderStyleData, type IStyleData, VerticalAlign } from '@univerjs/core'
import type { Look } from '../../workbook/book'
import { palette } from '../../workbook/palette'

const colour = (name: keyof typeof palette) => ({ rgb: `#${palette[name]}` })
const fine = (name: keyof typeof palette): IBorderStyleData => ({ s: BorderStyleTypes.THIN, cl: colour(name) })
const frame = { t: fine('straw'), r: fine('straw'), b: fine('straw'), l: fine('straw') }

export const lookStyles: Readonly<Record<Look, IStyleData>> = {
  title: { fs: 16, bl: BooleanNumber.TRUE, cl: colour('leaf') },
  text: { cl: colour('ink') },
  heading: {
    bl: BooleanNumber.TRUE,
    cl: colour('leaf'),
    bg: colour('mist'),
    bd: { b: fine('leaf') },
    vt: VerticalAlign.BOTTOM,
  },
  input: { cl: colour('pen'), bg: colour('cream'), bd: frame },
  result: { cl: colour('ink') },
  total: { bl: BooleanNumber.TRUE, cl: colour('ink'), bd: { t: fine('leaf') } },
  // Without a ground: a caution is long and runs over the cells beside it, and a ground would end at its own.
  caution: { it: BooleanNumber.TRUE, cl: colour('clay') },
}

/** Over the look of a cell in which a function refused. */
export const refusedStyle: IStyleData = { cl: colour('clay'), bg: colour('blush'), bl: BooleanNumber.TRUE }
