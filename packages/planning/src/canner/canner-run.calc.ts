import { headspaceRule } from '@crib/guidance'
import type { Calc, CalcResult, Field, Reckoned } from '@crib/science'
import { say } from '../shared/say.ts'
import {
  conditionsOf,
  ELEVATION,
  JAR_FIELDS,
  type JarInput,
  KNOWN_BY,
  type PlaceInput,
  TRUE_DIAL,
} from './calc-fields.ts'
import { type CannerCard, cannerCard } from './card.ts'
import { confirmHold } from './confirm-hold.ts'
import { type RunState, runState } from './run.ts'
import { addMin, createRunClock } from './run-clock.ts'
import { LOG_EVENTS, type RunEvent, type RunRecord } from './run-event.ts'
import { runNumbers } from './run-numbers.ts'
import { publishedRunRules } from './run-rules.ts'
import type { RunSetup } from './run-setup.ts'
import { ventAdvice } from './vent-advice.ts'

interface LineInput {
  /** Minutes after midnight. */
  readonly clock: number
  readonly event: (typeof LOG_EVENTS)[number]
  readonly psi?: number
}

interface CannerRunInput extends PlaceInput, JarInput {
  readonly gauge: 'dial' | 'weight'
  readonly hold?: number
  readonly log: readonly LineInput[]
  readonly asksToCloseVent?: number
  readonly now?: number
}

/** Typed clock times are minutes after the midnight of the log's own day, in no zone at all. */
const DAY_CLOCK = createRunClock('UTC', 0)

const PSI: Field = { kind: 'quantity', label: 'Needle', unit: 'PsiGauge', min: 0, max: 30, limitSource: 'project-rule' }

export const cannerRunCalc: Calc<CannerRunInput> = {
  id: 'canner-run',
  title: 'A canner run from its log',
  question: 'What counted, when is it finished, and when may the lid come off?',
  inputs: {
    elevation: ELEVATION,
    knownBy: KNOWN_BY,
    gauge: { kind: 'choice', label: 'Gauge', options: ['dial', 'weight'] },
    hold: { ...PSI, label: 'Number held, if not the card’s', optional: true },
    ...JAR_FIELDS,
    log: {
      kind: 'table',
      label: 'Log',
      columns: {
        clock: { kind: 'clock', label: 'Clock' },
        event: { kind: 'choice', label: 'What happened', options: LOG_EVENTS },
        psi: { ...PSI, optional: true },
      },
      maxRows: 200,
    },
    asksToCloseVent: { kind: 'clock', label: 'Somebody asks to close the vent at', optional: true },
    now: { kind: 'clock', label: 'Now', optional: true },
  },
  outputs: {
    targetPsi: { label: 'Number to hold', unit: 'PsiGauge' },
    targetLb: { label: 'Weight to use', unit: 'LbWeight' },
    processMin: { label: 'Minutes at pressure', unit: 'Min' },
    ventDue: { label: 'Vent may be closed from', unit: 'ClockMin' },
    firstDue: { label: 'First due', unit: 'ClockMin' },
    restart: { label: 'Full time started again', unit: 'ClockMin' },
    restarts: { label: 'Restarts', unit: 'Count' },
    lostMin: { label: 'Minutes that do not count', unit: 'Min' },
    countedMin: { label: 'Minutes that count so far', unit: 'Min' },
    finish: { label: 'Finish', unit: 'ClockMin' },
    laterMin: { label: 'Later than first due', unit: 'Min' },
    lidOffFrom: { label: 'Lid off from', unit: 'ClockMin' },
    sealsFrom: { label: 'Look at the seals from', unit: 'ClockMin' },
    sealsTo: { label: 'Look at the seals until', unit: 'ClockMin' },
  },
  sourceKeys: ['usda-aib-539-1994', 'usda-aib-539-2015', 'pnw-421'],
  example: {
    elevation: '2150 ft',
    knownBy: 'map',
    gauge: 'dial',
    jar: 'pint',
    alkali: 'ash',
    standingRead: true,
    log: [
      { clock: '09:58', event: 'steam-steady' },
      { clock: '10:08', event: 'vent-closed' },
      { clock: '10:17', event: 'at-pressure' },
      { clock: '10:49', event: 'dipped', psi: 10 },
      { clock: '10:56', event: 'regained' },
    ],
  },
  run: (input) => {
    const card = cannerCard({
      elevationFt: input.elevation,
      elevationKnownBy: input.knownBy,
      ...(input.gauge === 'weight' ? { weightsLb: [10, 15] } : { dial: TRUE_DIAL }),
      conditions: conditionsOf(input, headspaceRule().figure.value),
    })
    if (card.kind === 'refused') {
      const { refused, why, forInformation, askWhom } = card
      return { ok: false, refused, why: [...why, ...forInformation], askWhom }
    }
    if (!card.minutes) {
      return { ok: false, refused: 'minutes-withheld', why: [...card.withheld, ...card.standing], askWhom: [] }
    }
    return told(input, card, card.minutes)
  },
}

function told(input: CannerRunInput, card: CannerCard, minutes: Reckoned): CalcResult {
  const route = card.routes[0]!
  const held = confirmHold(route, input.hold ?? route.holdAt!.value)
  if (!held.ok) return { ok: false, refused: 'below-the-table', why: held.why, askWhom: [] }
  const setup: RunSetup = {
    gauge: input.gauge,
    requiredReadingPsi: held.requiredReadingPsi,
    processMin: minutes.value,
    rules: publishedRunRules(),
  }
  const records = input.log.map(recordOf)
  const lastMs = Math.max(0, ...records.map(({ happenedAtMs }) => happenedAtMs))
  const state = runState(setup, records, input.now === undefined ? lastMs : addMin(0, input.now))
  return {
    ok: true,
    values: [
      { ...route.set, id: input.gauge === 'dial' ? 'targetPsi' : 'targetLb', value: held.requiredReadingPsi },
      minutes,
      ...runNumbers(setup, state, DAY_CLOCK),
    ],
    reasons: [...ventSentences(input, setup, state), ...route.reasons, ...state.notes, state.next],
    warnings: [
      ...state.departures.flatMap(({ sentence, remedy }) => (remedy ? [sentence, remedy] : [sentence])),
      ...state.whatNow,
      ...state.questions,
      ...held.notes,
      ...(input.gauge === 'dial' ? [say('canner:run-taken-as-true')] : []),
      ...card.standing,
    ],
  }
}

function recordOf({ clock, event, psi }: LineInput, index: number): RunRecord {
  return {
    id: String(index),
    happenedAtMs: addMin(0, clock),
    tiebreak: String(index).padStart(6, '0'),
    event: eventOf(event, psi),
  }
}

/** A reading without its number is no reading: it asks. */
function eventOf(type: LineInput['event'], psi: number | undefined): RunEvent {
  if (type === 'reading') return { type, psi: psi ?? Number.NaN }
  if ((type === 'dipped' || type === 'over-pressure') && psi !== undefined) return { type, psi }
  return { type }
}

function ventSentences({ asksToCloseVent }: CannerRunInput, { rules }: RunSetup, { marks }: RunState) {
  if (asksToCloseVent === undefined || marks.steamAtMs === undefined) return []
  const question = { steamAtMs: marks.steamAtMs, wantsToCloseAtMs: addMin(0, asksToCloseVent), rules, clock: DAY_CLOCK }
  return ventAdvice(question).sentences
}
