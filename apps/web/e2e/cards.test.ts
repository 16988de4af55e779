/** S3 and S4 (scenarios: invented) on the cards of canners, in a real browser: which side of the line, and grandmother's gauge. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { type GaugeTest, stoveAt, testDial } from './furnish.ts'
import { describeAtHome, goTo, LAPTOP, PHONE } from './harness.ts'
import { kitchenYear } from './kitchen-day.ts'
import { sidewaysPx } from './look-at.ts'
import { fold, readSheet, seen, stampedText } from './reading.ts'

async function writeCanner(page: Page, name: string, gauge: string, rim: string): Promise<void> {
  await goTo(page, '/canner', 'Canner')
  if (!(await page.getByLabel('Canner', { exact: true }).isVisible())) await fold(page, /^A canner$/)
  await page.getByLabel('Canner', { exact: true }).fill(name)
  await page.getByRole('radio', { name: gauge, exact: true }).check()
  await page.getByRole('radio', { name: rim }).check()
  await page.getByRole('button', { name: 'Write the canner down' }).click()
  await page.getByRole('rowheader', { name, exact: true }).waitFor()
}

async function openCard(page: Page, name: string): Promise<string> {
  await goTo(page, '/canner', 'Canner')
  await page.getByRole('link', { name: `Card of ${name}` }).click()
  await page.getByRole('heading', { level: 1, name, exact: true }).waitFor()
  return readSheet(page)
}

/** The standing is read once; the minutes stand on every card from then on. */
async function readStanding(page: Page, canner: string): Promise<void> {
  await openCard(page, canner)
  await page.getByRole('link', { name: 'Where jars of hominy stand' }).click()
  await page.getByRole('button', { name: 'I have read this' }).click()
  await page.getByRole('heading', { level: 1, name: canner, exact: true }).waitFor()
}

