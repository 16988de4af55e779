/** Inviting, joining, sharing and closing, from an address that is not localhost; and a passkey where one can be had. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type RunningServer, startServer } from '../../server/src/index.ts'
import { builtScreens } from './built-screens.ts'
import { bringInCorn, describeInBrowser, goTo, launchChromium, openPage } from './harness.ts'
import { axeFindings, putOn, setTextSize, sidewaysPx, THEMES } from './look-at.ts'

const PASSPHRASE = 'ash and water and patience'

describeInBrowser('people', () => {
  const folder = mkdtempSync(join(tmpdir(), 'kettle-people-'))
  const webDist = builtScreens()
  let browser: Browser
  let server: RunningServer

  beforeAll(async () => {
    server = await startServer({ port: 0, host: '127.0.0.2', bookFile: join(folder, 'book.sqlite'), webDist })
    browser = await launchChromium()
  })
  afterAll(async () => {
    await browser?.close()
    await server?.close()
    rmSync(folder, { recursive: true, force: true })
  })

  async function joinBy(page: Page, link: string, name: string): Promise<void> {
    await page.goto(link)
    await page.getByRole('heading', { level: 1, name: 'You are invited' }).waitFor()
    await page.getByLabel('Your name').fill(name)
    await page.getByLabel('A passphrase of your own').fill(PASSPHRASE)
    await page.getByRole('button', { name: 'Join', exact: true }).click()
  }

  async function openPeople(page: Page): Promise<void> {
    await page.goto(new URL('/people', server.url).href)
    await page.getByRole('heading', { level: 1, name: 'People' }).waitFor()
    await page.getByRole('heading', { name: 'You on this device' }).waitFor()
  }

  async function share(page: Page, name: string, visibility: string): Promise<void> {
    const row = page.locator('details', { has: page.locator('summary', { hasText: `${name}: ` }) })
    if ((await row.getAttribute('open')) === null) await row.locator('summary').click()
    await row.locator('label.choice', { hasText: visibility }).click()
    await row.getByRole('button', { name: 'Write it down' }).click()
    await page.locator('summary', { hasText: `${name}: ${visibility}` }).waitFor()
  }

  /** The line under the kitchen's name says that everything written here has reached the server. */
  const copied = (page: Page) => page.getByText('Written here and copied to the house server.').waitFor()

  test('a keeper invites a helper, who sees what is shared and no more, until it is closed again', async () => {
    const keeper = await openPage(browser)
    const helper = await openPage(browser)

    // Nobody is let in without signing in.
    await keeper.page.goto(server.url)
    await keeper.page.getByRole('heading', { name: 'Sign in to the house server' }).waitFor()
    expect((await keeper.page.request.get(`${server.url}api/kitchens`)).status()).toBe(401)

    await joinBy(keeper.page, await server.inviteKeeper(), 'Ash')
    await keeper.page.getByRole('heading', { level: 1, name: 'Kettle & Crib' }).waitFor()
    await keeper.page.getByLabel('Name of the kitchen').fill('Ostrey Point')
    await keeper.page.getByRole('button', { name: 'Open my book' }).click()
    await keeper.page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
    await bringInCorn(keeper.page, 'Lantern flint', '9 lb')
    await bringInCorn(keeper.page, 'Marsh flour', '4 lb')
    await copied(keeper.page)

    await openPeople(keeper.page)
    await share(keeper.page, 'The house (habits, pots, canners)', 'Family')
    await share(keeper.page, 'Lantern flint', 'Family')
    await copied(keeper.page)
    await keeper.page.getByRole('button', { name: 'Make an invitation' }).click()
    await keeper.page.getByRole('img', { name: 'QR code of the invitation' }).waitFor()
    const link = (await keeper.page.locator('main a[href*="/join#"]').getAttribute('href'))!
    expect(link.startsWith(server.url)).toBe(true)

    await joinBy(helper.page, link, 'Wren')
    await helper.page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
    await helper.page.getByText('Ostrey Point').first().waitFor()
    await goTo(helper.page, '/crib', 'Crib')
    await helper.page.getByRole('rowheader', { name: 'Lantern flint' }).waitFor()
    expect(await helper.page.getByText('Marsh flour').count()).toBe(0)
    await openPeople(helper.page)
    await helper.page.getByText('Wren (you): Helper').waitFor()
    expect(await helper.page.getByRole('button', { name: 'Make an invitation' }).count()).toBe(0)

    // What the helper writes reaches the keeper.
    await bringInCorn(helper.page, 'Gleaned ears', '2 lb')
    await copied(helper.page)
    await keeper.page.reload()
    await goTo(keeper.page, '/crib', 'Crib')
    await keeper.page.getByRole('rowheader', { name: 'Gleaned ears' }).waitFor()

    // The link is used up.
    const late = await openPage(browser)
    await late.page.goto(link)
    await late.page.getByText('This invitation is used up, withdrawn or too old.').waitFor()
    await late.context.close()

    // Closed again: it goes from the helper's device too; what they wrote themselves stays.
    await openPeople(keeper.page)
    await share(keeper.page, 'Lantern flint', 'Keeper alone')
    await copied(keeper.page)
    await helper.page.reload()
    await goTo(helper.page, '/crib', 'Crib')
    await helper.page.getByRole('rowheader', { name: 'Gleaned ears' }).waitFor()
    await expect.poll(() => helper.page.getByText('Lantern flint').count()).toBe(0)

    // A smaller role counts at once, also for what the device itself lets one write.
    await openPeople(keeper.page)
    const row = keeper.page.locator('details', { has: keeper.page.locator('summary', { hasText: 'Wren: Helper' }) })
    await row.locator('summary').click()
    await row.locator('label.choice', { hasText: 'Reader' }).click()
    await keeper.page.locator('summary', { hasText: 'Wren: Reader' }).waitFor()
    await helper.page.reload()
    await copied(helper.page)
    await goTo(helper.page, '/crib', 'Crib')
    await helper.page.getByLabel('Name of the lot').fill('One more')
    await helper.page.getByLabel('How much').fill('1 lb')
    await helper.page.getByRole('button', { name: 'Bring it in' }).click()
    await helper.page.getByText('In this kitchen that is not yours to write down.').waitFor()

    // Signed out, the book on the device stays, and says what it waits for.
    await openPeople(helper.page)
    await helper.page.getByRole('button', { name: 'Sign out here' }).click()
    await helper.page.getByRole('heading', { name: 'Sign in to the house server' }).waitFor()
    await helper.page.getByText('The house server asks who is there.').first().waitFor()
    await helper.page.getByLabel('Your name').fill('wren')
    await helper.page.getByLabel('Passphrase', { exact: true }).fill('not the right one')
    await helper.page.getByRole('button', { name: 'Sign in', exact: true }).click()
    await helper.page.getByText('That name and that passphrase do not belong together.').waitFor()
    await helper.page.getByLabel('Passphrase', { exact: true }).fill(PASSPHRASE)
    await helper.page.getByRole('button', { name: 'Sign in', exact: true }).click()
    await helper.page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()

    expect([...keeper.faults, ...helper.faults]).toEqual([])
    await keeper.context.close()
    await helper.context.close()
  })

  test.each(THEMES)(
    '%s: the invitation, signing in and people are clean for axe and whole at twice the letters',
    async (theme) => {
      const { context, page, faults } = await openPage(browser)
      await page.goto(await server.inviteKeeper())
      const look = async () => {
        await putOn(page, theme)
        expect(await axeFindings(page)).toEqual([])
        await setTextSize(page, 200)
        expect(await sidewaysPx(page)).toBe(0)
      }
      await page.getByRole('heading', { level: 1, name: 'You are invited' }).waitFor()
      await page.getByRole('button', { name: 'Join', exact: true }).click()
      await page.getByText('0 letters so far; twelve are needed.').waitFor()
      await look()
      await page.goto(server.url)
      await page.getByRole('heading', { name: 'Sign in to the house server' }).waitFor()
      await look()
      await joinBy(page, await server.inviteKeeper(), `Ash of the ${theme} day`)
      await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
      await openPeople(page)
      await page.getByRole('button', { name: 'Make an invitation' }).click()
      await page.getByRole('img', { name: 'QR code of the invitation' }).waitFor()
      for (const summary of await page.locator('main summary').all()) await summary.click()
      await look()
      expect(faults).toEqual([])
      await context.close()
    },
  )

  test('where a passkey can be had, it stands in for the passphrase', async () => {
    const named = await startServer({
      port: 0,
      bookFile: join(mkdtempSync(join(folder, 'named-')), 'book.sqlite'),
      webDist,
      hosted: true,
    })
    const { context, page, faults } = await openPage(browser)
    const devtools = await context.newCDPSession(page)
    await devtools.send('WebAuthn.enable')
    await devtools.send('WebAuthn.addVirtualAuthenticator', {
      options: {
        protocol: 'ctap2',
        transport: 'internal',
        hasResidentKey: true,
        hasUserVerification: true,
        isUserVerified: true,
        automaticPresenceSimulation: true,
      },
    })
    await page.goto(await named.inviteKeeper())
    await page.getByLabel('Your name').fill('Rook')
    await page.getByRole('button', { name: 'Join with a passkey instead' }).click()
    await page.getByRole('heading', { level: 1, name: 'Kettle & Crib' }).waitFor()
    expect((await page.request.get(`${named.url}api/people/me`)).status()).toBe(200)
    await context.clearCookies()
    await page.reload()
    await page.getByRole('button', { name: 'Sign in with a passkey' }).click()
    await expect
      .poll(async () => (await (await page.request.get(`${named.url}api/people/me`)).json()).person?.name)
      .toBe('Rook')
    await page.getByRole('heading', { level: 1, name: 'Kettle & Crib' }).waitFor()
    expect(faults).toEqual([])
    await context.close()
    await named.close()
  })
})
