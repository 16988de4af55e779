/** Every page in every theme: no axe finding, no sideways scroll on a phone, nothing lost at 200 % text. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, Page } from 'playwright-core'
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

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

const THEMES = ['light', 'dark', 'contrast'] as const

/** Each address with the heading that says it is there. A part that is not listed fails the last test. */
const PAGES: readonly (readonly [path: string, heading: string])[] = [
  ['/', 'The year'],
  ['/seed', 'Seed'],
  ['/crib', 'Crib'],
  ['/kettle', 'Kettle'],
  ['/canner', 'Canner'],
  ['/keeping', 'Keeping'],
  ['/pantry', 'Pantry'],
  ['/field', 'Field'],
  ['/paper', 'Paper'],
  ['/workbench', 'Workbench'],
  ['/house', 'The house'],
  ['/no-such-page', 'No such page'],
]

const STATES = [
  ['an empty book', openOwnBook],
  ['the demo kitchen', openDemoKitchen],
] as const

interface AxeFinding {
  readonly id: string
  readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary: string }[]
}

async function axeFindings(page: Page): Promise<readonly string[]> {
  const violations = (await page.evaluate(
    'axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }).then((r) => r.violations)',
  )) as readonly AxeFinding[]
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target}: ${failureSummary}`),
  )
}

/** Opens every fold, so that what is inside is looked at as well. */
async function openFolds(page: Page): Promise<void> {
  await page.evaluate('document.querySelectorAll("main details").forEach((fold) => { fold.open = true })')
}

const overflowPx = (page: Page) =>
  page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth') as Promise<number>

describeInBrowser('every page', () => {
  let house: House
  let browser: Browser
  const visited = new Set<string>()

  beforeAll(async () => {
    house = await startHouse()
    browser = await launchChromium()
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
  })

  for (const theme of THEMES) {
    for (const [state, open] of STATES) {
      test(`is clean for axe and fits a phone and a laptop: ${theme}, ${state}`, async () => {
        const { context, page, faults } = await openPage(browser)
        await context.addInitScript(AXE)
        await context.addInitScript(`localStorage.setItem('theme', '${theme}')`)
        await open(page, house.url)
        const findings: string[] = []
        for (const [path, heading] of PAGES) {
          await page.goto(new URL(path, house.url).href)
          await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
          visited.add(path)
          await openFolds(page)
          findings.push(...(await axeFindings(page)).map((finding) => `${path}: ${finding}`))
          for (const viewport of [LAPTOP, PHONE]) {
            await page.setViewportSize(viewport)
            expect(await overflowPx(page), `${path} at ${viewport.width} px scrolls sideways`).toBe(0)
          }
        }
        expect(findings).toEqual([])
        expect(faults).toEqual([])
        await context.close()
      })
    }

    test(`the threshold and a book that cannot open are clean for axe: ${theme}`, async () => {
      const { context, page } = await openPage(browser)
      await context.addInitScript(AXE)
      await context.addInitScript(`localStorage.setItem('theme', '${theme}')`)
      await page.goto(house.url)
      await page.getByRole('heading', { level: 1, name: 'Kettle & Crib' }).waitFor()
      expect(await axeFindings(page)).toEqual([])
      await context.addInitScript('indexedDB.open = () => { throw new Error("no storage here") }')
      await page.reload()
      await page.getByRole('heading', { level: 1, name: 'This page did not open' }).waitFor()
      expect(await axeFindings(page)).toEqual([])
      await context.close()
    })
  }

  test('keeps every word at 200 % text on a phone, without scrolling sideways', async () => {
    const { context, page } = await openPage(browser)
    await openDemoKitchen(page, house.url)
    await context.addInitScript(
      `addEventListener('DOMContentLoaded', () => { document.documentElement.style.fontSize = '200%' })`,
    )
    const tooWide: string[] = []
    for (const [path, heading] of PAGES) {
      await page.goto(new URL(path, house.url).href)
      await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
      await openFolds(page)
      const size = await page.evaluate('parseFloat(getComputedStyle(document.documentElement).fontSize)')
      expect(size).toBe(32)
      if ((await overflowPx(page)) > 0) tooWide.push(path)
    }
    expect(tooWide).toEqual([])
    await context.close()
  })

  test('gives every thing to tap at least 56 px of height', async () => {
    const { context, page } = await openPage(browser)
    await openDemoKitchen(page, house.url)
    const small: string[] = []
    for (const [path, heading] of PAGES) {
      await page.goto(new URL(path, house.url).href)
      await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
      await openFolds(page)
      const found =
        (await page.evaluate(`[...document.querySelectorAll('button, summary, .choice, .tag, input.written')]
        .filter((e) => e.offsetParent !== null && e.getBoundingClientRect().height < 56)
        .map((e) => e.className + ' ' + e.textContent)`)) as string[]
      small.push(...found.map((what) => `${path}: ${what}`))
    }
    expect(small).toEqual([])
    await context.close()
  })

  test('no part on the shelf was left unvisited', async () => {
    const { context, page } = await openPage(browser)
    await openDemoKitchen(page, house.url)
    const tags = (await page.evaluate(
      '[...document.querySelectorAll(".shelf a")].map((tag) => tag.getAttribute("href"))',
    )) as string[]
    expect(tags.length).toBeGreaterThanOrEqual(11)
    expect(tags.filter((path) => !visited.has(path))).toEqual([])
    await context.close()
  })
})
