/** How each look is drawn in Excel. What is not named here keeps the font of the workbook. */
import type { Look } from '../workbook/book'
import { palette } from '../workbook/palette'

type Colour = keyof typeof palette
const colour = (name: Colour) => `#${palette[name]}`

export interface LookInExcel {
  readonly font: Partial<Pick<Excel.RangeFont, 'bold' | 'italic' | 'size' | 'color'>>
  readonly fill?: string
  /** Lines of this colour at these edges of each cell. */
  readonly line?: {
    readonly colour: string
    readonly edges: readonly ('EdgeTop' | 'EdgeBottom' | 'EdgeLeft' | 'EdgeRight')[]
  }
  readonly wraps?: true
}

export const looksInExcel: Readonly<Partial<Record<Look, LookInExcel>>> = {
  title: { font: { size: 16, bold: true, color: colour('leaf') } },
  heading: {
    font: { bold: true, color: colour('leaf') },
    fill: colour('mist'),
    line: { colour: colour('leaf'), edges: ['EdgeBottom'] },
    wraps: true,
  },
  // Blue figures on a pale ground in a box: the usual sign in spreadsheets for "type here".
  input: {
    font: { color: colour('pen') },
    fill: colour('cream'),
    line: { colour: colour('straw'), edges: ['EdgeTop', 'EdgeBottom', 'EdgeLeft', 'EdgeRight'] },
  },
  total: { font: { bold: true }, line: { colour: colour('leaf'), edges: ['EdgeTop'] } },
  // Without a ground: a caution is long and runs over the cells beside it, and a ground would end at its own.
  caution: { font: { italic: true, color: colour('clay') } },
}
