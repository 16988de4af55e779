import { spawnSync } from 'node:child_process'
import {
  chmodSync,
  copyFileSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir, userInfo } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { backupTo, restore } from '../care/backup.ts'
import type { StoredEntry } from '../envelope.ts'
import { canonicalJson } from '../json.ts'
import type { JournalStore } from '../store.ts'
import {
  CHILD,
  DEVICE,
  FAULT_RUNS,
  FAULTS_TIMEOUT_MS,
  KITCHEN,
  repeatingFractions,
  smallDisk,
} from '../testing/faults.ts'
import { testKitchen } from '../testing/invented.ts'
import { type Cluster, POSTGRES_HERE, startCluster } from '../testing/postgres.ts'
import { openPostgresStore } from './postgres.ts'
import { openSqliteStore } from './sqlite.ts'
import { StoreTrouble } from './trouble.ts'

const kitchen = testKitchen()
const { kitchenId } = kitchen
const author = kitchen.author()
const entries: readonly StoredEntry[] = Array.from({ length: 120 }, (_, i) =>
  author.write('alkali-lot-recorded', {
    alkaliLotId: kitchen.newId(),
    name: `M-${i}`,
    alkali: 'ash',
    note: 'sifted twice '.repeat(20),
  }),
)

let folder: string
let file: string
let backup: string
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'book-damage-'))
  file = join(folder, 'book.sqlite')
  const store = await openSqliteStore(file)
  await store.append(entries)
  backup = (await backupTo({ store, into: join(folder, 'stick'), nowMs: 0 })).folder
  await store.close() // folds the log into the file
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** What opening and verifying says of the file, and whether all lines still read as they were written. */
async function lookAt(damaged: string): Promise<{ readonly said: string | null; readonly intact: boolean }> {
  let store: JournalStore | null = null
  try {
    store = await openSqliteStore(damaged)
    const report = await store.verify()
    const read = await store.read({ kitchenId, limit: 1000 }).catch(() => ({ entries: [] }))
    const intact = canonicalJson(read.entries) === canonicalJson(entries)
    return { said: report.ok ? null : report.faults.map(({ code }) => code).join(' '), intact }
  } catch (cause) {
    if (!(cause instanceof StoreTrouble)) throw cause
    return { said: cause.code, intact: false }
  } finally {
    await store?.close()
  }
}

describe('the embedded file', () => {
  test(`[J74] one flipped bit anywhere is told, or lies where nothing is kept: ${FAULT_RUNS * 10} files`, {
    timeout: FAULTS_TIMEOUT_MS,
  }, async () => {
    const fraction = repeatingFractions(7)
    const bytes = readFileSync(file)
    let toldCount = 0
    for (let run = 0; run < FAULT_RUNS * 10; run += 1) {
      const at = Math.floor(fraction() * bytes.length)
      const bit = Math.floor(fraction() * 8)
      const flipped = Buffer.from(bytes)
      flipped[at] = flipped[at]! ^ (1 << bit)
      const copy = join(folder, 'flipped.sqlite')
      for (const each of [copy, `${copy}-wal`, `${copy}-shm`]) rmSync(each, { force: true })
      writeFileSync(copy, flipped)
      const { said, intact } = await lookAt(copy)
      if (said === null) expect(intact, `byte ${at}, bit ${bit}: nothing was said`).toBe(true)
      else toldCount += 1
    }
    expect(toldCount).toBeGreaterThan(FAULT_RUNS)
  })

  test(`[J74] a file cut off anywhere is told, and a backup brings everything back: ${FAULT_RUNS} files`, {
    timeout: FAULTS_TIMEOUT_MS,
  }, async () => {
    const fraction = repeatingFractions(8)
    const { size } = statSync(file)
    for (let run = 0; run < FAULT_RUNS; run += 1) {
      const length = 1 + Math.floor(fraction() * (size - 1))
      const copy = join(folder, `cut-${run}.sqlite`)
      copyFileSync(file, copy)
      truncateSync(copy, length)
      expect((await lookAt(copy)).said, `cut at ${length} of ${size}`).toContain('file-damaged')
    }
    const fresh = await openSqliteStore(join(folder, 'restored.sqlite'))
    expect((await restore(fresh, backup)).whole).toBe(true)
    expect((await fresh.read({ kitchenId, limit: 1000 })).entries).toEqual(entries)
    expect((await fresh.verify()).ok).toBe(true)
    await fresh.close()
  })

  test('[J72] a full disk is told by name; nothing half-written is left, and what was acknowledged stands', async () => {
    const small = join(folder, 'small.sqlite')
    const store = await openSqliteStore(small, { mostPages: 60 })
    const acknowledged = await appendUntilFull(store)
    expect(acknowledged.length).toBeGreaterThan(10)
    await store.close()
    await stands(await openSqliteStore(small), acknowledged)
  })

  test.skipIf(!smallDiskHere())('[J72] the same on a disk that is truly full', async () => {
    const disk = smallDisk(700_000)!
    try {
      const small = join(disk.folder, 'book.sqlite')
      const store = await openSqliteStore(small)
      const acknowledged = await appendUntilFull(store)
      expect(acknowledged.length).toBeGreaterThan(10)
      await store.close()
      const roomy = join(folder, 'roomy.sqlite')
      for (const end of ['', '-wal'])
        if (statSync(small + end, { throwIfNoEntry: false })) copyFileSync(small + end, roomy + end)
      await stands(await openSqliteStore(roomy), acknowledged)
    } finally {
      disk.gone()
    }
  })

  test('[J72] a book that may only be read is told by name', () => {
    chmodSync(file, 0o444)
    chmodSync(folder, 0o555)
    try {
      // A superuser may write everywhere: look as somebody else.
      const nobody = userInfo().uid === 0 ? { uid: 65_534, gid: 65_534 } : {}
      const child = spawnSync(process.execPath, [CHILD, file, KITCHEN, DEVICE, '1'], { encoding: 'utf8', ...nobody })
      expect(child.stdout + child.stderr).toBe('read-only\n')
    } finally {
      chmodSync(folder, 0o755)
    }
  })
})

