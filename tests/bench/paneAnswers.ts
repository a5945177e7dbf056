/**
 * How long after a page was asked for its pane answers: a click on the first tab shows, or a letter in the search.
 * The browser's own input is used, at the places that the page tells as soon as it has drawn them.
 */
import type { Browser, Page } from 'playwright-core'

export interface PanePage {
  readonly address: string
  /** The element that the pane is in. */
  readonly pane: string
  readonly width: number
  /** Before the page is asked for. */
  readonly prepare?: (page: Page) => Promise<unknown>
}

type Ask = 'click' | 'letter'

/** As a slow office machine: Chromium makes the page's thread so many times slower. */
const slowdown = 4

/** In milliseconds from asking for the page on. */
interface Answer {
  /** What can be clicked is drawn, and the page's thread is free to take a click. */
  readonly ready: number
  /** The answer to a click or letter is drawn. The way between this program and the browser, there and back, is in it. */
  readonly answered: number
}

/** Every page is loaded afresh, with nothing in the cache. */
export async function paneAnswers(
  browser: Browser,
  { address, pane, width, prepare }: PanePage,
  ask: Ask,
): Promise<Answer> {
  const context = await browser.newContext({ viewport: { width, height: 800 } })
  try {
    const page = await context.newPage()
    await prepare?.(page)
    const drawn = await listen<readonly [x: number, y: number, ready: number]>(page, 'tellPlace')
    const answered = await listen<number>(page, 'tellTime')
    const devtools = await context.newCDPSession(page)
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
    await page.addInitScript(watch(pane, ask))
    await page.goto(address, { waitUntil: 'commit' })
    const [x, y, ready] = await drawn()
    await page.mouse.click(x, y)
    if (ask === 'letter') await page.keyboard.type('p')
    return { ready, answered: await answered() }
  } finally {
    await context.close()
  }
}

/** Gives the page a function of this name; what comes back waits for what the page calls it with. */
async function listen<T>(page: Page, name: string): Promise<() => Promise<T>> {
  let tell!: (value: T) => void
  const told = new Promise<T>((resolve) => {
    tell = resolve
  })
  await page.exposeFunction(name, tell)
  return () => told
}

/** Runs in the page. A text, because the names that a compiler adds to functions are not known there. */
function watch(pane: string, ask: Ask): string {
  const [asked, answered] =
    ask === 'click'
      ? ['[role=tab]', 'element.getAttribute("aria-selected") === "true"']
      : ['input[type=search]', 'element.value === "p"']
  return `{
    const afterDrawing = (act) => requestAnimationFrame(() => setTimeout(act))
    const started = new MutationObserver(() => {
      const element = document.querySelector(${JSON.stringify(`${pane} ${asked}`)})
      if (element === null) return
      started.disconnect()
      const look = () => {
        if (!(${answered})) return requestAnimationFrame(look)
        afterDrawing(() => tellTime(performance.now()))
      }
      afterDrawing(() => {
        const { x, y, width, height } = element.getBoundingClientRect()
        tellPlace([x + width / 2, y + height / 2, performance.now()])
        look()
      })
    })
    started.observe(document, { subtree: true, childList: true })
  }`
}
