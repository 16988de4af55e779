/** The sort after the cook (invented): tails by cause, the keeper's own line, mould, and where the dry matter went. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { describeAtHome, openPage } from './harness.ts'
import { axeFindings, putOn, THEMES } from './look-at.ts'
import { tellPlannedBatch } from './told-batch.ts'
import { joinBook } from './told-books.ts'

const tap = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click()
/** Once it is written down, a stage folds away by itself. */
const openAgain = (page: Page) => page.locator('[aria-expanded="false"]', { hasText: 'Sort again, wet' }).click()
const open = (page: Page, name: string) => page.getByText(name, { exact: true }).first().click()

describeAtHome('the sort after the cook', (home) => {
  const openSort = async (): Promise<Page> => {
    const { page } = await openPage(home.browser)
    const book = await tellPlannedBatch(home.house, Date.now())
    await joinBook(page, home.house, book)
    await page.goto(`${home.house.url}kettle/${book.batchId}`)
    await tap(page, 'Sort again, wet')
    return page
  }

  test('tails are parted by cause against the own line, and the pot is balanced', async () => {
    const page = await openSort()
    await open(page, 'Your own line')
    await page.getByText('No line yet.').waitFor()
    await page.getByLabel('Percent of the pot', { exact: true }).fill('4')
    await page.getByRole('radio', { name: 'Cook the tails again' }).check()
    await tap(page, 'Keep this line')
    await page.getByText('Your line is 4 % of a pot.').waitFor()

    await tap(page, 'Begin')
    await open(page, 'By cause')
    await page.getByLabel('Hull still on, weight').fill('0.3 lb')
    await page.getByLabel('Weight sorted out').fill('0.2 lb')
    await tap(page, 'Done')
    await page.getByText('more than the').waitFor()
    // What was typed is still there after the page is opened anew.
    await page.reload()
    await tap(page, 'Sort again, wet')
    await expect.poll(() => page.getByLabel('Hull still on, weight').inputValue()).toBe('0.3 lb')
    await page.getByLabel('Weight sorted out').fill('0.4 lb')
    await tap(page, 'Done')
    await openAgain(page)
    await page.getByText('For a share, weigh the hominy you keep').waitFor()

    await open(page, 'Weigh the hominy')
    await page.getByLabel('Hominy kept, drained').fill('7 lb')
    await page.getByLabel('A sample, drained').fill('100 g')
    await page.getByLabel('The same sample, dried').fill('32 g')
    await tap(page, 'Write the weight down')
    // 0.4 lb of 7.4 lb, above the line of 4 %.
    await page.getByText('Above your own line of 4 %.').waitFor()
    await page.getByText('By your rule: cook the tails again by themselves.').waitFor()
    await tap(page, 'Cook the tails again')
    await page.getByText('The tails are cooked again by themselves.').waitFor()
    await page.getByText('This corn lot, 1 batch weighed', { exact: true }).waitFor()
    for (const theme of THEMES) {
      await putOn(page, theme)
      expect(await axeFindings(page)).toEqual([])
    }
    await page.context().close()
  })

  test('one mouldy kernel of a handful stops, names whom to ask, and leaves nothing but throwing out', async () => {
    const page = await openSort()
    await open(page, 'Count a handful')
    await page.getByLabel('Mould, kernels', { exact: true }).fill('1')
    await tap(page, 'Write the handful down')
    await page.getByText('Mould: stop here').waitFor()
    await page.getByText('Mouldy corn is neither food nor feed').waitFor()
    await page.getByText('Your extension office can name a laboratory').waitFor()
    await tap(page, 'Begin')
    await page.getByLabel('Weight sorted out').fill('0.1 lb')
    await tap(page, 'Done')
    await openAgain(page)
    await page.getByRole('button', { name: 'Throw out', exact: true }).waitFor()
    expect(await page.getByRole('button', { name: 'Feed', exact: true }).count()).toBe(0)
    await page.context().close()
  })

  test('more dry matter out than in is refused with the reason', async () => {
    const page = await openSort()
    await tap(page, 'Begin')
    await open(page, 'Weigh the hominy')
    await page.getByLabel('Hominy kept, drained').fill('40 lb')
    await tap(page, 'Write the weight down')
    await page.getByText('These weights do not fit together').waitFor()
    await page.getByText('that cannot be, for none is made').waitFor()
    await page.context().close()
  })
})
