import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** Fluent's own stops for the keyboard around the list of tabs: they hand it on at once and hold no content. */
const sentinels = '[data-tabster-dummy]'

/** Checks the pane, which is ours; in the workbench the grid beside it draws on a canvas. */
export async function expectNoViolations(page: Page, place = 'aside.functions', without: readonly string[] = []): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).include(place).exclude(sentinels).disableRules([...without]).analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([])
}
