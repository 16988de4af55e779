import type { RunEvent, RunFact } from '@crib/journal'
import { expect, test } from 'vitest'
import { unsealedJars } from './unsealed-jars.ts'

const DAY = '2026-11-03'
const at = (clock: string, day = DAY) => Date.parse(`${day}T${clock}:00Z`)

/** A nine-pint load of S5's landing (invented), with three jars that did not seal. */
function run(ventClosed: string): RunFact {
  const lines: [string, RunEvent, string?][] = [
    ['09:40', { type: 'lid-seated' }],
    ['09:58', { type: 'steam-steady' }],
    [ventClosed, { type: 'vent-closed' }],
    ['10:17', { type: 'at-pressure' }],
    ['11:17', { type: 'heat-off' }],
    ['12:00', { type: 'zero' }],
    ['12:00', { type: 'weight-off' }],
    ['12:10', { type: 'lid-off' }],
    ['12:12', { type: 'jars-out' }],
    ['01:00', { type: 'seal-seen', sealedCount: 6, unsealedCount: 3 }, '2026-11-04'],
  ]
  return {
    runId: 'r',
    begun: {
      runId: 'r',
      loadCode: 'HARK-261103-A1',
      gauge: 'dial',
      requiredReadingPsi: 12,
      processMin: 60,
      at: { zone: 'UTC', instant: `${DAY}T09:40:00Z` },
    },
    events: lines.map(([clock, event, day], index) => ({
      event,
      instant: new Date(at(clock, day)).toISOString(),
      zone: 'UTC',
      entryId: `e${index}`,
      personId: 'p',
      deviceId: 'd',
    })),
  } as unknown as RunFact
}

const choices = (ventClosed: string, nowMs: number) =>
  unsealedJars({ runs: { r: run(ventClosed) } }, nowMs).map(({ count, outcome }) => [
    count,
    outcome.choices.map(({ key }) => key),
  ])

test('within a day of coming out all three choices are open', () => {
  expect(choices('10:08', at('02:00', '2026-11-04'))).toEqual([[3, ['refrigerate', 'freeze', 'full-process-again']]])
})

test('after a day they are thrown away, and after two nobody is asked', () => {
  expect(choices('10:08', at('12:13', '2026-11-04'))).toEqual([[3, ['discard']]])
  expect(choices('10:08', at('12:13', '2026-11-05'))).toEqual([])
})

test('where the vent was closed early, a day is too long: two hours', () => {
  expect(choices('10:03', at('02:00', '2026-11-04'))).toEqual([[3, ['discard']]])
})
