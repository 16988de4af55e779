import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DIAL_BANDS, type GaugeKind, pressureRowFor, pressureRowIn } from './pressure.ts'

const rows = readFileSync(new URL('./pressure.bands.csv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => /^\d/.test(line))
  .map((line) => line.split(',').map(Number) as [number, number, number, number, number])

function setPsi(gauge: GaugeKind, elevationFt: number): number {
  const outcome = pressureRowFor(gauge, elevationFt)
  if (outcome.kind !== 'found') throw new Error(`${elevationFt} ft is off the table`)
  return outcome.setPsi
}

test('the table of edges was read whole', () => {
  expect(rows).toHaveLength(15)
})

test.each(rows)(
  'at %s ft the dial is set to %s psi and the weight is %s lb',
  (ft, dial, weight, dialKPa, weightKPa) => {
    expect(pressureRowFor('dial', ft)).toMatchObject({
      kind: 'found',
      setPsi: dial,
      kPaShown: dialKPa,
      unit: 'PsiGauge',
    })
    expect(pressureRowFor('weight', ft)).toMatchObject({ setPsi: weight, kPaShown: weightKPa, unit: 'LbWeight' })
  },
)

describe.each(['dial', 'weight'] as const)('off the table with a %s', (gauge) => {
  test.each([8000.4, 8005.2, 30_000])('%s ft gets no pressure, only whom to ask', (elevationFt) => {
    const outcome = pressureRowFor(gauge, elevationFt)
    expect(outcome).toMatchObject({ kind: 'off-table', elevationFt, tableMinFt: 0, tableMaxFt: 8000 })
    expect(outcome).not.toHaveProperty('setPsi')
    expect(outcome).toMatchObject({
      askWhom: [{ key: 'guidance:ask-extension-office' }, {}, {}],
      forInformation: { key: 'guidance:top-weight-for-information' },
    })
  })

  test.each([-0.1, -1])('%s ft is below the table, and no top weight is mentioned', (elevationFt) => {
    const outcome = pressureRowFor(gauge, elevationFt)
    expect(outcome).toMatchObject({ kind: 'off-table', why: [{ key: 'guidance:elevation-below-table' }] })
    expect(outcome).not.toHaveProperty('forInformation')
  })

  test.each([Number.NaN, Number.POSITIVE_INFINITY])('%s is no elevation at all', (elevationFt) => {
    expect(() => pressureRowFor(gauge, elevationFt)).toThrow(RangeError)
  })

  test('a higher elevation never lowers the set pressure', () => {
    const elevation = fc.double({ min: 0, max: 8000, noNaN: true })
    fc.assert(
      fc.property(elevation, elevation, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a]
        return setPsi(gauge, high) >= setPsi(gauge, low)
      }),
    )
  })
})

test('the band carries its edges, its printed words and where it came from', () => {
  expect(pressureRowFor('dial', 2007.9)).toMatchObject({
    bandMinFt: 2000,
    bandMaxFt: 4000,
    bandPrinted: '2,001 to 4,000 ft',
    tableId: 'pressure-bands-dial',
    sourceKeys: ['usda-aib-539-1994', 'pnw-421'],
    edition: 'guidance-2026-11',
  })
})

test('an unrounded elevation just over the top is not worded as the top itself', () => {
  const outcome = pressureRowFor('dial', 8000.4)
  expect(outcome).toMatchObject({ why: [{ params: { elevation: { value: 8000.4, unit: 'Ft' } } }] })
})

test('the lookup reads the table and not a constant: another row gives another pressure', () => {
  const broken = structuredClone(DIAL_BANDS)
  broken.rows[1]!.setPsi = 11.5
  expect(pressureRowIn(broken, 'dial', 2150)).toMatchObject({ setPsi: 11.5 })
})
