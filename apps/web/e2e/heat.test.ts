/** Heat in the jar: a newcomer in the demo kitchen moves the vent and reads why; a logger's file becomes a filled process log. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { practiceLog } from '@crib/planning'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { at, harkLake, settleRun, tap } from './hark-lake.ts'
import { describeAtHome, goTo, openDemoKitchen, openPage } from './harness.ts'
import { fold, seen, stampedText } from './reading.ts'

/** The invented file of the demo kitchen's second load. */
const EXAMPLE_FILE = join(import.meta.dirname, '../../../examples/ostrey-point-second-load.csv')

/** What "Try with an invented file" gives at Hark Lake. */
const PRACTICE = practiceLog({ elevationM: 655, requiredPsi: 12, processMin: 60, jar: 'pint' })

async function heatPage(page: Page): Promise<void> {
  await page.getByRole('heading', { level: 1, name: 'Heat in the jar' }).waitFor()
  await page.locator('[data-band="whole"]').waitFor()
}

const move = (page: Page, label: string, value: number) => page.getByLabel(label, { exact: true }).fill(String(value))

describeAtHome('heat in the jar', (home) => {
  test('a newcomer drags the vent, sees the band move and reads why ten minutes is the rule', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await openDemoKitchen(page, home.house.url)
    await goTo(page, '/canner', 'Canner')
    await page.getByRole('link', { name: 'Heat in the jar' }).click()
    await heatPage(page)
    const before = await stampedText(page, 'Slowest place when the heat goes off')
    expect(before).toBe('240 °F')
    const drawn = () => page.locator('[data-curve="slowest-place"]').getAttribute('d')
    const curveBefore = await drawn()

    await dragVent(page, 10)
    await move(page, 'Steady steam before the vent is closed', 0)
    await heatPage(page)
    expect(Number.parseFloat(await stampedText(page, 'Slowest place when the heat goes off'))).toBeLessThan(225)
    await expect.poll(() => drawn()).not.toBe(curveBefore)

    await page.locator('[data-quality="whole"]').waitFor()
    await expect.poll(() => stampedText(page, 'Softened as by a boil of')).toMatch(/^\d+ min/)
    const food = await seen(page, '[data-quality="whole"]')
    expect(food).toContain('No figures for hominy were found')
    expect(food).toMatch(/between \d/)

    await fold(page, 'Why ten minutes of steam')
    await page.getByText('Vent 10 min of steady steam before closing, every load').first().waitFor()
    const said = await seen(page, 'main')
    expect(said).toContain('One study of three canners')
    expect(said).toContain('This does not change what the published directions say.')
    expect(said).not.toMatch(/\bsafe\b|\bpure\b|more than enough/i)
    await page.getByRole('button', { name: '10 min', exact: true }).click()
    await heatPage(page)
    await expect.poll(() => stampedText(page, 'Slowest place when the heat goes off')).toBe(before)

    // The moment looked at: by the keyboard, as by a finger.
    await page.getByLabel('Moment of the run', { exact: true }).focus()
    await page.keyboard.press('Home')
    await expect.poll(() => seen(page, 'main')).toContain('0 min: heating up')

    await fold(page, 'More to move')
    await page.getByRole('radio', { name: 'pressed tight' }).check()
    await page.locator('svg[aria-label*="packed tight"]').waitFor()

    const [svg] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'As a drawing (SVG)' }).click(),
    ])
    const drawing = readFileSync(await svg.path(), 'utf8')
    expect(drawing).toContain('This does not change what the published directions say.')
    expect(drawing).not.toContain('var(--')
    const [png] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'As an image (PNG)' }).click(),
    ])
    expect(
      readFileSync(await png.path())
        .subarray(1, 4)
        .toString(),
    ).toBe('PNG')
    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'As numbers (CSV)' }).click(),
    ])
    expect(readFileSync(await csv.path(), 'utf8')).toMatch(/\ntime_min,canner_c,slowest_place_c/)
    // What was moved is kept over a reload.
    await page.reload()
    await page.locator('svg[aria-label*="packed tight"]').waitFor()
    // And printed as it was left.
    await page.getByRole('link', { name: 'Heat in the jar, on paper' }).click()
    await page.locator('.paper-look h1', { hasText: 'A made-up jar in a canner' }).waitFor()
    const sheet = await seen(page, '.paper-look')
    for (const words of [
      'pressed tight',
      'nine tenths of made-up jars',
      'Vent 10 min of steady steam before closing',
    ]) {
      expect(sheet).toContain(words)
    }
    expect(faults).toEqual([])
    await context.close()
  })

  test("a newcomer opens the demo's load, moves its vent, reads the rule, and fills the other load's log from its file", async () => {
    const { context, page, faults } = await openPage(home.browser)
    await openDemoKitchen(page, home.house.url)
    await goTo(page, '/canner', 'Canner')
    await page.getByRole('link', { name: /^OSTR-\d{6}-A1$/ }).click()
    await page.getByRole('heading', { level: 1, name: 'yard canner' }).waitFor()
    await page.getByRole('link', { name: 'Heat in the jar' }).click()
    await heatPage(page)
    await expect.poll(() => seen(page, 'main')).toMatch(/OSTR-\d{6}-A1/)
    await page.getByText('Invented demo, not a real kitchen').waitFor()

    const drawn = (what: string) => page.locator(`[data-curve="${what}"]`).getAttribute('d')
    const shown = () =>
      Promise.all([
        stampedText(page, 'Slowest place when the heat goes off'),
        seen(page, '[data-band="whole"]'),
        ...['slowest-place', 'band'].map(drawn),
      ])
    const before = await shown()
    await dragVent(page, 6)
    await move(page, 'Steady steam before the vent is closed', 0)
    await heatPage(page)
    const after = await shown()
    for (const [index, was] of before.entries()) expect(after[index]).not.toBe(was)
    await fold(page, 'Why ten minutes of steam')
    await page.getByText('Vent 10 min of steady steam before closing, every load').first().waitFor()
    const said = await seen(page, 'main')
    expect(said).toContain('This does not change what the published directions say.')
    // A load of the book: temperatures, and no total of them.
    expect(said).not.toMatch(/F0|log reductions|\bsafe\b|more than enough/i)
    expect(await page.locator('[data-curve="lethal-rate"]').count()).toBe(0)

    await goTo(page, '/canner', 'Canner')
    await page.getByRole('link', { name: /^OSTR-\d{6}-A2$/ }).click()
    await page.getByRole('heading', { level: 1, name: 'yard canner' }).waitFor()
    await page.getByRole('link', { name: "A logger's file" }).click()
    await page.getByRole('heading', { level: 1, name: "A logger's file" }).waitFor()
    await drop(page, readFileSync(EXAMPLE_FILE, 'utf8'))
    // Its head says every column, and its clock needs only the day of the load, which is filled in.
    await tap(page, 'Read the file')
    await page.getByText('418 lines, 415 readings.').waitFor()
    const found = await seen(page, '#found')
    expect(found).toContain('start the full time again')
    expect(found).not.toMatch(/lethality of|F0|\bsafe\b|enough/i)
    await page.getByRole('button', { name: 'Write these lines into the log' }).click()
    await page.getByText('Written into the log.').waitFor()
    await page.getByRole('link', { name: /^Temperatures of load OSTR-\d{6}-A2$/ }).click()
    await page.locator('.paper-look h1', { hasText: 'Temperatures of load' }).waitFor()
    const temperatures = await seen(page, '.paper-look')
    expect(temperatures).toContain('jar (°C), as measured')
    expect(temperatures).toContain('modelled: packed solid')
    expect(temperatures).toContain('13:30 dipped, 8.5 psi')
    expect(temperatures).toContain('This does not change what the published directions say.')
    expect(temperatures).not.toMatch(/lethality|F0|\bsafe\b|enough/i)
    await goTo(page, '/paper', 'Paper')
    await page.getByRole('link', { name: /^Log of load OSTR-\d{6}-A2$/ }).click()
    await page.locator('.paper-look h1', { hasText: /OSTR-\d{6}-A2/ }).waitFor()
    const log = await seen(page, '.paper-look')
    for (const clock of ['12:29', '12:44', '12:55', '13:01', '13:30', '13:36', '14:49', '15:29', '15:43', '15:48']) {
      expect(log).toContain(clock)
    }
    expect(log).toContain('held 11 psi')
    expect(faults).toEqual([])
    await context.close()
  })

  test('a file dropped on the page becomes a filled process log, each column asked about and each line confirmed', async () => {
    const { context, page, faults } = await openPage(home.browser)
    // The evening of the scenario's day: its dial was tested that spring.
    await context.clock.install({ time: at('20:00') })
    await harkLake(page, home.house.url)
    await settleRun(page)
    await tap(page, 'I hold 12 psi: begin')
    await page.getByRole('link', { name: "Bring in a logger's file" }).click()
    await page.getByRole('heading', { level: 1, name: "A logger's file" }).waitFor()

    // °F said to be °C is refused with the row.
    const wrong = PRACTICE.replace(/^90,[\d.]+,/m, '90,240,')
    await drop(page, wrong)
    await page.getByLabel('Clock at minute 0 of the file').fill('09:00')
    await tap(page, 'Read the file')
    await page.getByText('It looks like °F').waitFor()
    await expect.poll(() => seen(page, '#report')).toContain('column "canner (°C)": 240 is hotter than a canner can be')

    // The head says the units of all but one; that one is asked for before anything is read.
    const unsaid = PRACTICE.replace('jar (°C)', 'jar')
    await drop(page, unsaid)
    await page.getByText('Still to say: what "jar" is.').waitFor()
    await expect.poll(() => page.getByRole('button', { name: 'Read the file' }).isDisabled()).toBe(true)
    await page.getByLabel('What is "jar"?').selectOption({ label: 'a probe in a jar' })
    await page.getByRole('group', { name: 'Unit of "jar"' }).getByRole('radio', { name: '°C' }).check()
    await page.getByLabel('Day on which the file begins').fill('2026-10-03')
    await page.getByLabel('Clock at minute 0 of the file').fill('09:00')
    await tap(page, 'Read the file')
    await page.getByText('373 lines, 371 readings.').waitFor()
    await fold(page, '2 cells and rows were not taken')
    await expect.poll(() => seen(page, '#report')).toContain('column "jar" is empty.')

    const found = await seen(page, '#found')
    expect(found).toContain('the pressure was below the line, down to 9.5 psi')
    expect(found).toContain('start the full time again')
    expect(found).toContain('This does not change what the published directions say.')
    expect(found).not.toMatch(/lethality|\bsafe\b|enough/i)

    await page.getByRole('button', { name: 'Write these lines into the log' }).click()
    await page.getByText('Written into the log.').waitFor()
    await page.getByRole('link', { name: 'The process log, filled in' }).click()
    await page.getByRole('heading', { level: 1, name: /^Log of load/ }).waitFor()
    const log = await seen(page, '.paper-look')
    for (const clock of ['09:14', '09:25', '09:31', '10:00', '10:06', '11:09']) expect(log).toContain(clock)
    expect(faults).toEqual([])
    await context.close()
  })

  test('a file of 200,000 rows is read beside the page, can be stopped, and none of its rows stays in the page', async () => {
    const { context, page, faults } = await openPage(home.browser)
    page.setDefaultTimeout(60_000)
    await openDemoKitchen(page, home.house.url)
    await page.goto(`${home.house.url}heat/replay`)
    const rows = Array.from({ length: 200_000 }, (_, k) => `${k / 10},${(100 + 16 * Math.sin(k / 40_000)).toFixed(2)}`)
    const buffer = Buffer.from(`time (s),canner (C)\n${rows.join('\n')}\n`)
    await page.getByLabel('Drop a logger').setInputFiles({ name: 'long.csv', mimeType: 'text/csv', buffer })
    await page.getByLabel('Clock at minute 0 of the file').fill('09:00')
    const heapBytes = await heapOf(page)
    // Within one turn of the page, before the worker can be done.
    await page.evaluate(`(async () => {
      const named = (name) => [...document.querySelectorAll('button')].find((one) => one.textContent === name)
      named('Read the file').click()
      await new Promise(requestAnimationFrame)
      if (!document.querySelector('.heat-working progress')) throw new Error('no progress is shown')
      named('Stop').click()
    })()`)
    await page.locator('.heat-working').waitFor({ state: 'detached' })
    expect(await page.locator('#report').count()).toBe(0)
    const before = await heapBytes()
    await tap(page, 'Read the file')
    await page.getByText('200,001 lines, 200,000 readings.').waitFor()
    // The text alone is 3 MB; what is kept are a few thousand points.
    expect((await heapBytes()) - before).toBeLessThan(3e6)
    expect(faults).toEqual([])
    await context.close()
  })
})

