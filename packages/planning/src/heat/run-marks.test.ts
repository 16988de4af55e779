import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { findRunMarks, pressureFromTemperature } from './run-marks.ts'
import { createTraceThinner, type TraceReading } from './thin-trace.ts'

const words = createWords()
const trace = (...points: readonly (readonly [number, number])[]): TraceReading[] =>
  points.map(([atMin, value]) => ({ atMin, value }))

/** Invented: vented from 12 to 22, at 12 psi at 27, a dip from 50 to 56, heat off at 116, rest at 150. */
const pressure = trace(
  [0, 0],
  [22, 0.2],
  [27, 12],
  [30, 12.6],
  [50, 12],
  [53, 9],
  [56, 12],
  [70, 12.4],
  [116, 12],
  [150, 0.7],
  [160, 0],
)
const cannerC = trace([0, 25], [12, 97.5], [13, 98], [22, 98], [27, 117], [160, 90])

describe('the marks of a run in a trace', () => {
  const { marks, dips, unseen } = findRunMarks({ pressure, requiredPsi: 12, cannerC, elevationM: 604 })

  test('are vent, pressure, dip, regain, heat off and zero, at their minutes', () => {
    expect(marks.map(({ atMin, event }) => [event.type, Math.round(atMin * 10) / 10])).toEqual([
      ['steam-steady', 12],
      ['vent-closed', 22],
      ['at-pressure', 27],
      ['dipped', 50],
      ['regained', 56],
      ['heat-off', 116],
      ['zero', 150],
    ])
    expect(dips).toEqual([{ fromMin: 50, toMin: 56, lowestPsi: 9 }])
    expect(unseen).toEqual([])
  })

  test('each say why, and none says what the run was worth', () => {
    const said = marks.map(({ why }) => words.sentence(why))
    expect(said[3]).toBe('The pressure fell below 12 psi (83 kPa), to 9 psi (62 kPa).')
    expect(said.join(' ')).not.toMatch(/lethal|F0|enough|safe/i)
  })

  test('that a trace cannot show are asked for', () => {
    const cut = findRunMarks({ pressure: pressure.slice(1, 4), requiredPsi: 12, elevationM: 604 })
    expect(cut.unseen.map((sentence) => words.sentence(sentence))).toEqual([
      'The file does not show when the steam ran steady. Please say when.',
      'The file ends while the canner is at pressure.',
    ])
    const never = findRunMarks({ pressure: trace([0, 0], [30, 11.9]), requiredPsi: 12, elevationM: 0 })
    expect(never.marks).toEqual([])
    expect(words.sentence(never.unseen.at(-1)!)).toBe('The pressure never stood at 12 psi (83 kPa).')
  })

  test('can come from the canner temperature alone', () => {
    // 240 °F at sea level is 10.289 psi of airless steam (us-standard-atmosphere-1976, iapws-r7-97).
    const [read] = pressureFromTemperature(trace([0, 115.5555556]), 0)
    expect(read?.value).toBeCloseTo(10.289, 3)
    expect(pressureFromTemperature(trace([0, 20]), 0)[0]?.value).toBe(0)
  })
})

describe('a thinned trace', () => {
  test('keeps no reading farther than it says, with few points', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 2, maxLength: 400 }),
        fc.integer({ min: 8, max: 30 }),
        (steps, mostPoints) => {
          let value = 20
          const readings = steps.map((step, i) => {
            value += step
            return { atMin: i, value }
          })
          const thinner = createTraceThinner({ within: 0.3, mostPoints })
          for (const reading of readings) thinner.push(reading)
          const { points, within } = thinner.finish()
          expect(points.length).toBeLessThanOrEqual(mostPoints + 1)
          expect(points[0]).toEqual(readings[0])
          expect(points.at(-1)).toEqual(readings.at(-1))
          for (const reading of readings) {
            const next = points.findIndex(({ atMin }) => atMin >= reading.atMin)
            const a = points[Math.max(0, next - 1)]!
            const b = points[next]!
            const share = a === b ? 0 : (reading.atMin - a.atMin) / (b.atMin - a.atMin)
            expect(Math.abs(a.value + share * (b.value - a.value) - reading.value)).toBeLessThanOrEqual(within + 1e-9)
          }
        },
      ),
    )
  })

  test('of straight lines is their corners', () => {
    const thinner = createTraceThinner({ within: 0.01, mostPoints: 100 })
    for (let i = 0; i <= 10_000; i += 1) thinner.push({ atMin: i / 100, value: i < 5000 ? i / 100 : 50 })
    const { points } = thinner.finish()
    expect(points.length).toBeLessThanOrEqual(4)
  })
})
