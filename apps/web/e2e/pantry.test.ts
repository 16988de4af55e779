/** Reading labels, using a jar, recalling exactly the jars of a gauge, a drill, and one harvest kept five ways. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { recordAddress } from '@crib/journal'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { photoOf, writeCameraFile } from './drawn-codes.ts'
import { describeInBrowser, type House, launchChromium, openDemoKitchen, openPage, startHouse } from './harness.ts'
import { count, readSheet, seen, stampedText } from './reading.ts'
import { type ToldVillage, tellVillage } from './told-village.ts'

describeInBrowser('the pantry', () => {
  const folder = mkdtempSync(join(tmpdir(), 'kettle-label-'))
  let house: House
  let village: ToldVillage
  let browser: Browser

  beforeAll(async () => {
    house = await startHouse()
    village = await tellVillage(house)
    const film = join(folder, 'label.y4m')
    writeCameraFile(film, recordAddress('lot', village.lotIdOfB1))
    browser = await launchChromium(
      ...['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream'],
      `--use-file-for-fake-video-capture=${film}`,
    )
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
    rmSync(folder, { recursive: true, force: true })
  })

  async function joinVillage(page: Page): Promise<void> {
    await page.goto(house.url)
    await page.getByRole('button', { name: `ending in ${village.kitchenId.slice(-4)}` }).click()
    await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
    await page.getByText('Millrind').first().waitFor()
  }
  const open = async (page: Page, path: string, heading: string) => {
    await page.goto(new URL(path, house.url).href)
    await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
  }

  test('a label held before the camera opens its jars, and one is opened and found good', async () => {
    const { context, page, faults } = await openPage(browser)
    await joinVillage(page)
    await open(page, '/pantry', 'Pantry')
    await page.getByRole('link', { name: 'Read a label' }).click()
    await page.getByRole('button', { name: 'Look through the camera' }).click()
    await page.getByRole('heading', { level: 1, name: 'MILL-261003-B1', exact: true }).waitFor()
    const sheet = await seen(page, 'main')
    expect(sheet).toContain(`For ${village.householdOfB1}.`)
    expect(sheet).toContain('Copper Hinge flint')
    expect(sheet).toContain('M-1')
    const before = Number(/(\d+) pint jars?/.exec(sheet)?.[1])
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByText('1 opened, good.').waitFor()
    expect(Number(/(\d+) pint jars?/.exec(await seen(page, 'main'))?.[1])).toBe(before - 1)
    expect(faults).toEqual([])
    await context.close()
  })

  test('a photo of a label is read without a connection; foreign, unknown and damaged ones are told apart', async () => {
    const { context, page, faults } = await openPage(browser)
    await joinVillage(page)
    await open(page, '/pantry/scan', 'Read a label')
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true))
    await page.reload()
    await page.getByRole('heading', { level: 1, name: 'Read a label' }).waitFor()
    await context.setOffline(true)
    const photo = page.getByLabel('Take or choose a photo of the label')
    await photo.setInputFiles(photoOf('https://example.org/jar/7'))
    await page.getByText('That is no label of this book. It says: https://example.org/jar/7').waitFor()
    await photo.setInputFiles(photoOf('crib:lot/ffffffffffff'))
    await page.getByText('this book does not hold its record').waitFor()
    await photo.setInputFiles(photoOf(recordAddress('lot', village.lotIdOfB1), { thumb: true }))
    await page.getByText('That code could not be read. Type what is printed beside it.').waitFor()
    await photo.setInputFiles({ name: 'note.txt', mimeType: 'image/png', buffer: Buffer.from('no picture') })
    await page.getByText('That file is no picture this browser can read.').waitFor()
    await photo.setInputFiles(photoOf(recordAddress('lot', village.lotIdOfB1)))
    await page.getByRole('heading', { level: 1, name: 'MILL-261003-B1', exact: true }).waitFor()
    expect(faults).toEqual([])
    await context.close()
  })

  test('where the camera may not open, the code is typed: small letters do, and a stranger is named', async () => {
    const { context, page } = await openPage(browser)
    await page.addInitScript(() => Object.defineProperty(window, 'isSecureContext', { value: false }))
    await joinVillage(page)
    await open(page, '/pantry/scan', 'Read a label')
    await page.getByText('The camera opens only on a secure address').waitFor()
    await page.getByLabel('Code on the label').fill('mill-261003-b2')
    await page.getByRole('button', { name: 'Open it' }).click()
    await page.getByText('More than one lot carries MILL-261003-B2.').waitFor()
    await page.getByLabel('Code on the label').fill('ELSE-1')
    await page.getByRole('button', { name: 'Open it' }).click()
    await page.getByText('This book does not know the code ELSE-1.').waitFor()
    await context.close()
  })

  // S6: B holds 9 pints a round, three rounds: 27; loads B1 to B3 and no other.
  test('a dial found bad recalls exactly its 27 pints, and the recall is written down with who was told', async () => {
    const { context, page, faults } = await openPage(browser)
    await joinVillage(page)
    await open(page, '/pantry/recall', 'Recall')
    await page.getByRole('radio', { name: 'Dial of B' }).check()
    await expect.poll(() => stampedText(page, 'All jars and packs')).toBe('27')
    await expect.poll(() => stampedText(page, 'Loads')).toBe('3')
    const table = await seen(page, 'main .ledger')
    for (const code of ['B1', 'B2', 'B3']) expect(table).toContain(`MILL-261003-${code}`)
    expect(table).not.toMatch(/MILL-261003-[AC]/)
    await page.getByLabel('Why').fill('The dial read 3 psi high.')
    await page.getByRole('checkbox', { name: village.householdOfB1, exact: true }).check()
    await page.reload()
    await page.getByText('27').first().waitFor()
    await expect.poll(() => page.getByLabel('Why').inputValue()).toBe('The dial read 3 psi high.')
    await page.getByRole('button', { name: 'Write the recall down' }).click()
    await page.getByText(/recall, B, 27 jars\./).waitFor()
    await expect.poll(() => seen(page, 'main')).toContain(`Told: ${village.householdOfB1}.`)
    await page.getByRole('radio', { name: 'Ash or other alkali' }).check()
    await page.getByRole('radio', { name: 'M-1' }).check()
    await expect.poll(() => stampedText(page, 'All jars and packs')).toBe('96')
    expect(faults).toEqual([])
    await context.close()
  })

  test('a drill goes on through a reload, tells what was missed, and is written down', async () => {
    const { context, page, faults } = await openPage(browser)
    await joinVillage(page)
    await open(page, '/pantry/recall/drill', 'Drill')
    await page.getByRole('button', { name: 'Pick a load and begin' }).click()
    await page.getByText(/Drill: find every jar that shares an origin with MILL-261003-/).waitFor()
    await page.reload()
    await page.getByText('Looking for 0 minutes.').waitFor()
    await page.getByRole('button', { name: 'Done looking' }).click()
    await page.getByText(/not found\. Look where the book says: cellar\./).waitFor()
    for (const tag of await page.getByRole('checkbox').all()) await tag.check()
    await page.getByText(/^All \d+ found\.$/).waitFor()
    await page.getByRole('button', { name: 'Write the drill down' }).click()
    await page.getByRole('button', { name: 'Pick a load and begin' }).waitFor()
    await open(page, '/pantry/recall', 'Recall')
    await page.getByText(/drill, MILL-261003-.., \d+ jars to find\. It took/).waitFor()
    expect(faults).toEqual([])
    await context.close()
  })

  // S6: 96 x 1.05 = 100.8 -> 101.
  test('the lids of the village are bought with their spares', async () => {
    const { context, page } = await openPage(browser)
    await joinVillage(page)
    await open(page, '/pantry/buy', 'Lids and jars to buy')
    await count(page, 'Jars of the plan').fill('96')
    await count(page, 'Empty jars at hand').fill('90')
    await expect.poll(() => stampedText(page, 'Lids to buy')).toBe('101')
    await expect.poll(() => stampedText(page, 'New jars to buy')).toBe('6')
    await context.close()
  })

  test('a jar that bulged is told so, with what to do, and leads to the others of its load', async () => {
    const { context, page, faults } = await openPage(browser)
    await joinVillage(page)
    await open(page, `/pantry/lot/${village.lotIdOfB1}`, 'MILL-261003-B1')
    await page.getByRole('radio', { name: 'Bulged' }).check()
    await page.getByText('is not opened to look and not tasted').first().waitFor()
    await page.getByRole('button', { name: 'Write it down' }).click()
    await page.getByText('1 opened. Bulged.').waitFor()
    await page.getByRole('link', { name: 'All jars of MILL-261003-B1' }).first().click()
    await page.getByRole('heading', { level: 1, name: 'Recall' }).waitFor()
    await expect.poll(() => stampedText(page, 'All jars and packs')).toBe('9')
    expect(faults).toEqual([])
    await context.close()
  })

  // By hand in packages/planning/src/pantry/five-ways.test.ts: ten pounds, each named.
  test('in the demo one harvest goes five ways, and every pound is found or accounted for', async () => {
    const { context, page, faults } = await openPage(browser)
    await openDemoKitchen(page, house.url)
    await open(page, '/pantry', 'Pantry')
    await page.getByRole('button', { name: 'See one invented harvest kept five ways' }).click()
    await page.getByText('1 opened. Insects.').waitFor()
    await page.getByRole('link', { name: 'Where all of it went' }).click()
    await expect.poll(() => stampedText(page, 'Dry grain that went into the kettle')).toBe('10 lb')
    const table = await seen(page, 'main .ledger')
    for (const [what, pounds] of [
      ...[['Hominy in jars', '1.37 lb'] as const, ['Hominy in the freezer', '1.9 lb'] as const],
      ...[['Dried hominy', '0.57 lb'] as const, ['Flour', '1.07 lb'] as const, ['Roasted hominy', '1.16 lb'] as const],
      ...[['Eaten', '1.29 lb'] as const, ['Given away', '0.91 lb'] as const, ['Thrown out', '0.57 lb'] as const],
      ['All together', '10 lb'] as const,
    ])
      expect(table).toMatch(new RegExp(`${what} ${pounds.replace('.', '\\.')}`))
    await expect.poll(() => readSheet(page)).toContain('Invented demo')
    expect(faults).toEqual([])
    await context.close()
  })
})
