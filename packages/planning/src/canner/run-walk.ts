/**
 * Walks a run's lines in the order they happened and keeps what stands: marks, the count, dips, restarts.
 * Rules that never bend: the count only ever moves later, and pressure that was let go must be written down as regained.
 * Leaves out: what "now" adds (run.ts) and every word (run-departures.ts, run-next.ts).
 */
import type { RunEvent, RunEventType, RunRecord } from './run-event.ts'
import type { RunSetup } from './run-setup.ts'
import { type Dip, type DipCause, emptyWalk, type Walk } from './walk.ts'
import { askAboutOrder, compareText, inOrder, STEP_RANK } from './walk-order.ts'

/** Two lines of one minute: letting go at the very minute the time is up still lets go; heat off then is in time. */
const LETS_GO: ReadonlySet<RunEventType> = new Set([
  'dipped',
  'fuel-out',
  'vent-opened',
  'vent-closed',
  'relief-plug-blown',
  'boiled-dry',
  'abandoned',
  'forced-cooling',
  'zero',
  'weight-off',
  'lid-off',
  'jars-out',
])

const MS_PER_MIN = 60_000

/** Lines that cannot be placed in time ask instead of counting. */
export function walkRun(setup: RunSetup, records: readonly RunRecord[]): Walk {
  const walk = emptyWalk()
  const readable = records.filter((record) => Number.isFinite(record.happenedAtMs))
  const unreadable = records.filter((record) => !Number.isFinite(record.happenedAtMs))
  const unreadableIds = [...new Set(unreadable.map(({ id }) => id))].sort(compareText)
  walk.questions.push(...unreadableIds.map((recordId) => ({ kind: 'unreadable', recordId }) as const))
  for (const record of inOrder(readable)) step(walk, setup, record)
  return walk
}

function step(walk: Walk, setup: RunSetup, { id, happenedAtMs: atMs, event }: RunRecord): void {
  lockWhenRun(walk, unbrokenInstant(event, atMs), LETS_GO.has(event.type) || isLow(setup, event))
  askAboutOrder(walk, atMs, event.type)
  switch (event.type) {
    case 'canner-loaded':
      heatAgainAfterZero(walk)
      walk.loadedAtMs ??= atMs
      if (event.waterIn !== undefined && Number.isFinite(event.waterIn)) walk.waterIn ??= event.waterIn
      return
    case 'lid-seated':
      heatAgainAfterZero(walk)
      walk.lidSeatedAtMs ??= atMs
      return
    case 'steam-steady':
      heatAgainAfterZero(walk)
      if (!isCounting(walk) && walk.ventClosedAtMs === undefined) walk.steamAtMs ??= atMs
      return
    case 'vent-closed':
      // Pressure cannot have been there while the vent was open: whatever counted so far asks for a fresh start.
      if (walk.ventClosedAtMs === undefined) letGo(walk, atMs, 'vent-closed-late')
      walk.ventClosedAtMs ??= atMs
      return
    case 'vent-opened':
      openVent(walk, atMs)
      return
    case 'at-pressure':
    case 'regained':
      regain(walk, setup, atMs)
      return
    case 'reading':
      read(walk, setup, id, atMs, event.psi)
      return
    case 'dipped':
      letGo(walk, atMs, 'dipped', event.psi)
      return
    case 'over-pressure':
      walk.highSpells.push({ atMs, ...(event.psi !== undefined && { psi: event.psi }) })
      return
    case 'relief-plug-blown':
    case 'boiled-dry':
    case 'abandoned':
      if (!walk.ran || event.type !== 'abandoned') walk.badEnd ??= { type: event.type, atMs }
      letGo(walk, atMs, event.type)
      return
    case 'fuel-out':
      letGo(walk, atMs, 'fuel-out')
      return
    case 'heat-off':
      letGo(walk, atMs, 'heat-off')
      walk.heatOffAtMs ??= atMs
      return
    case 'forced-cooling':
      walk.missteps.push({ kind: 'forced-cooling', atMs, ...(event.how !== undefined && { how: event.how }) })
      letGo(walk, atMs, 'forced-cooling')
      return
    case 'zero':
      letGo(walk, atMs, 'zero')
      walk.zeroAtMs ??= atMs
      if (!walk.ran) forgetVent(walk)
      return
    case 'weight-off':
      if (walk.zeroAtMs === undefined && walk.ventClosedAtMs !== undefined)
        walk.missteps.push({ kind: 'weight-off-early', atMs })
      letGo(walk, atMs, 'weight-off')
      walk.weightOffAtMs ??= atMs
      return
    case 'lid-off':
      if (walk.zeroAtMs === undefined && walk.ventClosedAtMs !== undefined)
        walk.missteps.push({ kind: 'lid-off-early', atMs })
      letGo(walk, atMs, 'lid-off')
      walk.lidOffAtMs ??= atMs
      if (!walk.ran) forgetVent(walk)
      return
    case 'jars-out':
      letGo(walk, atMs, 'jars-out')
      walk.jarsOutAtMs ??= atMs
      return
    case 'seal-seen':
      walk.seals = { atMs, sealedCount: event.sealedCount, unsealedCount: event.unsealedCount }
      return
    case 'clock-questioned':
      moveCount(walk, atMs, event.jumpMs, unbrokenInstant(event, atMs))
      return
  }
}

function isLow({ gauge, requiredReadingPsi }: RunSetup, event: RunEvent): boolean {
  return event.type === 'reading' && gauge === 'dial' && event.psi < requiredReadingPsi
}

