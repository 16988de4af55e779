/** Scenario S5, wind under the kettle (invented), through a real browser: live with a clock, and typed in afterwards. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { StoredEntry } from '@crib/journal'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest'
import {
  at,
  bringToPressure,
  entriesOnServer,
  expectFinished,
  farSays,
  harkLake,
  letItOpen,
  mainText,
  openAnew,
  settleRun,
  tap,
} from './hark-lake.ts'
import { describeInBrowser, type House, launchChromium, launchKeptProfile, openPage, startHouse } from './harness.ts'

describeInBrowser('a canner run', () => {
  let house: House
  let browser: Browser
  const kept: BrowserContext[] = []
  const folders: string[] = []

  beforeAll(async () => {
    house = await startHouse()
    browser = await launchChromium()
  })
  afterEach(async () => {
    await Promise.all(kept.splice(0).map((context) => context.close()))
    await house.stop()
    await house.startAgain()
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
    for (const folder of folders) rmSync(folder, { recursive: true, force: true })
  })

  /** The same device, as often as it is switched on. */
  async function switchOn(folder: string, clock: string): Promise<Page> {
    const context = await launchKeptProfile(folder)
    kept.push(context)
    await context.clock.install({ time: at(clock) })
    return context.pages()[0] ?? context.newPage()
  }

  test('S5 live: reload, a flat battery and a killed server leave every time as it was', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'kettle-profile-'))
    folders.push(folder)
    let page = await switchOn(folder, '09:20')
    await harkLake(page, house.url)
    await settleRun(page)
    await expect.poll(() => mainText(page)).toContain('60 min')
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)')
    await tap(page, 'I hold 12 psi: begin')
    await page.getByRole('heading', { level: 1, name: 'yard canner' }).waitFor()
    const sheet = page.url()
    await page.getByRole('radio', { name: '2 1/2 in' }).check()
    await tap(page, 'All of this is so: loaded')
    await page.getByText('Opposite pairs of knobs together, evenly.').waitFor()

    await page.clock.pauseAt(at('09:40'))
    await tap(page, 'Lid on, knobs fast, vent open')
    await page.clock.pauseAt(at('09:58'))
    await tap(page, 'Steam is strong and steady')
    await farSays(page, '10:08')

    // A helper: "that's plenty".
    await page.clock.pauseAt(at('10:03'))
    await tap(page, 'Vent closed or weight set')
    await page.getByText('No, not at 10:03: only 5 min of the published 10 min.').waitFor()
    await page.getByText('Closing early leaves air in.').waitFor()
    await tap(page, 'Let the steam run')
    await page.clock.pauseAt(at('10:08'))
    await tap(page, 'Vent closed or weight set')
    await page.clock.pauseAt(at('10:17'))
    await tap(page, 'Needle at 12 psi (83 kPa)')
    await farSays(page, '11:17')

    // The server dies; the device does not notice.
    await house.stop()
    await openAnew(page)
    await farSays(page, '11:17')
    await page.clock.pauseAt(at('10:49'))
    await tap(page, 'Needle dipped')
    await page.getByText('The full 60 min starts again then.').waitFor()
    await tap(page, 'Reading…')
    await page.getByLabel('Needle shows, in psi').fill('10')
    await tap(page, 'Write the reading down')
    await page.getByText('Needle read: 10 psi (69 kPa)').first().waitFor()

    // Flat battery: the browser is gone, and comes back past the old due time with the dip still open.
    await page.context().close()
    page = await switchOn(folder, '10:52')
    await page.goto(sheet)
    await page.getByText('The full 60 min starts again then.').waitFor()
    await page.clock.pauseAt(at('10:56'))
    await tap(page, 'Back at 12 psi (83 kPa)')
    await page.getByText('Done at', { exact: true }).waitFor()
    await farSays(page, '11:56')
    await expect.poll(() => mainText(page)).toContain('First due 11:17; now 39 min later.')
    await page.clock.pauseAt(at('11:20'))
    await tap(page, 'Too high')
    await page.getByText('no restart. Expect some lost liquid and softer kernels.').waitFor()
    await farSays(page, '11:56')

    // Readable across the yard, upright and on its side.
    const heightPx = (await page.evaluate(
      'parseFloat(getComputedStyle(document.querySelector(".far .stamped-value")).fontSize)',
    )) as number
    expect(heightPx).toBeGreaterThanOrEqual(96)
    await page.setViewportSize({ width: 844, height: 390 })
    expect(await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth')).toBe(0)
    await page.setViewportSize({ width: 390, height: 844 })

    await page.clock.pauseAt(at('11:55'))
    expect(await page.getByText('The time is up. Heat off.').count()).toBe(0)
    await page.clock.pauseAt(at('11:56'))
    await page.getByText('The time is up. Heat off.').waitFor()
    await tap(page, 'Heat off')
    await page.clock.pauseAt(at('12:39'))
    await tap(page, 'Pressure at zero')
    await expectFinished(page)

    // A fresh tab with the server dead, then the server back: the book is copied, nothing twice.
    const fresh = await page.context().newPage()
    await fresh.goto(sheet)
    await letItOpen(fresh)
    await expectFinished(fresh)
    await tap(fresh, 'Weight off, petcock open')
    await fresh.locator('.line summary', { hasText: 'Weight off, petcock open' }).waitFor()
    await house.startAgain()
    await page.close()
    await fresh.clock.resume()
    await fresh.reload()
    await fresh.getByText('Written here and copied to the house server.').waitFor({ timeout: 60_000 })
    const events = (await entriesOnServer(house)).filter(({ envelope }) => envelope.kind === 'run-event')
    const typeOf = ({ body }: StoredEntry) =>
      (body?.value as unknown as { event: { type: string } } | undefined)?.event.type
    expect(events.map(typeOf)).toEqual([
      'canner-loaded',
      'lid-seated',
      'steam-steady',
      'vent-closed',
      'at-pressure',
      'dipped',
      'reading',
      'regained',
      'over-pressure',
      'heat-off',
      'zero',
      'weight-off',
    ])
  })

  test('S5 typed in afterwards gives the same times', async () => {
    const { context, page, faults } = await openPage(browser)
    await context.clock.install({ time: at('20:00') })
    await harkLake(page, house.url)
    await settleRun(page)
    await page.getByRole('radio', { name: 'It is done: type its log in' }).check()
    const log = [
      ['09:40', 'Lid on, knobs fast, vent open'],
      ['09:58', 'Steam is strong and steady'],
      ['10:08', 'Vent closed or weight set'],
      ['10:17', 'Needle at 12 psi (83 kPa)'],
      ['10:49', 'Needle dipped', '10'],
      ['10:56', 'Back at 12 psi (83 kPa)'],
      ['11:20', 'Too high', '15'],
      ['12:39', 'Pressure at zero'],
    ] as const
    await page.getByLabel('Day of the first line').fill('2026-10-03')
    for (const [index, [clock, event, psi]] of log.entries()) {
      if (index > 2) await page.getByRole('button', { name: 'One more line' }).click()
      const row = page.getByRole('group', { name: `Line ${index + 1}`, exact: true })
      await row.getByLabel('Clock').fill(clock)
      await row.getByLabel('What happened').selectOption({ label: event })
      if (psi) await row.getByLabel('Needle, in psi').fill(psi)
    }
    await page.getByRole('button', { name: 'Write the log down' }).click()
    await page.getByRole('heading', { level: 1, name: 'yard canner' }).waitFor()
    // By the evening the lid has long been free; the window for the seals still stands.
    await expectFinished(page)
    const text = await mainText(page)
    expect(text).toContain('Needle up to 15 psi (103 kPa) at 11:20: no restart.')
    await page.getByText('The same as a table').click()
    await page.getByRole('row', { name: 'Counts 10:56 11:56' }).waitFor()
    await page.getByRole('row', { name: 'Does not count 10:17 10:49' }).waitFor()
    expect(faults).toEqual([])
    await context.close()
  })

  test('a dip that is not taken back cannot finish; taken back by a tap, it was never there', async () => {
    const { context, page, faults } = await openPage(browser)
    await context.clock.install({ time: at('09:30') })
    await harkLake(page, house.url)
    await settleRun(page)
    await tap(page, 'I hold 12 psi: begin')
    await page.clock.pauseAt(at('09:40'))
    await tap(page, 'All of this is so: loaded')
    await tap(page, 'Lid on, knobs fast, vent open')
    await page.clock.pauseAt(at('09:50'))
    await tap(page, 'Steam is strong and steady')
    // Seven minutes, closed all the same: written down beside the published ten, with a way to put it right.
    await page.clock.pauseAt(at('09:57'))
    await tap(page, 'Vent closed or weight set')
    await tap(page, 'It is closed: write it down')
    await page.getByText('Vented 7 min; 10 min of steady steam is published. Air was left in.').waitFor()
    await page.getByText('open the vent and vent again').first().waitFor()
    await tap(page, 'Vent opened again')
    await page.clock.pauseAt(at('10:00'))
    await tap(page, 'Steam is strong and steady')
    await page.clock.pauseAt(at('10:10'))
    await tap(page, 'Vent closed or weight set')
    expect(await page.getByText('Air was left in.').count()).toBe(0)
    await page.clock.pauseAt(at('10:20'))
    await tap(page, 'Needle at 12 psi (83 kPa)')
    await page.clock.pauseAt(at('10:40'))
    await tap(page, 'Needle dipped')
    await page.getByText('Bring the needle back to 12 psi').waitFor()
    await page.clock.pauseAt(at('13:00'))
    await openAnew(page)
    await page.getByText('Bring the needle back to 12 psi').waitFor()
    expect(await page.getByText('Done at', { exact: true }).count()).toBe(0)
    await page.locator('.line summary', { hasText: 'Needle dipped' }).click()
    await page.getByRole('button', { name: 'Take this line out' }).click()
    await page.getByText('The time is up. Heat off.').waitFor()
    await farSays(page, '11:20')
    expect(faults).toEqual([])
    await context.close()
  })

  test('a device clock that jumps during a run is a question, and the answer moves the finish, never back', async () => {
    const { context, page, faults } = await openPage(browser)
    await context.clock.install({ time: at('09:30') })
    await harkLake(page, house.url)
    await settleRun(page)
    await bringToPressure(page)
    // Somebody puts the device on by half an hour: the wall clock moves, the steady one does not.
    await page.clock.setSystemTime(at('10:30'))
    await page.clock.runFor(6000)
    await page.getByText("This device's clock jumped by 30 min during this run. Which time is right?").waitFor()
    await page.getByText('Then the finish is 11:30 on this device.').waitFor()
    await farSays(page, '11:00')
    await openAnew(page)
    await page.getByText("This device's clock jumped by 30 min").waitFor()
    await tap(page, 'This device is wrong: go by the steady count')
    await page.getByText('The finish moved 30 min later with it.').waitFor()
    await farSays(page, '11:30')
    expect(faults).toEqual([])
    await context.close()
  })
})
