/**
 * How each look is drawn in the grid. The colours are given for light; the grid inverts their lightness in the
 * dark theme, so every pair here was chosen to be readable both ways.
 */
import { BooleanNumber, BorderStyleTypes, type IBorderStyleData, type IStyleData, VerticalAlign } from '@univerjs/core'
import type { Look } from '../../workbook/book'

const ink = { rgb: '#1f2a1a' }
const leaf = { rgb: '#305922' }
const mist = { rgb: '#e4efdc' }
const cream = { rgb: '#fff4d0' }
const straw = { rgb: '#c9a227' }
const pen = { rgb: '#174a8c' }
const clay = { rgb: '#9a3412' }
const blush = { rgb: '#fdebe3' }

const fine = (color: { rgb: string }): IBorderStyleData => ({ s: BorderStyleTypes.THIN, cl: color })
const frame = { t: fine(straw), r: fine(straw), b: fine(straw), l: fine(straw) }

export const lookStyles: Readonly<Record<Look, IStyleData>> = {
  title: { fs: 16, bl: BooleanNumber.TRUE, cl: leaf },
  text: { cl: ink },
  heading: { bl: BooleanNumber.TRUE, cl: leaf, bg: mist, bd: { b: fine(leaf) }, vt: VerticalAlign.BOTTOM },
  input: { cl: pen, bg: cream, bd: frame },
  result: { cl: ink },
  total: { bl: BooleanNumber.TRUE, cl: ink, bd: { t: fine(leaf) } },
  // Without a ground: a caution is long and runs over the cells beside it, and a ground would end at its own.
  caution: { it: BooleanNumber.TRUE, cl: clay },
}

/** Over the look of a cell in which a function refused. */
export const refusedStyle: IStyleData = { cl: clay, bg: blush, bl: BooleanNumber.TRUE }
