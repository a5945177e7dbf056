import {
  createDarkTheme,
  createLightTheme,
  teamsHighContrastTheme,
  type BrandVariants,
  type Theme,
} from '@fluentui/react-components'

export type ThemeName = 'light' | 'dark' | 'contrast'

/** Leaf green, from shade to light. tests/pane/theme.test.ts holds the pairs that carry text to a contrast of 4.5. */
const leaf: BrandVariants = {
  10: '#0a1307',
  20: '#12220c',
  30: '#1a3112',
  40: '#223f17',
  50: '#294c1c',
  60: '#305922',
  70: '#376326',
  80: '#3e702c',
  90: '#478033',
  100: '#54913b',
  110: '#63a744',
  120: '#78b856',
  130: '#91c374',
  140: '#acd095',
  150: '#c9dfb9',
  160: '#e4efdc',
}

/** Fluent takes shade 100 for words on dark ground, which is too dim in this green. */
const brighterWords: Partial<Theme> = {
  colorBrandForeground1: leaf[120],
  colorBrandForeground2: leaf[130],
  colorBrandForegroundLink: leaf[120],
  colorBrandForegroundLinkHover: leaf[130],
  colorBrandForegroundLinkPressed: leaf[110],
}

/** Excel's own font where there is one, else the font of the machine. Each further name would be looked for before the first word is drawn. */
const font: Partial<Theme> = {
  fontFamilyBase: '"Segoe UI", system-ui, sans-serif',
  fontFamilyMonospace: 'Consolas, ui-monospace, monospace',
}

export const themes: Readonly<Record<ThemeName, Theme>> = {
  light: { ...createLightTheme(leaf), ...font },
  dark: { ...createDarkTheme(leaf), ...brighterWords, ...font },
  contrast: { ...teamsHighContrastTheme, ...font },
}
