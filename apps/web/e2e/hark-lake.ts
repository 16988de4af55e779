/** Hark Lake landing, scenario S5 (invented): its canner, and what the tests of a run there tap and read. */
import type { StoredEntry } from '@crib/journal'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { goTo, type House, openOwnBook } from './harness.ts'

/** 3 October 2026 in Toronto, four hours behind UTC. */
export const at = (clock: string) => new Date(`2026-10-03T${clock}:00-04:00`)

/** Hark Lake landing: 2,150 ft, one dial canner tested true, nine pints. */
export async function harkLake(page: Page, url: string): Promise<void> {
  await openOwnBook(page, url, 'Hark Lake')
  await goTo(page, '/house', 'The house')
  await page.getByLabel('Of the stove').fill('2150 ft')
  await page.getByRole('radio', { name: 'A map' }).check()
  await page.getByRole('button', { name: 'Write it down' }).first().click()
  await page.getByText('Written down.', { exact: true }).first().waitFor()
  await goTo(page, '/canner', 'Canner')
  await page.getByLabel('Canner', { exact: true }).fill('yard canner')
  await page.getByRole('button', { name: 'Write the canner down' }).click()
  await page.getByText('A test of a dial', { exact: true }).click()
  await page.getByLabel('Tested on').fill('2026-09-12')
  await page.getByLabel('Tested by').fill('extension office')
  for (const [index, psi] of [10, 12, 15].entries()) {
    if (index >= (await page.getByLabel('True, psi').count())) {
      await page.getByRole('button', { name: 'One more reading' }).click()
    }
    await page.getByLabel('True, psi').nth(index).fill(String(psi))
    await page.getByLabel('Reads, psi').nth(index).fill(String(psi))
  }
  await page.getByRole('button', { name: 'Write the test down' }).click()
  await page.getByRole('cell', { name: '2026-09-12' }).waitFor()
}

/** Everything asked before the number is confirmed; the standing is read on the way. */
export async function settleRun(page: Page): Promise<void> {
  await goTo(page, '/canner', 'Canner')
  await page.getByRole('link', { name: 'Begin a canner run' }).click()
  await page.getByRole('heading', { level: 1, name: 'A canner run' }).waitFor()
  await page.getByRole('radio', { name: 'Yes: hot pack' }).check()
  await page.getByRole('button', { name: 'I have read this' }).click()
  await page.getByRole('button', { name: 'I hold 12 psi: begin' }).waitFor()
}

export const tap = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click()

export const mainText = async (page: Page) => (await page.locator('main').textContent()) ?? ''

/** With the clock pinned, the moments a page waits before it shows itself have to be let pass, one by one. */
export async function letItOpen(page: Page): Promise<void> {
  const opened = page.locator('h1', { hasText: 'yard canner' })
  for (let moment = 0; moment < 100 && (await opened.count()) === 0; moment++) {
    await page.clock.runFor(100)
    await page.waitForTimeout(50)
  }
  await opened.waitFor()
}

export async function openAnew(page: Page): Promise<void> {
  await page.reload()
  await letItOpen(page)
}

/** The number read across the yard. */
export const farSays = (page: Page, text: string) => page.locator('.far').getByText(text, { exact: true }).waitFor()

export async function expectFinished(page: Page): Promise<void> {
  await page.getByText('Lid off from', { exact: true }).waitFor()
  const text = await mainText(page)
  expect(text).toContain('12:49')
  expect(text).toContain('00:49 next day')
  expect(text).toContain('12:49 next day')
  expect(text).toContain('assumed')
  expect(text).toContain('At 10:49')
  expect(text).toContain('The 32 min already run do not count; the full 60 min started again at 10:56.')
  expect(text).not.toMatch(/\bsafe\b/i)
}

export async function entriesOnServer(house: House): Promise<readonly StoredEntry[]> {
  const { kitchens } = await (await fetch(`${house.url}api/kitchens`)).json()
  const pages = kitchens.map(async ({ kitchenId }: { kitchenId: string }) =>
    (await fetch(`${house.url}api/entries?kitchen=${kitchenId}`)).json(),
  )
  return (await Promise.all(pages)).flatMap(({ entries }) => entries)
}

/** From the settled card to the count: loaded at 9:40, vented from then to 9:50, at pressure at 10:00. */
export async function bringToPressure(page: Page): Promise<void> {
  await tap(page, 'I hold 12 psi: begin')
  await page.clock.pauseAt(at('09:40'))
  for (const name of ['All of this is so: loaded', 'Lid on, knobs fast, vent open', 'Steam is strong and steady']) {
    await tap(page, name)
  }
  await page.clock.pauseAt(at('09:50'))
  await tap(page, 'Vent closed or weight set')
  await page.clock.pauseAt(at('10:00'))
  await tap(page, 'Needle at 12 psi (83 kPa)')
  await farSays(page, '11:00')
}
