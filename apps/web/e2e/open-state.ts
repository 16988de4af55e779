/** Brings a browser into one of the states a sheet can be in, and shows the looks of that state. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { type House, openDemoKitchen, openOwnBook, openPage } from './harness.ts'
import { pattern } from './look-at.ts'
import type { Look, State } from './looks.ts'
import {
  duringABatch,
  joinBook,
  runningCanner,
  stockedPantry,
  type ToldBook,
  testedAlkali,
  untestedDial,
} from './told-books.ts'
import { fieldInSilk, seedInTins } from './told-seed.ts'

interface Opened {
  readonly page: Page
  readonly faults: readonly string[]
  /** Opens the look's address and waits until its state is there. */
  show(look: Look): Promise<void>
  close(): Promise<void>
}

/**
 * The address itself may name what a told book holds: `:batchId`, `:runId`, `:cannerId`, `:seedLotId`, `:alkaliLotId`,
 * `:cornLotId`, `:foodLotId`.
 */
function addressIn(path: string, book: ToldBook | null): string {
  return path.replace(
    /:(batchId|runId|cannerId|seedLotId|plotId|plantingId|alkaliLotId|cornLotId|foodLotId)/g,
    (_, name: keyof ToldBook) => book?.[name] ?? '',
  )
}

/** States in which opening an address by itself is what is looked at. */
const OPENED_BY_ITSELF: readonly State[] = ['offline', 'loading', 'error']

/** Goes to an address inside the opened book, by way of one that is nowhere: what stood on the page before is gone. */
async function goInside(page: Page, address: string): Promise<void> {
  await page.evaluate(() => history.pushState(null, '', '/no-such-page'))
  await page.getByRole('heading', { level: 1, name: 'No such page', exact: true }).waitFor()
  await page.evaluate((to) => history.pushState(null, '', to), address)
}

/**
 * A browser in the state asked for, in which each of that state's looks can be shown. An address not yet in `openedAlone` is
 * opened by itself, as from a link somewhere else, and added; one that is in it is gone to inside the opened book.
 */
export async function openState(
  browser: Browser,
  house: House,
  state: State,
  openedAlone: Set<string> = new Set(),
): Promise<Opened> {
  // A held or refused script must come from the network, not from the service worker.
  const options: BrowserContextOptions = state === 'loading' || state === 'error' ? { serviceWorkers: 'block' } : {}
  const { context, page, faults } = await openPage(browser, options)
  let book: ToldBook | null = null
  switch (state) {
    case 'empty book':
    case 'bad input':
      await openOwnBook(page, house.url)
      break
    case 'demo kitchen':
      await openDemoKitchen(page, house.url)
      break
    case 'refused':
      book = await untestedDial(house)
      await joinBook(page, house, book)
      break
    case 'during a batch':
      book = await duringABatch(house)
      await joinBook(page, house, book)
      break
    case 'running canner':
      book = await runningCanner(house)
      await joinBook(page, house, book)
      break
    case 'stocked pantry':
    case 'food at work':
    case 'food looked for':
      book = await stockedPantry(house)
      await joinBook(page, house, book)
      break
    case 'ash tested':
      book = await testedAlkali(house)
      await joinBook(page, house, book)
      break
    case 'seed in tins':
      book = await seedInTins(house)
      await joinBook(page, house, book)
      break
    case 'field in silk':
    case 'field planned':
      book = await fieldInSilk(house)
      await joinBook(page, house, book)
      break
    case 'offline':
      await openOwnBook(page, house.url)
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => true))
      await page.reload()
      await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
      await context.setOffline(true)
      break
    case 'loading':
      await openOwnBook(page, house.url)
      await context.route(/assets\/workbench-.*\.js/, () => undefined)
      break
    case 'error':
      await openOwnBook(page, house.url)
      await context.route(/assets\/workbench-.*\.js/, (route) => route.abort())
      break
  }
  return {
    page,
    faults,
    show: async ({ path, heading, words, act }) => {
      const address = addressIn(path, book)
      if (openedAlone.has(pattern(path)) && !OPENED_BY_ITSELF.includes(state)) {
        await goInside(page, address)
      } else {
        openedAlone.add(pattern(path))
        // A new hash alone would not open the page again.
        await page.goto('about:blank')
        await page.goto(new URL(address, house.url).href)
      }
      await page.getByRole('heading', { level: 1, name: heading, exact: true }).first().waitFor()
      await act?.(page)
      if (words) await page.getByText(words).first().waitFor()
    },
    close: () => context.close(),
  }
}
