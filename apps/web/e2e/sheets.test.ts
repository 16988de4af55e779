/** Every sheet in every state and theme: axe, a phone, a laptop, letters of twice the size, and the keyboard alone. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import {
  describeInBrowser,
  type House,
  LAPTOP,
  launchChromium,
  openDemoKitchen,
  openOwnBook,
  openPage,
  PHONE,
  startHouse,
} from './harness.ts'
import { axeFindings, pattern, putOn, roadsFrom, setTextSize, sidewaysPx, THEMES, tabTo } from './look-at.ts'
import { LOOKS, openState, STATES } from './looks.ts'

describeInBrowser('every sheet', () => {
  let house: House
  let browser: Browser
  const visited = new Set<string>()
  const roads = new Set<string>()

  beforeAll(async () => {
    house = await startHouse()
    browser = await launchChromium()
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
  })

  test.each(STATES)(
    '%s: clean for axe in every theme, and nothing lost on a phone, a laptop or at twice the letters',
    async (state) => {
      const looks = LOOKS.filter((look) => look.state === state)
      expect(looks.length, 'a state without a look').toBeGreaterThan(0)
      const opened = await openState(browser, house, state)
      const { page } = opened
      const wrong: string[] = []
      for (const look of looks) {
        await opened.show(look)
        visited.add(pattern(new URL(page.url()).pathname))
        for (const road of await roadsFrom(page)) roads.add(road)
        // What a fold holds is looked at as well.
        await page.locator('main details').evaluateAll((folds) => {
          for (const fold of folds) (fold as HTMLDetailsElement).open = true
        })
        const say = (what: string) => wrong.push(`${look.path} (${look.heading}): ${what}`)
        for (const theme of THEMES) {
          await putOn(page, theme)
          for (const finding of await axeFindings(page)) say(`${theme}: ${finding}`)
        }
        for (const [textPercent, viewport] of [
          [100, LAPTOP],
          [100, PHONE],
          [200, PHONE],
        ] as const) {
          await setTextSize(page, textPercent)
          await page.setViewportSize(viewport)
          const px = await sidewaysPx(page)
          if (px > 0) say(`${px} px too wide at ${viewport.width} px and ${textPercent} % text`)
        }
      }
      expect(wrong).toEqual([])
      // A script that was held back on purpose is the only thing that may have failed.
      if (state !== 'error' && state !== 'loading') expect(opened.faults).toEqual([])
      await opened.close()
    },
  )

  test('no address that a page leads to was left unvisited', () => {
    expect(roads.size).toBeGreaterThanOrEqual(11)
    expect([...roads].filter((road) => !visited.has(road))).toEqual([])
  })

  test('a button without a name, and a word too long for the page, are noticed', async () => {
    const { context, page } = await openPage(browser)
    await openOwnBook(page, house.url)
    expect(await axeFindings(page)).toEqual([])
    await page.evaluate(() => document.querySelector('main')?.append(document.createElement('button')))
    expect(await axeFindings(page)).toEqual([expect.stringContaining('button-name')])
    expect(await sidewaysPx(page)).toBe(0)
    await page.evaluate(() => {
      const box = document.createElement('div')
      box.style.cssText = 'width: 500px; height: 10px'
      document.querySelector('main')?.append(box)
    })
    expect(await sidewaysPx(page)).toBeGreaterThan(0)
    await context.close()
  })

  /** One row for each screen with a next action: a new screen adds its own. */
  const BY_KEYBOARD = [
    { name: 'home, empty', open: openOwnBook, path: '/', press: 'Bring in your corn', arrives: 'Crib' },
    { name: 'home, demo kitchen', open: openDemoKitchen, path: '/', press: 'Put seed by', arrives: 'Seed' },
    {
      name: 'workbench',
      open: openOwnBook,
      path: '/workbench/kernel-measure',
      press: 'Reckon it',
      arrives: 'Shelled corn by weight and by measure',
    },
  ] as const

  test.each(BY_KEYBOARD)(
    '$name: the one next action is reached and pressed by keyboard alone',
    async ({ open, path, press, arrives }) => {
      const { context, page } = await openPage(browser)
      await open(page, house.url)
      await page.goto(new URL(path, house.url).href)
      await page.locator('.handle').first().waitFor()
      expect(await page.locator('.handle').count(), 'one next action').toBe(1)
      await tabTo(page, press)
      await page.keyboard.press('Enter')
      await page.getByRole('heading', { level: 1, name: arrives, exact: true }).waitFor()
      await context.close()
    },
  )
})
