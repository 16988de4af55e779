import { empiricalHeatingC, fitHeating } from '@crib/science'
import { describe, expect, test } from 'vitest'
import { heatingTrial } from './heating-trial.ts'
import type { LoggerTrace } from './logger-traces.ts'
import type { ProposedMark } from './run-marks.ts'

/** Invented: fh 8 min, jh 1.1, at pressure at minute 30. */
const LINE = { mediumC: 116, initialC: 90, fhMin: 8, jh: 1.1 }
const minutes = Array.from({ length: 121 }, (_, i) => 20 + i / 2)
const trace = (role: LoggerTrace['role'], value: (atMin: number) => number): LoggerTrace => ({
  column: role,
  role,
  within: 0.05,
  points: minutes.map((atMin) => ({ atMin, value: value(atMin) })),
})
const jar = trace('jar', (atMin) => (atMin < 30 ? 90 : empiricalHeatingC(LINE, atMin - 30)))
const canner = trace('canner', (atMin) => (atMin < 30 ? 99 : 116))
const marks = [
  { atMin: 30, event: { type: 'at-pressure' } },
  { atMin: 70, event: { type: 'heat-off' } },
] as unknown as readonly ProposedMark[]

describe('a heating trial picked out of traces', () => {
  test('gives back the line the readings were written from', () => {
    const trial = heatingTrial([jar, canner], marks)!
    expect(trial).toMatchObject({ mediumC: { value: 116 }, initialC: { value: 90 } })
    const readings = trial.readings.map(({ time, value }) => ({ timeMin: time, temperatureC: value }))
    const { fhMin, jh } = fitHeating(readings, { mediumC: 116, initialC: 90, straightFromMin: 3 })
    // Readings rounded to a hundredth of a degree, the last half a degree below the canner.
    expect(Math.abs(fhMin / 8 - 1)).toBeLessThan(0.01)
    expect(Math.abs(jh / 1.1 - 1)).toBeLessThan(0.01)
  })

  test('is none without a probe in the jar, or without a moment at pressure', () => {
    expect(heatingTrial([canner], marks)).toBeNull()
    expect(heatingTrial([jar, canner], [])).toBeNull()
  })
})
