/** In a real browser: what does one move of a slider cost the page of heat in the jar, and a band of 10,000 samples its worker? */
import type { Browser, Page } from 'playwright-core'
import { launchChromium, openDemoKitchen, openPage, startHouse } from '../apps/web/e2e/harness.ts'
import type { BenchQuestion } from './question.ts'

const MOVES_COUNT = 60
const BANDS_COUNT = 3
/** One frame at 60 a second, and what ten thousand samples may take. [ms] */
const LIMIT = { moveMs: 16, bandMs: 1500 }

export const heatInBrowser: BenchQuestion = {
  asks: 'In a browser: what does a move of a slider and a band of ten thousand made-up jars cost?',
  answer: async () => {
    const house = await startHouse()
    const browser = await launchChromium().catch(() => null)
    try {
      if (!browser) return { notRun: 'no Chromium here; install with: apt-get install chromium' }
      const { page } = await openPage(browser)
      await openDemoKitchen(page, house.url)
      await page.goto(`${house.url}heat`)
      await bandDrawn(page)
      const scrubMs = await moveMs(page, 'Moment of the run', [20, 100])
      const ventMs = await moveMs(page, 'Steady steam before the vent is closed', [0, 15])
      await bandDrawn(page)
      const roughMs = await bandMs(browser, page, 'rough')
      const wholeMs = await bandMs(browser, page, 'whole')
      return [
        {
          what: 'a move of the vent, everything on the thread of the page, mean',
          value: ventMs,
          unit: 'ms',
          limit: LIMIT.moveMs,
          reference: { what: 'a move along the run, which works out no curve', value: scrubMs },
        },
        {
          what: 'band of 10,000 samples in a worker, time of its processor, mean',
          value: wholeMs,
          unit: 'ms',
          limit: LIMIT.bandMs,
          reference: { what: 'the rough band before it', value: roughMs },
        },
      ]
    } finally {
      await browser?.close()
      await house.remove()
    }
  },
}

const bandDrawn = (page: Page) => page.locator('[data-band="whole"]').waitFor({ timeout: 60_000 })

/** Time of the page's own thread, so that other work of the machine does not count. [ms] */
async function moveMs(page: Page, label: string, [from, to]: readonly [number, number]): Promise<number> {
  const session = await page.context().newCDPSession(page)
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  const spentMs = async () => {
    const { metrics } = await session.send('Performance.getMetrics')
    return 1000 * metrics.find(({ name }) => name === 'TaskDuration')!.value
  }
  const field = page.getByLabel(label, { exact: true })
  const drag = async (movesCount: number) => {
    for (let move = 0; move < movesCount; move += 1)
      await field.fill(String(Math.round(from + ((to - from) * move) / movesCount)))
  }
  await drag(MOVES_COUNT)
  const before = await spentMs()
  await drag(MOVES_COUNT)
  return ((await spentMs()) - before) / MOVES_COUNT
}

/** Time of the processor until the worker told so much, mean of a few. [ms] */
async function bandMs(browser: Browser, page: Page, until: 'rough' | 'whole'): Promise<number> {
  const address = await page.evaluate(
    `performance.getEntriesByType('resource').map(({ name }) => name).find((name) => name.includes('band.worker'))`,
  )
  const system = await browser.newBrowserCDPSession()
  const rendererMs = async () => {
    const { processInfo } = await system.send('SystemInfo.getProcessInfo')
    return processInfo.reduce((sum, { type, cpuTime }) => sum + (type === 'renderer' ? 1000 * cpuTime : 0), 0)
  }
  const bands = (count: number) =>
    page.evaluate(`(async () => {
      const run = { jar: 'pint', pack: 'packed solid', elevationM: 250, gaugeKPa: 75.84, gaugeReadsHighKPa: 0,
        ventMin: 10, holdMin: 60, fillC: 82, coolDownMin: 35 }
      for (let k = 0; k < ${count}; k += 1) {
        const worker = new Worker(${JSON.stringify(address)}, { type: 'module' })
        await new Promise((done, fail) => {
          worker.onmessage = ({ data }) => {
            if (data.kind === 'failed') fail(new Error(data.message))
            if (data.kind === 'band' && (${until === 'rough'} || data.isWhole)) done()
          }
          worker.postMessage(run)
        })
        worker.terminate()
      }
    })()`)
  await bands(1)
  const before = await rendererMs()
  await bands(BANDS_COUNT)
  return ((await rendererMs()) - before) / BANDS_COUNT
}
