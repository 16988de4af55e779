/** S2 from an empty book in a real browser: every number and every must-say, S2b by changing the fill, and the printed sheet. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { stoveAt, testDial } from './furnish.ts'
import { bringInCorn, describeAtHome, goTo, LAPTOP, openDemoKitchen, openPage, PHONE } from './harness.ts'
import { sidewaysPx } from './look-at.ts'
import { count, fold, readSheet, seen, stampedText } from './reading.ts'

/** The kitchen of S2 (scenarios: invented), written down by hand on its own screens. */
async function furnishOstreyPoint(page: Page): Promise<void> {
  await bringInCorn(page, 'Lantern flint', '9 lb')
  await goTo(page, '/kettle', 'Kettle')
  await fold(page, 'A lot of ash or other alkali')
  await page.getByLabel('Name of the lot').fill('M-1')
  await page.getByRole('button', { name: 'Write the lot down' }).click()
  await page.getByRole('rowheader', { name: 'M-1' }).waitFor()
  await fold(page, 'Write down how it worked')
  await count(page, 'Hulls slipped after, in min').fill('55')
  await page.getByRole('button', { name: 'Write down how it worked' }).click()
  await page.getByText('slipped at 55 min').waitFor()
  await fold(page, 'A pot')
  await page.getByLabel('Pot', { exact: true }).fill('big pot')
  await page.getByLabel('Holds').fill('20 qt')
  await page.getByRole('button', { name: 'Write the pot down' }).click()
  await page.getByRole('rowheader', { name: 'big pot' }).waitFor()
  await goTo(page, '/canner', 'Canner')
  await page.getByLabel('Canner', { exact: true }).fill('yard canner')
  await page.getByRole('button', { name: 'Write the canner down' }).click()
  await page.getByRole('rowheader', { name: 'yard canner' }).waitFor()
  await testDial(page)
  await stoveAt(page, '820 ft')
}

async function openPlan(page: Page, url: string): Promise<void> {
  await page.goto(new URL('/plan', url).href)
  await page.getByRole('heading', { level: 1 }).waitFor()
}

