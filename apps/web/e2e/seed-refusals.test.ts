/** What cannot be is refused on the screen of seed and field, with the value, the limit and what to do instead. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { describeAtHome, goTo } from './harness.ts'
import { count, fold, seen } from './reading.ts'

async function seedLot(page: Page, putByOn: string): Promise<void> {
  await goTo(page, '/seed', 'Seed')
  await fold(page, 'Write down a seed lot')
  await page.getByLabel('Name of the seed lot').fill('Heron Foot flint')
  await page.getByLabel('Put by on').fill(putByOn)
  await count(page, 'Kernels').fill('900')
}

describeAtHome('bad input to seed and field', (home) => {
  test('seed: none tested, too many sprouted, a minus, a part, and an equation asked beyond its range', async () => {
    const { context, page, faults } = await home.openBook('Kettlebrook Hollow')
    await seedLot(page, '2026-01-10')
    // Negative ears: nothing is taken, and the sentence names what was typed and the limits.
    await count(page, 'Parent ears, one a plant').fill('-5')
    await page.getByText('"-5" cannot be taken here: a whole number from 0 to 1,000,000 is wanted.').waitFor()
    await count(page, 'Parent ears, one a plant').fill('60.5')
    await page.getByText('"60.5" cannot be taken here').waitFor()
    await count(page, 'Parent ears, one a plant').fill('60')
    await page.getByText('cannot be taken here').waitFor({ state: 'detached' })
    await page.getByRole('button', { name: 'Write the seed lot down' }).click()
    await page.getByRole('heading', { level: 3, name: 'Heron Foot flint' }).waitFor()
    await fold(page, 'Write down a seed lot')

    await fold(page, 'A sprouting test')
    const keep = page.getByRole('button', { name: 'Write the test down' })
    await count(page, 'Kernels laid to sprout').fill('0')
    await count(page, 'Of these sprouted').fill('0')
    await page.getByText('0 of 0 says nothing. Count out some kernels').waitFor()
    expect(await keep.isDisabled()).toBe(true)
    await count(page, 'Kernels laid to sprout').fill('50')
    // None of fifty is an answer, and a sad one: it can be typed, and it is told what to do.
    await page.getByText('None sprouted. Test again, warm and damp').waitFor()
    await count(page, 'Of these sprouted').fill('51')
    await page.getByText('51 sprouted of 50 tested: more than there were.').waitFor()
    expect(await keep.isDisabled()).toBe(true)
    // A test from before the seed was put by is asked about before it is written.
    await count(page, 'Of these sprouted').fill('46')
    await page.getByLabel('Counted on').fill('2025-12-01')
    await keep.click()
    await page.getByText('2025-12-01 is before this seed was put by, 2026-01-10. Look at both dates').waitFor()
    // Two tests of about one time that do not agree ask for a third.
    await page.getByLabel('Counted on').fill('2026-03-01')
    await count(page, 'Of these sprouted').fill('46')
    await keep.click()
    await page.getByText('Written down').first().waitFor()
    // Once it is in the book the form is empty again.
    await expect.poll(() => count(page, 'Of these sprouted').inputValue()).toBe('')
    await page.getByLabel('Counted on').fill('2026-03-20')
    await count(page, 'Of these sprouted').fill('30')
    await page.getByText('32 points apart, more than chance makes likely. Test a third time').waitFor()
    await count(page, 'Of these sprouted').fill('44')
    await page.getByText('4 points apart, no more than chance alone may do').waitFor()
    await fold(page, 'A sprouting test')

    await fold(page, 'How dry and how warm it is kept')
    await count(page, 'Moisture of the kernels, in %').fill('12.5')
    expect(await count(page, 'Moisture of the kernels, in %').inputValue()).toBe('12.5')
    await page.getByLabel('Warmth of the place').fill('90 °C')
    await page.getByLabel('Warmth of the place').blur()
    await page.getByText('is outside -40 °C to 50 °C').waitFor()
    await page.getByLabel('Warmth of the place').fill('45 °C')
    await page.getByRole('button', { name: 'Write down how it is kept' }).click()
    // The book takes 45 °C, the equation does not: the lot says so.
    await page.getByText('is outside the -20 to 40 °C this equation is used for').waitFor()
    await fold(page, 'How dry and how warm it is kept')
    await fold(page, 'Cellar, cupboard or freezer')
    expect(await count(page, 'How dry, in % moisture').inputValue()).toBe('12.5')
    await count(page, 'How dry, in % moisture').fill('20')
    await page.getByText('Dry the seed first').waitFor()
    await count(page, 'How dry, in % moisture').fill('1')
    await page.getByText('drier than a kernel gets at home').waitFor()
    expect(faults).toEqual([])
    await context.close()
  })

  test('field: a distance of nothing, and days in the wrong order', async () => {
    const { context, page, faults } = await home.openBook('Kettlebrook Hollow')
    await goTo(page, '/field', 'Field')
    await fold(page, 'Write down a plot that is there')
    await page.getByLabel('Name of the plot').fill('behind the house')
    await page.getByLabel('Along the rows').fill('0 ft')
    await page.getByLabel('Along the rows').blur()
    await page.getByText('0 ft is outside').waitFor()
    await page.getByLabel('Along the rows').fill('30 ft')
    await page.getByLabel('Across the rows').fill('24 ft')
    await page.getByRole('button', { name: 'Write the plot down' }).click()
    await page.getByRole('link', { name: 'Open behind the house' }).click()
    await page.getByRole('heading', { level: 1, name: 'behind the house' }).waitFor()

    await page.getByRole('link', { name: 'Will it cross?' }).click()
    await page.getByLabel('Whose, or where').fill('over the road')
    await page.getByLabel('From your nearest plant to theirs').fill('0 m')
    await page.getByLabel('From your nearest plant to theirs').blur()
    await page.getByText('0 m is outside').waitFor()
    await page.getByRole('button', { name: 'Write the neighbour down' }).click()
    expect(await seen(page, 'main')).toContain('No other corn is written down')
    await page.goBack()

    await page.getByRole('link', { name: 'Write down the sowing' }).click()
    await page.getByLabel('Corn', { exact: true }).fill('Heron Foot flint')
    await page.getByLabel('Sown on').fill('2025-05-14')
    await page.getByRole('button', { name: 'Write the sowing down' }).click()
    await page.getByRole('heading', { level: 2, name: 'Count the stand' }).waitFor()
    await page.getByLabel('On', { exact: true }).first().fill('2025-05-01')
    await count(page, 'Plants counted').fill('200')
    await page.getByRole('button', { name: 'Write the count down' }).click()
    await page.getByText('2025-05-01 is before the sowing, 2025-05-14').waitFor()
    expect(faults).toEqual([])
    await context.close()
  })
})
