import { ValidRangeError } from '@crib/science'
import { describe, expect, test } from 'vitest'
import { type DippedRun, dipsBesideDirected } from './dips-beside-directed.ts'

const at = (...points: readonly (readonly [number, number])[]) => points.map(([atMin, value]) => ({ atMin, value }))
/** Invented: 12 psi from 5 to 65 with a dip to 6 psi between 30 and 40. */
const run: DippedRun = {
  pressure: at([0, 0], [5, 12], [30, 12], [33, 6], [37, 6], [40, 12], [65, 12], [100, 0]),
  requiredPsi: 12,
  fromMin: 5,
  toMin: 65,
  elevationM: 604,
  jar: 'pint',
  foodC: 85,
}

describe('dips beside the run as directed', () => {
  test('cost a share, and none where there was no dip', () => {
    const { freeBrineFraction, packedSolidFraction } = dipsBesideDirected(run)
    for (const share of [freeBrineFraction, packedSolidFraction]) {
      expect(share).toBeGreaterThan(0.5)
      expect(share).toBeLessThan(0.97)
    }
    const steady = { ...run, pressure: at([0, 0], [5, 12], [65, 12], [100, 0]) }
    expect(dipsBesideDirected(steady)).toEqual({ freeBrineFraction: 1, packedSolidFraction: 1 })
  })

  test('cost more the deeper they are', () => {
    const deeper = { ...run, pressure: run.pressure.map((p) => (p.value === 6 ? { ...p, value: 2 } : p)) }
    expect(dipsBesideDirected(deeper).freeBrineFraction).toBeLessThan(dipsBesideDirected(run).freeBrineFraction)
    expect(dipsBesideDirected(deeper).packedSolidFraction).toBeLessThan(dipsBesideDirected(run).packedSolidFraction)
  })

  test('are told as shares alone', () => {
    expect(Object.keys(dipsBesideDirected(run))).toEqual(['freeBrineFraction', 'packedSolidFraction'])
  })

  test('are refused for a span that runs backward', () => {
    expect(() => dipsBesideDirected({ ...run, toMin: 1 })).toThrow(ValidRangeError)
  })
})
