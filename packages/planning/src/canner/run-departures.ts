/**
 * Where a run departs from its direction: what is published beside what was done, and how it can still be put right.
 * Departures travel with every jar of the load. Leaves out: restarts, since starting again is the direction.
 */
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { minutesBetween, type RunClock } from './run-clock.ts'
import type { DueTimes } from './run-due.ts'
import type { OutcomeKind, RunPhase } from './run-phase.ts'
import type { RunSetup } from './run-setup.ts'
import type { Misstep, Walk } from './walk.ts'

export type DepartureId =
  | 'vent-short'
  | 'vent-unknown'
  | 'process-short'
  | 'boiled-dry'
  | 'relief-plug-blown'
  | 'lid-wait-short'
  | 'canner-water-low'
  | Misstep['kind']

export interface Departure {
  readonly id: DepartureId
  /** Published and done, in one line. */
  readonly sentence: Sentence
  /** How it can still be put right, while it can. */
  readonly remedy?: Sentence
}

export interface DepartureFacts {
  readonly setup: RunSetup
  readonly walk: Walk
  readonly phase: RunPhase
  readonly outcome: OutcomeKind
  readonly due: DueTimes
  readonly clock: RunClock
}

/** In the order a reader asks: water, vent, process, then what happened on the way out. */
export function departuresOf(facts: DepartureFacts): Departure[] {
  const { walk, outcome, clock } = facts
  return [
    ...waterDeparture(facts),
    ...ventDeparture(facts),
    ...(outcome === 'short' ? [processDeparture(facts)] : []),
    ...badEndDeparture(facts),
    ...walk.missteps.map((misstep) => ({ id: misstep.kind, sentence: misstepSentence(misstep, clock) })),
    ...lidWaitDeparture(facts),
  ]
}

function waterDeparture({ setup: { rules }, walk: { waterIn } }: DepartureFacts): Departure[] {
  if (waterIn === undefined || waterIn >= rules.waterLowIn) return []
  const params = { water: { value: waterIn, unit: 'In' }, lowest: { value: rules.waterLowIn, unit: 'In' } } as const
  return [{ id: 'canner-water-low', sentence: say('canner:departed-water-low', params) }]
}

function ventDeparture(facts: DepartureFacts): Departure[] {
  const { setup, walk, due } = facts
  const published = { value: setup.rules.ventMin, unit: 'Min' } as const
  const isVentClosed = walk.ventClosedAtMs !== undefined
  if (due.ventedMin === undefined) {
    const isUnknown = isVentClosed || (walk.count !== undefined && !walk.openDip)
    if (!isUnknown) return []
    return [{ id: 'vent-unknown', sentence: say('canner:departed-vent-unknown', { published }), ...remedy(facts) }]
  }
  if (due.ventedMin >= setup.rules.ventMin) return []
  // One decimal, and down, so that 9 min 59 s does not read as the full ten.
  const done = { value: Math.floor(due.ventedMin * 10) / 10, unit: 'Min' } as const
  return [{ id: 'vent-short', sentence: say('canner:departed-vent-short', { done, published }), ...remedy(facts) }]
}

/** Air is put right by venting again: at once while nothing presses yet, else after the needle came down by itself. */
function remedy({ phase, outcome, setup: { rules } }: DepartureFacts): { readonly remedy: Sentence } {
  const vent = { value: rules.ventMin, unit: 'Min' } as const
  if (phase === 'come-up') return { remedy: say('canner:remedy-vent-again', { vent }) }
  const isHot = phase === 'holding' || phase === 'dipped' || phase === 'time-up'
  if (isHot && outcome !== 'dry') return { remedy: say('canner:remedy-cool-and-vent-again', { vent }) }
  const within = { value: rules.redoWithinShortMin / 60, unit: 'H' } as const
  return { remedy: say('canner:remedy-chill-or-redo', { within }) }
}

function processDeparture({ setup, walk }: DepartureFacts): Departure {
  const done = { value: Math.floor(walk.openDip?.lostMin ?? 0), unit: 'Min' } as const
  const published = { value: setup.processMin, unit: 'Min' } as const
  const within = { value: setup.rules.redoWithinShortMin / 60, unit: 'H' } as const
  return {
    id: 'process-short',
    sentence: say('canner:departed-process-short', { done, published }),
    remedy: say('canner:remedy-chill-or-redo', { within }),
  }
}

function badEndDeparture({ setup, walk: { badEnd }, clock }: DepartureFacts): Departure[] {
  if (!badEnd || badEnd.type === 'abandoned') return []
  const key = badEnd.type === 'boiled-dry' ? 'canner:departed-boiled-dry' : 'canner:departed-plug-blown'
  const within = { value: setup.rules.redoWithinShortMin / 60, unit: 'H' } as const
  return [
    {
      id: badEnd.type,
      sentence: say(key, { clock: clock.clock(badEnd.atMs) }),
      ...(badEnd.type === 'boiled-dry' && { remedy: say('canner:remedy-chill-or-redo', { within }) }),
    },
  ]
}

const MISSTEP_KEYS = {
  'vent-opened-under-pressure': 'canner:departed-vent-opened-under-pressure',
  'weight-off-early': 'canner:departed-weight-off-early',
  'lid-off-early': 'canner:departed-lid-off-early',
  'forced-cooling': 'canner:departed-forced-cooling',
} as const

function misstepSentence({ kind, atMs }: Misstep, clock: RunClock): Sentence {
  return say(MISSTEP_KEYS[kind], { clock: clock.clock(atMs) })
}

function lidWaitDeparture({ setup, walk, due }: DepartureFacts): Departure[] {
  const { lidOffAtMs, zeroAtMs } = walk
  if (lidOffAtMs === undefined || zeroAtMs === undefined || due.lidOffFromMs === undefined) return []
  if (lidOffAtMs >= due.lidOffFromMs) return []
  const waitedMin = Math.max(0, setup.rules.lidWaitMin - minutesBetween(lidOffAtMs, due.lidOffFromMs))
  const done = { value: Math.floor(waitedMin * 10) / 10, unit: 'Min' } as const
  const published = { value: setup.rules.lidWaitMin, unit: 'Min' } as const
  return [{ id: 'lid-wait-short', sentence: say('canner:departed-lid-wait-short', { done, published }) }]
}
