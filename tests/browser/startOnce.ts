/** Before the browser tests: one Chromium and one served build, in which the tests of all files open windows of their own. */
import type { TestProject } from 'vitest/node'
import { officeHeaders, serve, workbenchHeaders } from '../../src/start/server.mjs'
import { dist } from '../bundle/loadBundle'
import { startChromium } from './engines/chromium'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where a test connects to the browser. */
    readonly chromium: string
    /** The built pages as `npm start` serves them. */
    readonly workbench: string
    /** The same as `npm run excel` serves them, but without a certificate. */
    readonly addIn: string
  }
}

export default async function startOnce({ provide }: TestProject) {
  const workbench = await serve({ folder: dist, port: 0, headers: workbenchHeaders })
  const addIn = await serve({ folder: dist, port: 0, headers: officeHeaders })
  const chromium = await startChromium()
  provide('workbench', workbench.address)
  provide('addIn', addIn.address)
  provide('chromium', chromium.wsEndpoint())
  return async () => {
    await chromium.close()
    await Promise.all([workbench.close(), addIn.close()])
  }
}
