import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { pagesOf } from '../care/pages.ts'
import type { JournalStore } from '../store.ts'
import {
  appendUntilKilled,
  CHILD,
  DEVICE,
  FAULT_RUNS,
  FAULTS_A_BOOK,
  FAULTS_TIMEOUT_MS,
  has,
  KITCHEN,
  repeatingFractions,
} from '../testing/faults.ts'
import { testKitchen } from '../testing/invented.ts'
import { type Cluster, POSTGRES_HERE, startCluster } from '../testing/postgres.ts'
import { openPostgresStore } from './postgres.ts'
import { openSqliteStore } from './sqlite.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'book-kill-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** From the first acknowledgement to long after: a kill may land anywhere in a commit. */
const fractions = repeatingFractions(20_261_102)
const someMs = (): number => 1 + 60 * fractions()

async function idsIn(store: JournalStore, kitchenId: string): Promise<Set<string>> {
  const kept = new Set<string>()
  for await (const page of pagesOf(store, kitchenId)) for (const { envelope } of page) kept.add(envelope.id)
  return kept
}

describe('the embedded store', () => {
  test(`[J45] no acknowledged entry is missing after each of ${FAULT_RUNS} kills in the midst of writing`, {
    timeout: FAULTS_TIMEOUT_MS,
  }, async () => {
    let acknowledgedCount = 0
    let acknowledged: string[] = []
    for (let run = 0; run < FAULT_RUNS; run += 1) {
      if (run % FAULTS_A_BOOK === 0) acknowledged = []
      const file = join(folder, `book-${Math.floor(run / FAULTS_A_BOOK)}.sqlite`)
      const printed = await appendUntilKilled(file, someMs())
      acknowledgedCount += printed.length
      acknowledged.push(...printed)
      const store = await openSqliteStore(file)
      const kept = await idsIn(store, KITCHEN)
      expect(
        acknowledged.filter((id) => !kept.has(id)),
        `after kill ${run}`,
      ).toEqual([])
      // A line may be on disk whose acknowledgement was cut off: at most one a kill.
      expect(kept.size - acknowledged.length).toBeLessThanOrEqual((run % FAULTS_A_BOOK) + 1)
      expect(await store.verify()).toEqual({ ok: true, checkedCount: kept.size, erasedCount: 0 })
      await store.close()
    }
    expect(acknowledgedCount).toBeGreaterThanOrEqual(FAULT_RUNS)
  })

  test('[J45] two programs may make and write one new book at once', { timeout: 60_000 }, async () => {
    const file = join(folder, 'book.sqlite')
    const other = DEVICE.replace(/2$/, '3')
    const [mine, theirs] = await Promise.all([appendUntilKilled(file, 200), appendUntilKilled(file, 200, other)])
    const store = await openSqliteStore(file)
    const report = await store.verify()
    expect(report.ok).toBe(true)
    expect(report.checkedCount).toBeGreaterThanOrEqual(mine.length + theirs.length)
    expect(Math.min(mine.length, theirs.length)).toBeGreaterThan(0)
    await store.close()
  })

  // Traced from outside: not what the database says it did, but what it asked of the system.
  test.skipIf(!has('strace'))(
    '[J73] at least one write to disk is awaited for each acknowledged entry',
    {
      timeout: 60_000,
    },
    () => {
      const trace = join(folder, 'trace')
      const count = 40
      const child = [process.execPath, CHILD, join(folder, 'book.sqlite'), KITCHEN, DEVICE, String(count)]
      const printed = execFileSync('strace', ['-f', '-e', 'trace=fsync,fdatasync', '-o', trace, ...child], {
        encoding: 'utf8',
      })
      expect(printed.trim().split('\n')).toHaveLength(count)
      const awaited = readFileSync(trace, 'utf8').match(/(fsync|fdatasync)\(/g)?.length ?? 0
      expect(awaited).toBeGreaterThanOrEqual(count)
    },
  )
})

describe.skipIf(!POSTGRES_HERE)('the PostgreSQL store', () => {
  let cluster: Cluster
  beforeAll(async () => {
    if (POSTGRES_HERE) cluster = await startCluster()
  }, 60_000)
  afterAll(() => cluster?.stop(), 30_000)

  test(`[J45] no acknowledged entry is missing after each of ${FAULT_RUNS} kills of the server's whole process group`, {
    timeout: FAULTS_TIMEOUT_MS,
  }, async () => {
    const kitchens = [1, 2, 3, 4].map((seed) => testKitchen(seed))
    let acknowledgedCount = 0
    let acknowledged = new Map<string, string[]>()
    for (let run = 0; run < FAULT_RUNS; run += 1) {
      if (run % FAULTS_A_BOOK === 0) acknowledged = new Map(kitchens.map(({ kitchenId }) => [kitchenId, []]))
      const url = await cluster.url(`server_kill_${Math.floor(run / FAULTS_A_BOOK)}`)
      const store = await openPostgresStore(url)
      let down = false
      const begun = Promise.withResolvers<void>()
      const writers = kitchens.map(async (kitchen) => {
        const head = await store.head(kitchen.kitchenId, deviceOf(kitchen))
        const author = kitchen.author({ deviceId: deviceOf(kitchen), head })
        while (!down) {
          const entry = author.write('pot-recorded', {
            potId: kitchen.newId(),
            name: 'pot',
            volumeL: 1,
            material: 'enamel',
          })
          const { results } = await store.append([entry])
          expect(results[0]!.outcome).toBe('accepted')
          acknowledged.get(kitchen.kitchenId)!.push(entry.envelope.id)
          acknowledgedCount += 1
          begun.resolve()
        }
      })
      const ended = Promise.allSettled(writers)
      // Counted from the first acknowledgement, however busy the machine is.
      await Promise.race([begun.promise, ended])
      await new Promise((resolve) => setTimeout(resolve, someMs()))
      await cluster.kill()
      down = true
      for (const each of await ended)
        if (each.status === 'rejected') expect(each.reason).toMatchObject({ code: 'unreachable' })
      await store.close()
      await cluster.start()
      const again = await openPostgresStore(url)
      for (const [kitchenId, ids] of acknowledged) {
        const kept = await idsIn(again, kitchenId)
        expect(
          ids.filter((id) => !kept.has(id)),
          `after kill ${run}`,
        ).toEqual([])
      }
      expect((await again.verify()).ok).toBe(true)
      await again.close()
    }
    expect(acknowledgedCount).toBeGreaterThanOrEqual(FAULT_RUNS)
  })

  test(`[J45] no acknowledged entry is missing after each of ${FAULT_RUNS} kills of a client`, {
    timeout: FAULTS_TIMEOUT_MS,
  }, async () => {
    let acknowledged: string[] = []
    for (let run = 0; run < FAULT_RUNS; run += 1) {
      if (run % FAULTS_A_BOOK === 0) acknowledged = []
      const url = await cluster.url(`client_kill_${Math.floor(run / FAULTS_A_BOOK)}`)
      const store = await openPostgresStore(url)
      acknowledged.push(...(await appendUntilKilled(url, someMs())))
      const kept = await idsIn(store, KITCHEN)
      expect(
        acknowledged.filter((id) => !kept.has(id)),
        `after kill ${run}`,
      ).toEqual([])
      expect((await store.verify()).ok).toBe(true)
      await store.close()
    }
  })

  test('[J73] the server waits for the disk at least once for each acknowledged entry', async () => {
    const url = await cluster.url('waits')
    const kitchen = testKitchen()
    const author = kitchen.author()
    const store = await openPostgresStore(url)
    const syncs = async () => Number((await cluster.query('select wal_sync from pg_stat_wal'))[0]!.wal_sync)
    const before = await syncs()
    for (let i = 0; i < 40; i += 1) {
      await store.append([
        author.write('pot-recorded', { potId: kitchen.newId(), name: 'p', volumeL: 1, material: 'enamel' }),
      ])
    }
    await store.close() // a connection tells its counts when it ends
    await expect.poll(async () => (await syncs()) - before, { timeout: 10_000 }).toBeGreaterThanOrEqual(40)
  })
})

function deviceOf({ kitchenId }: { readonly kitchenId: string }): string {
  return kitchenId
}
