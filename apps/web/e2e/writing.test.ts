/** Writing in the book: what is typed, what is refused and why, and two tabs at once. */
import { expect, test } from 'vitest'
import { bringInCorn, describeAtHome, goTo, openOwnBook, openPage } from './harness.ts'

describeAtHome('writing in the book', (home) => {
  test('a bare quart is taken as liquid, shown so, changed by a tap, and remembered', async () => {
    const { context, page } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await goTo(page, '/crib', 'Crib')
    await page.getByLabel('How much').fill('3 quarts')
    await page.getByText('Taken as 3 liquid qt (2.84 L).').waitFor()
    await page.getByText('4.5 lb (2.04 kg)').waitFor() // 3 x 1.5 lb
    await page.getByRole('button', { name: 'I meant dry measure' }).click()
    await page.getByText('Taken as 3 dry qt (3.3 L).').waitFor()
    await page.reload()
    await page.getByLabel('How much').fill('1 quart')
    await page.getByText('Taken as 1 dry qt (1.1 L).').waitFor()
    await context.close()
  })

  test.each([
    ['plenty', '"plenty" has no amount to read.'],
    ['-3 lb', '"-3" is below zero.'],
    ['NaN lb', '"NaN lb" has no amount to read.'],
    ['1,5 kg', '"1,5 kg" has a comma'],
    ['9', '"9" has no unit.'],
    ['9 stone', 'The unit "stone" is not known here.'],
    ['90000 lb', '90,000 lb is outside 0 kg to 5,000 kg (project rule).'],
  ])('"%s" is answered with what is wrong, and nothing is written', async (typed, answer) => {
    const { context, page } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await goTo(page, '/crib', 'Crib')
    await page.getByLabel('Name of the lot').fill('Lantern flint')
    await page.getByLabel('How much').fill(typed)
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await page.getByText(answer).waitFor()
    expect(await page.locator('table.ledger').count()).toBe(0)
    await context.close()
  })

  test('what is half typed survives a reload, and is gone once it is written down', async () => {
    const { context, page } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await goTo(page, '/crib', 'Crib')
    await page.getByLabel('Name of the lot').fill('Lantern flint')
    await page.getByLabel('How much').fill('9 l')
    await page.reload()
    await page.getByRole('heading', { level: 1, name: 'Crib' }).waitFor()
    await expect.poll(() => page.getByLabel('Name of the lot').inputValue()).toBe('Lantern flint')
    await expect.poll(() => page.getByLabel('How much').inputValue()).toBe('9 l')
    await page.getByLabel('How much').fill('9 lb')
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await page.getByRole('rowheader', { name: 'Lantern flint' }).waitFor()
    await page.reload()
    await page.getByRole('rowheader', { name: 'Lantern flint' }).waitFor()
    await expect.poll(() => page.getByLabel('Name of the lot').inputValue()).toBe('')
    await context.close()
  })

  test('an aluminium pot is refused with its reason', async () => {
    const { context, page } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await goTo(page, '/kettle', 'Kettle')
    await page.getByText('A pot', { exact: true }).click()
    await page.getByRole('radio', { name: 'Aluminium', exact: true }).check()
    await page.getByText('no aluminium pot or colander').waitFor()
    await expect.poll(() => page.getByRole('button', { name: 'Write the pot down' }).isDisabled()).toBe(true)
    await context.close()
  })

  test('what one tab writes the other shows, and both continue one chain', async () => {
    const { context, page } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await goTo(page, '/crib', 'Crib')
    const other = await context.newPage()
    await other.goto(new URL('/crib', home.house.url).href)
    await Promise.all([bringInCorn(page, 'Lantern flint', '9 lb'), bringInCorn(other, 'Heron Foot flint', '31.5 lb')])
    await page.getByRole('rowheader', { name: 'Heron Foot flint' }).waitFor()
    await other.getByRole('rowheader', { name: 'Lantern flint' }).waitFor()
    await page.getByText('Written here and copied to the house server.').waitFor()
    await context.close()
  })

  test('a word changed in the house is changed everywhere', async () => {
    const { context, page } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await goTo(page, '/house', 'The house')
    await page.getByText('Change the words').click()
    await page.getByLabel('The corn', { exact: true }).fill('Lantern')
    await page.locator('.fold[open]').getByRole('button', { name: 'Write it down' }).click()
    await page.getByText('Written down.', { exact: true }).waitFor()
    await goTo(page, '/', 'The year')
    await page.getByRole('link', { name: 'Bring in your Lantern' }).waitFor()
    await context.close()
  })

  test('a clock put back by an hour is asked about, and never guessed', async () => {
    const { context, page } = await openPage(home.browser)
    await openOwnBook(page, home.house.url)
    await page.evaluate('(() => { const now = Date.now; Date.now = () => now() - 3600000 })()')
    await page.getByRole('alert').getByText("This device's clock went back by 60 min").waitFor({ timeout: 15_000 })
    await page.getByRole('button', { name: 'I have looked' }).click()
    expect(await page.getByRole('button', { name: 'I have looked' }).count()).toBe(0)
    await context.close()
  })
})
