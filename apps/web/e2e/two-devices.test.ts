/** Two devices of one kitchen (invented), a day apart from each other and the house server, then back. */
import { foldFacts, type StoredEntry, verifyChain } from '@crib/journal'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { at, entriesOnServer, farSays, harkLake, settleRun, tap } from './hark-lake.ts'
import { bringInCorn, describeAtHome, goTo, openPage } from './harness.ts'

const COPIED = 'Written here and copied to the house server.'
/** The screens lie on the device, and this very page has them from there. */
const ON_THE_DEVICE = `new Promise((done) => {
  if (navigator.serviceWorker.controller) done(true)
  navigator.serviceWorker.addEventListener('controllerchange', () => done(true))
})`
const NEXT_DAY = new Date('2026-10-04T10:00:00-04:00')

describeAtHome('two devices a day apart', (home) => {
  const copied = (page: Page) => page.getByText(COPIED).waitFor({ timeout: 60_000 })

  /** Back at the house: the clock runs, the network is there. */
  async function comesBack({ page, context }: Awaited<ReturnType<typeof openPage>>): Promise<void> {
    await context.setOffline(false)
    await page.clock.resume()
    await page.reload()
    await copied(page)
  }

  /** What a device shows of the corn and of what the book asks. */
  async function shown(page: Page) {
    await goTo(page, '/crib', 'Crib')
    for (const name of ['Lantern flint', 'Heron Foot flint']) {
      await page.getByRole('rowheader', { name }).waitFor({ timeout: 60_000 })
    }
    const lots = await page.getByRole('rowheader').allTextContents()
    await goTo(page, '/', 'The year')
    const asked = page.getByText('two people told two times of heat off')
    await asked.waitFor({ timeout: 60_000 })
    return { lots: lots.toSorted(), asked: await asked.allTextContents() }
  }

  test('both end with the same book, nothing is lost, and two times of heat off are both kept and asked about', async () => {
    const first = await openPage(home.browser)
    await first.context.clock.install({ time: at('09:20') })
    await harkLake(first.page, home.house.url)
    await settleRun(first.page)
    await tap(first.page, 'I hold 12 psi: begin')
    await tap(first.page, 'All of this is so: loaded')
    for (const [clock, name] of [
      ['09:40', 'Lid on, knobs fast, vent open'],
      ['09:58', 'Steam is strong and steady'],
      ['10:08', 'Vent closed or weight set'],
      ['10:17', 'Needle at 12 psi (83 kPa)'],
    ] as const) {
      await first.page.clock.pauseAt(at(clock))
      await tap(first.page, name)
    }
    await farSays(first.page, '11:17')
    await first.page.clock.resume()
    await copied(first.page)
    const before = await entriesOnServer(home.house)
    const { kitchenId } = before[0]!.envelope

    const second = await openPage(home.browser)
    await second.context.clock.install({ time: at('10:30') })
    await second.page.goto(home.house.url)
    await second.page.getByRole('button', { name: `ending in ${kitchenId.slice(-4)}` }).click()
    await goTo(second.page, '/canner', 'Canner')
    await second.page.getByRole('link', { name: 'yard canner done at 11:17' }).click({ timeout: 60_000 })
    await farSays(second.page, '11:17')

    // Apart from here on: each writes what it saw.
    for (const { context, page } of [first, second]) {
      await page.evaluate(ON_THE_DEVICE)
      await context.setOffline(true)
    }
    const apart = [
      [first.page, '11:18', 'Lantern flint'],
      [second.page, '11:31', 'Heron Foot flint'],
    ] as const
    for (const [page, clock, corn] of apart) {
      await page.clock.pauseAt(at(clock))
      await tap(page, 'Heat off')
      await page.locator('.line summary', { hasText: 'Heat off' }).waitFor()
      await page.clock.resume()
      await bringInCorn(page, corn, '4 kg')
      await page.getByText('No connection. 2 entries wait on this device.').waitFor()
      await page.clock.pauseAt(NEXT_DAY)
    }
    expect(await entriesOnServer(home.house)).toEqual(before)

    await comesBack(first)
    await comesBack(second)
    await first.page.reload()

    // The same on both screens, the disagreement as well.
    const here = await shown(first.page)
    const there = await shown(second.page)
    expect(here).toEqual(there)
    expect(here.lots).toEqual(['Heron Foot flint', 'Lantern flint'])
    expect(here.asked).toHaveLength(1)
    expect(here.asked[0]).toContain('11:18')
    expect(here.asked[0]).toContain('11:31')

    const after = await entriesOnServer(home.house)
    expect(new Set(after.map(({ envelope }) => envelope.id)).size).toBe(before.length + 4)
    expect(after).toHaveLength(before.length + 4)
    expect(verifyChain(after)).toMatchObject({ ok: true })
    const heatOff = after.filter(({ body }) => eventTypeOf(body) === 'heat-off')
    expect(heatOff.map(({ envelope }) => envelope.happenedAt.instant.slice(0, 16)).toSorted()).toEqual([
      '2026-10-03T15:18',
      '2026-10-03T15:31',
    ])
    expect(new Set(heatOff.map(({ envelope }) => envelope.deviceId)).size).toBe(2)
    expect(foldFacts(after).questions).toMatchObject([{ code: 'question-two-heat-off-times' }])

    // One of them knows: a tap answers it, on both devices, and nothing is thrown away.
    await first.page.getByRole('link', { name: /^Answer for load/ }).click()
    await tap(first.page, '11:18 holds')
    await first.page.getByRole('button', { name: '11:31 holds' }).waitFor({ state: 'detached' })
    await copied(first.page)
    await second.page.reload()
    await goTo(second.page, '/', 'The year')
    await second.page.getByText('two people told two times of heat off').waitFor({ state: 'detached', timeout: 60_000 })
    const answered = await entriesOnServer(home.house)
    expect(answered).toHaveLength(after.length + 1)
    expect(foldFacts(answered).questions).toEqual([])
    const [run] = Object.values(foldFacts(answered).runs)
    expect(
      run!.events.filter(({ event }) => event.type === 'heat-off').map(({ instant }) => instant.slice(0, 16)),
    ).toEqual(['2026-10-03T15:18'])
    expect([...first.faults, ...second.faults]).toEqual([])
    await first.context.close()
    await second.context.close()
  })
})

const eventTypeOf = (body: StoredEntry['body']) =>
  (body?.value as { event?: { type?: string } } | undefined)?.event?.type
