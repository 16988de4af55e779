/**
 * Takes the pictures of docs/look: run by hand after the screens were built anew (`npm run pictures`). Every picture
 * shows an invented kitchen that says so. A screen that is not there is named, and the run ends with 1.
 */
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { type House, LAPTOP, launchChromium, openDemoKitchen, openPage, PHONE, startHouse } from './harness.ts'
import { putOn } from './look-at.ts'
import { duringABatch, joinBook, runningCanner, type ToldBook } from './told-books.ts'

const FOLDER = join(import.meta.dirname, '../../../docs/look')
/** The heading that says the screen asked for is not there. */
const NOT_THERE = 'No such page'

interface Picture {
  readonly name: string
  /** Opens the kitchen and gives the address of the screen in it. */
  readonly open: (page: Page, house: House) => Promise<string>
  /** What a person answers there before the screen is what is pictured. */
  readonly answer?: (page: Page) => Promise<void>
}

const told = async (page: Page, house: House, tell: (house: House, demo: boolean) => Promise<ToldBook>) => {
  const book = await tell(house, true)
  await joinBook(page, house, book)
  return book
}

const PICTURES: readonly Picture[] = [
  { name: 'home', open: async (page, house) => openDemoKitchen(page, house.url).then(() => '/') },
  {
    name: 'plan',
    open: async (page, house) => openDemoKitchen(page, house.url).then(() => '/plan'),
    answer: async (page) => {
      await page.getByRole('button', { name: 'Put by, by eye' }).click()
      await page.getByLabel('Freezer', { exact: true }).check()
      await page.getByRole('button', { name: 'Lay out the day' }).click()
      await page.getByRole('heading', { level: 1, name: 'Plan a day' }).waitFor({ state: 'detached' })
    },
  },
  { name: 'walk', open: async (page, house) => `/kettle/${(await told(page, house, duringABatch)).batchId}` },
  { name: 'run', open: async (page, house) => `/canner/run/${(await told(page, house, runningCanner)).runId}` },
  { name: 'card', open: async (page, house) => `/canner/card/${(await told(page, house, duringABatch)).cannerId}` },
]

/** What is missing, in words; none when every picture was taken. */
async function take(browser: Browser, house: House, { name, open, answer }: Picture): Promise<readonly string[]> {
  const { context, page } = await openPage(browser)
  try {
    const path = await open(page, house)
    await page.goto(new URL(path, house.url).href)
    const heading = page.getByRole('heading', { level: 1 })
    await heading.filter({ hasNotText: 'Opening the book' }).waitFor()
    if ((await heading.textContent()) === NOT_THERE) return [`${name}: there is no such screen at ${path}`]
    await answer?.(page)
    await page.getByText('Invented demo, not a real kitchen').waitFor()
    await page.evaluate(() => document.fonts.ready.then(() => true))
    for (const theme of ['light', 'dark'] as const) {
      await putOn(page, theme)
      for (const viewport of [PHONE, LAPTOP]) {
        await page.setViewportSize(viewport)
        await page.screenshot({ path: join(FOLDER, `${name}-${viewport.width}-${theme}.png`) })
      }
    }
    return []
  } catch (error) {
    return [`${name}: ${error instanceof Error ? error.message : String(error)}`]
  } finally {
    await context.close()
  }
}

mkdirSync(FOLDER, { recursive: true })
const house = await startHouse()
const browser = await launchChromium()
const missing: string[] = []
for (const picture of PICTURES) missing.push(...(await take(browser, house, picture)))
await browser.close()
await house.remove()
for (const line of missing) console.error(line)
console.log(`${PICTURES.length - missing.length} of ${PICTURES.length} screens pictured in docs/look`)
process.exit(missing.length === 0 ? 0 : 1)
