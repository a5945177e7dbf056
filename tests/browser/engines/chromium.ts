/**
 * The Chromium of the browser tests: one that is on this machine, else the one that comes as a package.
 * A run that finds none fails, because tests that were not run prove nothing.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type BrowserServer,
  type LaunchOptions,
  type Page,
} from 'playwright-core'
import { root } from '../../architecture/sourceTree'
import { firstInstalled, inWindows } from './installed'
import type { Engine, Tab } from './tab'

const usualPlaces: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: [
    'google-chrome-stable',
    'google-chrome',
    'microsoft-edge-stable',
    'microsoft-edge',
    'chromium',
    'chromium-browser',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: [
    ...inWindows('Google', 'Chrome', 'Application', 'chrome.exe'),
    ...inWindows('Microsoft', 'Edge', 'Application', 'msedge.exe'),
  ],
}

/** What CHROME_PATH says instead of a file, to take the packaged one where another is installed. */
const packaged = 'package'

interface FoundChromium {
  readonly version: string
  readonly options: () => Promise<LaunchOptions>
}

/** Throws where there is none. */
export function findChromium(): FoundChromium {
  const named = process.env.CHROME_PATH
  if (named !== undefined && named !== packaged && !existsSync(named))
    throw new Error(`CHROME_PATH names "${named}", and no file is there.`)
  const installed =
    named === packaged
      ? undefined
      : firstInstalled(named === undefined ? (usualPlaces[process.platform] ?? []) : [named])
  if (installed !== undefined)
    return { version: installed.version, options: async () => ({ executablePath: installed.program }) }
  if (process.platform === 'linux' && process.arch === 'x64')
    return { version: `${packageVersion()} from its package`, options: fromPackage }
  throw new Error('No Chrome, Edge or Chromium was found. Install one, or set CHROME_PATH to its program file.')
}

export const chromiumEngine: Engine = {
  name: 'Chromium',
  get version() {
    return findChromium().version
  },
  missing: '',
  async visit(address, act) {
    const browser = await launchChromium()
    try {
      const page = await browser.newPage()
      await page.goto(address)
      await act(tabOf(page))
    } finally {
      await browser.close()
    }
  },
}

function tabOf(page: Page): Tab {
  return {
    evaluate: (expression) => page.evaluate(expression),
    click: (x, y) => page.mouse.click(x, y),
    type: (text) => page.keyboard.type(text),
    press: (key) => page.keyboard.press(key),
    resize: (width, height) => page.setViewportSize({ width, height }),
    async download(cause) {
      const [download] = await Promise.all([page.waitForEvent('download'), cause()])
      return readFileSync(await download.path())
    },
  }
}

/**
 * As a server, so that tests in several processes share it. Pages of tests are short-lived: what the last of the
 * compilers makes of a script costs a quarter of the time of each, and is not used often enough to be worth it.
 */
export async function startChromium(): Promise<BrowserServer> {
  const { args, ...others } = await options()
  return chromium.launchServer({ ...others, args: [...args, '--js-flags=--no-turbofan'] })
}

/** With a profile in this folder, as users have one; all other windows of tests are private ones. */
export async function launchProfile(folder: string, window: BrowserContextOptions): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, { ...(await options()), ...window })
}

export async function launchChromium(): Promise<Browser> {
  return chromium.launch(await options())
}

/** The first two would draw a page of the browser's own for each window. The others Playwright leaves out too, whose list this one replaces. */
const unwantedFeatures = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'AimEnabled',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'ThirdPartyStoragePartitioning',
]

async function options(): Promise<LaunchOptions & { readonly args: string[] }> {
  const { env, ...found } = await findChromium().options()
  return {
    ...found,
    headless: true,
    // Nothing may leave the machine, and a container that runs as root has no sandbox to offer.
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-gpu',
      // The system's windows for choosing a file cannot be driven: files come and go as in other browsers, but where a test brings pickers.
      '--disable-blink-features=FileSystemAccessLocal',
      `--disable-features=${unwantedFeatures.join(',')}`,
    ],
    env: { ...process.env, ...env },
  }
}

function packageVersion(): string {
  return (
    JSON.parse(readFileSync(join(root, 'node_modules', '@sparticuz', 'chromium', 'package.json'), 'utf8')) as {
      version: string
    }
  ).version
}

async function fromPackage(): Promise<LaunchOptions> {
  const bringLibraries = !systemHasLibraries()
  // The package unpacks its libraries where it believes to run in the cloud that it was made for, and at no other sign.
  if (bringLibraries) process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs20.x'
  const { default: chromiumPackage } = await import('@sparticuz/chromium')
  const executablePath = await chromiumPackage.executablePath()
  return {
    executablePath,
    env: {
      // Its own fonts: a fresh machine may have none.
      FONTCONFIG_PATH: join(tmpdir(), 'fonts'),
      ...(bringLibraries ? { LD_LIBRARY_PATH: join(tmpdir(), 'al2023', 'lib') } : {}),
    },
  }
}

function systemHasLibraries(): boolean {
  try {
    return execFileSync('ldconfig', ['-p'], { encoding: 'utf8' }).includes('libnss3.so')
  } catch {
    return false
  }
}
