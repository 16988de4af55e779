/** S6 (scenarios: invented) in a real browser: 96 pints, three canners with their own timings, and nobody's name on the wall. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { stoveAt, testDial } from './furnish.ts'
import { bringInCorn, describeAtHome, goTo, LAPTOP, PHONE } from './harness.ts'
import { kitchenDay } from './kitchen-day.ts'
import { axeFindings, sidewaysPx } from './look-at.ts'
import { count, fold, readSheet, seen, stampedText } from './reading.ts'

/** Own timings per load, literals of the scenario; vent 10, process 60 and the wait of 10 are published. */
const OWN_TIMINGS = [
  ['Heat until steady steam, in min', '20'],
  ['Come up to pressure, in min', '8'],
  ['Cool to zero, in min', '40'],
  ['Unload, in min', '5'],
  ['Reload for the next round, in min', '10'],
] as const

/** Its log ends at 11:03, so that the seals are due by midnight, whenever this runs. */
const YESTERDAY = kitchenDay(1)

async function writeCanner(page: Page, name: string, gauge: 'Dial' | 'Weight', pints: number): Promise<void> {
  if (!(await page.getByLabel('Canner', { exact: true }).isVisible())) await fold(page, /^A canner$/)
  await page.getByLabel('Canner', { exact: true }).fill(name)
  await page.getByRole('radio', { name: gauge, exact: true }).check()
  await count(page, 'Pint jars it holds').fill(String(pints))
  if (!(await count(page, OWN_TIMINGS[0][0]).last().isVisible())) await fold(page, 'Own timings of one load')
  for (const [label, minutes] of OWN_TIMINGS) await count(page, label).last().fill(minutes)
  await page.getByRole('button', { name: 'Write the canner down' }).click()
  await page.getByRole('rowheader', { name, exact: true }).waitFor()
}

async function furnishMillrind(page: Page): Promise<void> {
  await bringInCorn(page, 'Copper Hinge flint', '30 lb')
  await goTo(page, '/canner', 'Canner')
  await writeCanner(page, 'A', 'Weight', 16)
  await writeCanner(page, 'B', 'Dial', 9)
  await writeCanner(page, 'C', 'Weight', 9)
  await testDial(page)
  await stoveAt(page, '1180 ft')
}