export function isCounting(walk: Walk): boolean {
  return walk.count !== undefined && walk.openDip === undefined && !walk.ran
}

/** The full time has run once something later than its end is reached with pressure never let go. */
export function lockWhenRun(walk: Walk, atMs: number, letsGo: boolean): void {
  if (!isCounting(walk) || walk.badEnd) return
  const { dueMs } = walk.count!
  if (letsGo ? atMs > dueMs : atMs >= dueMs) walk.ran = true
}

function letGo(walk: Walk, atMs: number, cause: DipCause, psi?: number): void {
  const isNeedle = cause === 'dipped' || cause === 'reading'
  if (!walk.count || walk.ran) {
    if (cause === 'dipped' && !walk.ran) walk.questions.push({ kind: 'dip-before-pressure', atMs })
    return
  }
  const dip: Dip = { atMs, cause, ...(psi !== undefined && Number.isFinite(psi) && { psi }) }
  if (dip.psi !== undefined && dip.psi < (walk.lowestPsi ?? Infinity)) walk.lowestPsi = dip.psi
  if (isNeedle || !walk.openDip) walk.dips.push(dip)
  const open = walk.openDip ?? { ...dip, lostMin: (atMs - walk.count.fromMs) / MS_PER_MIN, needsTap: false }
  walk.openDip = isNeedle ? open : { ...open, needsTap: true }
}

function regain(walk: Walk, { processMin }: RunSetup, atMs: number): void {
  if (walk.ran || walk.badEnd) {
    if (walk.badEnd || walk.heatOffAtMs !== undefined) walk.questions.push({ kind: 'after-the-end', atMs })
    return
  }
  if (isCounting(walk)) return
  if (walk.ventClosedAtMs === undefined) walk.questions.push({ kind: 'pressure-before-vent-closed', atMs })
  if (walk.openDip) {
    const { atMs: dipAtMs, cause, psi, lostMin } = walk.openDip
    walk.restarts.push({ dipAtMs, cause, ...(psi !== undefined && { psi }), regainedAtMs: atMs, lostMin })
  }
  walk.openDip = undefined
  walk.firstAtPressureAtMs ??= atMs
  walk.count = { fromMs: atMs, dueMs: atMs + processMin * MS_PER_MIN }
  forgetEnd(walk)
}

/** A needle under the number is a dip though nobody tapped it; a needle back at the number is a regain after a dip. */
function read(walk: Walk, setup: RunSetup, recordId: string, atMs: number, psi: number): void {
  if (!Number.isFinite(psi)) {
    walk.questions.push({ kind: 'unreadable', recordId })
    return
  }
  // Under a weight the needle is only a witness.
  if (setup.gauge === 'weight') return
  // With the heat off, the fuel out or the vent open, a needle that is still up is falling, not regained.
  if (psi < setup.requiredReadingPsi) letGo(walk, atMs, 'reading', psi)
  else if (walk.openDip && !walk.openDip.needsTap) regain(walk, setup, atMs)
}

function openVent(walk: Walk, atMs: number): void {
  if (walk.zeroAtMs !== undefined) {
    walk.weightOffAtMs ??= atMs
    return
  }
  if (walk.count && !isPressureGone(walk)) walk.missteps.push({ kind: 'vent-opened-under-pressure', atMs })
  letGo(walk, atMs, 'vent-opened')
  if (walk.ran) return
  forgetVent(walk)
  walk.lastStep = { rank: STEP_RANK['lid-seated'], atMs }
}

function isPressureGone({ zeroAtMs, lidOffAtMs, jarsOutAtMs }: Walk): boolean {
  return zeroAtMs !== undefined || lidOffAtMs !== undefined || jarsOutAtMs !== undefined
}

/** Air is back in: steam must be steady and vented anew. */
function forgetVent(walk: Walk): void {
  walk.steamAtMs = undefined
  walk.ventClosedAtMs = undefined
}

function forgetEnd(walk: Walk): void {
  walk.heatOffAtMs = undefined
  walk.zeroAtMs = undefined
  walk.weightOffAtMs = undefined
  walk.lidOffAtMs = undefined
  walk.jarsOutAtMs = undefined
}

/** A run that stopped short may be heated again: what ended it then belongs to the earlier heating. */
function heatAgainAfterZero(walk: Walk): void {
  if (walk.ran || walk.badEnd) return
  if (walk.heatOffAtMs === undefined && !isPressureGone(walk)) return
  forgetEnd(walk)
  forgetVent(walk)
}

/**
 * What the unbroken clock reads at a clock question, if that is earlier; the line's own instant for every other line.
 * With no answer yet, the reading that counts least.
 */
function unbrokenInstant(event: RunEvent, atMs: number): number {
  if (event.type !== 'clock-questioned') return atMs
  const keptMs = Date.parse(event.keptInstant)
  if (Number.isFinite(keptMs)) return Math.min(atMs, keptMs)
  return atMs - (Number.isFinite(event.jumpMs) ? Math.max(0, event.jumpMs) : 0)
}

/** After a jump forward the device reaches every due time too soon, so the due time moves on with it; never back. */
function moveCount(walk: Walk, atMs: number, jumpMs: number, keptMs: number): void {
  const laterMs = isCounting(walk) ? Math.max(0, atMs - keptMs) : 0
  if (walk.count && laterMs > 0) walk.count = { ...walk.count, dueMs: walk.count.dueMs + laterMs }
  walk.questions.push({ kind: 'clock-jumped', atMs, jumpMs, laterMs })
}