describe.skipIf(!POSTGRES_HERE)('the PostgreSQL store', () => {
  let cluster: Cluster
  beforeAll(async () => {
    if (POSTGRES_HERE) cluster = await startCluster()
  }, 60_000)
  afterAll(() => cluster?.stop(), 30_000)

  test('[J72] a database that may only be read is told by name, and is read', async () => {
    const url = await cluster.url('reading')
    const store = await openPostgresStore(url)
    await store.append(entries.slice(0, 5))
    await store.close()
    const reading = await openPostgresStore(`${url}%20-c%20default_transaction_read_only%3Don`)
    await expect(reading.append(entries.slice(5, 6))).rejects.toMatchObject({ code: 'read-only' })
    expect((await reading.read({ kitchenId })).entries).toEqual(entries.slice(0, 5))
    await reading.close()
  })

  test('[J74] a body and an envelope changed behind its back are told, and moving aside and restoring brings them back', async () => {
    const store = await openPostgresStore(await cluster.url('changed'))
    await store.append(entries)
    await cluster.query(`set search_path = changed; alter table body disable trigger user; alter table entry disable trigger user;
      update body set value = replace(value, 'M-3"', 'M-9"') where arrival = 4;
      update entry set happened_at = '2020-01-01T00:00:00.000Z' where arrival = 7;
      delete from body where arrival = 9`)
    const report = await store.verify()
    expect(report.ok ? [] : report.faults.map(({ code, deviceSeq }) => [code, deviceSeq])).toEqual([
      ['altered-body', 4],
      ['altered-envelope', 7],
      ['body-missing', 9],
    ])
    await store.close()
    const fresh = await openPostgresStore(await cluster.url('brought_back'))
    expect((await restore(fresh, backup)).whole).toBe(true)
    expect((await fresh.verify()).ok).toBe(true)
    expect((await fresh.read({ kitchenId, limit: 1000 })).entries).toEqual(entries)
    await fresh.close()
  })

  test('[J74] pages damaged on the disk are told', { timeout: 60_000 }, async () => {
    const url = await cluster.url('pages')
    const store = await openPostgresStore(url)
    await store.append(entries)
    await store.close()
    await cluster.query('checkpoint')
    const [row] = await cluster.query('select pg_relation_filepath(tableoid) as path from pages.body limit 1')
    await cluster.kill()
    cluster.damage(String(row!.path))
    await cluster.start()
    const again = await openPostgresStore(url)
    const report = await again.verify()
    expect(report.ok ? [] : report.faults.map(({ code }) => code)).toContain('file-damaged')
    await again.close()
  })

  test.skipIf(!smallDiskHere())(
    '[J72] a full disk is told by name, and what was acknowledged stands',
    { timeout: 120_000 },
    async () => {
      const disk = smallDisk(160_000_000)!
      const small = await startCluster(['max_wal_size=64MB', 'min_wal_size=32MB'], disk.folder)
      try {
        const store = await openPostgresStore(await small.url('filled'))
        writeFileSync(join(disk.folder, 'other people'), '')
        fill(join(disk.folder, 'other people'))
        const acknowledged = await appendUntilFull(store)
        await store.close()
        rmSync(join(disk.folder, 'other people'))
        await small.kill()
        await small.start()
        await stands(await openPostgresStore(await small.url('filled')), acknowledged)
      } finally {
        await small.stop()
        disk.gone()
      }
    },
  )
})

/** Until the store says that there is no room. Returns what it acknowledged. */
async function appendUntilFull(store: JournalStore): Promise<StoredEntry[]> {
  const own = testKitchen(3)
  const writer = own.author()
  const acknowledged: StoredEntry[] = []
  for (let i = 0; i < 100_000; i += 1) {
    const alkaliLotId = own.newId()
    const note = 'ash '.repeat(2000)
    const entry = writer.write('alkali-lot-recorded', { alkaliLotId, name: `M-${i}`, alkali: 'ash', note })
    try {
      await store.append([entry])
    } catch (cause) {
      expect(['disk-full', 'unreachable']).toContain((cause as StoreTrouble).code)
      return acknowledged
    }
    acknowledged.push(entry)
  }
  throw new Error('the disk never filled')
}

async function stands(store: JournalStore, acknowledged: readonly StoredEntry[]): Promise<void> {
  const own = acknowledged[0]!.envelope.kitchenId
  const kept: StoredEntry[] = []
  for (let after = 0; ; ) {
    const page = await store.read({ kitchenId: own, after })
    kept.push(...page.entries)
    if (page.entries.length === 0) break
    after = page.next
  }
  expect(kept.slice(0, acknowledged.length)).toEqual(acknowledged)
  expect(kept.length - acknowledged.length).toBeLessThanOrEqual(1)
  expect((await store.verify()).ok).toBe(true)
  await store.close()
}

const LEFT_FREE_BYTES = 3_000_000

/** Writes until the file system takes no more, and gives a little of it back. */
function fill(path: string): void {
  const block = Buffer.alloc(64 * 1024, 1)
  for (;;) {
    try {
      writeFileSync(path, block, { flag: 'a' })
    } catch {
      truncateSync(path, statSync(path).size - LEFT_FREE_BYTES)
      return
    }
  }
}

function smallDiskHere(): boolean {
  const disk = smallDisk(100_000)
  disk?.gone()
  return disk !== null
}
