import { createCurveBand, jarPicture, type MadeUpRun, studyJar } from '@crib/science'
import { describe, expect, test } from 'vitest'
import { jarAt, studyValues } from './jar-values.ts'
import { madeUpRun } from './made-up-run.ts'
import { pictureCsv } from './picture-csv.ts'

/** Invented. */
const run: MadeUpRun = { ...madeUpRun({ kitchen: null }), jar: 'quart', pack: 'packed solid' }

describe('a made-up jar to begin with', () => {
  test('is as the table has it at the height of the kitchen, vented as directed', () => {
    const at = (elevationM: number) => madeUpRun({ kitchen: { elevationM } } as never)
    // 2,150 ft: the table prints 12 psi, 82.7 kPa.
    expect(at(655.32).gaugeKPa).toBeCloseTo(82.737, 3)
    expect(at(250).gaugeKPa).toBeCloseTo(75.842, 3)
    expect(at(250)).toMatchObject({ ventMin: 10, pack: 'free brine', gaugeReadsHighKPa: 0 })
  })
})

describe('what is read off the picture', () => {
  test('is told at a moment, with what went in', () => {
    const [canner, slowest] = jarAt(run, jarPicture(run), 60)
    expect([canner?.id, slowest?.id]).toEqual(['cannerC', 'coldSpotC'])
    expect(canner!.value).toBeGreaterThan(slowest!.value)
    expect(slowest!.inputs).toMatchObject({ jar: 'quart', ventMin: 10 })
    expect(slowest!.sourceKeys).toContain('iapws-r7-97')
  })

  test('has a band round every figure that has one, and nine swings, widest first', () => {
    const { endOfHoldC, lethalityMin, swings } = studyValues(run, studyJar(run, 256))
    for (const { low, value, high } of [endOfHoldC, lethalityMin]) {
      expect(low).toBeLessThan(value)
      expect(high).toBeGreaterThan(value)
    }
    const widths = swings.map(({ reckoned: { low = 0, high = 0 } }) => high - low)
    expect(widths).toHaveLength(9)
    expect(widths).toEqual(widths.toSorted((a, b) => b - a))
  })
})

describe('the curves as CSV', () => {
  const picture = jarPicture(run)
  const counted = createCurveBand(Math.ceil(picture.coldSpotC.length / 2), 2)
  counted.add(picture.coldSpotC)

  test('have a remark, a head and a row a minute', () => {
    const lines = pictureCsv({ picture, band: counted.band(), withRate: true, remarks: ['Invented.'] }).split('\n')
    expect(lines[0]).toBe('# Invented.')
    expect(lines[1]).toBe(
      'time_min,canner_c,slowest_place_c,slowest_place_low_c,slowest_place_high_c,made_up_jar_lethal_rate_250f',
    )
    expect(lines).toHaveLength(2 + picture.moments.endMin + 1 + 1)
    expect(lines[2]).toMatch(/^0,82\.00,82\.00,/)
  })

  test('hold no rate where a run of the book is drawn', () => {
    expect(pictureCsv({ picture, withRate: false, remarks: [] })).not.toContain('lethal')
  })
})
