/** Two canners on one day at Hark Lake landing (invented), in a real browser, each with its own sheet and its own clock. */
import { expect, test } from 'vitest'
import { at, bringToPressure, entriesOnServer, farSays, harkLake, tap } from './hark-lake.ts'
import { describeAtHome, goTo, openPage } from './harness.ts'

describeAtHome('two canners', (home) => {
  test('two canners each keep their own sheet, and a departure travels with every jar of its load', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await context.clock.install({ time: at('09:30') })
    await harkLake(page, home.house.url)
    await page.getByText('A canner', { exact: true }).click()
    await page.getByLabel('Canner', { exact: true }).fill('porch canner')
    await page.getByRole('radio', { name: 'Weight', exact: true }).check()
    await page.getByRole('button', { name: 'Write the canner down' }).click()
    await page.getByRole('rowheader', { name: 'porch canner' }).waitFor()
    await page.getByRole('link', { name: 'Begin a canner run' }).click()
    await page.getByRole('radio', { name: 'yard canner' }).check()
    await page.getByRole('radio', { name: 'Yes: hot pack' }).check()
    await page.getByRole('button', { name: 'I have read this' }).click()
    await bringToPressure(page)

    await page.clock.resume()
    await goTo(page, '/canner', 'Canner')
    await page.getByRole('link', { name: 'yard canner done at 11:00' }).waitFor()
    await page.getByRole('link', { name: 'Begin a canner run' }).click()
    await page.getByRole('radio', { name: 'porch canner' }).check()
    await page.getByRole('radio', { name: 'Yes: hot pack' }).check()
    // 2,150 ft: above 1,000 ft the 15 lb weight.
    await tap(page, 'I use the 15 lb weight: begin')
    await page.getByRole('heading', { level: 1, name: 'porch canner' }).waitFor()
    await page.clock.pauseAt(at('10:05'))
    for (const name of ['All of this is so: loaded', 'Lid on, knobs fast, vent open', 'Steam is strong and steady']) {
      await tap(page, name)
    }
    await page.clock.pauseAt(at('10:12'))
    await tap(page, 'Vent closed or weight set')
    await tap(page, 'It is closed: write it down')
    await page.clock.pauseAt(at('10:20'))
    await tap(page, 'It jiggles or rocks')
    await farSays(page, '11:20')
    await page.getByRole('link', { name: 'yard canner done at 11:00' }).waitFor()
    await page.clock.pauseAt(at('11:20'))
    await tap(page, 'Heat off')
    await page.clock.pauseAt(at('12:00'))
    await tap(page, 'Pressure at zero')
    await tap(page, 'Weight off, petcock open')
    await page.clock.pauseAt(at('12:10'))
    await tap(page, 'Lid off')
    await tap(page, 'All jars out')
    await farSays(page, '00:10')
    await page.clock.pauseAt(new Date('2026-10-04T00:10:00-04:00'))
    await tap(page, 'Write the seals down')
    await page.getByText('Vented 7 min, held 15 lb weight (103 kPa) for 60 min.').waitFor()
    await tap(page, 'Put up: write it down')
    await page.getByText('Written down.', { exact: true }).waitFor()
    await page.clock.resume()
    await page.getByText('Written here and copied to the house server.').waitFor({ timeout: 60_000 })
    const putUp = (await entriesOnServer(home.house)).filter(({ envelope }) => envelope.kind === 'food-put-up')
    expect(putUp.map(({ body }) => body?.value)).toMatchObject([
      {
        loadCode: 'HARK-261003-B1',
        form: 'jar',
        jarSize: 'pint',
        count: 9,
        departures: ['Vented 7 min; 10 min of steady steam is published. Air was left in.'],
      },
    ])
    expect(faults).toEqual([])
    await context.close()
  })
})
