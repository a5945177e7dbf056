import type { Locator, Page } from 'playwright-core'

/** Fails where the key does not lead to the control. */
export async function pressUntilFocused(page: Page, key: string, control: Locator, mostPresses = 60): Promise<void> {
  await control.waitFor()
  for (let presses = 0; presses < mostPresses; presses += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press(key)
  }
  throw new Error(`${mostPresses} presses of ${key} did not reach ${String(control)}`)
}
