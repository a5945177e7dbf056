import { chromiumEngine } from './chromium'
import { firefox } from './firefox'
import type { Engine } from './tab'
import { webkit } from './webkit'

/** Chromium is that of all browser tests, and must be there. */
export const engines: readonly Engine[] = [chromiumEngine, firefox, webkit]
