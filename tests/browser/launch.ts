/**
 * Starts a Chromium for the browser tests: one that is on this machine, else the one that comes as a package.
 * A run that finds none fails, because tests that were not run prove nothing.
 */
import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Browser } from 'playwright-core'

interface Found {
  readonly executablePath: string
  readonly env?: Readonly<Record<string, string>>
}

const usualPlaces: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/usr/bin/google-chrome-stable', '/snap/bin/chromium'],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].flatMap((folder) => (
    folder === undefined ? [] : [
      join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
      join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
    ]
  )),
}

export async function launch(): Promise<Browser> {
  const { executablePath, env } = await find()
  return chromium.launch({
    executablePath,
    headless: true,
    // Nothing may leave the machine, and a container that runs as root has no sandbox to offer.
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run', '--disable-gpu',
    ],
    env: { ...process.env as Record<string, string>, ...env },
  })
}

async function find(): Promise<Found> {
  const named = process.env.CHROME_PATH
  if (named !== undefined) {
    if (!existsSync(named)) throw new Error(`CHROME_PATH names "${named}", and no file is there.`)
    return { executablePath: named }
  }
  const installed = usualPlaces[process.platform]?.find((place) => existsSync(place))
  if (installed !== undefined) return { executablePath: installed }
  if (process.platform === 'linux' && process.arch === 'x64') return fromPackage()
  throw new Error('No Chromium or Chrome was found. Install one, or set CHROME_PATH to its program file.')
}

async function fromPackage(): Promise<Found> {
  const bringLibraries = !systemHasLibraries()
  // The package unpacks its libraries where it believes to run in the cloud that it was made for, and at no other sign.
  if (bringLibraries) process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs20.x'
  const { default: packaged } = await import('@sparticuz/chromium')
  const executablePath = await packaged.executablePath()
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
