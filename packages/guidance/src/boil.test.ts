import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boilBeforeTastingMin } from './boil.ts'

// AIB 539 guide 1: 10 min below 1,000 ft, 1 more for each further 1,000 ft.
test.each([
  [-200, 10],
  [0, 10],
  [820, 10],
  [999.9, 10],
  [1000, 11],
  [1180, 11],
  [1999.9, 11],
  [2150, 12],
  [8005.2, 18],
  [10_000, 20],
])('at %s ft canned hominy is boiled %s min before tasting', (elevationFt, minutes) => {
  expect(boilBeforeTastingMin(elevationFt)).toMatchObject({ value: minutes, unit: 'Min', basis: 'published' })
})

test.each([Number.NaN, -2000, 50_000])('%s ft is no kitchen', (elevationFt) => {
  expect(() => boilBeforeTastingMin(elevationFt)).toThrow(/elevationFt is .* ft/)
})

test('a higher kitchen never boils for less', () => {
  const elevation = fc.double({ min: -1500, max: 29_100, noNaN: true })
  fc.assert(
    fc.property(elevation, elevation, (a, b) => {
      const [low, high] = a < b ? [a, b] : [b, a]
      return boilBeforeTastingMin(high).value >= boilBeforeTastingMin(low).value
    }),
  )
})
