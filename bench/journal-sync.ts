/** How long until a fresh device holds the whole of a long book, from a house server over loopback? */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { exchange, NOTHING_EXCHANGED } from '@crib/journal'
import { httpBook } from '@crib/journal/http'
import { openSqliteStore } from '@crib/journal/sqlite'
import { startServer } from '@crib/server'
import { madeBook } from './journal-made.ts'
import type { BenchQuestion } from './question.ts'

const ENTRIES_COUNT = Number(process.env.BENCH_SYNC_ENTRIES ?? 100_000)
const LIMIT_MS = 20_000

export const journalSync: BenchQuestion = {
  asks: `How long until a fresh device holds a book of ${ENTRIES_COUNT} entries?`,
  answer: async () => {
    const folder = mkdtempSync(join(tmpdir(), 'bench-sync-'))
    try {
      const bookFile = join(folder, 'house.sqlite')
      const house = await openSqliteStore(bookFile)
      const { kitchenId, entries } = madeBook(ENTRIES_COUNT)
      const all = [...entries()]
      for (let at = 0; at < all.length; at += 5000) await house.append(all.slice(at, at + 5000))
      await house.close()
      const server = await startServer({ port: 0, bookFile })
      const remote = httpBook(server.url.replace(/\/$/, ''))
      const device = await openSqliteStore(join(folder, 'device.sqlite'))
      const from = performance.now()
      await exchange({ store: device, remote, kitchenId, state: NOTHING_EXCHANGED, onlyDeviceId: 'none of its own' })
      const ms = performance.now() - from
      const report = await device.verify()
      if (!report.ok || report.checkedCount !== ENTRIES_COUNT)
        throw new Error('the device does not hold the whole book')
      await device.close()
      await server.close()
      const jsonFrom = performance.now()
      JSON.parse(JSON.stringify(all))
      return [
        {
          what: 'the whole book on a fresh device',
          value: ms,
          unit: 'ms',
          limit: LIMIT_MS,
          reference: { what: 'the same entries through JSON and back', value: performance.now() - jsonFrom },
        },
      ]
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  },
}
