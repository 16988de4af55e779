/** A page moves only when somebody moves it: what comes by itself has its room kept, so that no tap lands on something else. */
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { bringInCorn, describeAtHome, openDemoKitchen, openPage } from './harness.ts'
import { setTextSize } from './look-at.ts'

/** Every different answer that `look` gives from now on, a look a frame; `undefined` is no answer. */
async function watch(page: Page, look: string): Promise<() => Promise<unknown[]>> {
  const seen = await page.evaluateHandle(`(() => {
    const seen = new Set()
    const each = () => {
      const now = ${look}
      if (now !== undefined) seen.add(now)
      requestAnimationFrame(each)
    }
    each()
    return seen
  })()`)
  return () => seen.evaluate((all: unknown) => [...(all as Set<unknown>)])
}

const topOf = (name: string) => `(() => {
  const one = [...document.querySelectorAll('main button')].find((each) => each.textContent === ${JSON.stringify(name)})
  return one && Math.round(one.getBoundingClientRect().top + scrollY)
})()`

describeAtHome('a page that stays where it is', (home) => {
  test('when the line on the connection changes after something was written', async () => {
    const { context, page } = await home.openBook('Ostrey Point')
    await page.getByText('Written here and copied to the house server.').waitFor()
    const states = await watch(page, `document.querySelector('.strip [role=status]').textContent`)
    const tops = `document.querySelector('main').getBoundingClientRect().top + scrollY`
    await context.route('**/api/**', async (route) => {
      await new Promise((done) => setTimeout(done, 400))
      await route.continue()
    })
    await bringInCorn(page, 'Lantern flint', '9 lb')
    await expect.poll(states).toContain('1 entry is on its way to the house server.')
    await page.getByText('Written here and copied to the house server.').waitFor()
    // At twice the letters one sentence takes a line more than the next.
    await setTextSize(page, 200)
    const topsSeen = await watch(page, tops)
    await page.getByLabel('Name of the lot').fill('Second flint')
    await page.getByLabel('How much').fill('4 lb')
    await page.getByRole('button', { name: 'Bring it in' }).click()
    await page.getByText('1 entry is on its way to the house server.').waitFor()
    await page.getByText('Written here and copied to the house server.').waitFor()
    await context.setOffline(true)
    await page.getByText('No connection. All is kept on this device.').waitFor()
    expect(await topsSeen()).toHaveLength(1)
    await context.close()
  })

  test('when a house that is slow to answer says which kitchens it keeps', async () => {
    const first = await home.openBook('Hark Lake')
    await bringInCorn(first.page, 'Hark flint', '9 lb')
    await first.page.getByText('Written here and copied to the house server.').waitFor()
    const { context, page } = await openPage(home.browser)
    await context.route('**/api/**', async (route) => {
      await new Promise((done) => setTimeout(done, 700))
      await route.continue()
    })
    await page.goto(home.house.url)
    const tops = await watch(page, topOf('Look at the demo kitchen'))
    await page
      .getByRole('button', { name: /^Go on with the book ending in/ })
      .first()
      .waitFor()
    await page.evaluate('document.fonts.ready')
    expect(await tops()).toHaveLength(1)

    // Nor is a book that is still on its way shown as an empty one, with what an empty one asks for.
    const isEmpty = await watch(page, `document.querySelector('.standstill') !== null`)
    await page
      .getByRole('button', { name: /^Go on with the book ending in/ })
      .last()
      .click()
    await page.getByRole('heading', { level: 2, name: 'Next', exact: true }).waitFor()
    expect(await isEmpty()).toEqual([false])
    await context.close()
    await first.context.close()
  })

  test('when a jar is set and its band is reckoned, told and done', async () => {
    const { context, page } = await openPage(home.browser)
    await openDemoKitchen(page, home.house.url)
    await page.goto(`${home.house.url}heat`)
    await page.locator('[data-quality="whole"]').waitFor()
    // A slow device: the work is long enough to be told of.
    const session = await context.newCDPSession(page)
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
    const tops = await watch(page, topOf('As a drawing (SVG)'))
    const told = await watch(page, `document.querySelector('.heat-working progress') !== null`)
    await page.getByLabel('Steady steam before the vent is closed', { exact: true }).fill('3')
    await page.locator('[data-quality="moving"]').waitFor()
    await page.locator('[data-quality="whole"]').waitFor()
    expect(await told()).toContain(true)
    expect(await tops()).toHaveLength(1)
    await context.close()
  })
})
