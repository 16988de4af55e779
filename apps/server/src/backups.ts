/**
 * Backups the server makes by itself: at the start when one is due, then whenever its hours are over. Leaves out: what a
 * backup is and when one is due (package journal).
 */
import type { JournalStore } from '@crib/journal'
import { type BackupMade, backupDue, backupsIn, backupTo } from '@crib/journal/care'

export interface BackupPlan {
  /** A folder or stick; backups lie side by side in it. */
  readonly into: string
  /** From the newest backup to the next. [h], more than 0 */
  readonly everyHours: number
  /** So many of the newest stay, at least 1. */
  readonly keepCount: number
}

export type BackupTold =
  | { readonly kind: 'made'; readonly made: BackupMade }
  | { readonly kind: 'failed'; readonly into: string; readonly detail: string }

export interface BackupsSetup extends BackupPlan {
  readonly store: JournalStore
  /** Told of each backup made and each one that could not be. */
  readonly told: (outcome: BackupTold) => void
  /** [ms since 1970 in UTC] */
  readonly now?: () => number
  /** Calls `then` once after `ms`; gives what stops it. */
  readonly later?: (ms: number, then: () => void) => () => void
}

export interface Backups {
  /** Makes one when it is due, then plans the next look. Never throws: what fails is told and tried again. */
  look(): Promise<void>
  /** Null before any. [ms since 1970 in UTC] */
  lastMadeAtMs(): Promise<number | null>
  /** Waits for one that is being made. */
  stop(): Promise<void>
}

/** A machine that slept has lost the hours its timers counted, so it looks at the clock at least this often. [ms] */
const LOOK_AT_LEAST_MS = 3_600_000

export function createBackups(setup: BackupsSetup): Backups {
  const { store, into, everyHours, keepCount, told, now = Date.now, later = unrefTimeout } = setup
  const lastMadeAtMs = async () => (await backupsIn(into))[0]?.madeAtMs ?? null
  let isStopped = false
  let cancel = () => {}
  let looking: Promise<void> = Promise.resolve()

  /** @returns how long until the next look [ms] */
  async function makeIfDue(): Promise<number> {
    try {
      const { due, nextAtMs } = backupDue({ everyHours, lastMadeAtMs: await lastMadeAtMs(), nowMs: now() })
      if (!due) return Math.min(nextAtMs - now(), LOOK_AT_LEAST_MS)
      // An empty one would count as the newest and keep the first line uncopied for a day.
      if ((await store.kitchens()).length === 0) return LOOK_AT_LEAST_MS
      const made = await backupTo({ store, into, nowMs: now(), keepCount })
      told({ kind: 'made', made })
    } catch (cause) {
      told({ kind: 'failed', into, detail: cause instanceof Error ? cause.message : String(cause) })
      return LOOK_AT_LEAST_MS
    }
    return Math.min(everyHours * 3_600_000, LOOK_AT_LEAST_MS)
  }

  async function lookAndPlan(): Promise<void> {
    const waitMs = await makeIfDue()
    if (!isStopped) cancel = later(waitMs, () => void look())
  }

  function look(): Promise<void> {
    cancel()
    looking = looking.then(() => (isStopped ? undefined : lookAndPlan()))
    return looking
  }

  return {
    look,
    lastMadeAtMs,
    stop: async () => {
      isStopped = true
      cancel()
      await looking
    },
  }
}

/** A waiting backup keeps no program open. */
function unrefTimeout(ms: number, then: () => void): () => void {
  const timer = setTimeout(then, ms)
  timer.unref()
  return () => clearTimeout(timer)
}
