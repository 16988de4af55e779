import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { coolingMinutes } from './cooling.ts'
import {
  type FreezingBody,
  freezingHeatKJPerKg,
  freezingHoursPham1986,
  freezingHoursPlank1913,
  hominyHeats,
  type WarmBody,
} from './freezing-time.ts'

const plank = readReferenceTable(new URL('./freezing-time.plank.csv', import.meta.url), [
  'shape',
  'thicknessM',
  'densityKgPerM3',
  'latentJPerKg',
  'conductivityWPerMK',
  'surfaceWPerM2K',
  'freezingC',
  'mediumC',
  'hours',
])

const bag: WarmBody = {
  shape: 'slab',
  thicknessM: 0.025,
  densityKgPerM3: 1000,
  conductivityWPerMK: 1.2,
  surfaceWPerM2K: 10,
  mediumC: -18,
  startC: 20,
  centreC: -15,
  ...hominyHeats(0.76),
}

test.each(plank.rows)('Plank: $thicknessM m freezes through in $hours h', ({ shape, hours, ...row }) => {
  const body: FreezingBody = { ...row, shape: shape === 3 ? 'sphere' : 'slab' }
  expect(Math.abs(freezingHoursPlank1913(body) - hours)).toBeLessThan(0.005 + 1e-9)
})

// ashrae-refrigeration-2006-ch9, sweet corn; worked by hand.
test('sweet corn from 20 to -18 °C gives up 363.0 kJ/kg', () => {
  const heats = { ...hominyHeats(0.7596), latentJPerKg: 254e3 }
  expect(freezingHeatKJPerKg({ ...heats, startC: 20, centreC: -18 })).toBeCloseTo(363.0, 1)
})

// Worked separately from the equations: Tfm = 1.8 - 3.945 - 1.89 = -4.035; H1 = 87.01e6, H2 = 275.55e6 J/m3;
// T1 = 25.98, T2 = 13.97 K; (0.0125/10) (H1/T1 + H2/T2) (1 + 0.0521) = 30 352 s = 8.43 h.
test('Pham counts the cooling before and after: a flat bag of hominy takes 8.4 h, Plank alone 5.3 h', () => {
  expect(freezingHoursPham1986(bag)).toBeCloseTo(8.43, 1)
  expect(freezingHoursPlank1913(bag)).toBeCloseTo(5.33, 1)
})

describe('any bag', () => {
  test('takes longer when thicker, warmer at the start, or in a warmer freezer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 150 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: -30, max: -17 }),
        (thicknessMm, startC, mediumC) => {
          const body = { ...bag, thicknessM: thicknessMm / 1000, startC, mediumC }
          const hours = freezingHoursPham1986(body)
          expect(freezingHoursPham1986({ ...body, thicknessM: body.thicknessM + 0.005 })).toBeGreaterThan(hours)
          expect(freezingHoursPham1986({ ...body, startC: startC + 5 })).toBeGreaterThan(hours)
          expect(freezingHoursPham1986({ ...body, mediumC: mediumC + 1 })).toBeGreaterThan(hours)
        },
      ),
    )
  })

  test.each([{ thicknessM: 0 }, { mediumC: 0 }, { startC: -5 }, { centreC: -18 }, { thicknessM: Number.NaN }])(
    'refuses %o',
    (off) => {
      expect(() => freezingHoursPham1986({ ...bag, ...off })).toThrow(ValidRangeError)
    },
  )
})

describe('a pan that cools', () => {
  test('halves its distance to the room in the same time each time', () => {
    const readings = { firstC: 80, secondC: 50, minutesBetween: 30, aroundC: 20 }
    expect(coolingMinutes(readings, 35)).toBeCloseTo(30, 9)
    expect(coolingMinutes(readings, 27.5)).toBeCloseTo(60, 9)
    expect(coolingMinutes(readings, 60)).toBe(0)
    expect(coolingMinutes(readings, 20)).toBeNull()
  })

  test('that did not cool is refused', () => {
    const readings = { firstC: 50, secondC: 50, minutesBetween: 30, aroundC: 20 }
    expect(() => coolingMinutes(readings, 35)).toThrow(ValidRangeError)
    expect(() => coolingMinutes({ ...readings, aroundC: 50 }, 35)).toThrow(ValidRangeError)
  })
})
