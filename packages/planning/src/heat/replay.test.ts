import type { RunEventFact } from '@crib/journal'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { proposeLoggerMapping } from './logger-mapping.ts'
import { instantOfReading, type LoggerTrace, traceLogger } from './logger-traces.ts'
import { practiceLog } from './practice-log.ts'
import { alreadyWritten, type ReplayWish, replayRun } from './replay.ts'

const words = createWords()
const text = practiceLog({ elevationM: 250, requiredPsi: 12, processMin: 60, jar: 'pint' })
const [head, first] = text.split('\n') as [string, string]

async function traced() {
  const proposed = proposeLoggerMapping(head, first)
  if (!proposed) throw new Error('no mapping')
  return traceLogger([text], proposed.mapping, ['canner', 'jar', 'gauge'])
}
const wish = (traces: readonly LoggerTrace[], more: Partial<ReplayWish> = {}): ReplayWish => ({
  traces,
  requiredPsi: 12,
  elevationM: 250,
  jar: 'pint',
  foodC: 80,
  ...more,
})
async function replayed(more: Partial<ReplayWish> = {}, roles?: readonly LoggerTrace['role'][]) {
  const { traces } = await traced()
  const replay = replayRun(wish(roles ? traces.filter(({ role }) => roles.includes(role)) : traces, more))
  if (!replay.ok) throw new Error(words.sentence(replay.why))
  return replay
}

describe('the invented file to try with', () => {
  test('names its units, and has one empty cell and one row twice', async () => {
    expect(proposeLoggerMapping(head, first)?.unitUnsaid).toEqual([])
    const { outcome } = await traced()
    expect(outcome).toMatchObject({ ok: true, readingCount: 371, faultCounts: { 'drop-out': 1, repeated: 1 } })
  })
})

describe('a run told from a logger', () => {
  test('has steam, vent, pressure, dip, regain, heat off and zero where the file has them', async () => {
    const { marks, dips, unseen } = await replayed()
    expect(marks.map(({ event }) => event.type)).toEqual([
      'steam-steady',
      'vent-closed',
      'at-pressure',
      'dipped',
      'regained',
      'heat-off',
      'zero',
    ])
    // The file was written with these minutes; crossings of 12 psi lie between its half minutes.
    const near = [15, 25, 31.8, 60.4, 66.8, 129, 158.5]
    marks.forEach(({ atMin }, i) => {
      expect(Math.abs(atMin - near[i]!)).toBeLessThan(1.1)
    })
    expect(dips).toHaveLength(1)
    expect(unseen).toEqual([])
  })

  test('draws a loose jar within half a degree of the loose jar the file was written from, and a solid one cooler', async () => {
    const { modelled } = await replayed()
    const { traces } = await traced()
    const measured = traces.find(({ role }) => role === 'jar')!.points
    const [loose, solid] = modelled.map(({ points }) => points)
    const at = (points: readonly { atMin: number; value: number }[], minute: number) =>
      points.findLast(({ atMin }) => atMin <= minute)!.value
    for (const minute of [50, 100, 120]) {
      expect(Math.abs(at(loose!, minute) - at(measured, minute))).toBeLessThan(0.5)
      expect(at(solid!, minute)).toBeLessThan(at(loose!, minute))
    }
  })

  test('tells what the dip cost as shares, and holds no total', async () => {
    const { beside, ...rest } = await replayed()
    expect(beside!.freeBrineFraction).toBeGreaterThan(0.8)
    expect(beside!.freeBrineFraction).toBeLessThan(1)
    expect(JSON.stringify(rest)).not.toMatch(/lethal/i)
  })

  test('takes pressure from the canner where no gauge was read, and says so', async () => {
    const { marks, assumed } = await replayed({}, ['canner'])
    expect(marks.map(({ event }) => event.type)).toContain('at-pressure')
    expect(assumed.map((one) => words.sentence(one)).join(' ')).toContain(
      'Air left in the canner would read as too much',
    )
  })

  test('takes steam from the gauge where no probe was in the canner, and says so', async () => {
    const { modelled, assumed } = await replayed({}, ['gauge'])
    expect(modelled).toHaveLength(2)
    expect(assumed).toHaveLength(2)
  })

  test('is not told from a jar alone', async () => {
    const { traces } = await traced()
    const replay = replayRun(wish(traces.filter(({ role }) => role === 'jar')))
    expect(replay.ok).toBe(false)
  })
})

describe('a mark on its way into the log', () => {
  test('is put at an instant by each way a logger tells time', () => {
    const clock = { day: '2026-10-03', startClockMin: 9 * 60, zone: 'America/Toronto' }
    const at = (atMin: number, kind: Parameters<typeof instantOfReading>[1]['kind']) =>
      new Date(instantOfReading(atMin, { ...clock, kind })).toISOString()
    expect(at(15, 'minutes')).toBe('2026-10-03T13:15:00.000Z')
    expect(at(555, 'clock')).toBe('2026-10-03T13:15:00.000Z')
    expect(at(Date.parse('2026-10-03T13:15:00Z') / 60_000, 'instant')).toBe('2026-10-03T13:15:00.000Z')
  })

  test('that the log has already is found', () => {
    const line = { event: { type: 'vent-closed' }, instant: '2026-10-03T13:15:00.000Z' } as RunEventFact
    expect(alreadyWritten({ event: { type: 'vent-closed' } }, 0, [line])).toBe(line)
    expect(alreadyWritten({ event: { type: 'zero' } }, 0, [line])).toBeNull()
    const dip = { ...line, event: { type: 'dipped' } } as RunEventFact
    const atMs = Date.parse(dip.instant)
    expect(alreadyWritten({ event: { type: 'dipped' } }, atMs + 60_000, [dip])).toBe(dip)
    expect(alreadyWritten({ event: { type: 'dipped' } }, atMs + 600_000, [dip])).toBeNull()
  })
})
