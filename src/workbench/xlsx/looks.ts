/**
 * How each look is drawn in a file. The looks differ in font or fill, so that a file of ours that comes back
 * still knows which cells are meant to be typed into.
 */
import type { Borders, Fill, Font, Style } from '@cj-tech-master/excelts'
import type { Look } from '../../workbook/book'

type LookStyle = Partial<Pick<Style, 'font' | 'fill' | 'border' | 'alignment'>>

const ink = 'FF1F2A1A'
const leaf = 'FF305922'
const mist = 'FFE4EFDC'
const cream = 'FFFFF4D0'
const straw = 'FFC9A227'
const pen = 'FF174A8C'
const clay = 'FF9A3412'
const blush = 'FFFDEBE3'

const font = (argb: string, rest: Partial<Font> = {}): Partial<Font> => ({ name: 'Calibri', family: 2, size: 11, color: { argb }, ...rest })
const fill = (argb: string): Fill => ({ type: 'pattern', pattern: 'solid', fgColor: { argb }, bgColor: { argb } })
const line = (argb: string) => ({ style: 'thin', color: { argb } } as const)
const frame = (argb: string): Partial<Borders> => ({ top: line(argb), left: line(argb), bottom: line(argb), right: line(argb) })

export const lookStyles: Readonly<Record<Look, LookStyle>> = {
  title: { font: font(leaf, { size: 16, bold: true }) },
  text: { font: font(ink) },
  heading: {
    font: font(leaf, { bold: true }),
    fill: fill(mist),
    border: { bottom: line(leaf) },
    alignment: { vertical: 'bottom', wrapText: true },
  },
  // Blue figures on a pale ground in a box: the usual sign in spreadsheets for "type here".
  input: { font: font(pen), fill: fill(cream), border: frame(straw) },
  result: { font: font(leaf) },
  total: { font: font(ink, { bold: true }), border: { top: line(leaf) } },
  caution: { font: font(clay, { italic: true }), fill: fill(blush) },
}

const looks = Object.keys(lookStyles) as Look[]

export function lookOf(style: Partial<Style>): Look | undefined {
  const sign = signOf(style)
  return looks.find((look) => signOf(lookStyles[look]) === sign)
}

function signOf({ font, fill }: LookStyle): string {
  const ground = fill?.type === 'pattern' && fill.pattern === 'solid' ? fill.fgColor?.argb : undefined
  return [font?.name, font?.size, font?.bold === true, font?.italic === true, font?.color?.argb, ground].join('|')
}