describeAtHome('planning a day', (home) => {
  test('S2 from an empty book: seed first, then every number, the reading, two days, S2b, and the printed sheet', async () => {
    const { context, page, faults } = await home.openBook()
    await furnishOstreyPoint(page)

    // Seed is asked before any corn is food; by eye is one tap.
    await goTo(page, '/', 'The year')
    await page.getByRole('link', { name: 'Put seed by' }).click()
    await page.getByRole('heading', { level: 1, name: 'Seed first, then food.' }).waitFor()
    await page.getByText('Is seed put by for two plantings? How much, and where?').waitFor()
    await page.getByRole('button', { name: 'Put by, by eye' }).click()

    await page.getByRole('heading', { level: 1, name: 'Plan a day' }).waitFor()
    await page.getByRole('textbox', { name: 'How much', exact: true }).fill('9 lb')
    await page.getByLabel('Into jars').check()
    await page.getByLabel('Begin at').fill('07:10')
    await page.getByRole('button', { name: 'Lay out the day' }).click()

    // Where jars stand is read first; no minutes stand on that page.
    await page.getByRole('heading', { level: 1, name: 'Where jars of hominy stand' }).waitFor()
    const reading = await readSheet(page)
    expect(reading).toContain('Fresh, frozen and dried hominy come first')
    expect(reading).toContain('no published process')
    expect(reading).toContain('looks like lye hominy, hot pack')
    expect(reading).not.toContain('70 min')
    await page.getByRole('button', { name: 'I have read this' }).click()

    await page.getByRole('heading', { level: 1, name: 'Lantern flint, 9 lb' }).waitFor()
    // The house does the printed directions: four cold rinses instead of hot and cold.
    await fold(page, 'Washing and cooking:')
    await page.getByRole('radio', { name: 'Printed directions' }).check()
    await fold(page, 'Hot rinse, 2 ×')
    await page.getByRole('button', { name: 'Leave out: Hot rinse' }).click()
    const cold = page.locator('.stage-list li').filter({ has: page.locator('summary', { hasText: 'Cold rinse, 2 ×' }) })
    await cold.locator('summary').click()
    await cold.getByRole('textbox', { name: 'How many times' }).fill('4')

    // S2, literals of the scenario.
    await expect.poll(() => stampedText(page, 'Dry shelled corn')).toBe('6 liquid qt')
    await expect.poll(() => stampedText(page, 'Sifted ash')).toBe('6 cups')
    await expect.poll(() => stampedText(page, 'Pot-loads')).toBe('3')
    await expect.poll(() => stampedText(page, 'Water, kettle and rinses')).toBe('58.5 US gal')
    await expect.poll(() => stampedText(page, 'Jars to expect')).toBe('18')
    await expect.poll(() => stampedText(page, 'Jars to set out')).toBe('24')
    await expect.poll(() => stampedText(page, 'Salt, if wanted')).toBe('6 Tbsp')
    await expect.poll(() => stampedText(page, 'Canner loads')).toBe('3')
    await expect.poll(() => stampedText(page, 'At pressure')).toBe('70 min')
    await expect.poll(() => stampedText(page, 'Vent and minutes at pressure alone, all rounds')).toBe('240 min')
    await expect.poll(() => stampedText(page, 'Hold the needle at')).toBe('11 psi')
    await expect.poll(() => stampedText(page, 'Door to door')).toMatch(/^07:10 to \d\d:\d\d next day$/)
    const sheet = await readSheet(page)
    for (const phrase of [
      'Seed first, then food',
      'Spread 6 + 6 + 6.',
      '221 L',
      'lot M-1',
      'more than two-thirds',
      'canner water',
      'This is two days for one person.',
      'hull today, chill within the cooling window, can tomorrow (reheated: hot pack)',
      'kept hot or chilled',
      'filled only for the next load',
      'No test for this food is known',
      'Withdrawn',
      'Fresh, frozen and dried hominy come first',
    ]) {
      expect(sheet).toContain(phrase)
    }
    expect(sheet).not.toMatch(/\bsafe/i)
    expect(sheet).not.toContain('7 + 7 + 4')
    for (const viewport of [LAPTOP, PHONE]) {
      await page.setViewportSize(viewport)
      expect(await sidewaysPx(page)).toBe(0)
    }

    // Two days instead of one.
    await page.getByRole('radio', { name: 'Hull today, can tomorrow' }).check()
    await expect.poll(() => stampedText(page, 'Hull today')).toMatch(/^07:10 to \d\d:\d\d$/)
    await expect.poll(() => stampedText(page, 'Can tomorrow')).toMatch(/^07:10 to \d\d:\d\d$/)
    await page.getByRole('radio', { name: 'One day' }).check()

    // S2b: half full, four volumes to one; what moved stands struck beside the new number.
    await page.getByLabel('Most likely').fill('4')
    await page.getByRole('radio', { name: 'Half', exact: true }).check()
    await expect.poll(() => stampedText(page, 'Jars to expect')).toBe('48')
    await expect.poll(() => stampedText(page, 'Canner loads')).toBe('7')
    const movedText = await seen(page, '.moved')
    expect(movedText).toContain('Jars to expect: 24 48')
    await expect.poll(() => seen(page, '.moved s')).toBe('24')
    const half = await readSheet(page)
    for (const phrase of [
      'half full',
      'Plan the middle, set out the high end',
      'Thick-hulled corn swells more in the jar',
      'printed directions know both fills',
      'Spread 7 + 7 + 7 + 7 + 7 + 7 + 6.',
    ]) {
      expect(half).toContain(phrase)
    }
    await page.getByRole('radio', { name: 'Loose, to the headspace' }).check()
    await page.getByLabel('Most likely').fill('3')
    await expect.poll(() => stampedText(page, 'Jars to expect')).toBe('18')

    // The plan outlives a reload before it is begun.
    await page.reload()
    await page.getByRole('heading', { level: 1, name: 'Lantern flint, 9 lb' }).waitFor()
    await expect.poll(() => stampedText(page, 'Water, kettle and rinses')).toBe('58.5 US gal')

    await page.getByRole('link', { name: 'Print this sheet' }).click()
    await page.getByRole('heading', { level: 1, name: 'Batch sheet' }).waitFor()
    const printed = await seen(page, '.paper-look')
    for (const phrase of ['Seed first', '6 liquid qt (5.68 L)', '6 cups', '58.5 US gal (221 L)', '11 psi', '70 min']) {
      expect(printed).toContain(phrase)
    }
    // On paper only the sheet's own pages are printed.
    await page.emulateMedia({ media: 'print' })
    await expect.poll(() => page.locator('#book').isVisible()).toBe(false)
    await expect.poll(() => page.locator('.paper-for-the-printer .paper-page').first().isVisible()).toBe(true)
    await page.emulateMedia({ media: null })
    const pdf = page.waitForEvent('download')
    await page.getByRole('button', { name: 'As a PDF from the house server' }).click()
    expect((await pdf).suggestedFilename()).toBe('Batch-sheet-Lantern-flint-9-lb.pdf')

    await page.goBack()
    await page.getByRole('button', { name: 'Begin the day' }).click()
    await page.waitForURL(/\/kettle\/[0-9a-f-]{36}$/)
    await goTo(page, '/paper', 'Paper')
    await page.getByRole('link', { name: 'Batch sheet' }).click()
    await expect.poll(() => seen(page, '.paper-look')).toContain('58.5 US gal (221 L)')

    await goTo(page, '/paper', 'Paper')
    await page.getByRole('link', { name: 'Blank process log' }).click()
    await page.getByRole('heading', { level: 1, name: 'Blank process log' }).waitFor()
    await expect.poll(() => seen(page, '.paper-look')).toContain('No test for this food is known.')

    // The card of the canner, on its own page.
    await goTo(page, '/canner', 'Canner')
    await page.getByRole('link', { name: 'Card of yard canner' }).click()
    await page.getByRole('heading', { level: 1, name: 'yard canner' }).waitFor()
    await expect.poll(() => stampedText(page, 'Hold the needle at')).toBe('11 psi')
    await expect.poll(() => stampedText(page, 'Hold, once at pressure')).toBe('70 min')
    await expect.poll(() => readSheet(page)).toContain('Any reading below 11 psi is a dip')
    expect(faults).toEqual([])
    await context.close()
  })

  test('dressed seed corn, more than a lot holds, and a place off the table are answered, not planned over', async () => {
    const { context, page } = await openPage(home.browser)
    await openDemoKitchen(page, home.house.url)
    await openPlan(page, home.house.url)
    await page.getByRole('button', { name: 'Put by, by eye' }).click()
    await page.getByRole('heading', { level: 1, name: 'Plan a day' }).waitFor()

    await page.getByRole('textbox', { name: 'How much', exact: true }).fill('30 lb')
    await page.getByLabel('Freezer').check()
    await page.getByText('Lantern flint holds 9 lb').waitFor()

    await fold(page, 'Another lot of corn')
    await page.getByLabel('Name of the lot').fill('Sweet dressed')
    await page.locator('.fold[open]').getByLabel('How much').fill('5 lb')
    await page.getByLabel('Dressed (treated) seed').check()
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await page.getByText('Dressed (treated) seed corn is never food.').waitFor()
    await expect.poll(() => page.getByRole('button', { name: 'Lay out the day' }).isDisabled()).toBe(true)

    await goTo(page, '/house', 'The house')
    await page.getByRole('textbox', { name: 'Of the stove' }).fill('2440 m')
    await page.getByRole('button', { name: 'Write it down' }).first().click()
    await page.getByText('Written down.', { exact: true }).first().waitFor()
    await goTo(page, '/canner', 'Canner')
    await page
      .getByRole('link', { name: /^Card of/ })
      .first()
      .click()
    await page.getByText('Please ask your extension office.').waitFor()
    const card = await readSheet(page)
    expect(card).toContain('outside the table used here')
    expect(card).not.toContain('Hold the needle at')
    await context.close()
  })

  test('the pantry gives what is on the shelf, and asks when more is taken than it holds', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await openDemoKitchen(page, home.house.url)
    await goTo(page, '/pantry', 'Pantry')
    await fold(page, 'Put something on the shelf')
    await page.getByLabel('Code for its labels').fill('LF-3-F')
    await count(page, 'How many packs').fill('4')
    await page.getByRole('button', { name: 'Put something on the shelf' }).click()
    await page.getByText('4 packs in the freezer').waitFor()
    await fold(page, 'Take some')
    await page.getByRole('radio', { name: 'Given' }).check()
    await page.getByLabel('To whom').fill('the school kitchen')
    await count(page, 'How many').fill('3')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByText('3 given to the school kitchen.').waitFor()
    await page.getByText('1 pack in the freezer').waitFor()
    await page.getByRole('radio', { name: 'Opened' }).check()
    await count(page, 'How many').fill('2')
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByText('LF-3-F: 1 remaining, and this would take 2.').waitFor()
    await page.getByRole('link', { name: 'Labels for what is on the shelf' }).click()
    await page.getByRole('heading', { level: 1, name: 'Labels' }).waitFor()
    await expect.poll(() => seen(page, '.paper-look')).toContain('LF-3-F')
    expect(faults).toEqual([])
    await context.close()
  })
})
