import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { showTheme } from './showTheme'

/** Fluent's own stops for the keyboard around the list of tabs: they hand it on at once and hold no content. */
const sentinels = '[data-tabster-dummy]'

interface Look {
  /** Of the window; without them it keeps its own. */
  readonly widths?: readonly number[]
  /** Ours alone: in the workbench the grid beside it draws on a canvas. */
  readonly place?: string
}

/** Sweeps what the workbench shows in both themes and at each width. The window is then as it was, and light. */
export async function expectNoViolationsInAnyLook(
  page: Page,
  { widths, place = 'aside.functions' }: Look = {},
): Promise<void> {
  const before = page.viewportSize()!
  for (const width of widths ?? [before.width]) {
    await page.setViewportSize({ ...before, width })
    for (const colorScheme of ['dark', 'light'] as const) {
      await showTheme(page, colorScheme)
      await expectNoViolations(page, place, [], `${colorScheme}, ${width} pixels`)
    }
  }
  await page.setViewportSize(before)
}

/** As the place looks now. Our pages have no frames, so that axe need not open a page of its own to put their results together. */
export async function expectNoViolations(
  page: Page,
  place: string,
  without: readonly string[] = [],
  look = '',
): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .setLegacyMode()
    .options({ resultTypes: ['violations'] })
    .include(place)
    .exclude(sentinels)
    .disableRules([...without])
    .analyze()
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`),
    look,
  ).toEqual([])
}
