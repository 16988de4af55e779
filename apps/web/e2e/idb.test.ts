/** The browser's own store in real Chromium: kept over a closed page, one chain for two tabs, an erased body gone for good. */
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { StoredEntry } from '@crib/journal'
import type { BrowserContext, Page } from 'playwright-core'
import { build, type Rollup } from 'vite'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { describeInBrowser, launchKeptProfile } from './harness.ts'
import type {} from './idb-page.ts'

async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      minify: false,
      lib: { entry: join(import.meta.dirname, 'idb-page.ts'), formats: ['iife'], name: 'bench' },
    },
  })
  const [first] = (Array.isArray(made) ? made : [made]) as readonly Rollup.RollupOutput[]
  return first!.output[0].code
}

describeInBrowser('the store of the browser', () => {
  let server: Server
  let url: string
  let folder: string
  let context: BrowserContext

  beforeAll(async () => {
    const script = await bundled()
    server = createServer(({ url: path }, response) => {
      const isScript = path === '/bench.js'
      response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html')
      response.end(isScript ? script : '<!doctype html><title>store</title><script src="/bench.js"></script>')
    })
    await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`
  })
  afterAll(() => {
    server?.close()
  })
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'kettle-e2e-idb-'))
    context = await launchKeptProfile(folder)
  })
  afterEach(async () => {
    await context?.close()
    rmSync(folder, { recursive: true, force: true })
  })

  async function tab(): Promise<Page> {
    const page = await context.newPage()
    await page.goto(url)
    await page.evaluate(() => window.storeBench.open())
    return page
  }
  // As text between page and test: the type of a line is deeper than the driver's own types follow.
  const lines = async (page: Page, kitchenId: string, count: number): Promise<readonly StoredEntry[]> => {
    const text = await page.evaluate(async ([id, many]) => JSON.stringify(await window.storeBench.lines(id, many)), [
      kitchenId,
      count,
    ] as const)
    return JSON.parse(text)
  }
  const append = async (page: Page, entries: readonly StoredEntry[]): Promise<readonly string[]> =>
    page.evaluate(
      async (text) => (await window.storeBench.append(JSON.parse(text))).results.map(({ outcome }) => outcome),
      JSON.stringify(entries),
    )
  const readAll = (page: Page, kitchenId: string) => page.evaluate((id) => window.storeBench.readAll(id), kitchenId)
  const verify = (page: Page) => page.evaluate(() => window.storeBench.verify())
  const newId = (page: Page) => page.evaluate(() => window.storeBench.newId())

  test('[J30] [J31] [J33] what was acknowledged is there when the browser is started again, once, and in order', async () => {
    const page = await tab()
    const kitchenId = await newId(page)
    const entries = await lines(page, kitchenId, 4)
    const [first, second, , fourth] = entries
    expect(await append(page, [second!, first!])).toEqual(['accepted', 'accepted'])
    expect(await append(page, [fourth!])).toEqual(['refused'])
    await context.close()

    context = await launchKeptProfile(folder)
    const again = await tab()
    expect(await readAll(again, kitchenId)).toEqual([first, second])
    expect(await append(again, entries)).toEqual(['already', 'already', 'accepted', 'accepted'])
    expect(await readAll(again, kitchenId)).toEqual(entries)
    expect(await verify(again)).toEqual({ ok: true, checkedCount: 4, erasedCount: 0 })
  })

  test('[J42] an erased body stays gone when the browser is started again, and the chain still holds', async () => {
    const page = await tab()
    const kitchenId = await newId(page)
    const entries = await lines(page, kitchenId, 3)
    await append(page, entries)
    const erase = (on: Page, id: string) => on.evaluate((entryId) => window.storeBench.erase(entryId), id)
    expect(await erase(page, entries[1]!.envelope.id)).toBe(true)
    await context.close()

    context = await launchKeptProfile(folder)
    const again = await tab()
    expect(await append(again, [entries[1]!])).toEqual(['already'])
    expect(await readAll(again, kitchenId)).toEqual([entries[0], { ...entries[1], body: null }, entries[2]])
    expect(await erase(again, entries[1]!.envelope.id)).toBe(false)
    expect(await verify(again)).toEqual({ ok: true, checkedCount: 3, erasedCount: 1 })
  })

  test.each([
    ['under the lock all tabs share', true],
    ['without it, as over plain HTTP', false],
  ])('[J44] two tabs of one device write one chain without a fork, %s', async (_, withLock) => {
    const left = await tab()
    const right = await tab()
    const kitchenId = await newId(left)
    const deviceId = await newId(left)
    const write = (page: Page) =>
      page.evaluate(([kitchen, device, lock]) => window.storeBench.record(kitchen, device, 12, lock), [
        kitchenId,
        deviceId,
        withLock,
      ] as const)
    const written = await Promise.all([write(left), write(right)])
    const inOrder = Array.from({ length: 24 }, (_each, index) => index + 1)
    expect(written.flat().sort((a, b) => a - b)).toEqual(inOrder)
    // Both tabs read the same whole chain.
    for (const page of [left, right]) {
      const seqs = (await readAll(page, kitchenId)).map(({ envelope }) => envelope.deviceSeq)
      expect(seqs).toEqual(inOrder)
    }
    expect(await verify(right)).toEqual({ ok: true, checkedCount: 24, erasedCount: 0 })
  })
})
