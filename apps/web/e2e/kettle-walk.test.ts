/** The walk at the kettle, scenario S2 (invented): stages, rub tests, an ash that has gone flat, and taking back. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { describeAtHome, type House, openPage } from './harness.ts'
import { type PlannedBook, tellPlannedBatch } from './told-batch.ts'
import { joinBook } from './told-books.ts'

/** 3 November 2026 in Toronto, five hours behind UTC. */
const at = (clock: string) => new Date(`2026-11-03T${clock}:00-05:00`)

const tap = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click()

async function openWalk(page: Page, house: House, book: PlannedBook): Promise<void> {
  await joinBook(page, house, book)
  await page.goto(`${house.url}kettle/${book.batchId}`)
  await page.getByRole('button', { name: 'Sort the dry corn' }).waitFor()
}

/** Sorted at 08:00, alkali in at 08:30, on the boil at 09:12. */
async function walkToTheBoil(page: Page, lot: 'M-1' | 'M-0'): Promise<void> {
  await page.clock.pauseAt(at('08:00'))
  await tap(page, 'Begin')
  await page.clock.pauseAt(at('08:20'))
  await page.getByLabel('Weight sorted out').fill('0.5 lb')
  await tap(page, 'Done')
  await page.clock.pauseAt(at('08:30'))
  await tap(page, 'Begin, with this water')
  await page.getByRole('radio', { name: lot }).check()
  await tap(page, 'It is in')
  await page.getByText('2 cups of').first().waitFor()
  await page.clock.pauseAt(at('09:12'))
  await tap(page, 'It boils')
  await page.getByText('Boiling since 09:12.').waitFor()
}

async function rub(page: Page, quick: string, sentence: string): Promise<void> {
  await tap(page, quick)
  await tap(page, `${sentence}: write it down`)
}

describeAtHome('the walk at the kettle', (home) => {
  test('a pot-load goes by the rub, not by the clock, and what its ash did becomes its record', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await context.clock.install({ time: at('07:55') })
    await openWalk(page, home.house, await tellPlannedBatch(home.house, at('07:00').getTime()))
    await page.getByRole('radio', { name: 'C: 2 liquid qt' }).waitFor()
    await walkToTheBoil(page, 'M-1')
    await page
      .getByText(
        'By your record the hulls slipped at 55 min, which is 10:07; look from about 09:52. No minute is promised.',
      )
      .waitFor()
    await tap(page, 'Darkening')
    await page.clock.pauseAt(at('09:52'))
    await rub(page, 'Half: 10', '10 of 20 slipped')
    await page.getByText('Rub again about 10:07.').waitFor()

    // Taken back at once: it was another pot. The rub is gone, and so is its reminder.
    await tap(page, 'Take that back')
    await page.getByText('10 of 20 slipped (half): taken back').waitFor()
    expect(await page.getByText('Rub again about').count()).toBe(0)

    await page.clock.pauseAt(at('10:07'))
    await rub(page, 'Nearly all: 19', '19 of 20 slipped')
    await page.getByText('Take the pot off and begin the wash').waitFor()
    await tap(page, 'Off the heat: the hulls slip')
    await page.getByRole('button', { name: 'Cold rinse, 1 of 2', expanded: true }).waitFor()
    await page.clock.pauseAt(at('10:20'))
    await page.getByText('I did this earlier').click()
    await page.getByLabel('It happened at').fill('10:15')
    await tap(page, 'Done, with this water')
    await page.getByText('10:15', { exact: true }).first().waitFor()
    // What was done earlier is folded away; the last stage done stays in sight.
    await page.getByText('2 earlier stages, done').waitFor()
    await tap(page, 'Write down how M-1 worked')
    await page.getByText('M-1: slipped at 55 min').waitFor()
    await page.getByText('Water of this pot-load so far: 4 US gal').waitFor()

    await page.getByText('Everything written down').click()
    const lines = await page.locator('.line summary').allTextContents()
    expect(lines.filter((line) => line.includes('slipped'))).toEqual(['10:07Rub test: 19 of 20 kernels slipped.'])
    expect(faults).toEqual([])
    await context.close()
  })

  test('S2, second part: a flat ash is answered in the given order, with amounts and no promise', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await context.clock.install({ time: at('07:55') })
    await openWalk(page, home.house, await tellPlannedBatch(home.house, at('07:00').getTime(), 'M-0'))
    await walkToTheBoil(page, 'M-0')
    // The record of M-1 is not used for another ash.
    expect(await page.getByText('By your record').count()).toBe(0)
    await page.clock.pauseAt(at('11:12'))
    await rub(page, 'None: 0', '0 of 20 slipped')
    await page.getByText('Rub again about 11:27.').waitFor()
    await page.getByRole('checkbox', { name: 'The kernels are softening' }).check()
    const advice = page.getByRole('region', { name: 'The hulls do not slip' })
    const text = (await advice.textContent()) ?? ''
    const inOrder = [
      'Ash left open to air weakens; lot M-0 stood open for 14 months.',
      'The record of M-1 does not carry over to M-0.',
      'stir in more M-0, steeped and strained, 1/2 cup (118 mL) at a time; rub again every 15 min',
      'food-grade lime (calcium hydroxide)',
      'rinse hard and use this corn for grinding',
      'Sources seen run from 1 to 20 parts ash per 10 parts corn by volume',
      'Mark M-0 "weak" in the ash record.',
      'softened kernels do not go into jars',
    ]
    const places = inOrder.map((phrase) => text.indexOf(phrase))
    expect(places.every((place) => place >= 0)).toBe(true)
    expect(places).toEqual([...places].sort((a, b) => a - b))
    const all = (await page.locator('main').textContent()) ?? ''
    expect(all).not.toMatch(/nearly done|\bpH\b/)
    await tap(page, '1/2 cup more of M-0 in')
    await page.getByText('In so far: 2 1/2 cups.').waitFor()
    await tap(page, 'Mark M-0 weak')
    await page.getByText('M-0 is marked weak.').waitFor()
    expect(await page.getByRole('button', { name: 'Mark M-0 weak' }).count()).toBe(0)
    expect(faults).toEqual([])
    await context.close()
  })
})
