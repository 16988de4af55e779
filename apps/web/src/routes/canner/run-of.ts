/** One run of the book at this moment, for its sheet and for the list of what is on the fire. */
import type { RunEvent, RunFact } from '@crib/journal'
import {
  type RunClock,
  type RunRecord,
  type RunSetup,
  type RunState,
  runClock,
  runNumbers,
  runRecords,
  runSetupOf,
  runState,
} from '@crib/planning'
import type { Quantity, Reckoned, Sentence } from '@crib/science'
import type { Words } from '@crib/wording'

export interface RunNow {
  readonly run: RunFact
  readonly setup: RunSetup
  readonly records: readonly RunRecord[]
  readonly state: RunState
  readonly clock: RunClock
  readonly zone: string
  /** What must be held, in the gauge's own unit. */
  readonly pressure: Quantity
  readonly number: (id: string) => Reckoned | undefined
}

export function runNow(run: RunFact, nowMs: number): RunNow {
  const setup = runSetupOf(run)
  const records = runRecords(run)
  const state = runState(setup, records, nowMs)
  const clock = runClock(setup, records)
  const numbers = runNumbers(setup, state, clock)
  return {
    run,
    setup,
    records,
    state,
    clock,
    zone: setup.zone ?? 'UTC',
    pressure: { value: setup.requiredReadingPsi, unit: setup.gauge === 'dial' ? 'PsiGauge' : 'LbWeight' },
    number: (id) => numbers.find((value) => value.id === id),
  }
}

/** Over once its seals were seen or it was given up. */
export function isOpen({ events }: RunFact): boolean {
  return !events.some(({ event }) => event.type === 'seal-seen' || event.type === 'abandoned')
}

/** The one clock time that matters now, for a line of its own. */
export function dueOf({ state, number }: RunNow): { readonly key: DueKey; readonly reckoned: Reckoned } | null {
  const due = (key: DueKey, id: string) => {
    const reckoned = number(id)
    return reckoned ? ({ key, reckoned } as const) : null
  }
  switch (state.phase) {
    case 'venting':
      return due('vent', 'ventDue')
    case 'holding':
    case 'time-up':
      return due('done', 'finish')
    case 'at-zero':
    case 'lid-wait':
    case 'lid-free':
      return due('lid', 'lidOffFrom')
    case 'unloading':
    case 'resting':
    case 'seal-look':
      return state.outcome === 'time-ran' ? due('seals', 'sealsFrom') : null
    default:
      return null
  }
}

export type DueKey = 'vent' | 'done' | 'lid' | 'seals'

/** What a line of the log says. */
export function eventWords(
  event: RunEvent,
  { pressure, setup }: Pick<RunNow, 'pressure' | 'setup'>,
  words: Words,
): string {
  const text = words.sentence(tapSentence(event.type, { pressure, setup }))
  if (
    (event.type === 'reading' || event.type === 'dipped' || event.type === 'over-pressure') &&
    event.psi !== undefined
  ) {
    return words.say('canner:run-screen-with-psi', { words: text, reading: { value: event.psi, unit: 'PsiGauge' } })
  }
  if (event.type === 'canner-loaded' && event.waterIn !== undefined) {
    return words.say('canner:run-screen-with-water', { words: text, water: { value: event.waterIn, unit: 'In' } })
  }
  if (event.type === 'seal-seen') {
    const { sealedCount, unsealedCount } = event
    return words.say('canner:run-screen-with-seals', { words: text, sealed: sealedCount, unsealed: unsealedCount })
  }
  return text
}

/** What stands on the button that writes an event down. */
export function tapSentence(type: RunEvent['type'], { pressure, setup }: Pick<RunNow, 'pressure' | 'setup'>): Sentence {
  switch (type) {
    case 'at-pressure':
    case 'regained':
    case 'dipped':
      return { key: `canner:run-screen-tap-${type}-${setup.gauge}`, params: { pressure } }
    default:
      return { key: `canner:run-screen-tap-${type}` }
  }
}
