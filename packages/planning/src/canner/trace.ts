/**
 * The pressure of a run over time, for a picture: points that were read, points that are known by what they are, and
 * the spans between. Leaves out: every pixel, and any pressure nobody saw.
 */

import { runState } from './run.ts'
import type { RunRecord } from './run-event.ts'
import type { RunSetup } from './run-setup.ts'
import { inOrder } from './walk-order.ts'

export interface TracePoint {
  readonly atMs: number
  /** Null where pressure was below or above by word only. [psi] */
  readonly psi: number | null
  readonly side: 'at' | 'below' | 'above'
  /** True for a written reading; false for what the step itself implies (zero, or the number to hold). */
  readonly isRead: boolean
}

export type TraceSpanKind = 'vent' | 'come-up' | 'counts' | 'does-not-count' | 'dip' | 'cool-down' | 'lid-wait'

export interface TraceSpan {
  readonly kind: TraceSpanKind
  readonly fromMs: number
  /** Now, where the span is still open. */
  readonly toMs: number
}

export interface PressureTrace {
  readonly points: readonly TracePoint[]
  readonly spans: readonly TraceSpan[]
  readonly requiredPsi: number
  /** Top of a scale that holds every point. [psi] */
  readonly topPsi: number
}

/** Points and spans of a run at an instant; the same lines give the same trace in any order of arrival. */
export function pressureTrace(setup: RunSetup, records: readonly RunRecord[], nowMs: number): PressureTrace {
  const readable = inOrder(records.filter(({ happenedAtMs }) => Number.isFinite(happenedAtMs)))
  const points = readable.flatMap((record) => pointOf(setup, record))
  const highest = Math.max(setup.requiredReadingPsi, ...points.flatMap(({ psi }) => psi ?? []))
  return { points, spans: spansOf(setup, records, nowMs), requiredPsi: setup.requiredReadingPsi, topPsi: highest + 2 }
}

function pointOf({ requiredReadingPsi }: RunSetup, { happenedAtMs: atMs, event }: RunRecord): TracePoint[] {
  switch (event.type) {
    case 'lid-seated':
    case 'steam-steady':
    case 'vent-closed':
    case 'zero':
    case 'lid-off':
      return [{ atMs, psi: 0, side: 'at', isRead: false }]
    case 'at-pressure':
    case 'regained':
      return [{ atMs, psi: requiredReadingPsi, side: 'at', isRead: false }]
    case 'reading':
      return Number.isFinite(event.psi) ? [{ atMs, psi: event.psi, side: 'at', isRead: true }] : []
    case 'dipped':
      return [{ atMs, ...worded(event.psi, 'below') }]
    case 'over-pressure':
      return [{ atMs, ...worded(event.psi, 'above') }]
    default:
      return []
  }
}

function worded(psi: number | undefined, side: 'below' | 'above'): Omit<TracePoint, 'atMs'> {
  return psi === undefined || !Number.isFinite(psi)
    ? { psi: null, side, isRead: false }
    : { psi, side: 'at', isRead: true }
}

function spansOf(setup: RunSetup, records: readonly RunRecord[], nowMs: number): TraceSpan[] {
  const { marks, restarts, openDip, asOfMs, outcome, ...state } = runState(setup, records, nowMs)
  const spans: TraceSpan[] = []
  const add = (kind: TraceSpanKind, fromMs: number | undefined, toMs: number | undefined) => {
    if (fromMs !== undefined && toMs !== undefined && toMs > fromMs) spans.push({ kind, fromMs, toMs })
  }
  const firstMs = marks.firstAtPressureAtMs
  add('vent', marks.steamAtMs, marks.ventClosedAtMs ?? asOfMs)
  // After a restart from zero the vent that stands lies behind the first pressure.
  const ventClosedMs = marks.ventClosedAtMs
  if (firstMs === undefined || (ventClosedMs !== undefined && ventClosedMs < firstMs)) {
    add('come-up', ventClosedMs, firstMs ?? asOfMs)
  }
  let fromMs = firstMs
  for (const { dipAtMs, regainedAtMs } of restarts) {
    add('does-not-count', fromMs, dipAtMs)
    add('dip', dipAtMs, regainedAtMs)
    fromMs = regainedAtMs
  }
  const endMs = marks.heatOffAtMs ?? marks.zeroAtMs ?? asOfMs
  if (openDip) {
    add('does-not-count', fromMs, openDip.atMs)
    add('dip', openDip.atMs, Math.max(openDip.atMs, endMs))
  } else if (outcome === 'time-ran' || outcome === 'under-way') {
    add('counts', fromMs, Math.min(state.dueAtMs ?? asOfMs, asOfMs))
  } else {
    add('does-not-count', fromMs, endMs)
  }
  const coolFromMs = marks.heatOffAtMs ?? (marks.zeroAtMs === undefined ? undefined : state.dueAtMs)
  add('cool-down', coolFromMs, marks.zeroAtMs ?? asOfMs)
  add('lid-wait', marks.zeroAtMs, marks.lidOffAtMs ?? Math.min(asOfMs, state.lidOffFromMs ?? asOfMs))
  return spans
}
