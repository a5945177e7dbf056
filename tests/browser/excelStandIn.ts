/**
 * What a page of ours reads of Excel's script, in a browser without Excel: no request may leave the machine. What Excel
 * itself does is the business of tests/contract.
 */
import type { Page } from 'playwright-core'

export const officeScript = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js'

export interface StandIn {
  /** What Excel refuses everything with. */
  readonly code?: string
  readonly isDarkTheme?: boolean
}

const script = ({ code = 'InvalidSelection', isDarkTheme = false }: StandIn) => `
  window.associated = []
  window.CustomFunctions = { associate: (id) => window.associated.push(id) }
  window.Office = {
    context: { requirements: { isSetSupported: () => false }, officeTheme: { isDarkTheme: ${isDarkTheme} } },
    onReady: async (ready) => { window.associatedWhenReady = window.associated.length; ready() },
  }
  window.Excel = { run: async () => { throw { code: '${code}', message: '' } } }
`

/** Answers all requests of the page to other addresses with the stand-in, and gives a list of them that grows. */
export async function standInForExcel(page: Page, address: string, standIn: StandIn = {}): Promise<readonly string[]> {
  const outside: string[] = []
  await page.route(
    (url) => url.origin !== address,
    (route) => {
      outside.push(route.request().url())
      return route.fulfill({ contentType: 'text/javascript', body: script(standIn) })
    },
  )
  return outside
}
