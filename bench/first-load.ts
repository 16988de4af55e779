/** What does the first visit cost: bytes over the wire, and time until the first heading stands? */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { startServer } from '@crib/server'
import { type Browser, chromium } from 'playwright-core'
import { type BenchQuestion, median } from './question.ts'

const VISITS_COUNT = 5
const FLAGS = [
  '--no-sandbox',
  '--disable-dev-shm-usage',
  '--disable-gpu',
  '--disable-background-networking',
  '--no-first-run',
]

export const firstLoad: BenchQuestion = {
  asks: 'What does the first visit of the screens cost?',
  answer: async () => {
    const executablePath = findChromium()
    if (!executablePath) return { notRun: 'no Chromium here; install with: apt-get install chromium' }
    if (!existsSync('apps/web/dist/index.html')) return { notRun: 'the screens are not built; run npm run build:web' }
    const folder = mkdtempSync(join(tmpdir(), 'bench-web-'))
    const server = await startServer({
      port: 0,
      bookFile: join(folder, 'book.sqlite'),
      webDist: resolve('apps/web/dist'),
    })
    const browser = await chromium.launch({ executablePath, args: FLAGS })
    try {
      const visits: Visit[] = []
      for (let index = 0; index < VISITS_COUNT; index += 1) visits.push(await visit(browser, server.url))
      const blankMs: number[] = []
      for (let index = 0; index < VISITS_COUNT; index += 1)
        blankMs.push((await visit(browser, 'data:text/html,<h1>-</h1>')).ms)
      const blank = { what: 'a page with one heading and nothing else', value: median(blankMs) }
      const page = await visit(browser, server.url)
      return [
        {
          what: 'first visit until a heading stands, median',
          value: median(visits.map(({ ms }) => ms)),
          unit: 'ms',
          reference: blank,
        },
        {
          what: 'first visit, everything sent until the page is quiet',
          value: page.sentBytes / 1000,
          unit: 'kB',
          reference: { what: 'its page alone (index.html as sent)', value: page.pageBytes / 1000 },
        },
      ]
    } finally {
      await browser.close()
      await server.close()
      rmSync(folder, { recursive: true, force: true })
    }
  },
}

interface Visit {
  readonly ms: number
  readonly sentBytes: number
  readonly pageBytes: number
}

/** One visit with nothing kept from an earlier one. */
async function visit(browser: Browser, url: string): Promise<Visit> {
  const context = await browser.newContext()
  const page = await context.newPage()
  const wire = await context.newCDPSession(page)
  await wire.send('Network.enable')
  const sent: number[] = []
  wire.on('Network.loadingFinished', ({ encodedDataLength }) => sent.push(encodedDataLength))
  const from = performance.now()
  await page.goto(url)
  await page.locator('h1').first().waitFor()
  const ms = performance.now() - from
  await page.waitForLoadState('networkidle')
  await context.close()
  return { ms, sentBytes: sent.reduce((sum, bytes) => sum + bytes, 0), pageBytes: sent[0] ?? 0 }
}

function findChromium(): string | null {
  if (process.env.CHROMIUM) return process.env.CHROMIUM
  const found = ['chromium', 'chromium-browser', 'google-chrome']
    .map((name) => spawnSync('which', [name], { encoding: 'utf8' }).stdout?.trim())
    .find(Boolean)
  return found ?? null
}
