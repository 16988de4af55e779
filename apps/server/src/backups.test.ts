import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { foldFacts, type JournalStore } from '@crib/journal'
import { restore } from '@crib/journal/care'
import { openSqliteStore } from '@crib/journal/sqlite'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { testKitchen } from '../../../packages/journal/src/testing/invented.ts'
import { type BackupPlan, type BackupTold, createBackups } from './backups.ts'

const HOUR_MS = 3_600_000
const clock = { nowMs: 0, now: () => clock.nowMs }

let folder: string
let store: JournalStore
let kitchenId: string
let told: BackupTold[]
let planned: { readonly ms: number; readonly then: () => void }[]

beforeEach(async () => {
  clock.nowMs = Date.parse('2026-11-03T18:00:00Z')
  folder = mkdtempSync(join(tmpdir(), 'backups-'))
  store = await openSqliteStore(':memory:')
  const kitchen = testKitchen()
  kitchenId = kitchen.kitchenId
  await store.append([
    kitchen.author({ clock }).write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false }),
  ])
  told = []
  planned = []
})
afterEach(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const stick = () => join(folder, 'stick')
const backups = (plan: Partial<BackupPlan & { readonly store: JournalStore }> = {}) =>
  createBackups({
    store,
    into: stick(),
    everyHours: 24,
    keepCount: 14,
    ...plan,
    told: (outcome) => told.push(outcome),
    now: clock.now,
    later: (ms, then) => {
      const each = { ms, then }
      planned.push(each)
      return () => {
        planned = planned.filter((other) => other !== each)
      }
    },
  })

test('the first start makes one, which restores; a start an hour later makes none', async () => {
  await backups().look()
  expect(readdirSync(stick())).toEqual(['backup-2026-11-03T18-00-00Z'])
  const other = await openSqliteStore(':memory:')
  expect((await restore(other, join(stick(), 'backup-2026-11-03T18-00-00Z'))).whole).toBe(true)
  expect(foldFacts((await other.read({ kitchenId })).entries).kitchen?.name).toBe('Ostrey Point')
  await other.close()
  clock.nowMs += HOUR_MS
  const again = backups()
  await again.look()
  expect(readdirSync(stick())).toHaveLength(1)
  expect(await again.lastMadeAtMs()).toBe(Date.parse('2026-11-03T18:00:00Z'))
})

test('it looks at the clock each hour, makes one when the day is over, and keeps so many', async () => {
  const running = backups({ keepCount: 2 })
  await running.look()
  for (let hour = 0; hour < 75; hour += 1) {
    expect(planned).toHaveLength(1)
    expect(planned[0]!.ms).toBe(HOUR_MS)
    clock.nowMs += planned[0]!.ms
    await running.look()
  }
  expect(told.map(({ kind }) => kind)).toEqual(['made', 'made', 'made', 'made'])
  expect(readdirSync(stick())).toEqual(['backup-2026-11-05T18-00-00Z', 'backup-2026-11-06T18-00-00Z'])
})

test('a book where nothing is written yet is left alone until something is', async () => {
  const empty = await openSqliteStore(':memory:')
  const running = backups({ store: empty })
  await running.look()
  expect(told).toEqual([])
  await empty.append((await store.read({ kitchenId })).entries)
  clock.nowMs += planned[0]!.ms
  await running.look()
  expect(told.map(({ kind }) => kind)).toEqual(['made'])
  expect(planned[0]!.ms).toBe(HOUR_MS)
  await empty.close()
})

test('what is due in twenty minutes is looked at in twenty minutes', async () => {
  await backups().look()
  clock.nowMs += 23 * HOUR_MS + 40 * 60_000
  planned = []
  await backups().look()
  expect(planned.map(({ ms }) => ms)).toEqual([20 * 60_000])
})

test('a stick that cannot be written is told, and tried again when it is back', async () => {
  writeFileSync(stick(), 'a file where the folder should be')
  const running = backups()
  await running.look()
  expect(told).toMatchObject([{ kind: 'failed', into: stick() }])
  expect(planned.map(({ ms }) => ms)).toEqual([HOUR_MS])
  rmSync(stick())
  mkdirSync(stick())
  clock.nowMs += HOUR_MS
  await running.look()
  expect(told.map(({ kind }) => kind)).toEqual(['failed', 'made'])
  expect(readdirSync(stick())).toEqual(['backup-2026-11-03T19-00-00Z'])
})

test('once stopped nothing more is planned or made', async () => {
  const running = backups()
  await running.look()
  await running.stop()
  expect(planned).toEqual([])
  clock.nowMs += 48 * HOUR_MS
  await running.look()
  expect(readdirSync(stick())).toHaveLength(1)
})
