import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { processLog } from './process-log.ts'
import type { RunRecord } from './run-event.ts'
import { publishedRunRules } from './run-rules.ts'
import { at, HARK_LAKE, log, RULES, WIND_UNDER_THE_KETTLE } from './run-testing.ts'
import { pressureTrace } from './trace.ts'

const words = createWords()
const logOf = (records: readonly RunRecord[], clock: string) => {
  const found = processLog({
    setup: HARK_LAKE,
    records,
    nowMs: at(clock),
    loadCode: 'HARK-261003-A1',
    cannerName: 'the yard canner',
    elevationFt: 2150,
  })
  const text = (sentences: typeof found.lines) => sentences.map((one) => words.sentence(one)).join('\n')
  return {
    ...found,
    summary: words.sentence(found.summary),
    lines: text(found.lines),
    departures: text(found.departures),
  }
}

test('the published rules are those the runs are tested with', () => {
  expect(publishedRunRules()).toEqual(RULES)
})

describe('the filled process log', () => {
  test('of S5 says what was done in one line', () => {
    const found = logOf(WIND_UNDER_THE_KETTLE, '12:50')
    expect(found.summary).toBe('Vented 10 min, held 12 psi (83 kPa) for 60 min.')
    expect(found.lines).toContain('Steam steady 09:58, vent closed 10:08.')
    expect(found.lines).toContain('Full time from 10:56 to 11:56.')
    expect(found.lines).toContain('Lowest reading written down: 10 psi (69 kPa).')
    expect(found.lines).toContain('1 restart.')
    expect(found.departures).toBe('')
  })

  test('counts what was held past the time when the heat-off was written down', () => {
    const records = [...WIND_UNDER_THE_KETTLE, ...log([['11:59', 'heat-off']]).map((one) => ({ ...one, id: 'off' }))]
    const found = logOf(records, '12:50')
    expect(found.summary).toBe('Vented 10 min, held 12 psi (83 kPa) for 63 min.')
    expect(found.lines).toContain('At zero by itself 40 min after the heat.')
  })

  test('of a short run says that the full time did not run, and never a verdict', () => {
    const found = logOf(
      log([
        ['09:58', 'steam-steady'],
        ['10:05', 'vent-closed'],
        ['10:17', 'at-pressure'],
        ['11:00', 'heat-off'],
      ]),
      '12:00',
    )
    expect(found.summary).toBe('The full 60 min at 12 psi (83 kPa) did not run.')
    expect(found.departureIds).toEqual(['vent-short', 'process-short'])
    expect(`${found.summary}${found.lines}${found.departures}`).not.toMatch(/\bsafe/i)
  })
})

describe('the pressure trace', () => {
  test('of S5 has vent, come-up, a dip, what counts and the cool-down', () => {
    const { spans, requiredPsi, topPsi } = pressureTrace(HARK_LAKE, WIND_UNDER_THE_KETTLE, at('12:50'))
    const named = spans.map(({ kind, fromMs, toMs }) => [
      kind,
      (fromMs - at('00:00')) / 60_000,
      (toMs - at('00:00')) / 60_000,
    ])
    // 09:58 is minute 598, 10:08 608, 10:17 617, 10:49 649, 10:56 656, 11:56 716, 12:39 759, 12:49 769.
    expect(named).toEqual([
      ['vent', 598, 608],
      ['come-up', 608, 617],
      ['does-not-count', 617, 649],
      ['dip', 649, 656],
      ['counts', 656, 716],
      ['cool-down', 716, 759],
      ['lid-wait', 759, 769],
    ])
    expect([requiredPsi, topPsi]).toEqual([12, 17])
  })

  test('draws no number that nobody saw', () => {
    const unread = log([
      ['10:08', 'vent-closed'],
      ['10:17', 'at-pressure'],
      ['10:30', 'dipped'],
    ])
    expect(pressureTrace(HARK_LAKE, unread, at('10:40')).points.at(-1)).toEqual({
      atMs: at('10:30'),
      psi: null,
      side: 'below',
      isRead: false,
    })
  })

  test('grows with the clock while a run is under way', () => {
    const upTo = WIND_UNDER_THE_KETTLE.filter(({ happenedAtMs }) => happenedAtMs <= at('10:17'))
    expect(pressureTrace(HARK_LAKE, upTo, at('10:30')).spans.at(-1)).toMatchObject({
      kind: 'counts',
      toMs: at('10:30'),
    })
  })
})
