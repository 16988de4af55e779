/** How long from starting the server, once built, to the first byte of the page? */
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { type BenchQuestion, median } from './question.ts'

const LIMIT_MS = 500
const STARTS_COUNT = 7
const SERVER = 'apps/server/src/main.ts'

export const serverFirstByte: BenchQuestion = {
  asks: 'How long from starting the server to the first byte of the page?',
  answer: async () => {
    if (!existsSync('apps/web/dist/index.html')) return { notRun: 'the screens are not built; run npm run build:web' }
    const starts: number[] = []
    for (let index = 0; index < STARTS_COUNT; index += 1) starts.push(await startMs())
    const bare = Array.from({ length: STARTS_COUNT }, () => {
      const from = performance.now()
      spawnSync(process.execPath, ['-e', '0'])
      return performance.now() - from
    })
    return [
      {
        what: 'server started to first byte of the page, median',
        value: median(starts),
        unit: 'ms',
        limit: LIMIT_MS,
        reference: { what: 'node -e 0, started and ended', value: median(bare) },
      },
    ]
  },
}

/** One start on a new book. [ms] */
async function startMs(): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-server-'))
  const from = performance.now()
  const server = spawn(process.execPath, [SERVER, '--port', '0', '--book', join(folder, 'book.sqlite')], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  try {
    for await (const line of createInterface({ input: server.stdout })) {
      const url = /http:\/\/\S+\//.exec(line)?.[0]
      if (!url) continue
      const response = await fetch(url)
      await response.body?.getReader().read()
      if (!response.ok) throw new Error(`the page answered ${response.status}`)
      return performance.now() - from
    }
    throw new Error('the server ended before it was open')
  } finally {
    server.kill()
    await new Promise((ended) => (server.exitCode === null ? server.once('exit', ended) : ended(null)))
    rmSync(folder, { recursive: true, force: true })
  }
}
