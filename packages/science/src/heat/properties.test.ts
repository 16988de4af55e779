import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { componentProperties, FOOD_COMPONENTS } from './components.ts'
import { JAR_GLASS, PACKED_HOMINY_DIFFUSIVITY_M2_PER_S } from './jar-materials.ts'
import { DRAINED_HOMINY, foodProperties } from './mixture.ts'

const components = readReferenceTable(new URL('./components.worked.csv', import.meta.url), [
  'temperatureC',
  'kWater',
  'kCarbohydrate',
  'kProtein',
  'rhoWater',
  'rhoCarbohydrate',
  'cpWater',
  'cpCarbohydrate',
  'alphaWater1e7',
])
const hominy = readReferenceTable(new URL('./mixture.hominy.csv', import.meta.url), [
  'temperatureC',
  'rho',
  'kParallel',
  'kSeries',
  'cp',
  'alphaParallel1e7',
])
const glass = readReferenceTable(new URL('./jar-materials.glass.csv', import.meta.url), [
  ...(['surfaceWPerM2K', 'biot', 'lowestMm2PerS', 'highestMm2PerS'] as const),
])
const neighbours = readReferenceTable(new URL('./neighbours.diffusivity.csv', import.meta.url), [
  'diffusivity1e7M2PerS',
])
/** Half a unit in the sixth significant digit, with room for binary dust. */
const halfUnit = (printed: number) => 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(printed))) - 5) * (1 + 1e-6)
const expectPrinted = (value: number, printed: number) =>
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(halfUnit(printed))

describe('a component of food', () => {
  test.each(components.rows)('has the printed properties at $temperatureC °C', (row) => {
    const water = componentProperties('water', row.temperatureC)
    const carbohydrate = componentProperties('carbohydrate', row.temperatureC)
    expectPrinted(water.conductivityWPerMK, row.kWater)
    expectPrinted(carbohydrate.conductivityWPerMK, row.kCarbohydrate)
    expectPrinted(componentProperties('protein', row.temperatureC).conductivityWPerMK, row.kProtein)
    expectPrinted(water.densityKgPerM3, row.rhoWater)
    expectPrinted(carbohydrate.densityKgPerM3, row.rhoCarbohydrate)
    expectPrinted(water.specificHeatKJPerKgK, row.cpWater)
    expectPrinted(carbohydrate.specificHeatKJPerKgK, row.cpCarbohydrate)
    expectPrinted(water.diffusivityM2PerS * 1e7, row.alphaWater1e7)
  })

  // Each fit was made for itself. A misprinted power of ten in any one would miss by far more than a few percent; fat is
  // the worst, 6 % off at 120 °C.
  test.each(FOOD_COMPONENTS)('%s: the four fits agree with alpha = k / (rho cp)', (component) => {
    for (const temperatureC of [20, 60, 100, 120]) {
      const p = componentProperties(component, temperatureC)
      const derived = p.conductivityWPerMK / (1000 * p.densityKgPerM3 * p.specificHeatKJPerKgK)
      expect(Math.abs(derived / p.diffusivityM2PerS - 1)).toBeLessThan(0.1)
    }
  })

  test.each([-0.1, 150.1, Number.NaN])('is refused at %s °C', (temperatureC) => {
    expect(() => componentProperties('water', temperatureC)).toThrow(ValidRangeError)
  })
})

describe('a food by its composition', () => {
  test.each(hominy.rows)('drained hominy has the worked properties at $temperatureC °C', (row) => {
    const food = foodProperties(DRAINED_HOMINY, row.temperatureC)
    expectPrinted(food.densityKgPerM3, row.rho)
    expectPrinted(food.conductivityParallelWPerMK, row.kParallel)
    expectPrinted(food.conductivitySeriesWPerMK, row.kSeries)
    expectPrinted(food.specificHeatKJPerKgK, row.cp)
    expectPrinted(food.diffusivityParallelM2PerS * 1e7, row.alphaParallel1e7)
  })

  test('of one component alone is that component, either way the parts lie', () => {
    const food = foodProperties({ water: 1 }, 80)
    const water = componentProperties('water', 80)
    expect(food.conductivityParallelWPerMK).toBeCloseTo(water.conductivityWPerMK, 12)
    expect(food.conductivitySeriesWPerMK).toBeCloseTo(water.conductivityWPerMK, 12)
    expect(food.densityKgPerM3).toBeCloseTo(water.densityKgPerM3, 9)
  })

  test('never conducts better in series than in parallel', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }), (parts) => {
        const total = parts.reduce((sum, part) => sum + part, 0)
        const composition = Object.fromEntries(FOOD_COMPONENTS.map((name, i) => [name, parts[i]! / total]))
        const food = foodProperties(composition, 90)
        expect(food.conductivitySeriesWPerMK).toBeLessThanOrEqual(food.conductivityParallelWPerMK)
      }),
    )
  })

  test.each([{ water: 0.8 }, { water: 0.9, fat: 0.2 }, { water: 1.2, fat: -0.2 }])('refuses %o', (composition) => {
    expect(() => foodProperties(composition, 20)).toThrow(ValidRangeError)
  })
})

describe('what surrounds the food', () => {
  test.each(glass.rows)(
    'glass of 3 mm stands for a surface coefficient of $surfaceWPerM2K W/(m2 K), a Biot number of $biot at 4 cm',
    ({ surfaceWPerM2K, biot, lowestMm2PerS, highestMm2PerS }) => {
      const surface = JAR_GLASS.conductivityWPerMK / 0.003
      expect(Math.abs(surface / surfaceWPerM2K - 1)).toBeLessThan(0.005)
      expect(Math.round((surface * 0.04) / foodProperties(DRAINED_HOMINY, 20).conductivityParallelWPerMK)).toBe(biot)
      const diffusivity = (JAR_GLASS.conductivityWPerMK / JAR_GLASS.heatCapacityJPerM3K) * 1e6
      expect(diffusivity).toBeGreaterThan(lowestMm2PerS)
      expect(diffusivity).toBeLessThan(highestMm2PerS)
    },
  )

  test('packed hominy is taken no quicker than any measured neighbour, and no slower than its composition at 20 °C', () => {
    const { low, high } = PACKED_HOMINY_DIFFUSIVITY_M2_PER_S
    const measured = neighbours.rows.map((row) => row.diffusivity1e7M2PerS * 1e-7)
    expect(high).toBeLessThanOrEqual(Math.max(...measured))
    expect(high).toBeGreaterThanOrEqual(Math.min(...measured))
    const byComposition = foodProperties(DRAINED_HOMINY, 20).diffusivityParallelM2PerS
    expect(Math.abs(low / byComposition - 1)).toBeLessThan(0.01)
  })
})