describeAtHome('the card of a canner', (home) => {
  test("S4, grandmother's gauge: the weight first, the dial second with its tag, and the variants", async () => {
    const { context, page, faults } = await home.openBook('Tallow Ridge')
    await stoveAt(page, '1340 ft')
    await writeCanner(page, 'old canner', 'Dial and weight', 'Metal on metal')
    await testDial(page, {
      readings: [
        ['10', '11.5'],
        ['11', '12.5'],
        ['15', '16.5'],
      ],
    })

    const card = await openCard(page, 'old canner')
    // Weight first: it is the one huge number; the dial stands under "The other gauge".
    await expect.poll(() => stampedText(page, 'Use the')).toBe('15 lb weight')
    await expect.poll(() => stampedText(page, 'Hold the needle at')).toBe('13 psi')
    expect(card.indexOf('15 lb weight')).toBeLessThan(card.indexOf('13 psi'))
    for (const phrase of [
      'First route: the 15 lb weight',
      'The needle is only a witness',
      'This dial reads 1.5 psi (10 kPa) high',
      'never be under 12.5 psi',
      'a reading below that is a dip',
      'Hold it at 13 psi',
      'tag tied to the lid',
      'replace it at the first chance',
      'a correction up to 2 psi',
      'a stricter reading of the federal guide replaces at 1 psi',
      'due in 12 months',
      'date, tester, error at each point',
      'thin film of the lubricant its manual names',
      'petroleum products never go on a rubber ring',
    ]) {
      expect(card).toContain(phrase)
    }
    expect(card).not.toMatch(/\bsafe/i)
    const tag = await seen(page, '.lid-tag')
    expect(tag).toContain('13 psi')
    for (const [truth, reads] of [
      ['10 psi', '11.5 psi'],
      ['11 psi', '12.5 psi'],
      ['15 psi', '16.5 psi'],
    ]) {
      expect(tag).toContain(`True ${truth} reads ${reads}.`)
    }
    expect(tag).toContain('extension office')

    // Variants of the scenario; the weight stands first in each.
    const high = (by: number): NonNullable<GaugeTest['readings']> =>
      ['10', '11', '15'].map((psi) => [psi, String(Number(psi) + by)])
    await testDial(page, { readings: high(3) })
    const tooHigh = await openCard(page, 'old canner')
    expect(tooHigh).toContain('do not use this dial for pressure')
    expect(tooHigh).not.toContain('Hold the needle at')
    await expect.poll(() => stampedText(page, 'Use the')).toBe('15 lb weight')

    await testDial(page, { readings: high(-1) })
    await openCard(page, 'old canner')
    await expect.poll(() => stampedText(page, 'Hold the needle at')).toBe('10 psi')
    await expect
      .poll(() => readSheet(page))
      .toContain('Holding the needle at 11 psi (76 kPa) is also allowed: a true 12 psi')

    await testDial(page, { restsAtPsi: '2' })
    const resting = await openCard(page, 'old canner')
    expect(resting).toContain('The needle rests at 2 psi (14 kPa) when cold: replace the gauge.')
    expect(resting).not.toContain('Hold the needle at')

    await testDial(page, { marks: '5 psi' })
    const coarse = await openCard(page, 'old canner')
    expect(coarse).toContain('the pressures of the table cannot be held with it')
    expect(coarse).not.toContain('Hold the needle at')

    // Tested last six years ago, and no weight: no number. On a rubber ring only its own line about grease.
    await writeCanner(page, 'lent canner', 'Dial', 'A rubber ring')
    await testDial(page, { testedOn: `${kitchenYear() - 6}-06-01` })
    const old = await openCard(page, 'lent canner')
    expect(old).toContain('treat the dial as unknown')
    expect(old).not.toContain('Hold the needle at')
    await testDial(page)
    const tested = await openCard(page, 'lent canner')
    await expect.poll(() => stampedText(page, 'Hold the needle at')).toBe('11 psi')
    expect(tested).toContain('Petroleum products never go on a rubber ring')
    expect(tested).not.toContain('thin film')
    expect(faults).toEqual([])
    await context.close()
  })

  test('whoever turns to another sheet while the reading is being written stays there', async () => {
    const { context, page, faults } = await home.openBook('Vellum Ridge')
    await stoveAt(page, '612 m')
    await writeCanner(page, 'dial canner', 'Dial', 'A rubber ring')
    await testDial(page)
    await openCard(page, 'dial canner')
    await page.getByRole('link', { name: 'Where jars of hominy stand' }).click()
    await page.getByRole('button', { name: 'I have read this' }).waitFor()
    // Both in one breath: no line can be written between them.
    await page.evaluate(() => {
      const read = [...document.querySelectorAll('button')].find(
        ({ textContent }) => textContent?.trim() === 'I have read this',
      )
      read!.click()
      document.querySelector<HTMLElement>('.shelf a[href="/house"]')!.click()
    })
    await page.getByRole('heading', { level: 1, name: 'The house', exact: true }).waitFor()
    await page.waitForTimeout(1500)
    expect(new URL(page.url()).pathname).toBe('/house')
    await openCard(page, 'dial canner')
    await expect.poll(() => stampedText(page, 'Hold, once at pressure')).not.toBe('')
    expect(faults).toEqual([])
    await context.close()
  })

  test('S3: five places by their elevation in the house, a dial and a weight; the higher number near a line, and none off the table', async () => {
    const { context, page, faults } = await home.openBook('Vellum Ridge')
    await stoveAt(page, '612 m')
    await writeCanner(page, 'dial canner', 'Dial', 'A rubber ring')
    await writeCanner(page, 'weight canner', 'Weight', 'A rubber ring')
    await testDial(page)
    await readStanding(page, 'dial canner')

    // Site, the dial's card and the table's own number, the weight's the same. Literals of the scenario.
    const SITES = [
      ['612 m', '12 psi', '12 psi (83 kPa)', '15 lb weight', '15 lb weight (103 kPa)', null],
      [
        '604 m',
        '12 psi',
        '11 psi (76 kPa)',
        '15 lb weight',
        '15 lb weight (103 kPa)',
        '18 ft (5 m) under the 2,000 ft',
      ],
      ['298 m', '11 psi', '11 psi (76 kPa)', '15 lb weight', '10 lb weight (69 kPa)', '22 ft (7 m) under the 1,000 ft'],
      ['305 m', '11 psi', '11 psi (76 kPa)', '15 lb weight', '15 lb weight (103 kPa)', null],
    ] as const
    for (const [site, dialCard, dialTable, weightCard, weightTable, nearLine] of SITES) {
      await stoveAt(page, site)
      const dial = await openCard(page, 'dial canner')
      await expect.poll(() => stampedText(page, 'Hold the needle at'), { message: site }).toBe(dialCard)
      expect(dial, site).toContain(`: ${dialTable}.`)
      const weight = await openCard(page, 'weight canner')
      await expect.poll(() => stampedText(page, 'Use the'), { message: site }).toBe(weightCard)
      expect(weight, site).toContain(`: ${weightTable}.`)
      await page.getByRole('radio', { name: 'pint jars', exact: true }).check()
      await expect.poll(() => stampedText(page, 'Hold, once at pressure'), { message: site }).toBe('60 min')
      if (nearLine) {
        expect(`${dial} ${weight}`, site).toContain(nearLine)
        expect(`${dial} ${weight}`, site).toContain('good to about 15 m (50 ft)')
      }
    }

    await stoveAt(page, '2440 m')
    for (const name of ['dial canner', 'weight canner']) {
      const card = await openCard(page, name)
      expect(card).toContain('8,005.2 ft (2,440 m) is outside the table used here')
      expect(card).toContain('ask your extension office')
      expect(card).not.toContain('Hold the needle at')
      expect(card).not.toContain('Use the')
    }
    for (const viewport of [LAPTOP, PHONE]) {
      await page.setViewportSize(viewport)
      expect(await sidewaysPx(page)).toBe(0)
    }
    expect(faults).toEqual([])
    await context.close()
  })
})
