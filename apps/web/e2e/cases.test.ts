/**
 * Every scenario case through the web door: the workbench page opened by a link with the case's inputs, in real Chromium.
 * What the page says is read as a person reads it; the result behind it must be the package's own, to the last digit shown.
 */
import { type Reckoning, reckonById } from '@crib/catalogue'
import { createWords } from '@crib/wording'
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readCases } from '../../../examples/case-files.ts'
import { faultsOf } from '../../../examples/faults-of.ts'
import { toHash } from '../src/routes/workbench/link.ts'
import { describeInBrowser, type House, launchChromium, openOwnBook, openPage, startHouse } from './harness.ts'

const cases = readCases()
const words = createWords()

/**
 * Chromium and Node carry different releases of one engine, whose exp, log and pow may differ in the last bit
 * (ECMA-262 leaves it to the engine); sums of them were seen 8e-16 apart. What is shown and said must be the same letter
 * for letter, and is: only unrounded numbers are cut to twelve digits before they are compared.
 */
const toTwelveDigits = (result: unknown): unknown =>
  JSON.parse(JSON.stringify(result), (key, value) =>
    typeof value === 'number' && key !== 'shown' ? Number(value.toPrecision(12)) : value,
  )

// biome-ignore lint/performance/useDomNodeTextContent: the words a person sees are wanted, not the document's text
const visibleText = (place: Locator) => place.innerText()

test('there are cases of every scenario to ask', () => {
  expect([...new Set(cases.map(({ scenario }) => scenario.slice(0, 2)))]).toEqual(['S1', 'S2', 'S3', 'S4', 'S5', 'S6'])
})

describeInBrowser('the web door', () => {
  let house: House
  let browser: Browser
  let page: Page
  let faults: string[]

  beforeAll(async () => {
    house = await startHouse()
    browser = await launchChromium()
    const opened = await openPage(browser)
    page = opened.page
    faults = opened.faults
    await openOwnBook(page, house.url)
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
  })

  async function ask(calc: string, hash: string): Promise<{ readonly reckoning: Reckoning; readonly text: string }> {
    // A fresh page each time: a new hash alone would not load it again.
    await page.goto('about:blank')
    await page.goto(new URL(`/workbench/${calc}${hash}`, house.url).href)
    const outcome = page.locator('#outcome')
    await outcome.getByRole('heading', { name: 'What comes out', exact: true }).waitFor()
    // Visible words only: what a fold hides is not said. Titles of cited works stand in a part of their own.
    const text = await visibleText(outcome)
    await page.getByText('The same as JSON').click()
    return { reckoning: JSON.parse(await visibleText(page.locator('.bench-json'))), text }
  }

  for (const one of cases) {
    test(`${one.scenario} case ${one.number} (${one.calc}${one.title ? `: ${one.title}` : ''})`, async () => {
      const answer = await ask(one.calc, toHash(one.input))
      expect(faultsOf(answer, one.expect)).toEqual([])
      const byPackage = JSON.parse(JSON.stringify(reckonById(one.calc, one.input, words)))
      expect(toTwelveDigits(answer.reckoning)).toStrictEqual(toTwelveDigits(byPackage))
      expect(faults).toEqual([])
    })
  }

  test('a figure that is not there is noticed', async () => {
    const one = cases.find(({ scenario, expect: { values } }) => scenario === 'S3' && values)!
    const answer = await ask(one.calc, toHash(one.input))
    const [id = ''] = Object.keys(one.expect.values ?? {})
    expect(faultsOf(answer, { values: { [id]: -1 }, mustSay: ['a phrase nobody says'] })).toHaveLength(2)
  })
})
