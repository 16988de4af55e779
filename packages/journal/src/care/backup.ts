/** Backups: every kitchen's bundle in one dated folder, made whole or not at all, and taken back with every line checked. */
import { existsSync } from 'node:fs'
import { mkdir, readdir, rename, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { JournalStore } from '../store.ts'
import { type BundleManifest, readManifest, writeBundle } from './bundle.ts'
import { type TakenIn, takeIn } from './take-in.ts'

export interface BackupSetup {
  readonly store: JournalStore
  /** A folder or stick; backups lie side by side in it. */
  readonly into: string
  readonly nowMs: number
  /** So many of the newest are kept, this one among them; older ones are removed. All are kept when left out. */
  readonly keepCount?: number
}

export interface BackupMade {
  readonly folder: string
  readonly kitchens: readonly BundleManifest[]
  readonly removed: readonly string[]
}

const NAME = /^backup-(\d{4})-(\d\d)-(\d\d)T(\d\d)-(\d\d)-(\d\d)Z$/

/** Copies everything into a folder of its own under `into`. What is already there stays until the new one is whole. */
export async function backupTo({ store, into, nowMs, keepCount }: BackupSetup): Promise<BackupMade> {
  const stamp = `${new Date(nowMs).toISOString().slice(0, 19).replaceAll(':', '-')}Z`
  const folder = join(into, `backup-${stamp}`)
  const making = `${folder}.making`
  await mkdir(into, { recursive: true })
  // What a cut-off backup left behind is no backup, and takes room.
  const cutOff = (await readdir(into)).filter((name) => name.endsWith('.making') && NAME.test(name.slice(0, -7)))
  for (const name of cutOff) await rm(join(into, name), { recursive: true, force: true })
  await mkdir(making, { recursive: true })
  const kitchens: BundleManifest[] = []
  for (const { kitchenId } of await store.kitchens()) {
    const bundle = await writeBundle({ store, kitchenId, into: making, nowMs })
    kitchens.push(bundle.manifest)
  }
  await rename(making, folder)
  const removed = keepCount === undefined ? [] : (await backupsIn(into)).slice(Math.max(keepCount, 1))
  for (const each of removed) await rm(join(into, each.name), { recursive: true, force: true })
  return { folder, kitchens, removed: removed.map(({ name }) => join(into, name)) }
}

export interface BackupFound {
  readonly name: string
  readonly madeAtMs: number
}

/** Whole backups, newest first. One that was cut off has another name and is none. */
export async function backupsIn(into: string): Promise<readonly BackupFound[]> {
  if (!existsSync(into)) return []
  const found = (await readdir(into)).flatMap((name) => {
    const [, year, month, day, hour, minute, second] = NAME.exec(name) ?? []
    const madeAtMs = Date.parse(`${year}-${month}-${day}T${hour}:${minute}:${second}Z`)
    return Number.isNaN(madeAtMs) ? [] : [{ name, madeAtMs }]
  })
  return found.sort((a, b) => b.madeAtMs - a.madeAtMs)
}

export interface BackupSchedule {
  readonly everyHours: number
  /** When the newest one was made; null before any. */
  readonly lastMadeAtMs: number | null
  readonly nowMs: number
}

const HOUR_MS = 3_600_000

/**
 * Whether a backup is due, and when the next one will be. A clock that went back makes none due before its hours are
 * over by the new time, except that a newest backup dated after now counts as none: it may be from a wrong clock.
 */
export function backupDue({ everyHours, lastMadeAtMs, nowMs }: BackupSchedule): {
  readonly due: boolean
  readonly nextAtMs: number
} {
  if (!(everyHours > 0)) throw new RangeError(`everyHours is ${everyHours}; a schedule needs more than 0 h`)
  if (lastMadeAtMs === null || lastMadeAtMs > nowMs) return { due: true, nextAtMs: nowMs }
  const nextAtMs = lastMadeAtMs + everyHours * HOUR_MS
  return { due: nowMs >= nextAtMs, nextAtMs: Math.max(nextAtMs, nowMs) }
}

export interface Restored {
  /** By the kitchen's id. */
  readonly kitchens: Readonly<Record<string, TakenIn>>
  /** Whether every line of every bundle verified. */
  readonly whole: boolean
}

/**
 * Takes a backup, or one bundle, into a store. What is there already stays; what was erased there stays erased.
 *
 * @throws {RangeError} when the folder holds neither.
 */
export async function restore(store: JournalStore, folder: string): Promise<Restored> {
  const single = existsSync(join(folder, 'entries.jsonl'))
  const inside = single || !existsSync(folder) ? [] : (await readdir(folder)).sort()
  const bundles = single
    ? [folder]
    : inside.map((name) => join(folder, name)).filter((each) => existsSync(join(each, 'entries.jsonl')))
  if (bundles.length === 0) throw new RangeError(`${folder} is neither a backup nor a bundle`)
  const kitchens: Record<string, TakenIn> = {}
  for (const bundle of bundles) {
    const taken = await takeIn({ store, folder: bundle })
    kitchens[(await readManifest(bundle))?.kitchenId ?? bundle] = taken
  }
  return { kitchens, whole: Object.values(kitchens).every(({ faults }) => faults.length === 0) }
}
