/** One event of a canner load as typed: its word and, where it has one, its value. */
import { checkBody, KINDS, type RunEvent } from '@crib/journal'
import { LOG_EVENTS } from '@crib/planning'
import type { Json } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import { BadInput, badInput } from './exit-codes.ts'
import { readBody, type SchemaShape } from './read-body.ts'
import { refusalSentence } from './refusals.ts'

/** What the value after the word means; an event that is not here takes none. */
const VALUE_OF: Partial<Record<RunEvent['type'], string>> = {
  'canner-loaded': 'waterIn',
  reading: 'psi',
  dipped: 'psi',
  'over-pressure': 'psi',
  abandoned: 'why',
  'forced-cooling': 'how',
}

const SEALS = /^(\d+)\s*\/\s*(\d+)$/

/** Words a person may say, in the order of the work. */
export const EVENT_WORDS = [...LOG_EVENTS, 'seal-seen'] as const satisfies readonly RunEvent['type'][]

/** What each is called in a log. */
export const EVENT_NAMES = {
  'canner-loaded': 'terminal:event-canner-loaded',
  'lid-seated': 'terminal:event-lid-seated',
  'steam-steady': 'terminal:event-steam-steady',
  'vent-closed': 'terminal:event-vent-closed',
  'vent-opened': 'terminal:event-vent-opened',
  'at-pressure': 'terminal:event-at-pressure',
  reading: 'terminal:event-reading',
  dipped: 'terminal:event-dipped',
  regained: 'terminal:event-regained',
  'over-pressure': 'terminal:event-over-pressure',
  'relief-plug-blown': 'terminal:event-relief-plug-blown',
  'boiled-dry': 'terminal:event-boiled-dry',
  'fuel-out': 'terminal:event-fuel-out',
  abandoned: 'terminal:event-abandoned',
  'heat-off': 'terminal:event-heat-off',
  'forced-cooling': 'terminal:event-forced-cooling',
  zero: 'terminal:event-zero',
  'weight-off': 'terminal:event-weight-off',
  'lid-off': 'terminal:event-lid-off',
  'jars-out': 'terminal:event-jars-out',
  'seal-seen': 'terminal:event-seal-seen',
  'clock-questioned': 'terminal:event-clock-questioned',
} as const satisfies Record<RunEvent['type'], MessageKey>

/**
 * The event that `word` and `value` say: `reading 11.5`, `seal-seen 6/1` (held / not held), `canner-loaded '2 in'`.
 *
 * @throws {BadInput} on a word that is none, or a value the event does not take.
 */
export function readEvent(word: string, value: string | undefined, runId: string): RunEvent {
  if (!(EVENT_WORDS as readonly string[]).includes(word)) {
    throw badInput('terminal:no-such-event', { given: word, known: EVENT_WORDS.join(', ') })
  }
  const typed = { type: word, ...readValue(word as RunEvent['type'], value) }
  const body = readBody(KINDS['run-event'].schema as unknown as SchemaShape, { runId, event: typed }, () => null)
  const checked = checkBody('run-event', body)
  if (!checked.ok) throw new BadInput(...checked.refusals.map(refusalSentence))
  return checked.body.event as RunEvent
}

function readValue(word: RunEvent['type'], value: string | undefined): { [name: string]: Json } {
  if (word === 'seal-seen') {
    const match = SEALS.exec(value?.trim() ?? '')
    if (!match) throw badInput('terminal:seals-how', { given: value ?? '' })
    return { sealedCount: Number(match[1]), unsealedCount: Number(match[2]) }
  }
  if (value === undefined || value.trim() === '') return {}
  const name = VALUE_OF[word]
  if (name === undefined) throw badInput('terminal:event-without-value', { word, given: value })
  return { [name]: value.trim() }
}
