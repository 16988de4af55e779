/** Reading a sheet and tapping on it as a person does: visible words, stamped numbers, folds, counts. */
import type { Locator, Page } from 'playwright-core'

/** Words as a person sees them, spaces as one: nothing that is folded away or hidden. */
export async function seen(page: Page, selector: string): Promise<string> {
  const text = (await page.evaluate(`document.querySelector(${JSON.stringify(selector)})?.innerText ?? ''`)) as string
  return text.replace(/\s+/g, ' ').trim()
}

/** What stands on the sheet with its folds opened. */
export async function readSheet(page: Page): Promise<string> {
  await page.evaluate('document.querySelectorAll("main details.fold").forEach((fold) => { fold.open = true })')
  return seen(page, 'main')
}

/** A stamped number with its unit, by its name; inside `within` where a sheet has several of one name. */
export async function stampedText(page: Page, label: string, within = 'main'): Promise<string> {
  await page
    .locator(`${within} .stamped-name`, { hasText: new RegExp(`^${label}$`) })
    .first()
    .waitFor()
  return (await page.evaluate(
    `[...document.querySelector(${JSON.stringify(within)}).querySelectorAll('.stamped')]
      .find((each) => each.querySelector('.stamped-name').innerText === ${JSON.stringify(label)})
      .querySelector('.stamped-value').innerText.replace(/\\s+/g, ' ').trim()`,
  )) as string
}

export function count(page: Page, name: string): Locator {
  return page.getByRole('textbox', { name, exact: true })
}

export async function fold(page: Page, title: string | RegExp): Promise<void> {
  await page.locator('summary').filter({ hasText: title }).first().click()
}
