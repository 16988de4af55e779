/** A load is put up on the screen, its labels are printed, and a photo of the printed label opens the jars again. */
import { readFileSync } from 'node:fs'
import { LABEL_SHEETS } from '@crib/paper'
import { PNG } from 'pngjs'
import { expect, test } from 'vitest'
import { codeIn, POPPLER_FOUND, picturesOf, textOf } from '../../../packages/paper/testing/read-pdf.ts'
import { at, harkLake, settleRun, tap } from './hark-lake.ts'
import { describeAtHome, openPage } from './harness.ts'
import { count, seen } from './reading.ts'

const DOTS_PER_MM = 150 / 25.4
const SHEET = LABEL_SHEETS['letter-2x5']
/** The next morning: twelve hours are over and twenty-four are not, so the seals are looked at. */
const NEXT_MORNING = new Date(at('09:00').getTime() + 86_400_000)

const LOG = [
  ['09:40', 'Lid on, knobs fast, vent open'],
  ['09:58', 'Steam is strong and steady'],
  ['10:08', 'Vent closed or weight set'],
  ['10:17', 'Needle at 12 psi (83 kPa)'],
  ['11:20', 'Heat off'],
  ['12:00', 'Pressure at zero'],
  ['12:00', 'Weight off, petcock open'],
  ['12:10', 'Lid off'],
  ['12:15', 'All jars out'],
] as const

/** The label at one place of a printed page, as a photo would hold it. */
function labelAt(page: PNG, place: number): PNG {
  const column = place % SHEET.columnCount
  const row = Math.floor(place / SHEET.columnCount)
  const [x, y, width, height] = [
    SHEET.leftMm + column * (SHEET.widthMm + SHEET.gapXMm),
    SHEET.topMm + row * SHEET.heightMm,
    SHEET.widthMm,
    SHEET.heightMm,
  ].map((mm) => Math.round(mm * DOTS_PER_MM)) as [number, number, number, number]
  const label = new PNG({ width, height })
  PNG.bitblt(page, label, x, y, width, height, 0, 0)
  return label
}

describeAtHome('labels of jars put up on the screen', (home) => {
  test.skipIf(!POPPLER_FOUND)('a printed label is read back, held to the camera, and opens its own jars', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await context.clock.install({ time: NEXT_MORNING })
    await harkLake(page, home.house.url)
    await settleRun(page)
    await page.getByRole('radio', { name: 'It is done: type its log in' }).check()
    await page.getByLabel('Day of the first line').fill('2026-10-03')
    for (const [index, [clock, event]] of LOG.entries()) {
      if (index > 2) await page.getByRole('button', { name: 'One more line' }).click()
      const row = page.getByRole('group', { name: `Line ${index + 1}`, exact: true })
      await row.getByLabel('Clock').fill(clock)
      await row.getByLabel('What happened').selectOption({ label: event })
    }
    await tap(page, 'Write the log down')
    await page.getByRole('heading', { level: 1, name: 'yard canner' }).waitFor()

    const run = page.url()

    // Nine went in; one did not seal, eight go to the shelf.
    await count(page, 'Sealed').fill('8')
    await count(page, 'Not sealed').fill('1')
    await tap(page, 'Write the seals down')
    await page.getByRole('heading', { name: 'Put up' }).waitFor()
    await page.getByLabel('Where', { exact: true }).fill('Cellar, shelf 2')
    await tap(page, 'Put up: write it down')
    await page.getByRole('link', { name: 'Labels for this load' }).click()
    await page.getByRole('heading', { level: 1, name: 'Labels' }).waitFor()
    const loadCode = new URL(page.url()).searchParams.get('load') ?? ''
    expect(loadCode).not.toBe('')

    const coming = page.waitForEvent('download')
    await tap(page, 'As a PDF from the house server')
    const pdf = readFileSync(await (await coming).path())
    const printed = textOf(pdf)
    expect(printed.split(loadCode)).toHaveLength(8 + 1)
    expect(printed).toMatch(/boil \d+ min/i)
    expect(printed).toContain('3 Oct 2026')
    const [sheet, ...more] = picturesOf(pdf, 150)
    expect(more).toEqual([])
    const labels = Array.from({ length: 10 }, (_, place) => labelAt(sheet!, place))
    const codes = labels.map((label) => codeIn(label, { x: 0, y: 0, width: label.width, height: label.height }))
    expect(new Set(codes.slice(0, 8)).size).toBe(1)
    expect(codes[0]).toMatch(/^crib:lot\/[0-9a-f]{12}$/)
    expect(codes.slice(8)).toEqual([null, null])

    await page.goto(`${home.house.url}pantry/scan`)
    const photo = { name: 'label.png', mimeType: 'image/png', buffer: PNG.sync.write(labels[7]!) }
    await page.getByLabel('Take or choose a photo of the label').setInputFiles(photo)
    await page.getByRole('heading', { level: 1, name: loadCode, exact: true }).waitFor()
    const jars = await seen(page, 'main')
    expect(jars).toContain('Cellar, shelf 2')
    expect(jars).toContain('8 pint jars')
    expect(jars).toContain('yard canner')

    // The ninth goes home with a name that no small label holds: refused with the name, and nothing of it printed.
    await page.goto(run)
    const longName = Array.from({ length: 40 }, () => 'the house by the ford').join(' and ')
    await page.getByLabel('Whose', { exact: true }).fill(longName)
    await tap(page, 'Put up: write it down')
    await page.getByRole('link', { name: 'Labels for this load' }).click()
    await page.getByRole('radio', { name: 'Letter, 3 by 10' }).check()
    await page.getByText('This sheet cannot be set as chosen').waitFor()
    await expect.poll(() => seen(page, 'main')).toContain('the house by the ford and the house by the ford')
    expect(await page.getByRole('button', { name: 'Print it from this device' }).count()).toBe(0)
    expect(faults).toEqual([])
    await context.close()
  })
})
