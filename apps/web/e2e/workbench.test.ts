/** At the bench: a form made from a calculation's inputs keeps what is typed, says what is wrong beside it, and can be handed on. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { HEAT_STEP_BASE64 } from '../../../packages/science/src/heat/heat-step-bytes.ts'
import { toHash } from '../src/routes/workbench/link.ts'
import { describeInBrowser, type House, launchChromium, openOwnBook, openPage, startHouse } from './harness.ts'

describeInBrowser('the workbench', () => {
  let house: House
  let browser: Browser
  let page: Page

  beforeAll(async () => {
    house = await startHouse()
    browser = await launchChromium()
    page = (await openPage(browser)).page
    await openOwnBook(page, house.url)
  })
  afterAll(async () => {
    await browser?.close()
    await house?.remove()
  })

  async function openBench(path: string): Promise<void> {
    await page.goto('about:blank')
    await page.goto(new URL(`/workbench/${path}`, house.url).href)
    await page.getByRole('button', { name: 'Reckon it' }).waitFor()
  }
  const reckon = () => page.getByRole('button', { name: 'Reckon it' }).click()
  const value = (label: string) => page.locator('.bench-value summary', { hasText: label }).locator('.bench-figure')

  test('is reached from the list by its question, and says that its example is invented', async () => {
    await page.goto(new URL('/workbench', house.url).href)
    await page.getByRole('link', { name: 'How much is this corn by weight, by liquid and dry measure' }).click()
    await page.getByText('An invented example is filled in.').waitFor()
    await value('Dry kernels, liquid measure').getByText('6 liquid qt').waitFor() // 9 lb / 1.5 lb, the example
  })

  test('takes an amount in any unit, reads it back, and reckons anew only when asked', async () => {
    await openBench('kernel-measure')
    await page.getByLabel('Weight of shelled corn').fill('4 lb 8 oz')
    await page.getByText('2.04 kg (4.5 lb)').waitFor()
    await page.getByText('Something above was changed since these numbers were reckoned.').waitFor()
    await value('Dry kernels, liquid measure').getByText('6 liquid qt').waitFor()
    await reckon()
    await value('Dry kernels, liquid measure').getByText('3 liquid qt').waitFor() // 4.5 / 1.5
    expect(await page.getByText('Something above was changed').count()).toBe(0)
  })

  test('says what is wrong beside the field, leads there, and keeps every word', async () => {
    await openBench('gauge-correction')
    await page.getByLabel('True pressure wanted').fill('-11 psi')
    await page.getByLabel('Marks on the face every').fill('each one')
    await reckon()
    const wanted = page.getByLabel('True pressure wanted')
    await page.locator('#in-truePsi-faults').getByText('True pressure wanted is -11 psi').waitFor()
    await page.locator('#in-marksEveryPsi-faults').getByText('Marks on the face every is "each one"').waitFor()
    await expect.poll(() => wanted.evaluate((field) => field === document.activeElement)).toBe(true)
    await expect.poll(() => wanted.inputValue()).toBe('-11 psi')
    await expect.poll(() => page.getByLabel('Marks on the face every').inputValue()).toBe('each one')
    await wanted.fill('11 psi')
    await expect.poll(() => page.locator('#in-truePsi-faults').textContent()).toBe('')
  })

  test('takes rows from a spreadsheet, with a comma named instead of guessed', async () => {
    await openBench('gauge-correction')
    await page.getByText('Put in rows from a spreadsheet').click()
    await page.getByLabel('Copied rows').fill('the needle showed\ttrue pressure\n11.5\t10\n12.5\t11\n16,5\t15')
    await page.getByRole('button', { name: 'Put 3 rows in' }).click()
    await reckon()
    await page.locator('[id="in-test[2].readsPsi-faults"]').getByText('"16,5"').waitFor()
    await page.locator('[id="in-test[2].readsPsi"]').fill('16.5')
    await reckon()
    // S4: true 11 reads 12.5, so the needle is held at 13.
    await value('Least reading').getByText('12.5 psi').waitFor()
    await value('Mark to hold the needle at').getByText('13 psi').waitFor()
  })

  test('gives the same inputs and numbers to whoever opens its link, and asks nothing of the network', async () => {
    await openBench('kernel-measure')
    await page.getByLabel('Weight of shelled corn').fill('31.5 lb')
    await reckon()
    await value('Dry kernels, liquid measure').getByText('21 liquid qt').waitFor()
    const link = await page.getByLabel('Link with these inputs').inputValue()
    expect(page.url()).toBe(link)

    const other = await openPage(browser)
    await openOwnBook(other.page, house.url, 'Hark Lake')
    await other.page.evaluate(() => navigator.serviceWorker.ready.then(() => true))
    await other.page.reload()
    await other.page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
    await other.context.setOffline(true)
    await other.page.goto(link)
    await other.page.getByText('These inputs came with the link.').waitFor()
    await other.page.locator('.bench-figure', { hasText: /^21 liquid qt/ }).waitFor()
    await expect.poll(() => other.page.getByLabel('Weight of shelled corn').inputValue()).toBe('31.5 lb')
    await other.context.close()
  })

  test('says of a broken link that it is broken, and of an unknown input that it is not asked for', async () => {
    await openBench('kernel-measure#with=eyJtYXNzS2ci')
    await page.getByText('The link was cut or changed on its way.').waitFor()
    await openBench(`kernel-measure${toHash({ massKg: '9 lb', massLb: 9 })}`)
    await page.getByText('massLb is not asked for here.').waitFor()
  })

  test('takes a bare quart as this kitchen means it, in the link too', async () => {
    await openBench('kernel-measure')
    await page.getByLabel('Weight of shelled corn').fill('')
    await page.getByLabel('Volume of shelled corn').fill('3 quarts')
    await page.getByText('Taken as 3 liquid qt (2.84 L).').waitFor()
    await page.getByRole('button', { name: 'I meant dry measure' }).click()
    await page.getByText('Taken as 3 dry qt (3.3 L).').waitFor()
    await reckon()
    await value('Dry kernels, dry measure').getByText('3 dry qt').waitFor()
    await openBench(`kernel-measure${new URL(page.url()).hash}`)
    await page.locator('#in-volumeL-reading').getByText('3.3 L (3.49 liquid qt)').waitFor()
    await value('Dry kernels, dry measure').getByText('3 dry qt').waitFor()
  })

  test('may compile the heat kernel, and may run no text as script', async () => {
    await openBench('jar-heating')
    const answer = await page.evaluate(async (base64) => {
      // What is run from outside is excused from the page's policy; what it sets off later is not.
      await new Promise((later) => setTimeout(later))
      const bytes = Uint8Array.from(atob(base64), (char) => char.charCodeAt(0))
      const { exports } = new WebAssembly.Instance(new WebAssembly.Module(bytes))
      let text = 'run'
      try {
        Reflect.construct(Function, ['return 1'])
      } catch (error) {
        text = (error as Error).name
      }
      return { names: Object.keys(exports).toSorted(), text }
    }, HEAT_STEP_BASE64)
    expect(answer).toEqual({ names: ['begin', 'memory', 'step'], text: 'EvalError' })
  })
})
