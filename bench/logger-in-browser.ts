/**
 * In a real browser: a logger's file of ten million rows dropped on the page. How long, how much memory, and does the page
 * still answer? The reference counts the lines of the same file on the same page.
 */
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { launchChromium, openDemoKitchen, openPage, startHouse } from '../apps/web/e2e/harness.ts'
import { writeRows } from './logger-ten-million.ts'
import type { BenchQuestion } from './question.ts'

const ROWS = 10_000_000
/** What reading may add to the memory of the page's process. [kB] */
const ADDED_LIMIT_KB = 128_000
const REST_MS = 3000
const WAIT_MS = 300_000

export const loggerInBrowser: BenchQuestion = {
  asks: 'In a browser: how long does a logger file of ten million rows take, and does the page still answer?',
  answer: async () => {
    const folder = mkdtempSync(join(tmpdir(), 'logger-'))
    const house = await startHouse()
    const browser = await launchChromium().catch(() => null)
    try {
      if (!browser) return { notRun: 'no Chromium here; install with: apt-get install chromium' }
      const file = join(folder, 'rows.csv')
      await writeRows(file, ROWS)
      const { page } = await openPage(browser)
      page.setDefaultTimeout(WAIT_MS)
      await openDemoKitchen(page, house.url)
      await page.goto(`${house.url}heat/replay`)
      await page.getByLabel('Drop a logger').setInputFiles(file)
      await page.getByLabel('Clock at minute 0 of the file').fill('09:00')
      const countMs = (await page.evaluate(COUNT_LINES)) as number
      const memory = watchMemory(await rendererPids(browser))
      await page.evaluate(WATCH_FRAMES)
      await page.waitForTimeout(REST_MS)
      const restMs = (await page.evaluate(LONGEST_STILL)) as number
      const from = performance.now()
      await page.getByRole('button', { name: 'Read the file' }).click()
      const heldBack = page.getByRole('progressbar', { name: 'The file is being read' })
      await heldBack.waitFor()
      const progressMs = performance.now() - from
      await page.getByText('10,000,001 lines, 10,000,000 readings.').waitFor()
      const readMs = performance.now() - from
      const stillMs = (await page.evaluate(LONGEST_STILL)) as number
      const addedKb = memory.addedKb()
      memory.stop()
      await page.getByRole('button', { name: 'Read the file' }).click()
      await page.getByRole('button', { name: 'Stop' }).click()
      await heldBack.waitFor({ state: 'detached' })
      console.log(
        `  ${(addedKb / 1000).toFixed(0)} MB more memory in the page's process, progress after ${progressMs.toFixed(0)} ms; stopped when asked`,
      )
      return [
        {
          what: 'a file of 10,000,000 rows read on the page, checked and thinned',
          value: readMs,
          unit: 'ms',
          reference: { what: 'counting its lines on the page', value: countMs },
        },
        {
          what: 'memory added to the page by it',
          value: addedKb,
          unit: 'kB',
          limit: ADDED_LIMIT_KB,
          reference: { what: 'the file itself', value: statSync(file).size / 1000 },
        },
        {
          what: 'longest the page stood still, what was found drawn with it',
          value: stillMs,
          unit: 'ms',
          reference: { what: 'longest while nothing was done', value: restMs },
        },
      ]
    } finally {
      await browser?.close()
      await house.remove()
      rmSync(folder, { recursive: true })
    }
  },
}

/** Longest time between two frames since it was last asked for. */
const WATCH_FRAMES = `
  window.longestStillMs = 0
  let before = performance.now()
  const frame = (now) => {
    window.longestStillMs = Math.max(window.longestStillMs, now - before)
    before = now
    requestAnimationFrame(frame)
  }
  requestAnimationFrame(frame)`
const LONGEST_STILL = '[window.longestStillMs, (window.longestStillMs = 0)][0]'

const COUNT_LINES = `(async () => {
  const reader = document.getElementById('logger-file').files[0].stream().getReader()
  const from = performance.now()
  let lines = 0
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    for (let at = piece.value.indexOf(10); at >= 0; at = piece.value.indexOf(10, at + 1)) lines += 1
  }
  if (lines !== ${ROWS + 1}) throw new Error(lines + ' lines')
  return performance.now() - from
})()`

async function rendererPids(browser: Browser): Promise<readonly number[]> {
  const system = await browser.newBrowserCDPSession()
  const { processInfo } = await system.send('SystemInfo.getProcessInfo')
  return processInfo.flatMap(({ type, id }) => (type === 'renderer' ? [id] : []))
}

/** What the processes hold beyond what they held at first, at most. [kB] */
function watchMemory(pids: readonly number[]): { readonly addedKb: () => number; readonly stop: () => void } {
  const heldKb = () =>
    pids.reduce((sum, pid) => {
      const [, kb] = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? []
      return sum + Number(kb)
    }, 0)
  const restKb = heldKb()
  let mostKb = restKb
  const timer = setInterval(() => {
    mostKb = Math.max(mostKb, heldKb())
  }, 100)
  return { addedKb: () => mostKb - restKb, stop: () => clearInterval(timer) }
}
