/** Every sheet in every state and theme: axe, a phone, a laptop, letters of twice the size, and the keyboard alone. */
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import {
  describeInBrowser,
  type House,
  LAPTOP,
  launchChromium,
  openOwnBook,
  openPage,
  PHONE,
  startHouse,
} from './harness.ts'
import {
  asOpened,
  axeFindings,
  findingsInEveryTheme,
  pattern,
  roadsFrom,
  setTextSize,
  sidewaysPx,
  tabTo,
} from './look-at.ts'
import { LOOKS, type Look, STATES, type State } from './looks.ts'
import { openState } from './open-state.ts'

/** One row for each screen with a next action: a new screen adds its own. `arrives` is what must then be there. */
const BY_KEYBOARD: readonly {
  readonly state: State
  readonly look: Pick<Look, 'path' | 'heading'>
  readonly press: string
  readonly arrives: readonly ['heading' | 'button' | 'link', string]
}[] = [
  {
    state: 'empty book',
    look: { path: '/', heading: 'The year' },
    press: 'Bring in your corn',
    arrives: ['heading', 'Crib'],
  },
  {
    state: 'demo kitchen',
    look: { path: '/', heading: 'The year' },
    press: 'Put seed by',
    arrives: ['heading', 'Seed first, then food.'],
  },
  {
    state: 'demo kitchen',
    look: { path: '/plan', heading: 'Seed first, then food.' },
    press: 'Put by, by eye',
    arrives: ['button', 'Lay out the day'],
  },
  {
    state: 'during a batch',
    look: { path: '/', heading: 'The year' },
    press: 'Go on at the kettle',
    arrives: ['button', 'Half: 10'],
  },
  {
    state: 'during a batch',
    look: { path: '/kettle/:batchId', heading: 'Kettle' },
    press: 'Half: 10',
    arrives: ['button', '10 of 20 slipped: write it down'],
  },
  {
    state: 'stocked pantry',
    look: { path: '/pantry', heading: 'Pantry' },
    press: 'Labels for what is on the shelf',
    arrives: ['button', 'Print it from this device'],
  },
  {
    state: 'stocked pantry',
    look: { path: '/pantry', heading: 'Pantry' },
    press: 'Read a label',
    arrives: ['button', 'Look through the camera'],
  },
  {
    state: 'stocked pantry',
    look: { path: '/pantry/recall/drill', heading: 'Drill' },
    press: 'Pick a load and begin',
    arrives: ['button', 'Done looking'],
  },
  {
    state: 'running canner',
    look: { path: '/canner/run/:runId', heading: 'yard canner' },
    press: 'Needle dipped',
    arrives: ['button', 'Back at 11 psi (76 kPa)'],
  },
  {
    state: 'empty book',
    look: { path: '/workbench/kernel-measure', heading: 'Shelled corn by weight and by measure' },
    press: 'Reckon it',
    arrives: ['heading', 'What comes out'],
  },
]

describeInBrowser('every sheet', () => {
  let house: House
  let browser: Browser
  const visited = new Set<string>()
  const roads = new Set<string>()
  const openedAlone = new Set<string>()
  const kept = new Map<State, Awaited<ReturnType<typeof openState>>>()

  /** One browser for each state: what is looked at first is tried by keyboard afterwards. */
  async function at(state: State) {
    const opened = kept.get(state) ?? (await openState(browser, house, state, openedAlone))
    kept.set(state, opened)
    return opened
  }

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
      const opened = await at(state)
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
        for (const finding of await findingsInEveryTheme(page)) say(finding)
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
        await asOpened(page)
      }
      expect(wrong).toEqual([])
      // A script that was held back on purpose is the only thing that may have failed.
      if (state !== 'error' && state !== 'loading') expect(opened.faults).toEqual([])
      if (!BY_KEYBOARD.some((row) => row.state === state)) await opened.close()
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

  test.each(BY_KEYBOARD)('by keyboard alone, "$press" is reached and pressed ($state)', async (row) => {
    const opened = await at(row.state)
    const { page } = opened
    await opened.show({ ...row.look, state: row.state })
    expect(await page.locator('.handle:visible').count(), 'one next action at most').toBeLessThanOrEqual(1)
    await tabTo(page, row.press)
    await page.keyboard.press('Enter')
    const [role, name] = row.arrives
    await page.getByRole(role, { name, exact: true }).waitFor()
    expect(opened.faults).toEqual([])
  })
})