/** Moves the vent back and forth, a move a frame; throws where the curve has not followed by the end of its frame. */
async function dragVent(page: Page, moves: number): Promise<void> {
  await page.evaluate(`(async () => {
    const slider = [...document.querySelectorAll('input[type=range]')].find((one) => one.max === '20')
    const curve = () => document.querySelector('[data-curve="slowest-place"]').getAttribute('d')
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set
    for (let k = 0; k < ${moves}; k += 1) {
      await new Promise(requestAnimationFrame)
      const before = curve()
      set.call(slider, String(k % 2 === 0 ? 3 : 12))
      slider.dispatchEvent(new Event('input', { bubbles: true }))
      await Promise.resolve()
      if (curve() === before) throw new Error('the curve did not follow')
    }
  })()`)
}

async function drop(page: Page, text: string): Promise<void> {
  const transfer = await page.evaluateHandle(
    `(() => { const held = new DataTransfer(); held.items.add(new File([${JSON.stringify(text)}], 'run.csv', { type: 'text/csv' })); return held })()`,
  )
  await page.dispatchEvent('.drop-here', 'drop', { dataTransfer: transfer })
}

/** What the page itself holds once its garbage is gone. [bytes] */
async function heapOf(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page)
  return async () => {
    await session.send('HeapProfiler.collectGarbage')
    return (await session.send('Runtime.getHeapUsage')).usedSize
  }
}
