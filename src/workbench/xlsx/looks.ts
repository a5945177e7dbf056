/**
 * How each look is drawn in a file. The looks differ in font or fill, so that a file of ours that comes back
 * still knows which cells are meant to be typed into.
 */
import type { Borders, Fill, Font, Style } from '@cj-tech-master/excelts'
import type { Look } from '../../workbook/book'
import { palette } from '../../workbook/palette'

type LookStyle = Partial<Pick<Style, 'font' | 'fill' | 'border' | 'alignment'>>

type Colour = keyof typeof palette

/** Files put the opacity before the colour. */
const opaque = (colour: Colour) => ({ argb: `FF${palette[colour]}` })
const font = (colour: Colour, rest: Partial<Font> = {}): Partial<Font> => ({
  name: 'Calibri',
  family: 2,
  size: 11,
  color: opaque(colour),
  ...rest,
})
const fill = (colour: Colour): Fill => ({
  type: 'pattern',
  pattern: 'solid',
  fgColor: opaque(colour),
  bgColor: opaque(colour),
})
const line = (colour: Colour) => ({ style: 'thin', color: opaque(colour) }) as const
const frame = (colour: Colour): Partial<Borders> => ({
  top: line(colour),
  left: line(colour),
  bottom: line(colour),
  right: line(colour),
})

export const lookStyles: Readonly<Record<Look, LookStyle>> = {
  title: { font: font('leaf', { size: 16, bold: true }) },
  text: { font: font('ink') },
  heading: {
    font: font('leaf', { bold: true }),
    fill: fill('mist'),
    border: { bottom: line('leaf') },
    alignment: { vertical: 'bottom', wrapText: true },
  },
  // Blue figures on a pale ground in a box: the usual sign in spreadsheets for "type here".
  input: { font: font('pen'), fill: fill('cream'), border: frame('straw') },
  result: { font: font('leaf') },
  total: { font: font('ink', { bold: true }), border: { top: line('leaf') } },
  caution: { font: font('clay', { italic: true }), fill: fill('blush') },
}

export function lookOf(style: Partial<Style>): Look | undefined {
  return looksBySign.get(signOf(style))
}

function signOf({ font, fill }: LookStyle): string {
  const ground = fill?.type === 'pattern' && fill.pattern === 'solid' ? fill.fgColor?.argb : undefined
  return [font?.name, font?.size, font?.bold === true, font?.italic === true, font?.color?.argb, ground].join('|')
}

const looksBySign = new Map(Object.entries(lookStyles).map(([look, style]) => [signOf(style), look as Look]))
