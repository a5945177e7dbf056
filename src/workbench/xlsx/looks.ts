/**
 * How each look is drawn in a file. The styles are told apart by their fill and font, so that a file of ours
 * that comes back still knows which cells are meant to be typed into.
 */
import type { Borders, Fill, Font, Style } from '@cj-tech-master/excelts'
import type { Look } from '../../workbook/book'

type LookStyle = Partial<Pick<Style, 'font' | 'fill' | 'border' | 'alignment'>>

const ink = { argb: 'FF1F2A24' }
const paper = (argb: string): Fill => ({ type: 'pattern', pattern: 'solid', fgColor: { argb }, bgColor: { argb } })
const font = (rest: Partial<Font>): Partial<Font> => ({ name: 'Calibri', family: 2, size: 11, color: ink, ...rest })
const line = (argb: string) => ({ style: 'thin', color: { argb } } as const)
const box = (argb: string): Partial<Borders> => ({ top: line(argb), left: line(argb), bottom: line(argb), right: line(argb) })

export const lookStyles: Readonly<Record<Look, LookStyle>> = {
  title: { font: font({ size: 16, bold: true, color: { argb: 'FF1E5B3A' } }) },
  text: { font: font({}), alignment: { vertical: 'top' } },
  heading: {
    font: font({ bold: true }),
    fill: paper('FFDCE9E0'),
    border: { bottom: line('FF1E5B3A') },
    alignment: { vertical: 'bottom', wrapText: true },
  },
  // Blue figures on a pale ground in a box: the usual sign in spreadsheets for "type here".
  input: { font: font({ color: { argb: 'FF0B3D91' } }), fill: paper('FFFFF8DC'), border: box('FFC9B97A') },
  result: { font: font({ color: { argb: 'FF14532D' } }), fill: paper('FFF3F8F4') },
  total: { font: font({ bold: true }), border: { top: line('FF1F2A24') } },
  caution: { font: font({ italic: true, color: { argb: 'FF8A3B12' } }), fill: paper('FFFDEBDD') },
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
