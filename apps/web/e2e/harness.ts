/**
 * What every browser test starts from: the built screens, a real server on a free port with a book of its own, and the
 * system's Chromium. Without Chromium the tests are counted as not run; REQUIRE_ALL=1 makes that a failure.
 */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type RunningServer, type ServerOptions, startServer } from '../../server/src/index.ts'
import { builtScreens } from './built-screens.ts'
import { KITCHEN_ZONE } from './kitchen-day.ts'

const ARGS = [
  '--no-sandbox',
  '--disable-dev-shm-usage',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
]

function findChromium(): string | null {
  if (process.env.CHROMIUM) return process.env.CHROMIUM
  for (const name of ['chromium', 'chromium-browser', 'google-chrome']) {
    try {
      return execFileSync('which', [name], { encoding: 'utf8' }).trim()
    } catch {
      // not under this name
    }
  }
  return null
}

const EXECUTABLE = findChromium()

/** A group of tests that needs Chromium. */
export function describeInBrowser(name: string, tests: () => void): void {
  describe.skipIf(EXECUTABLE === null)(name, tests)
  // Only where it is needed: a test that is skipped everywhere else would be counted as not run.
  if (EXECUTABLE === null && process.env.REQUIRE_ALL === '1') {
    test(`${name}: Chromium is required`, () => {
      expect.fail('no Chromium found; install chromium or name it in CHROMIUM')
    })
  }
}

export async function launchChromium(...more: string[]): Promise<Browser> {
  return chromium.launch({ executablePath: EXECUTABLE ?? '', args: [...ARGS, ...more] })
}

/** A browser whose profile stays in `folder` when it is closed, like a device that is switched off and on again. */
export async function launchKeptProfile(folder: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, {
    executablePath: EXECUTABLE ?? '',
    args: ARGS,
    viewport: PHONE,
    locale: 'en-US',
    timezoneId: KITCHEN_ZONE,
  })
}

export interface House {
  readonly url: string
  readonly bookFile: string
  /** Stops the server; the book stays. */
  stop(): Promise<void>
  /** Starts it again on the same port, as a person would after a power cut. */
  startAgain(): Promise<void>
  /** What the terminal prints when the book is opened to a network: the link that makes its first keeper. */
  inviteKeeper(): Promise<string>
  remove(): Promise<void>
}

export async function startHouse(host?: string, backup?: ServerOptions['backup']): Promise<House> {
  const folder = mkdtempSync(join(tmpdir(), 'kettle-e2e-'))
  const bookFile = join(folder, 'book.sqlite')
  const webDist = builtScreens()
  const start = (port: number) =>
    startServer({ port, bookFile, webDist, ...(host && { host }), ...(backup && { backup }) })
  let server: RunningServer | null = await start(0)
  const url = server.url
  const stop = async () => {
    await server?.close()
    server = null
  }
  return {
    url,
    bookFile,
    stop,
    startAgain: async () => {
      server = await start(Number(new URL(url).port))
    },
    inviteKeeper: async () => (await server?.inviteKeeper()) ?? '',
    remove: async () => {
      await stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

export const PHONE = { width: 390, height: 844 }
export const LAPTOP = { width: 1280, height: 800 }

/** What a group of tests shares, there once its tests run. */
export interface Home {
  readonly house: House
  readonly browser: Browser
  /** A device of its own with a new book of that kitchen. */
  openBook(kitchen?: string): Promise<OpenedPage>
}

/** A group of tests in one house with one browser, both put away after it. */
export function describeAtHome(name: string, tests: (home: Home) => void): void {
  describeInBrowser(name, () => {
    let house: House
    let browser: Browser
    beforeAll(async () => {
      house = await startHouse()
      browser = await launchChromium()
    })
    afterAll(async () => {
      await browser?.close()
      await house?.remove()
    })
    tests({
      get house() {
        return house
      },
      get browser() {
        return browser
      },
      openBook: async (kitchen) => {
        const opened = await openPage(browser)
        await openOwnBook(opened.page, house.url, kitchen)
        return opened
      },
    })
  })
}

export interface OpenedPage {
  readonly context: BrowserContext
  readonly page: Page
  readonly faults: string[]
}

/** A page that fails the test when a script on it throws. */
export async function openPage(browser: Browser, options: BrowserContextOptions = {}): Promise<OpenedPage> {
  const context = await browser.newContext({
    viewport: PHONE,
    locale: 'en-US',
    timezoneId: KITCHEN_ZONE,
    ...options,
  })
  const page = await context.newPage()
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(error.message))
  return { context, page, faults }
}

export async function openOwnBook(page: Page, url: string, name = 'Ostrey Point'): Promise<void> {
  await page.goto(url)
  await page.getByLabel('Name of the kitchen').fill(name)
  await page.getByRole('button', { name: 'Open my book' }).click()
  await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
}

export async function openDemoKitchen(page: Page, url: string): Promise<void> {
  await page.goto(url)
  await page.getByRole('button', { name: 'Look at the demo kitchen' }).click()
  await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
}

/** Opens a part by its tag, as a person does. */
export async function goTo(page: Page, path: string, heading: string): Promise<void> {
  await page.locator(`.shelf a[href="${path}"]`).click()
  await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
}

export async function bringInCorn(page: Page, name: string, amount: string): Promise<void> {
  await goTo(page, '/crib', 'Crib')
  await page.getByLabel('Name of the lot').fill(name)
  await page.getByLabel('How much').fill(amount)
  await page.getByRole('button', { name: 'Bring it in' }).click()
  await page.getByRole('rowheader', { name }).waitFor()
}
