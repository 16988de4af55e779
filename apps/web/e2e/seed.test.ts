/** S1 by hand on the Seed sheet: a lot, its sprouting test, a gift, what stays back, and where it would keep. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { describeAtHome, goTo, LAPTOP, PHONE } from './harness.ts'
import { axeFindings, putOn, setTextSize, sidewaysPx, THEMES } from './look-at.ts'
import { count, fold, seen, stampedText } from './reading.ts'

/** Cells of the row that begins so, of the table of kernels. */
async function row(page: Page, name: string): Promise<string[]> {
  return page
    .locator('#reserve tr', { has: page.getByRole('rowheader', { name }) })
    .locator('td')
    .allInnerTexts()
}

describeAtHome('the Seed sheet', (home) => {
  // The kitchen and every number of scenario S1 (invented).
  test('S1: a lot is written down and tested, and what stays back is told three ways before anything is food', async () => {
    const { context, page, faults } = await home.openBook('Kettlebrook Hollow')
    await goTo(page, '/seed', 'Seed')
    await page.getByText('No seed lot is written down yet.').waitFor()

    await fold(page, 'Write down a seed lot')
    await page.getByRole('button', { name: 'Write the seed lot down' }).click()
    await page.getByText('Write a name first.').waitFor()
    await page.getByLabel('Name of the seed lot').fill('Heron Foot flint')
    await count(page, 'Parent ears, one a plant').fill('60')
    await count(page, 'Kernels').fill('900')
    await count(page, 'Kernels in an ounce').fill('110')
    await page.getByLabel('Container 1', { exact: true }).fill('tin')
    await page.getByRole('button', { name: 'Write the seed lot down' }).click()
    await page.getByText('A container needs its place').waitFor()
    await page.getByLabel('Place of container 1').fill('the loft')
    await page.getByRole('button', { name: 'Write the seed lot down' }).click()
    await page.getByRole('heading', { level: 3, name: 'Heron Foot flint' }).waitFor()
    await expect.poll(() => seen(page, 'main')).toContain('Kept tin, the loft')

    // The range is read before the test is kept; more sprouted than laid down is refused.
    await fold(page, 'Write down a seed lot')
    await fold(page, 'A sprouting test')
    await count(page, 'Of these sprouted').fill('51')
    await page.getByText('more than there were').waitFor()
    await expect.poll(() => page.getByRole('button', { name: 'Write the test down' }).isDisabled()).toBe(true)
    await count(page, 'Of these sprouted').fill('46')
    await expect.poll(() => stampedText(page, 'What the count says')).toBe('92 %')
    await expect.poll(() => seen(page, 'main')).toContain('true germination is plausibly anywhere from 81 to 98 %')
    await expect.poll(() => seen(page, 'main')).toContain('Last sprouting test none yet')
    await page.getByRole('button', { name: 'Write the test down' }).click()
    await page.getByText('46 of 50: 92 %, between 81 and 98 %').waitFor()
    // What is tested is used up.
    await expect.poll(() => seen(page, 'main')).toContain('Kernels left 850')
    await fold(page, 'A sprouting test')

    await fold(page, 'How much stays back')
    await count(page, 'Kernels promised').fill('200')
    await page.getByLabel('The year after, fewer sprout').check()
    await page.getByLabel('All of the corn, shelled').fill('31.5 lb')
    await expect.poll(() => row(page, 'Planting 1')).toEqual(['327', '344', expect.any(String)])
    await expect.poll(() => row(page, 'Planting 2')).toEqual(['353', '375', expect.any(String)])
    await expect.poll(() => row(page, 'Tests')).toEqual(['100', '100', '100'])
    await expect.poll(() => row(page, 'Gifts')).toEqual(['200', '200', '200'])
    expect((await row(page, 'Together')).slice(0, 2)).toEqual(['980', '1,019'])
    // With a confidence is what stands until another is tapped.
    await expect.poll(() => stampedText(page, 'Kernels that stay back')).toBe('1,019')
    await page.getByLabel('Enough on average').check()
    await expect.poll(() => stampedText(page, 'Kernels that stay back')).toBe('980')
    await expect.poll(() => stampedText(page, 'They weigh')).toBe('8.91 oz')
    await expect.poll(() => stampedText(page, 'From each ear')).toBe('17')
    await expect.poll(() => stampedText(page, 'Equal shares together')).toBe('1,020')
    await expect.poll(() => stampedText(page, 'May be food, after equal shares')).toBe('30.92 lb')
    await expect.poll(() => stampedText(page, 'May be food, if no more than the reserve is kept')).toBe('30.94 lb')
    const said = await seen(page, '#reserve')
    for (const must of [
      'Seed first, then food',
      '100 plants, better 200',
      'a smaller equal share from more ears',
      'two containers in two places',
      'These are estimates',
    ]) {
      expect(said).toContain(must)
    }
    expect(said).not.toMatch(/fail|exact science|\bsafe\b/i)
    expect(said).toContain('None of this corn is food until the reserve is met.')
    expect(said).toContain('850 kernels held, 980 needed, so 130 short')

    // Enough in a second tin, and it is met; a gift takes it away again, and no more can be given than is there.
    await fold(page, 'Write down a seed lot')
    await page.getByLabel('Name of the seed lot').fill('Heron Foot flint')
    await count(page, 'Kernels').fill('130')
    await page.getByRole('button', { name: 'Write the seed lot down' }).click()
    await page.getByRole('heading', { level: 3, name: 'Heron Foot flint' }).nth(1).waitFor()
    await fold(page, 'Write down a seed lot')
    await page.locator('details', { hasText: 'How much stays back' }).getByLabel('Heron Foot flint (1)').check()
    await page.getByText('The reserve is met: 980 kernels held, 980 needed').waitFor()
    await fold(page, 'Seed given or sown')
    await count(page, 'So many kernels').fill('5000')
    await page.getByRole('button', { name: 'Write it down', exact: true }).click()
    await page.getByText('5,000 kernels is more than the').waitFor()
    await count(page, 'So many kernels').fill('1')
    await page.getByRole('button', { name: 'Write it down', exact: true }).click()
    await page.getByText('979 kernels held, 980 needed').waitFor()

    // Told how it is kept, the lot is aged by it.
    await expect
      .poll(() => seen(page, 'main'))
      .toContain('How dry and how warm it is kept was not told, so only its newest test')
    await fold(page, 'How dry and how warm it is kept')
    await count(page, 'Moisture of the kernels, in %').fill('10')
    await page.getByLabel('Warmth of the place').fill('90 °C')
    await expect.poll(() => page.getByRole('button', { name: 'Write down how it is kept' }).isDisabled()).toBe(true)
    await page.getByLabel('Warmth of the place').fill('50 °F')
    await page.getByRole('button', { name: 'Write down how it is kept' }).click()
    await page.getByText('so only its newest test').waitFor({ state: 'detached' })
    await fold(page, 'How dry and how warm it is kept')

    await fold(page, 'Cellar, cupboard or freezer')
    const years: number[] = []
    for (const name of ['Cellar', 'Cupboard', 'Freezer']) {
      const [text = ''] = await page.getByRole('row', { name }).locator('td').allInnerTexts()
      years.push(Number(/^[\d,.]+/.exec(text)?.[0].replace(',', '')))
    }
    expect(years[0]).toBeGreaterThan(years[1]!)
    expect(years[2]).toBeGreaterThan(years[0]!)
    await count(page, 'How dry, in % moisture').fill('20')
    await page.getByText('Dry the seed first').waitFor()
    await count(page, 'How dry, in % moisture').fill('12')

    await fold(page, 'Papers for the tins')
    for (const [paper, words] of [
      ['Seed envelope', '92 %, between 81 and 98 %'],
      ['Sheet for a sprouting test', 'Rolls of 25 kernels'],
      ['Tags for the tins', 'tin, kept: the loft.'],
    ] as const) {
      await page.getByRole('link', { name: paper }).click()
      await page.getByRole('heading', { level: 1, name: paper }).waitFor()
      await page.getByText(words).first().waitFor()
      await page.goBack()
      await page.getByRole('heading', { level: 1, name: 'Seed', exact: true }).waitFor()
      await fold(page, 'Papers for the tins')
      await page.locator('details', { hasText: 'Papers for the tins' }).getByLabel('Heron Foot flint (1)').check()
    }

    const wrong: string[] = []
    await page.evaluate('document.querySelectorAll("main details.fold").forEach((fold) => { fold.open = true })')
    for (const theme of THEMES) {
      await putOn(page, theme)
      wrong.push(...(await axeFindings(page)).map((finding) => `${theme}: ${finding}`))
    }
    for (const [percent, viewport] of [
      [100, LAPTOP],
      [200, PHONE],
      [100, PHONE],
    ] as const) {
      await setTextSize(page, percent)
      await page.setViewportSize(viewport)
      const px = await sidewaysPx(page)
      if (px > 0) wrong.push(`${px} px too wide at ${viewport.width} px and ${percent} %`)
    }
    expect(wrong).toEqual([])
    expect(faults).toEqual([])
    await context.close()
  })
})
