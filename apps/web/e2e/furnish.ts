/** What several browser tests write down before they begin: how high the stove stands, and a test of a dial. */
import type { Page } from 'playwright-core'
import { goTo } from './harness.ts'
import { fold } from './reading.ts'

export interface GaugeTest {
  readonly readings?: readonly (readonly [truePsi: string, readsPsi: string])[]
  readonly restsAtPsi?: string
  readonly marks?: string
  readonly testedOn?: string
}

const TRUE_DIAL: NonNullable<GaugeTest['readings']> = [
  ['10', '10'],
  ['11', '11'],
  ['15', '15'],
]

/** A dial that reads true unless said otherwise. */
export async function testDial(
  page: Page,
  { readings = TRUE_DIAL, restsAtPsi = '0', marks = '1 psi', testedOn }: GaugeTest = {},
): Promise<void> {
  await goTo(page, '/canner', 'Canner')
  await fold(page, 'A test of a dial')
  if (testedOn) await page.getByLabel('Tested on').fill(testedOn)
  await page.getByLabel('Tested by').fill('extension office')
  await page.getByLabel('Needle on the cold canner, in psi').fill(restsAtPsi)
  await page.getByRole('radio', { name: marks, exact: true }).check()
  for (const [index, [truePsi, readsPsi]] of readings.entries()) {
    await page.getByLabel('True, psi').nth(index).fill(truePsi)
    await page.getByLabel('Reads, psi').nth(index).fill(readsPsi)
  }
  await page.getByRole('button', { name: 'Write the test down' }).click()
  await page.getByText('Written down.', { exact: true }).first().waitFor()
}

/** Read off a map. */
export async function stoveAt(page: Page, elevation: string): Promise<void> {
  await goTo(page, '/house', 'The house')
  await page.getByRole('textbox', { name: 'Of the stove' }).fill(elevation)
  await page.getByRole('radio', { name: 'A map' }).check()
  await page.getByRole('button', { name: 'Write it down' }).first().click()
  await page.getByText('Written down.', { exact: true }).first().waitFor()
}
