import { describe, expect, it } from 'vitest'
import type { Theme } from '@fluentui/react-components'
import { markColours } from '../../src/pane/charts/marks'
import { themes } from '../../src/pane/theme'

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = parseInt(hex.slice(at, at + 2), 16) / 255
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

function contrast(one: string, other: string): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b)
  return (lighter + 0.05) / (darker + 0.05)
}

const pairsThatCarryText: readonly (readonly [keyof Theme, keyof Theme])[] = [
  ['colorBrandForeground1', 'colorNeutralBackground1'],
  ['colorBrandForeground1', 'colorNeutralBackground1Hover'],
  ['colorBrandForeground1', 'colorNeutralBackground2'],
  ['colorBrandForegroundLink', 'colorNeutralBackground1'],
  ['colorBrandForegroundLinkHover', 'colorNeutralBackground1'],
  ['colorBrandForegroundLinkPressed', 'colorNeutralBackground1'],
  ['colorNeutralForegroundOnBrand', 'colorBrandBackground'],
  ['colorNeutralForegroundOnBrand', 'colorBrandBackgroundHover'],
  ['colorNeutralForegroundOnBrand', 'colorBrandBackgroundPressed'],
  ['colorNeutralForeground2', 'colorNeutralBackground2'],
  ['colorStatusDangerForeground1', 'colorNeutralBackground2'],
]

describe.each(['light', 'dark', 'contrast'] as const)('the %s theme', (name) => {
  it.each(markColours)('draws charts in %s with at least the contrast of 3 that a shape needs', (colour) => {
    expect(contrast(themes[name][colour], themes[name].colorNeutralBackground1)).toBeGreaterThanOrEqual(3)
  })
})

describe.each(['light', 'dark'] as const)('the %s theme', (name) => {
  it.each(pairsThatCarryText)('shows %s on %s with a contrast of at least 4.5', (foreground, background) => {
    expect(contrast(themes[name][foreground] as string, themes[name][background] as string)).toBeGreaterThanOrEqual(4.5)
  })

  it('marks an opened function with at least the contrast of 3 that a shape needs', () => {
    expect(contrast(themes[name].colorBrandStroke1, themes[name].colorNeutralBackground1)).toBeGreaterThanOrEqual(3)
  })
})
