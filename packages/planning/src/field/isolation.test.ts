import { shownValue, ValidRangeError } from '@crib/science'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isUpwind, type NeighbourCorn, neighbourShare, shareTogether } from './crossing.ts'
import { dayNumber } from './days.ts'
import { isolationCalc } from './isolation.calc.ts'
import { type IsolationInput, isolation } from './isolation.ts'

const words = createWords()
const day = (iso: string) => dayNumber(iso)!
const told = (input: IsolationInput) => {
  const outcome = isolation(input)
  if (outcome.kind !== 'told') throw new Error(outcome.refused)
  const values = Object.fromEntries(outcome.values.map((one) => [one.id, one]))
  const said = [...outcome.reasons, ...outcome.warnings].map((one) => words.sentence(one)).join(' ')
  return { values, said }
}
const refusedBy = (input: object) => {
  const result = isolationCalc.run(input as never)
  return result.ok ? 'nothing' : `${result.refused}: ${result.why.map((one) => words.sentence(one)).join(' ')}`
}

describe('will it cross', () => {
  // baltazar-2015 measured 1.4 % at 8 m; the band there by the studies named in science.
  test('tells 1.4 % at 8 m with a wide band, 4.4 kernels in an ear of 300', () => {
    const { values, said } = told({ neighbours: [{ name: 'next door', distanceM: 8 }] })
    expect(shownValue(values.offKernelFraction!)).toBe(0.014)
    expect(shownValue(values.offKernelsInEar!)).toBe(4.4)
    expect(values.offKernelFraction!.low).toBeLessThan(0.0075)
    expect(values.offKernelFraction!.high).toBeGreaterThan(0.04)
    expect(said).toContain('about 1.4 % of kernels')
    expect(said).toContain('a flowering date is missing')
  })

  test('never says pure, and always that nothing brings it to nothing', () => {
    const far = { name: 'the far field', distanceM: 3000, halfTasselDay: day('2026-09-30') }
    const { values, said } = told({ neighbours: [far], ownHalfSilkDay: day('2026-07-19') })
    expect(said).not.toMatch(/\bpure|\bpurity/i)
    expect(said).toContain('No distance and no date brings crossing to nothing')
    expect(values.offKernelFraction!.high).toBeGreaterThan(0)
    for (const one of Object.values(values)) expect(shownValue(one)).toBeGreaterThan(0)
    expect(said).toContain('under 0.01 % of kernels, but up to 0.01 %')
  })

  // Own shedding begins 2.5 days before silk: 16.5 July; 30 July is 13.5 days later, exp(-13.5²/56.5) = 0.0397.
  test('compares tassel days with silk days', () => {
    const neighbour = { name: 'over the road', distanceM: 100, halfTasselDay: day('2026-07-30') }
    const apart = neighbourShare(neighbour, day('2026-07-19'))
    expect(apart.lagDays).toBe(13.5)
    expect(apart.meetDays).toBe(5)
    const together = neighbourShare({ ...neighbour, halfTasselDay: day('2026-07-30') }, undefined)
    expect(together.lagDays).toBeNull()
    expect(apart.value / together.value).toBeCloseTo(0.0397, 4)
    // Late plants: the high end takes seven days back.
    expect(apart.high / together.high).toBeCloseTo(Math.exp(-(6.5 ** 2) / 56.5), 9)
  })

  test('every remedy is shown, and none makes it worse', () => {
    const neighbour: fc.Arbitrary<NeighbourCorn> = fc.record({
      name: fc.constantFrom('a', 'b', 'c'),
      distanceM: fc.double({ min: 1, max: 3000, noNaN: true }),
      halfTasselDay: fc.integer({ min: day('2026-06-20'), max: day('2026-08-30') }),
    })
    const plot = { plotLengthM: 15, plotWidthM: 12, rowSpacingM: 0.9, ownHalfSilkDay: day('2026-07-19') }
    fc.assert(
      fc.property(fc.array(neighbour, { minLength: 1, maxLength: 5 }), (neighbours) => {
        const { values } = told({ ...plot, neighbours })
        const now = values.offKernelFraction!
        const after = Object.values(values).filter(({ id }) => id.endsWith(':remedyFraction'))
        expect(after).toHaveLength(6)
        for (const { value, low, high } of [now, ...after]) {
          expect(low!).toBeLessThanOrEqual(value + 1e-15)
          expect(value).toBeLessThanOrEqual(high! + 1e-15)
        }
        for (const { value, high } of after) {
          expect(value).toBeLessThanOrEqual(now.value + 1e-12)
          expect(high!).toBeLessThanOrEqual(now.high! + 1e-12)
        }
      }),
    )
  })

  test('another neighbour never makes it less', () => {
    const one = neighbourShare({ name: 'a', distanceM: 50 }, undefined)
    const two = neighbourShare({ name: 'b', distanceM: 200 }, undefined)
    expect(shareTogether([one, two]).value).toBeGreaterThan(one.value)
    expect(shareTogether([one, two]).value).toBeLessThan(one.value + two.value)
  })

  // wac-16-302-295: 5 acres at 250 ft ask for 8 border rows; a garden is not in the rules.
  test('quotes the certification rule where it reaches, and says where it does not', () => {
    const at250Ft = [{ name: 'a', distanceM: 76.2 }]
    const fiveAcres = { plotLengthM: 142.3, plotWidthM: 142.3 }
    expect(told({ neighbours: at250Ft, ...fiveAcres }).said).toContain('ask for 8 border rows')
    const garden = told({ neighbours: at250Ft, plotLengthM: 15, plotWidthM: 12 })
    expect(garden.said).toContain('say nothing of a plot this size')
    expect(told({ neighbours: [{ name: 'a', distanceM: 20 }], ...fiveAcres }).said).toContain(
      'Ask your seed certification',
    )
  })

  test('says which neighbour lies upwind, and leaves out one farther than was measured', () => {
    const neighbours = [
      { name: 'west field', distanceM: 300, bearingDeg: 265 },
      { name: 'the river farm', distanceM: 6000 },
    ]
    const { said, values } = told({ neighbours, windFromDeg: 250 })
    expect(said).toContain('west field lies where the wind comes from')
    expect(said).toContain('the river farm lies farther than anything measured')
    expect(Object.keys(values)).not.toContain('the river farm:neighbourFraction')
    expect([isUpwind(350, 10), isUpwind(180, 0)]).toEqual([true, false])
  })

  test('refuses what cannot be, and says what to do instead', () => {
    expect(refusedBy({ neighbours: [] })).toContain('no-neighbours: ')
    const zero = refusedBy({ neighbours: [{ name: 'side by side', distanceM: 0 }] })
    expect(zero).toContain('distance-zero: side by side is told at a distance of 0 m')
    expect(zero).toContain('nearest plant to theirs')
    const noDay = { neighbours: [{ name: 'a', distanceM: 90 }], halfSilkOn: '2026-02-30' }
    expect(refusedBy(noDay)).toContain('"2026-02-30" is no day of the calendar')
    expect(() => neighbourShare({ name: 'a', distanceM: -4 }, undefined)).toThrow(ValidRangeError)
  })
})