describeAtHome('a kitchen of two dozen households', (home) => {
  test('S6: every number and every must-say on the sheet, a load with its households, labels with them, and a wall board without', async () => {
    const { context, page, faults } = await home.openBook('Millrind')
    await furnishMillrind(page)

    await goTo(page, '/', 'The year')
    await page.getByRole('link', { name: 'Put seed by' }).click()
    await page.getByRole('button', { name: 'Put by, by eye' }).click()
    await page.getByRole('heading', { level: 1, name: 'Plan a day' }).waitFor()
    await page.getByRole('radio', { name: 'A number of jars' }).check()
    await count(page, 'How many jars').fill('96')
    await page.getByRole('radio', { name: 'Pint jars', exact: true }).check()
    await page.getByLabel('Begin at').fill('08:30')
    await count(page, 'People at work').fill('6')
    await page.getByRole('button', { name: 'Lay out the day' }).click()
    await page.getByRole('button', { name: 'I have read this' }).click()
    await page.getByRole('heading', { level: 1, name: 'Copper Hinge flint, × 96' }).waitFor()

    await fold(page, 'Sorted out:')
    await count(page, 'Before the pot, % of the weight').fill('10')
    await fold(page, 'Salt wanted:')
    await count(page, 'Spare lids, %').fill('5')
    await fold(page, 'When, and with whom:')
    await page.getByRole('radio', { name: 'The canners alone: hominy hot, first jars filled' }).check()
    await fold(page, 'Households:')
    await count(page, 'Households sharing this kitchen').fill('24')

    // Literals of the scenario.
    await expect.poll(() => stampedText(page, 'Corn to shell')).toBe('26.7 lb')
    await expect.poll(() => stampedText(page, 'Clean corn for the pot')).toBe('24 lb') // 24.0, written without its empty tenth
    await expect.poll(() => stampedText(page, 'Dry shelled corn')).toBe('16 liquid qt')
    await expect.poll(() => stampedText(page, 'Jars to expect')).toBe('96')
    await expect.poll(() => stampedText(page, 'New lids to set out')).toBe('101')
    await expect.poll(() => stampedText(page, 'Canner loads')).toBe('9')
    await expect.poll(() => stampedText(page, 'Load records')).toBe('9')
    await expect.poll(() => stampedText(page, 'Jars for each household')).toBe('4')
    await expect.poll(() => stampedText(page, 'At pressure')).toBe('60 min')
    await expect.poll(() => stampedText(page, 'Use the', '.small-card[aria-label="A"]')).toBe('15 lb weight')
    await expect.poll(() => stampedText(page, 'Hold the needle at', '.small-card[aria-label="B"]')).toBe('11 psi')
    await expect.poll(() => stampedText(page, 'Use the', '.small-card[aria-label="C"]')).toBe('15 lb weight')
    await expect.poll(() => stampedText(page, 'The canners')).toBe('08:30 to 16:29')
    const sheet = await readSheet(page)
    for (const phrase of [
      'Seed first, then food',
      '3 rounds of 14 + 9 + 9',
      '16 Tbsp',
      '1 cup',
      'B: 27 jars through it',
      'each canner gets its own card',
      'at least 4 pint or 2 quart jars; federal guidance sets no minimum',
      'Jars of water can fill gaps',
      'carries household, load code and date',
      'labelled cloth bags, or are pooled by consent',
      'First offer is freezing or drying',
      'each having read the standing',
      'Households canning their own corn under a trained lead is one thing',
      'handing out, serving or selling jars of low-acid food is another',
      'local, state or tribal food rules',
      'Offer fresh, frozen or dried hominy for the shared table',
      'the wall board shows load codes only',
    ]) {
      expect(sheet).toContain(phrase)
    }
    expect(sheet).not.toMatch(/\bsafe/i)
    expect(sheet).not.toContain('24 pots')
    for (const viewport of [LAPTOP, PHONE]) {
      await page.setViewportSize(viewport)
      expect(await sidewaysPx(page)).toBe(0)
    }
    expect(await axeFindings(page)).toEqual([])

    await page.getByRole('button', { name: 'Begin the day' }).click()
    await page.waitForURL(/\/kettle\/[0-9a-f-]{36}$/)
    const batchId = page.url().split('/').at(-1)

    // A load of B, typed in afterwards, half of it before a reload.
    await page.goto(new URL(`/canner/run?batch=${batchId}`, home.house.url).href)
    await page.getByRole('radio', { name: 'B', exact: true }).check()
    await page.getByRole('radio', { name: 'Yes: hot pack' }).check()
    await expect.poll(() => count(page, 'How many jars').inputValue()).toBe('9')
    await fold(page, 'Whose jars')
    for (const name of ['the ford', 'the long lane']) {
      await page.getByLabel('Another household').fill(name)
      await page.getByRole('button', { name: 'Put it on this load' }).click()
    }
    await page.getByText('Whose jars: the ford, the long lane').waitFor()
    await page.getByRole('radio', { name: 'It is done: type its log in' }).check()
    const line = (number: number) => page.getByRole('group', { name: `Line ${number}`, exact: true })
    const write = async (number: number, clock: string, event: string) => {
      if ((await line(number).count()) === 0) await page.getByRole('button', { name: 'One more line' }).click()
      await line(number).getByLabel('Clock').fill(clock)
      await line(number).getByLabel('What happened').selectOption({ label: event })
    }
    const log = [
      ['Canner loaded', 0],
      ['Steam is strong and steady', 20],
      ['Vent closed or weight set', 30],
      ['Needle at 11 psi (76 kPa)', 38],
      ['Heat off', 98],
      ['Pressure at zero', 138],
      ['Weight off, petcock open', 138],
      ['Lid off', 148],
      ['All jars out', 153],
    ] as const
    const at = (minutes: number) => {
      const total = 8 * 60 + 30 + minutes
      return `${String(Math.floor(total / 60)).padStart(2, '0')}:${String(total % 60).padStart(2, '0')}`
    }
    await page.getByLabel('Day of the first line').fill(YESTERDAY)
    for (const [index, [event, minutes]] of log.slice(0, 4).entries()) await write(index + 1, at(minutes), event)

    // Half typed, then the page is lost.
    await page.reload()
    await page.getByRole('radio', { name: 'B', exact: true }).check()
    await page.getByRole('radio', { name: 'Yes: hot pack' }).check()
    await page.getByText('Whose jars: the ford, the long lane').waitFor()
    await page.getByRole('radio', { name: 'It is done: type its log in' }).check()
    await expect.poll(() => page.getByLabel('Day of the first line').inputValue()).toBe(YESTERDAY)
    await expect.poll(() => line(4).getByLabel('Clock').inputValue()).toBe('09:08')
    for (const [index, [event, minutes]] of log.entries()) if (index >= 4) await write(index + 1, at(minutes), event)
    await page.getByRole('button', { name: 'Write the log down' }).click()
    await page.getByRole('heading', { level: 1, name: 'B' }).waitFor()

    // Seals, and the jars of one household put up under its name.
    await count(page, 'Sealed').fill('9')
    await page.getByRole('button', { name: 'Write the seals down' }).click()
    await page.getByRole('radio', { name: 'the ford' }).check()
    await count(page, 'How many').fill('4')
    await page.getByRole('button', { name: 'Put up: write it down' }).click()
    await page.getByText('the ford:').waitFor()
    await page.getByRole('link', { name: 'Labels for this load' }).click()
    await page.getByRole('heading', { level: 1, name: 'Labels' }).waitFor()
    const labels = await seen(page, '.paper-look')
    expect(labels.match(/For the ford/g)).toHaveLength(4)
    await page.goBack()
    await page.getByRole('link', { name: 'Log of this load to print' }).click()
    await page.getByRole('heading', { level: 1, name: /^Log of load / }).waitFor()

    await page.goto(new URL(`/paper/wall-board/${batchId}`, home.house.url).href)
    await page.getByRole('heading', { level: 1, name: 'Wall board' }).first().waitFor()
    const board = await seen(page, '.paper-look')
    // Nine loads: three of the dial, six of the weights.
    expect(board.match(/11 psi/g)).toHaveLength(3)
    expect(board.match(/15 lb/g)).toHaveLength(6)
    expect(board).toContain('08:30')
    expect(board).not.toContain('the ford')
    expect(board).not.toContain('Copper Hinge')
    expect(faults).toEqual([])
    await context.close()
  })
})
