/** What a run's log says beside its departures: restarts, high spells, what was taken for granted, and open questions. */
import type { Quantity, Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { minutesBetween, type RunClock } from './run-clock.ts'
import { fullMinutes, heldPressure, type RunView } from './run-view.ts'
import type { Question, Restart, Walk } from './walk.ts'

/** Cooling quicker than this after the heat is asked about. Project rule: light canners take about 20 min. [min]  @source pnw-421 */
const QUICK_COOLING_MIN = 10

export function notesOf(view: RunView): Sentence[] {
  const { walk, setup, clock, due } = view
  return [
    ...walk.restarts.map((restart) => restartSentence(restart, view)),
    ...walk.highSpells.map(({ atMs, psi }) => {
      const at = { clock: clock.clock(atMs) }
      return psi === undefined
        ? say('canner:note-high-spell', at)
        : say('canner:note-high-spell-at', { ...at, pressure: { value: psi, unit: 'PsiGauge' } })
    }),
    ...(walk.ran && walk.heatOffAtMs === undefined && walk.zeroAtMs !== undefined
      ? [say('canner:note-heat-off-not-written')]
      : []),
    ...quickCooling(view),
    ...(walk.zeroAtMs !== undefined && walk.weightOffAtMs === undefined ? [say('canner:note-weight-off-assumed')] : []),
    ...(due.sealWindow?.assumed
      ? [say('canner:note-jars-out-assumed', { clock: clock.dueClock(jarsFrom(view)) })]
      : []),
    ...(walk.seals && due.sealWindow && walk.seals.atMs < due.sealWindow.fromMs
      ? [say('canner:note-seals-early', { clock: clock.dueClock(due.sealWindow.fromMs) })]
      : []),
    ...(walk.seals && walk.seals.unsealedCount > 0
      ? [
          say('canner:note-unsealed', {
            count: walk.seals.unsealedCount,
            within: { value: setup.rules.redoWithinMin / 60, unit: 'H' },
          }),
        ]
      : []),
  ]
}

function jarsFrom({ walk, due }: RunView): number {
  return walk.lidOffAtMs ?? due.lidOffFromMs!
}

function quickCooling({ walk, clock }: RunView): Sentence[] {
  const { zeroAtMs, count, ran } = walk
  const fromMs = walk.heatOffAtMs ?? count?.dueMs
  if (!ran || zeroAtMs === undefined || fromMs === undefined) return []
  const minutes = minutesBetween(fromMs, zeroAtMs)
  if (minutes >= QUICK_COOLING_MIN) return []
  return [say('canner:note-quick-cooling', { clock: clock.clock(zeroAtMs), minutes: fullMinutes(minutes) })]
}

/** Says in one line why the minutes before a dip do not count, and from when the full time runs. */
function restartSentence({ dipAtMs, regainedAtMs, lostMin, cause, psi }: Restart, view: RunView): Sentence {
  const { setup, clock } = view
  const times = {
    dip: clock.clock(dipAtMs),
    regained: clock.clock(regainedAtMs),
    lost: fullMinutes(lostMin),
    process: { value: setup.processMin, unit: 'Min' },
    pressure: heldPressure(setup),
  } as const
  if (cause === 'dipped' || cause === 'reading') {
    if (setup.gauge === 'weight') return say('canner:note-restart-weight', times)
    if (psi === undefined) return say('canner:note-restart-dip', times)
    return say('canner:note-restart-dip-at', { ...times, reading: { value: psi, unit: 'PsiGauge' } })
  }
  return say('canner:note-restart-other', times)
}

export function questionSentences(walk: Walk, clock: RunClock, beyondNowMs: number | null): Sentence[] {
  return [
    ...walk.questions.map((question) => questionSentence(question, clock)),
    ...(beyondNowMs === null ? [] : [say('canner:asks-line-in-the-future', { clock: clock.clock(beyondNowMs) })]),
  ]
}

function questionSentence(question: Question, clock: RunClock): Sentence {
  switch (question.kind) {
    case 'out-of-order':
      return say('canner:asks-out-of-order', {
        clock: clock.clock(question.atMs),
        later: clock.clock(question.laterStepAtMs),
      })
    case 'pressure-before-vent-closed':
      return say('canner:asks-pressure-before-vent-closed', { clock: clock.clock(question.atMs) })
    case 'dip-before-pressure':
      return say('canner:asks-dip-before-pressure', { clock: clock.clock(question.atMs) })
    case 'after-the-end':
      return say('canner:asks-after-the-end', { clock: clock.clock(question.atMs) })
    case 'clock-jumped': {
      const jump: Quantity = { value: Math.round(question.jumpMs / 60_000), unit: 'Min' }
      const later: Quantity = { value: Math.ceil(question.laterMs / 60_000), unit: 'Min' }
      return say(question.laterMs > 0 ? 'canner:asks-clock-jumped-later' : 'canner:asks-clock-jumped', {
        clock: clock.clock(question.atMs),
        jump,
        later,
      })
    }
    case 'unreadable':
      return say('canner:asks-unreadable')
  }
}
