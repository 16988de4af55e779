/** Looking at an opened page the way a person with another eye, another hand or larger letters would. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

export const THEMES = ['light', 'dark', 'contrast'] as const
export type Theme = (typeof THEMES)[number]

/** axe-core, to be run in the page. */
export const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

interface AxeFinding {
  readonly id: string
  readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary: string }[]
}

/** WCAG 2.2 A and AA, and axe's own best practice. */
const EVERY_RULE = '["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]'
/** The rules that read colours or sizes; all others read the elements alone, which are the same in every theme. */
const RULES_OF_A_THEME =
  '{ type: "rule", values: ["color-contrast", "link-in-text-block", "target-size", "scrollable-region-focusable"] }'

/** What axe finds by every rule. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  // axe asks for the style sheets again, and waits in vain for them without a network.
  return findingsOf(page, `{ preload: navigator.onLine, runOnly: ${EVERY_RULE} }`)
}

/** What axe finds in every theme: by every rule in the first, by those that a theme can change in the others. */
export async function findingsInEveryTheme(page: Page): Promise<readonly string[]> {
  const found: string[] = []
  for (const theme of THEMES) {
    await putOn(page, theme)
    const findings =
      theme === THEMES[0]
        ? await axeFindings(page)
        : await findingsOf(page, `{ preload: false, runOnly: ${RULES_OF_A_THEME} }`)
    found.push(...findings.map((finding) => `${theme}: ${finding}`))
  }
  return found
}

async function findingsOf(page: Page, options: string): Promise<readonly string[]> {
  if (!(await page.evaluate('"axe" in window'))) await page.evaluate(AXE)
  const violations = (await page.evaluate(
    `axe.run(document, { resultTypes: ["violations"], ...${options} }).then((r) => r.violations)`,
  )) as readonly AxeFinding[]
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target}: ${failureSummary}`),
  )
}

/** Puts the theme on as the house does. */
export async function putOn(page: Page, theme: Theme): Promise<void> {
  await page.evaluate((name) => {
    document.documentElement.dataset.theme = name
  }, theme)
}

export async function setTextSize(page: Page, percent: number): Promise<void> {
  await page.evaluate((size) => {
    document.documentElement.style.fontSize = size
  }, `${percent}%`)
}

/** Takes off theme and letters again, as a page opened anew would be. */
export async function asOpened(page: Page): Promise<void> {
  await page.evaluate(() => {
    document.documentElement.removeAttribute('data-theme')
    document.documentElement.style.removeProperty('font-size')
  })
}

/** How far the page can be scrolled sideways. [px] */
export async function sidewaysPx(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
}

/** Addresses inside the book that the page leads to, with ids and calculation names taken out. */
export async function roadsFrom(page: Page): Promise<readonly string[]> {
  const hrefs = await page
    .locator('a[href^="/"]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href')))
  return hrefs.flatMap((href) => (href === null ? [] : [pattern(href)]))
}

/** `/canner/run/0192…` as `/canner/run/:id`. */
export function pattern(path: string): string {
  return path
    .replace(/[#?].*$/, '')
    .replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, ':id')
    .replace(/^\/workbench\/.+$/, '/workbench/:calc')
}

/** Goes from field to field by the Tab key until the named thing has the focus; fails when it is never reached. */
export async function tabTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 150; presses += 1) {
    await page.keyboard.press('Tab')
    if ((await page.evaluate(() => document.activeElement?.textContent ?? '')).trim() === name) return
  }
  throw new Error(`"${name}" is not reached by the Tab key`)
}
