/** Before a book is open, a book that cannot open, a first look by address, and the size of what a wet hand taps. */
import { expect, test } from 'vitest'
import { describeAtHome, openDemoKitchen, openPage } from './harness.ts'
import { axeFindings, putOn, setTextSize, sidewaysPx, THEMES } from './look-at.ts'
import { PAGES } from './pages.ts'

/** 56 px: docs/look.md. */
const TARGET_PX = 56

describeAtHome('the threshold', (home) => {
  test.each(THEMES)(
    '%s: clean for axe and whole at twice the letters, as is a book that cannot open',
    async (theme) => {
      const { context, page } = await openPage(home.browser)
      await page.goto(home.house.url)
      for (const heading of ['Kettle & Crib', 'This page did not open']) {
        await page.getByRole('heading', { level: 1, name: heading }).waitFor()
        await putOn(page, theme)
        expect(await axeFindings(page)).toEqual([])
        await setTextSize(page, 200)
        expect(await sidewaysPx(page)).toBe(0)
        await context.addInitScript(() => {
          indexedDB.open = () => {
            throw new Error('no storage here')
          }
        })
        await page.reload()
      }
      await context.close()
    },
  )

  test('the address the server prints for a first look opens the demo kitchen, marked on every page', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await page.goto(`${home.house.url}?look=demo`)
    for (const [path, heading] of PAGES) {
      if (path !== '/') await page.goto(new URL(path, home.house.url).href)
      await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
      await page.getByText('Invented demo, not a real kitchen').waitFor()
    }
    await page.getByText('The demo stays on this device.').waitFor()
    expect(await (await fetch(`${home.house.url}api/kitchens`)).json()).toEqual({ kitchens: [] })
    expect(faults).toEqual([])
    await context.close()
  })

  test('everything to tap on a plain page is at least 56 px high', async () => {
    const { context, page } = await openPage(home.browser)
    await openDemoKitchen(page, home.house.url)
    const small: string[] = []
    let lookedAtCount = 0
    for (const [path, heading] of PAGES) {
      await page.goto(new URL(path, home.house.url).href)
      await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
      await page.locator('main details').evaluateAll((folds) => {
        for (const fold of folds) (fold as HTMLDetailsElement).open = true
      })
      const heights = await page.locator('button, summary, .choice, .tag, .written, a.handle').evaluateAll((things) =>
        things
          .filter((thing) => (thing as HTMLElement).offsetParent !== null)
          .map((thing) => ({
            what: `${thing.className} ${thing.textContent}`,
            px: thing.getBoundingClientRect().height,
          })),
      )
      lookedAtCount += heights.length
      small.push(...heights.filter(({ px }) => px < TARGET_PX).map(({ what, px }) => `${path}: ${what} is ${px} px`))
    }
    expect(lookedAtCount).toBeGreaterThan(150)
    expect(small).toEqual([])
    await context.close()
  })
})
