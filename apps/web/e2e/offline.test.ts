/** The book opens and is written in with the network off, and what was written arrives when the server is back. */
import type { StoredEntry } from '@crib/journal'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import {
  bringInCorn,
  describeAtHome,
  describeInBrowser,
  goTo,
  type House,
  launchChromium,
  openOwnBook,
  openPage,
  startHouse,
} from './harness.ts'
import { PAGES } from './pages.ts'

/** Without the people, whom the server knows, and without an address that is none. */
const PARTS = PAGES.filter(([path]) => path !== '/people' && path !== '/no-such-page')

describeAtHome('with the network off', (home) => {
  async function entriesOnServer(): Promise<readonly StoredEntry[]> {
    const { kitchens } = await (await fetch(`${home.house.url}api/kitchens`)).json()
    const pages = kitchens.map(async ({ kitchenId }: { kitchenId: string }) =>
      (await fetch(`${home.house.url}api/entries?kitchen=${kitchenId}`)).json(),
    )
    return (await Promise.all(pages)).flatMap(({ entries }) => entries)
  }

  test('every part opens in a fresh tab, an entry is kept, and it arrives after a restart', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)')
    await page.reload()
    await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
    await page.getByText('Written here and copied to the house server.').waitFor()

    await home.house.stop()
    await context.setOffline(true)
    const fresh = await context.newPage()
    for (const [path, heading] of PARTS) {
      await fresh.goto(new URL(path, home.house.url).href)
      await fresh.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
    }
    await bringInCorn(fresh, 'Lantern flint', '9 lb')
    await fresh.getByText('No connection. 1 entry waits on this device.').waitFor()
    await fresh.reload()
    await fresh.getByRole('rowheader', { name: 'Lantern flint' }).waitFor()

    await context.setOffline(false)
    await home.house.startAgain()
    await fresh.reload()
    await fresh.getByText('Written here and copied to the house server.').waitFor({ timeout: 60_000 })
    const lots = (await entriesOnServer()).filter(({ envelope }) => envelope.kind === 'corn-lot-brought-in')
    expect(lots.map(({ body }) => body?.value)).toMatchObject([{ name: 'Lantern flint', asTyped: '9 lb' }])
    expect(faults).toEqual([])
    await context.close()
  })

  test('a second device goes on with the same book, and both hold every entry once', async () => {
    const first = await openPage(home.browser)
    await openOwnBook(first.page, home.house.url, 'Hark Lake')
    await bringInCorn(first.page, 'Copper Hinge flint', '4 kg')
    await first.page.getByText('Written here and copied to the house server.').waitFor()
    const kitchenId = (await entriesOnServer()).find(({ body }) => JSON.stringify(body).includes('Hark Lake'))!.envelope
      .kitchenId

    const second = await openPage(home.browser)
    await second.page.goto(home.house.url)
    await second.page.getByRole('button', { name: `ending in ${kitchenId.slice(-4)}` }).click()
    await goTo(second.page, '/crib', 'Crib')
    await second.page.getByRole('rowheader', { name: 'Copper Hinge flint' }).waitFor({ timeout: 60_000 })
    await bringInCorn(second.page, 'Heron Foot flint', '2 kg')
    await second.page.getByText('Written here and copied to the house server.').waitFor()

    await first.page.reload()
    await first.page.getByRole('rowheader', { name: 'Heron Foot flint' }).waitFor({ timeout: 60_000 })
    const entries = (await entriesOnServer()).filter(({ envelope }) => envelope.kitchenId === kitchenId)
    expect(new Set(entries.map(({ envelope }) => envelope.id)).size).toBe(entries.length)
    expect(entries.map(({ envelope }) => envelope.kind).sort()).toEqual([
      'corn-lot-brought-in',
      'corn-lot-brought-in',
      'kitchen-opened',
    ])
    await first.context.close()
    await second.context.close()
  })
})

describeInBrowser('over plain HTTP from another machine', () => {
  let house: House
  let browser: Browser

  beforeAll(async () => {
    house = await startHouse('0.0.0.0')
    browser = await launchChromium('--host-resolver-rules=MAP kettle.test 127.0.0.1')
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
  })

  test('the book says that it works only while connected, and keeps what is written', async () => {
    const { context, page, faults } = await openPage(browser)
    const link = new URL(await house.inviteKeeper())
    await page.goto(`http://kettle.test:${link.port}${link.pathname}${link.hash}`)
    expect(await page.evaluate('isSecureContext')).toBe(false)
    await page.getByLabel('Your name').fill('Ash')
    await page.getByLabel('A passphrase of your own').fill('ash and water and patience')
    // No passkey can be had here, so none is offered.
    expect(await page.getByRole('button', { name: 'Join with a passkey instead' }).count()).toBe(0)
    await page.getByRole('button', { name: 'Join', exact: true }).click()
    await page.getByLabel('Name of the kitchen').fill('Ostrey Point')
    await page.getByRole('button', { name: 'Open my book' }).click()
    await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
    await page.getByText('works only while connected').waitFor()
    await bringInCorn(page, 'Lantern flint', '9 lb')
    await page.reload()
    await page.getByRole('rowheader', { name: 'Lantern flint' }).waitFor()
    expect(faults).toEqual([])
    await context.close()
  })
})
