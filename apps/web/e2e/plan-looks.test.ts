/** Every sheet on the way through a plan, looked at with axe, on a phone, a laptop and at twice the letters. */
import { expect, test } from 'vitest'
import { describeAtHome, goTo, LAPTOP, openDemoKitchen, openPage, PHONE } from './harness.ts'
import { axeFindings, putOn, setTextSize, sidewaysPx, THEMES } from './look-at.ts'
import { fold } from './reading.ts'

describeAtHome('the sheets of a plan', (home) => {
  test('every sheet on the way is clean for axe in every theme, fits a phone, and keeps its words at twice the letters', async () => {
    const { context, page, faults } = await openPage(home.browser)
    await openDemoKitchen(page, home.house.url)
    await page.goto(new URL('/plan', home.house.url).href)
    await page.getByRole('heading', { level: 1 }).waitFor()
    const wrong: string[] = []
    const look = async (name: string) => {
      await page.evaluate('document.querySelectorAll("main details").forEach((fold) => { fold.open = true })')
      for (const theme of THEMES) {
        await putOn(page, theme)
        wrong.push(...(await axeFindings(page)).map((finding) => `${name}, ${theme}: ${finding}`))
      }
      for (const [percent, viewport] of [
        [100, LAPTOP],
        [200, PHONE],
        [100, PHONE],
      ] as const) {
        await setTextSize(page, percent)
        await page.setViewportSize(viewport)
        const px = await sidewaysPx(page)
        if (px > 0) wrong.push(`${name}: ${px} px too wide at ${viewport.width} px and ${percent} %`)
      }
    }
    await look('seed')
    await page.getByRole('button', { name: 'Put by, by eye' }).click()
    await page.getByLabel('Into jars').check()
    await page.getByLabel('Dried').check()
    await look('answers')
    await page.getByRole('button', { name: 'Lay out the day' }).click()
    await page.getByRole('button', { name: 'I have read this' }).waitFor()
    await look('reading')
    await page.getByRole('button', { name: 'I have read this' }).click()
    await page.getByText('Taken for granted').waitFor()
    await page.getByRole('radio', { name: 'Hull today, can tomorrow' }).check()
    await look('sheet')
    await page.getByRole('link', { name: 'Print this sheet' }).click()
    await page.locator('.paper-look').waitFor()
    await look('print')
    await goTo(page, '/pantry', 'Pantry')
    await fold(page, 'Put something on the shelf')
    await page.getByLabel('Code for its labels').fill('LF-3-F')
    await page.getByRole('button', { name: 'Put something on the shelf' }).click()
    await page.getByText('Take some').waitFor()
    await look('pantry')
    await page.getByRole('link', { name: 'Labels for what is on the shelf' }).click()
    await page.locator('.paper-look').waitFor()
    await look('labels')
    expect(wrong).toEqual([])
    expect(faults).toEqual([])
    await context.close()
  })
})
