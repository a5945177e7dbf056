/** Windows in the one Chromium of all tests. What a page throws or complains of fails the test that opened it. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest'
import { launchProfile } from './engines/chromium'

interface Windows {
  /** The workbench with the demo in a window of its own, which has loaded but may still be drawing. It is closed after the test. */
  open(options: BrowserContextOptions): Promise<Page>
  /** The same with an empty workbook, in a third of the time: for all that needs no season. */
  openEmpty(options: BrowserContextOptions): Promise<Page>
  /** A window without a page, to listen before one is opened. */
  blank(options: BrowserContextOptions): Promise<Page>
  /** The same in a browser of its own with a profile, in which handles of files can be kept: Chromium 153 ends where a private window reads one back. */
  blankInProfile(options: BrowserContextOptions): Promise<Page>
  /** That this test is about a fault: what matches is to be complained of, and does not fail the test. */
  expectFault(fault: RegExp): void
  /** Where the workbench is. */
  readonly address: string
  /** Where it begins with an empty workbook. */
  readonly emptyAddress: string
}

/** For a busy machine: a wait ends with what it waits for, and the time only tells when to give up. PATIENCE=8000 gives up sooner, while a test is written. */
export const patience = Number(process.env.PATIENCE ?? 90_000)

export function browserWindows(): Windows {
  let browser: Browser
  let contexts: BrowserContext[] = []
  let profiles: string[] = []
  let faults: string[] = []
  let expected: RegExp[] = []

  beforeAll(async () => {
    browser = await chromium.connect(inject('chromium'))
  })

  afterEach(async () => {
    await Promise.all(contexts.map((context) => context.close()))
    for (const profile of profiles) rmSync(profile, { recursive: true, force: true })
    const [unexpected, missing] = [
      faults.filter((fault) => !expected.some((known) => known.test(fault))),
      expected.filter((known) => !faults.some((fault) => known.test(fault))),
    ]
    contexts = []
    profiles = []
    faults = []
    expected = []
    expect(unexpected, 'The page threw or complained').toEqual([])
    expect(missing, 'The page did not complain as the test is about').toEqual([])
  })

  afterAll(() => browser?.close())

  const blank = async (options: BrowserContextOptions) => pageIn(await browser.newContext(options))

  async function blankInProfile(options: BrowserContextOptions): Promise<Page> {
    const profile = mkdtempSync(join(tmpdir(), 'sticksheet-profile-'))
    profiles.push(profile)
    return pageIn(await launchProfile(profile, options))
  }

  async function pageIn(context: BrowserContext): Promise<Page> {
    contexts.push(context)
    context.setDefaultTimeout(patience)
    collectFaults(context, faults)
    return context.newPage()
  }

  async function openAt(address: string, options: BrowserContextOptions): Promise<Page> {
    const page = await blank(options)
    await page.goto(address)
    return page
  }

  return {
    blank,
    blankInProfile,
    open: (options) => openAt(inject('workbench'), options),
    openEmpty: (options) => openAt(emptyAddress(), options),
    expectFault(fault) {
      expected.push(fault)
    },
    get address() {
      return inject('workbench')
    },
    get emptyAddress() {
      return emptyAddress()
    },
  }
}

const emptyAddress = () => `${inject('workbench')}/#empty`

/** Adds what the pages throw, do not catch, or write to the console as an error. */
export function collectFaults(context: BrowserContext, faults: string[]): void {
  // A script that cannot be read has a message and no stack.
  context.on('weberror', (fault) => faults.push(`${fault.error().message}\n${fault.error().stack ?? ''}`))
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(`${message.text()} (${message.location().url})`)
  })
}
