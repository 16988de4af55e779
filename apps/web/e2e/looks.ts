/**
 * The states a sheet can be in, one look each, for axe, for every theme, for a phone and for large letters.
 * A new screen adds its looks here: an address that some page leads to and that no look visits fails the suite.
 */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { toHash } from '../src/routes/workbench/link.ts'
import { type House, openDemoKitchen, openOwnBook, openPage } from './harness.ts'
import { PAGES } from './pages.ts'
import {
  duringABatch,
  joinBook,
  runningCanner,
  seedInTins,
  stockedPantry,
  type ToldBook,
  untestedDial,
} from './told-books.ts'

export interface Look {
  readonly state: State
  readonly path: string
  /** The level-one heading that says the page is there. */
  readonly heading: string
  /** Words that say the state is there. */
  readonly words?: string
  /** What a person does there to bring the state about. */
  readonly act?: (page: Page) => Promise<void>
}

export const STATES = [
  'empty book',
  'demo kitchen',
  'during a batch',
  'running canner',
  'stocked pantry',
  'seed in tins',
  'refused',
  'bad input',
  'offline',
  'loading',
  'error',
] as const
export type State = (typeof STATES)[number]

export const LOOKS: readonly Look[] = [
  ...PAGES.map(([path, heading]) => ({ state: 'empty book' as const, path, heading })),
  ...PAGES.map(([path, heading]) => ({ state: 'demo kitchen' as const, path, heading })),
  { state: 'demo kitchen', path: '/workbench/batch-plan', heading: 'From sack to shelf' },
  { state: 'demo kitchen', path: '/workbench/lethality', heading: 'Lethality of a temperature record' },
  {
    state: 'demo kitchen',
    path: '/workbench/no-such-calculation',
    heading: 'Workbench',
    words: 'There is no calculation called no-such-calculation.',
  },
  { state: 'demo kitchen', path: '/plan', heading: 'Seed first, then food.' },
  { state: 'demo kitchen', path: '/canner/run', heading: 'A canner run' },
  { state: 'during a batch', path: '/', heading: 'The year' },
  { state: 'during a batch', path: '/plan', heading: 'Plan a day' },
  { state: 'during a batch', path: '/canner/run', heading: 'A canner run', words: 'yard canner' },
  { state: 'during a batch', path: '/canner/card/:cannerId', heading: 'yard canner' },
  { state: 'during a batch', path: '/paper', heading: 'Paper' },
  { state: 'during a batch', path: '/paper/batch-sheet/:batchId', heading: 'Batch sheet' },
  { state: 'during a batch', path: '/paper/canner-card/:cannerId', heading: 'Card of yard canner' },
  { state: 'during a batch', path: '/paper/wall-board/:batchId', heading: 'Wall board' },
  { state: 'during a batch', path: '/paper/process-log', heading: 'Blank process log' },
  { state: 'during a batch', path: '/kettle', heading: 'Kettle' },
  { state: 'during a batch', path: '/crib', heading: 'Crib', words: 'Lantern flint' },
  { state: 'running canner', path: '/', heading: 'The year', words: 'A canner run is open.' },
  { state: 'running canner', path: '/canner', heading: 'Canner', words: 'yard canner' },
  { state: 'during a batch', path: '/kettle/:batchId', heading: 'Kettle', words: 'Lantern flint' },
  { state: 'running canner', path: '/canner/run/:runId', heading: 'yard canner' },
  { state: 'running canner', path: '/paper/process-log/:runId', heading: 'Log of load YC-1' },
  { state: 'stocked pantry', path: '/', heading: 'The year' },
  { state: 'stocked pantry', path: '/pantry', heading: 'Pantry', words: 'YC-1' },
  { state: 'stocked pantry', path: '/paper', heading: 'Paper', words: 'Log of load YC-1' },
  { state: 'stocked pantry', path: '/paper/labels', heading: 'Labels', words: 'K-1' },
  { state: 'stocked pantry', path: '/paper/labels?load=YC-1', heading: 'Labels', words: 'the ford' },
  { state: 'stocked pantry', path: '/canner/run/:runId', heading: 'yard canner', words: 'cellar' },
  { state: 'seed in tins', path: '/seed', heading: 'Seed', words: '46 of 50: 92 %, between 81 and 98 %' },
  { state: 'seed in tins', path: '/paper/seed-envelope/:seedLotId', heading: 'Seed envelope' },
  { state: 'seed in tins', path: '/paper/sprouting-test/:seedLotId', heading: 'Sheet for a sprouting test' },
  { state: 'seed in tins', path: '/paper/reserve-tags/:seedLotId', heading: 'Tags for the tins' },
  {
    state: 'refused',
    path: `/workbench/pressure-band${toHash({ gauge: 'dial', elevationFt: '8005 ft' })}`,
    heading: 'Pressure printed for an elevation',
    words: 'Whom to ask',
  },
  { state: 'refused', path: '/plan/standing', heading: 'Where jars of hominy stand' },
  { state: 'refused', path: '/canner/card/:cannerId', heading: 'yard canner', words: 'No number for this canner here' },
  {
    state: 'bad input',
    path: `/workbench/gauge-correction${toHash({ test: [{ truePsi: 'ten', readsPsi: 10 }], truePsi: -11 })}`,
    heading: 'Dial gauge against its bench test',
    words: 'Please look at these again',
  },
  {
    state: 'bad input',
    path: '/crib',
    heading: 'Crib',
    words: '"plenty" has no amount to read.',
    act: async (page) => {
      const amount = page.getByLabel('How much')
      if (!(await amount.isVisible())) await page.locator('main summary').first().click()
      await amount.fill('plenty')
      await amount.blur()
    },
  },
  ...['/', '/crib', '/workbench/batch-plan'].map((path) => ({
    state: 'offline' as const,
    path,
    heading: path === '/' ? 'The year' : path === '/crib' ? 'Crib' : 'From sack to shelf',
    words: 'No connection.',
  })),
  { state: 'loading', path: '/workbench', heading: 'Opening the book' },
  { state: 'error', path: '/workbench', heading: 'This page did not open' },
]

interface Opened {
  readonly page: Page
  readonly faults: readonly string[]
  /** Opens the look's address and waits until its state is there. */
  show(look: Look): Promise<void>
  close(): Promise<void>
}

/** The address itself may name what a told book holds: `:batchId`, `:runId`, `:cannerId`, `:seedLotId`. */
function addressIn(path: string, book: ToldBook | null): string {
  return path.replace(/:(batchId|runId|cannerId|seedLotId)/g, (_, name: keyof ToldBook) => book?.[name] ?? '')
}

/** A browser in the state asked for, in which each of that state's looks can be shown. */
export async function openState(browser: Browser, house: House, state: State): Promise<Opened> {
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
      book = await stockedPantry(house)
      await joinBook(page, house, book)
      break
    case 'seed in tins':
      book = await seedInTins(house)
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
      // A new hash alone would not open the page again.
      await page.goto('about:blank')
      await page.goto(new URL(addressIn(path, book), house.url).href)
      await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
      await act?.(page)
      if (words) await page.getByText(words).first().waitFor()
    },
    close: () => context.close(),
  }
}
