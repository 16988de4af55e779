/** The house's page says where the book lies, how much room it takes and when the last backup was made. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { whenText } from '../src/routes/people/when-text.ts'
import {
  bringInCorn,
  describeInBrowser,
  goTo,
  type House,
  launchChromium,
  openOwnBook,
  openPage,
  startHouse,
} from './harness.ts'

describeInBrowser('the care of the book', () => {
  let house: House
  let browser: Browser
  const stick = mkdtempSync(join(tmpdir(), 'kettle-stick-'))

  beforeAll(async () => {
    house = await startHouse(undefined, { into: stick, everyHours: 24, keepCount: 14, told: () => undefined })
    browser = await launchChromium()
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
    rmSync(stick, { recursive: true, force: true })
  })

  test('a backup is made at the next start and told with place and room; without the server the page says so', async () => {
    const { context, page, faults } = await openPage(browser, { timezoneId: 'UTC' })
    await openOwnBook(page, house.url)
    await bringInCorn(page, 'Lantern flint', '9 lb')
    await page.getByText('Written here and copied to the house server.').waitFor()
    await goTo(page, '/house', 'The house')
    await page.getByText('No backup has been made yet.').waitFor()

    await house.stop()
    await house.startAgain()
    while (!readdirSync(stick).some((name) => name.endsWith('Z'))) await page.waitForTimeout(50)
    await page.reload()
    await page.getByText(`It lies in ${house.bookFile}.`).waitFor()
    await page.getByText(/^It takes 0\.\d MB, every kitchen in it together\.$/).waitFor()
    const [name = ''] = readdirSync(stick)
    const madeAt = name.replace(/^backup-(.*T)(\d\d)-(\d\d)-(\d\d)Z$/, '$1$2:$3:$4Z')
    const when = await page.evaluate(`(${whenText})(${JSON.stringify(madeAt)})`)
    await page.getByText(`The last backup was made ${when}; one is made every 24 h.`).waitFor()
    await page.getByText('Whose it is, and how to take it away').click()
    await page.getByText('What you write down is yours').waitFor()

    await page.evaluate('navigator.serviceWorker.ready.then(() => true)')
    await house.stop()
    await page.reload()
    await page.getByText("The house server tells this to the book's keeper").waitFor()
    expect(faults).toEqual([])
    await context.close()
  })
})
