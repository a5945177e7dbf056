/** How the series of a chart are told apart: by a colour and, for those who do not see it, by a pattern, a dash and a shape. */
import { tokens } from '@fluentui/react-components'
import {
  symbolCircle,
  symbolCross,
  symbolDiamond,
  symbolSquare,
  symbolTriangle,
  symbolWye,
  type SymbolType,
} from 'd3-shape'

export const patterns = ['solid', 'slanted', 'dotted', 'level', 'crossed', 'open'] as const
export type Pattern = (typeof patterns)[number]

export interface Mark {
  readonly colour: string
  readonly pattern: Pattern
  /** As stroke-dasharray takes it. */
  readonly dash: string
  readonly shape: SymbolType
}

/** tests/pane/theme.test.ts holds each to a contrast of 3 with the ground. */
export const markColours = [
  'colorPaletteBlueBorderActive',
  'colorBrandForeground1',
  'colorPaletteDarkOrangeForeground1',
  'colorPaletteBerryForeground1',
  'colorPaletteBrownBorderActive',
  'colorPaletteTealBorderActive',
] as const

const dashes = ['none', '7 3', '2 3', '9 3 2 3', '12 4'] as const
const shapes = [symbolCircle, symbolSquare, symbolTriangle, symbolDiamond, symbolCross, symbolWye] as const

export function markOf(series: number): Mark {
  return {
    colour: tokens[markColours[series % markColours.length]!],
    pattern: patterns[series % patterns.length]!,
    dash: dashes[series % dashes.length]!,
    shape: shapes[series % shapes.length]!,
  }
}
