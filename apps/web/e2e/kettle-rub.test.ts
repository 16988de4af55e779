/** At the boil (invented): a picture of one rub, a range worked out beside the screen, and what is left of the dose. */
import { PNG } from 'pngjs'
import { expect, test } from 'vitest'
import { describeAtHome, openPage } from './harness.ts'
import { axeFindings } from './look-at.ts'
import { tellPlannedBatch } from './told-batch.ts'
import { duringABatch, joinBook } from './told-books.ts'

describeAtHome('at the boil', (home) => {
  test('a picture of a rub stands beside that rub, and goes to its pot when the rub is taken out', async () => {
    const { context, page, faults } = await openPage(home.browser)
    const book = await duringABatch(home.house)
    await joinBook(page, home.house, book)
    await page.goto(`${home.house.url}kettle/${book.batchId}`)
    await page.getByText('by the clock, in eight of ten such pots.').first().waitFor()
    const rub = page.getByRole('region', { name: /\d Rub test$/ })
    await rub.getByLabel('Picture of this rub').setInputFiles({
      name: 'handful.png',
      mimeType: 'image/png',
      buffer: PNG.sync.write(new PNG({ width: 300, height: 200 })),
    })
    await rub.getByRole('img', { name: /^Picture of \d/ }).waitFor()
    await page.reload()
    await rub.getByRole('img', { name: /^Picture of \d/ }).waitFor()
    await expect.poll(() => page.getByRole('img', { name: /^Picture of \d/ }).count()).toBe(1)
    expect(await axeFindings(page)).toEqual([])

    await page.getByText('Everything written down').click()
    const line = page.locator('.line').filter({ hasText: 'kernels slipped' })
    await line.locator('summary').click()
    await line.getByRole('button', { name: 'Take this line out' }).click()
    await rub.waitFor({ state: 'detached' })
    await expect.poll(() => page.getByRole('img', { name: /^Picture of \d/ }).count()).toBe(1)
    expect(faults).toEqual([])
    await context.close()
  })

  test('where the range cannot be worked out it says so, and a rub is written down all the same', async () => {
    const { context, page } = await openPage(home.browser, { serviceWorkers: 'block' })
    await context.route(/slip\.worker/, (route) => route.abort())
    const book = await duringABatch(home.house)
    await joinBook(page, home.house, book)
    await page.goto(`${home.house.url}kettle/${book.batchId}`)
    await page.getByText('The range could not be worked out on this device.').waitFor()
    await page.getByRole('button', { name: 'Half: 10' }).click()
    await page.getByRole('button', { name: '10 of 20 slipped: write it down' }).click()
    await page.getByText('Rub again about').waitFor()
    await context.close()
  })

  test('the dose stands with what is left of it and the next step, half at first', async () => {
    const { context, page } = await openPage(home.browser)
    const book = await tellPlannedBatch(home.house, Date.now())
    await joinBook(page, home.house, book)
    await page.goto(`${home.house.url}kettle/${book.batchId}`)
    await page.getByRole('button', { name: 'Boil in alkali until the hulls slip' }).click()
    await page.getByRole('button', { name: 'Begin, with this water' }).click()
    await page.getByText('Half of it first, then a quarter at a time').waitFor()
    await page.getByLabel('What goes in').fill('1 cup')
    await page.getByRole('button', { name: 'It is in' }).click()
    await page.getByText('Add the rest', { exact: true }).click()
    const step = page.locator('.stamped').filter({ hasText: 'Next step' })
    await expect.poll(() => step.textContent()).toContain('1/2')
    await context.close()
  })
})
