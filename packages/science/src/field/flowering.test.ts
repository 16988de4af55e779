import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ValidRangeError } from '../errors.ts'
import { overlapDays, shedLagDays, shedMeetingFraction, shedWindow, silkWindow } from './flowering.ts'

describe('flowering', () => {
  // extension-corn-flowering: a field sheds 10 to 14 days, silks are out in 3 to 6 days and grow up to 10.
  test('a stand sheds for 14 days and its silks take pollen for 16', () => {
    expect(shedWindow(100)).toEqual({ fromDay: 97, toDay: 111 })
    expect(silkWindow(100)).toEqual({ fromDay: 97, toDay: 113 })
  })

  test('windows meet by the days they share, or not at all', () => {
    expect(overlapDays(shedWindow(100), silkWindow(103))).toBe(11)
    expect(overlapDays(shedWindow(100), silkWindow(114))).toBe(0)
    expect(overlapDays(shedWindow(100), silkWindow(200))).toBe(0)
  })

  test('a neighbour that sheds with this corn’s own tassels is not apart from it', () => {
    expect(shedLagDays({ neighbourHalfTasselDay: 97.5, ownHalfSilkDay: 100 })).toBe(0)
    expect(shedLagDays({ neighbourHalfTasselDay: 111.5, ownHalfSilkDay: 100 })).toBe(14)
    expect(shedMeetingFraction(0)).toBe(1)
  })

  // Worked by hand: exp(-14²/56.5) and exp(-19²/56.5).
  test('14 days apart leave about three in a hundred of the crossing, 19 days two in a thousand', () => {
    expect(shedMeetingFraction(14)).toBeCloseTo(0.0311, 4)
    expect(shedMeetingFraction(19)).toBeCloseTo(0.0017, 4)
    expect(shedMeetingFraction(-14)).toBe(shedMeetingFraction(14))
  })

  test('more days apart never mean more crossing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (lag, more) => {
          expect(shedMeetingFraction(lag + more)).toBeLessThanOrEqual(shedMeetingFraction(lag))
        },
      ),
    )
  })

  test('days that are none are refused', () => {
    expect(() => shedWindow(Number.NaN)).toThrow(ValidRangeError)
    expect(() => shedMeetingFraction(400)).toThrow(ValidRangeError)
  })
})
