/** The one next thing in a run, what may be written down now, and what to do after a bad end. */
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import type { RunEventType } from './run-event.ts'
import type { RunPhase } from './run-phase.ts'
import { heldPressure, type RunView } from './run-view.ts'

export function nextAction(view: RunView): Sentence {
  const { phase, setup, due, clock, walk, outcome } = view
  const pressure = heldPressure(setup)
  const failed = outcome === 'short' || outcome === 'dry'
  switch (phase) {
    case 'before-load':
      return say('canner:next-load')
    case 'loaded':
      return say('canner:next-seat-lid')
    case 'heating':
      return say('canner:next-watch-steam')
    case 'venting': {
      const until = clock.dueClock(due.ventDueAtMs!)
      return view.asOfMs < due.ventDueAtMs!
        ? say('canner:next-keep-venting', { clock: until })
        : say('canner:next-close-vent')
    }
    case 'come-up':
      if (view.departures.some(({ id }) => id === 'vent-short' || id === 'vent-unknown')) {
        return say('canner:next-vent-again', { vent: { value: setup.rules.ventMin, unit: 'Min' } })
      }
      return say(setup.gauge === 'dial' ? 'canner:next-come-up-dial' : 'canner:next-come-up-weight', { pressure })
    case 'holding':
      return say(setup.gauge === 'dial' ? 'canner:next-hold-dial' : 'canner:next-hold-weight', {
        pressure,
        clock: clock.dueClock(due.dueAtMs!),
      })
    case 'dipped':
      return dippedAction(view)
    case 'time-up':
      return say('canner:next-heat-off')
    case 'cooling':
      return say(failed ? 'canner:next-heat-off-hands-away' : 'canner:next-let-cool')
    case 'at-zero':
      return say('canner:next-weight-off', { wait: { value: setup.rules.lidWaitMin, unit: 'Min' } })
    case 'lid-wait':
      return say('canner:next-wait-lid', { clock: clock.dueClock(due.lidOffFromMs!) })
    case 'lid-free':
      return say('canner:next-lid-off')
    case 'unloading':
      return say(failed ? 'canner:next-jars-out-short' : 'canner:next-jars-out')
    case 'resting':
      if (failed) return chillOrRedo(view)
      return say('canner:next-leave-alone', { clock: clock.dueClock(due.sealWindow!.fromMs) })
    case 'seal-look':
      return failed ? chillOrRedo(view) : say('canner:next-look-at-seals')
    case 'seals-seen':
      if (failed) return chillOrRedo(view)
      return say(walk.seals!.unsealedCount > 0 ? 'canner:next-unsealed' : 'canner:next-label', {
        count: walk.seals!.unsealedCount,
        within: { value: setup.rules.redoWithinMin / 60, unit: 'H' },
      })
  }
}

function dippedAction({ setup, walk }: RunView): Sentence {
  const params = { pressure: heldPressure(setup), process: { value: setup.processMin, unit: 'Min' } } as const
  if (walk.openDip?.cause === 'fuel-out') return say('canner:next-fuel-out', params)
  if (walk.ventClosedAtMs === undefined) return say('canner:next-vent-and-start-again', params)
  return say(setup.gauge === 'dial' ? 'canner:next-bring-back-dial' : 'canner:next-bring-back-weight', params)
}

function chillOrRedo({ setup }: RunView): Sentence {
  return say('canner:remedy-chill-or-redo', { within: { value: setup.rules.redoWithinShortMin / 60, unit: 'H' } })
}

/** After a bad end: heat, hands, patience; then the food. Empty while nothing went wrong. */
export function whatNow({ setup, walk, outcome, phase }: RunView): Sentence[] {
  if (outcome === 'under-way' && walk.openDip?.cause === 'fuel-out') {
    return [say('canner:fuel-out-relight'), say('canner:fuel-out-or-end')]
  }
  if (outcome !== 'short' && outcome !== 'dry' && !walk.badEnd) return []
  const stillHot = phase === 'cooling' || phase === 'dipped'
  const within = { value: setup.rules.redoWithinShortMin / 60, unit: 'H' } as const
  return [
    ...(stillHot ? [say('canner:bad-end-heat-off'), say('canner:bad-end-let-cool')] : []),
    ...(walk.badEnd?.type === 'relief-plug-blown' ? [say('canner:bad-end-plug')] : []),
    ...(walk.badEnd?.type === 'boiled-dry' ? [say('canner:bad-end-dry')] : []),
    ...(outcome === 'time-ran'
      ? []
      : [
          say('canner:bad-end-chill'),
          say('canner:bad-end-freeze'),
          say('canner:bad-end-redo', { within, process: { value: setup.processMin, unit: 'Min' } }),
        ]),
  ]
}

const UNDER_HEAT: readonly RunEventType[] = ['fuel-out', 'boiled-dry', 'relief-plug-blown', 'abandoned', 'heat-off']
const NEEDLE: readonly RunEventType[] = ['reading', 'over-pressure']

const ALLOWED: Record<RunPhase, readonly RunEventType[]> = {
  'before-load': ['canner-loaded', 'abandoned'],
  loaded: ['lid-seated', 'abandoned'],
  heating: ['steam-steady', ...UNDER_HEAT],
  venting: ['vent-closed', ...UNDER_HEAT],
  'come-up': ['at-pressure', 'vent-opened', ...NEEDLE, ...UNDER_HEAT],
  holding: ['dipped', ...NEEDLE, ...UNDER_HEAT, 'vent-opened'],
  dipped: ['regained', 'steam-steady', 'vent-closed', 'zero', ...NEEDLE, ...UNDER_HEAT],
  'time-up': ['heat-off', ...NEEDLE, 'zero', 'boiled-dry', 'relief-plug-blown', 'forced-cooling'],
  cooling: ['zero', 'reading', 'forced-cooling', 'weight-off', 'lid-off', 'boiled-dry', 'relief-plug-blown'],
  'at-zero': ['weight-off', 'lid-off', 'boiled-dry'],
  'lid-wait': ['lid-off', 'boiled-dry'],
  'lid-free': ['lid-off', 'weight-off', 'boiled-dry'],
  unloading: ['jars-out', 'boiled-dry'],
  resting: ['seal-seen', 'boiled-dry'],
  'seal-look': ['seal-seen', 'boiled-dry'],
  'seals-seen': ['seal-seen'],
}

/**
 * What a screen offers to write down now, likeliest first. Anything else is still accepted by runState: reality is
 * recorded, never refused.
 */
export function allowedEvents(phase: RunPhase): readonly RunEventType[] {
  return [...ALLOWED[phase], 'clock-questioned']
}
