/**
 * WebKit, the engine of Safari and of Excel's pane on the Mac, as Debian builds it for GTK. Its browser has no mode
 * without a screen, so it gets one in memory.
 */
import { spawn, type ChildProcess } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { createConnection, createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Builder, Capabilities, Key, type WebDriver } from 'selenium-webdriver'
import { patience } from '../browserWindows'
import { downloadedInto } from './downloadedInto'
import { versionOf, whereIs } from './installed'
import type { Engine, Tab } from './tab'

const driverProgram = whereIs(['WebKitWebDriver'])
const screenProgram = whereIs(['Xvfb'])
const browserProgram = miniBrowser()

const screen = { width: 1600, height: 1000 }

/** The window of this browser does not become narrower than 334 pixels; text that is larger makes its page narrower. */
const zoom = 1.1

export const webkit: Engine = {
  name: 'WebKit',
  version: driverProgram && screenProgram && browserProgram && (await versionOfBrowser()),
  missing:
    "On Linux, install WebKitGTK's driver and a screen in memory (in Debian the packages webkit2gtk-driver and xvfb).",
  async visit(address, act) {
    const folder = mkdtempSync(join(tmpdir(), 'sticksheet-webkit-'))
    const processes: ChildProcess[] = []
    try {
      const display = await startScreen(processes)
      const port = await freePort()
      // Its home is the folder, because files that are saved go there.
      const env = {
        ...process.env,
        DISPLAY: display,
        GDK_DPI_SCALE: String(zoom),
        HOME: folder,
        XDG_CONFIG_HOME: folder,
        XDG_DOWNLOAD_DIR: folder,
      }
      processes.push(spawn(driverProgram!, [`--port=${port}`], { env, stdio: 'ignore' }))
      const driver = await connect(port)
      try {
        await driver.get(address)
        await act(tabOf(driver, folder))
      } finally {
        await driver.quit()
      }
    } finally {
      for (const child of processes.reverse()) child.kill()
      rmSync(folder, { recursive: true, force: true })
    }
  },
}

/** Where Debian and its kin keep it: in a folder for each version of the library. */
function miniBrowser(): string | undefined {
  const libraries = ['/usr/lib/x86_64-linux-gnu', '/usr/lib/aarch64-linux-gnu', '/usr/libexec', '/usr/lib'].filter(
    (folder) => existsSync(folder),
  )
  return libraries
    .flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.startsWith('webkit2gtk-'))
        .map((name) => join(folder, name, 'MiniBrowser')),
    )
    .find((program) => existsSync(program))
}

/** It opens no window for this, and yet wants a screen. */
async function versionOfBrowser(): Promise<string> {
  const processes: ChildProcess[] = []
  try {
    return versionOf(browserProgram!, { ...process.env, DISPLAY: await startScreen(processes) })
  } finally {
    for (const child of processes) child.kill()
  }
}

/** Resolves to its name, which it chooses itself. */
async function startScreen(processes: ChildProcess[]): Promise<string> {
  const child = spawn(
    screenProgram!,
    ['-displayfd', '3', '-screen', '0', `${screen.width}x${screen.height}x24`, '-nolisten', 'tcp'],
    { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] },
  )
  processes.push(child)
  const number = await new Promise<Buffer>((resolve, reject) => {
    child.stdio[3]!.once('data', resolve)
    child.once('exit', (code) => reject(new Error(`The screen in memory ended with ${code}`)))
  })
  return `:${number.toString().trim()}`
}

async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address() as { port: number }
  await new Promise((resolve) => server.close(resolve))
  return port
}

/** The driver is asked once it listens: what Selenium asked before would fail a second time, where nobody hears of it. */
async function connect(port: number): Promise<WebDriver> {
  await untilListening(port)
  const capabilities = new Capabilities({
    browserName: 'MiniBrowser',
    'webkitgtk:browserOptions': { binary: browserProgram, args: ['--automation', '--full-screen'] },
  })
  return new Builder().usingServer(`http://127.0.0.1:${port}`).withCapabilities(capabilities).build()
}

async function untilListening(port: number): Promise<void> {
  const giveUp = Date.now() + patience
  while (!(await answers(port))) {
    if (Date.now() > giveUp) throw new Error(`The driver of WebKit does not listen at port ${port}`)
    await new Promise((resolve) => {
      setTimeout(resolve, 50)
    })
  }
}

function answers(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = createConnection({ port, host: '127.0.0.1' })
    socket.once('connect', () => {
      socket.destroy()
      resolve(true)
    })
    socket.once('error', () => resolve(false))
  })
}

function tabOf(driver: WebDriver, folder: string): Tab {
  return {
    evaluate: (expression) => answered(expression, driver.executeScript(`return ${expression}`)),
    click: (x, y) =>
      answered(
        `a click at ${x}, ${y}`,
        driver
          .actions()
          .move({ x: Math.round(x * zoom), y: Math.round(y * zoom) })
          .click()
          .perform(),
      ),
    type: (text) => answered(text, driver.actions().sendKeys(text).perform()),
    async press(key) {
      const keys = key.split('+').map(codeOf)
      let actions = driver.actions()
      for (const held of keys) actions = actions.keyDown(held)
      for (const held of [...keys].reverse()) actions = actions.keyUp(held)
      await answered(key, actions.perform())
    },
    async resize(width, height) {
      await driver
        .manage()
        .window()
        .setRect({ x: 0, y: 0, width: Math.floor(width * zoom), height: Math.floor(height * zoom) })
    },
    download: (cause) => downloadedInto(folder, cause),
  }
}

/** The driver has no time limit of its own, and a test that ran out of time would leave browser and screen behind. */
async function answered<Result>(asked: string, command: Promise<Result>): Promise<Result> {
  let giveUp: NodeJS.Timeout
  const late = new Promise<never>((_resolve, reject) => {
    giveUp = setTimeout(() => reject(new Error(`WebKit did not answer: ${asked}`)), patience)
  })
  return Promise.race([command, late]).finally(() => clearTimeout(giveUp))
}

/** Selenium has a sign of its own for each key without a letter: PAGE_DOWN for "PageDown". */
function codeOf(key: string): string {
  if (key.length === 1) return key
  const name = key.replace(/(?<=[a-z])(?=[A-Z])/g, '_').toUpperCase() as keyof typeof Key
  return Key[name] as string
}
