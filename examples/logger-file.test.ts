/** The logger's file in this folder replays on the demo kitchen's second load and fills its log. */
import { readFileSync } from 'node:fs'
import { demoKitchen, foldFacts, type RunEventFact } from '@crib/journal'
import {
  instantOfReading,
  type PracticeRun,
  practiceLog,
  proposeLoggerMapping,
  replayRun,
  runRecords,
  runSetupOf,
  runState,
  traceLogger,
} from '@crib/planning'
import { formatClock } from '@crib/wording'
import { expect, test } from 'vitest'
import { handClock, repeatingRandom } from '../packages/journal/src/testing/invented.ts'

const zone = 'America/Toronto'
const text = readFileSync(new URL('ostrey-point-second-load.csv', import.meta.url), 'utf8')
const told = demoKitchen({ clock: handClock('2026-11-02T13:00:00.000Z'), random: repeatingRandom(), zone })
const load = Object.values(foldFacts(told.entries).runs).find(({ begun }) => begun.loadCode === 'OSTR-260415-A2')!

const RUN: PracticeRun = { elevationM: 820 * 0.3048, requiredPsi: 11, processMin: 70, jar: 'quart', fromClockMin: 750 }

test('it says that it is invented, and is the invented file of that load, digit by digit', () => {
  expect(text).toBe(`# Invented: the second load of the demo kitchen, Ostrey Point.\n${practiceLog(RUN)}`)
})

test('its head says every column and unit; its lines make the load a whole log with one restart', async () => {
  const [, head, first] = text.split('\n') as [string, string, string]
  const proposed = proposeLoggerMapping(head, first)!
  expect(proposed).toMatchObject({ unitUnsaid: [], mapping: { time: { column: 'clock', kind: 'clock' } } })
  const { outcome, traces } = await traceLogger([text], proposed.mapping, ['canner', 'jar', 'gauge'])
  expect(outcome).toMatchObject({ ok: true, readingCount: 415, faultCounts: { 'drop-out': 1, repeated: 1 } })
  const replay = replayRun({ traces, requiredPsi: 11, elevationM: RUN.elevationM, jar: 'quart', foodC: 80 })
  if (!replay.ok) throw new Error(replay.why.key)
  const clock = { kind: 'clock', day: '2026-04-15', startClockMin: 0, zone } as const
  const lines = replay.marks.map(({ atMin, event }) => ({ event, instant: instantOfReading(atMin, clock) }))
  const said = ({ instant }: (typeof lines)[number]) =>
    formatClock(Math.floor((instant - Date.parse('2026-04-15T04:00:00Z')) / 60_000))
  expect(lines.map((line) => `${said(line)} ${line.event.type}`)).toEqual([
    '12:44 steam-steady',
    '12:55 vent-closed',
    '13:01 at-pressure',
    '13:30 dipped',
    '13:36 regained',
    '14:49 heat-off',
    '15:29 zero',
  ])
  const found = lines.map(({ event, instant }, index) => ({
    entryId: `found-${index}`,
    personId: 'p',
    deviceId: 'd',
    event,
    instant: new Date(instant).toISOString(),
  }))
  const whole = { ...load, events: [...load.events, ...(found as unknown as RunEventFact[])] }
  const { outcome: ended, restarts, ventedMin, questions } = runState(runSetupOf(load), runRecords(whole), Date.now())
  expect(ended).toBe('time-ran')
  expect(restarts).toHaveLength(1)
  expect(ventedMin).toBeCloseTo(10.2, 0)
  expect(questions).toEqual([])
})
