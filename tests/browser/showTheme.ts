import type { Page } from 'playwright-core'

/** Lets the system ask for the theme, and waits until the pane has followed. */
export async function showTheme(page: Page, colorScheme: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme })
  await page.waitForFunction((dark) => {
    const [, red] = /^rgb\((\d+)/.exec(
      getComputedStyle(document.querySelector('aside.functions > div')!).backgroundColor,
    )!
    return Number(red) < 128 === dark
  }, colorScheme === 'dark')
}
