import { describe, expect, test } from 'vitest'
import { MADE_UP_RUN } from '../../testing/made-up-run.ts'
import { createCurveBand } from './curve-band.ts'
import { jarFrames, jarPicture } from './jar-picture.ts'
import { type MadeUpRun, studyJar } from './jar-study.ts'

/** Invented. */
const run: MadeUpRun = { ...MADE_UP_RUN, elevationM: 250 }
const solid: MadeUpRun = { ...run, pack: 'packed solid' }

describe('the picture of a made-up jar', () => {
  test('has its moments where the run puts them', () => {
    expect(jarPicture(run).moments).toEqual({
      steamMin: 15,
      ventClosedMin: 25,
      atPressureMin: 30,
      heatOffMin: 90,
      zeroMin: 125,
      endMin: 165,
    })
    expect(jarPicture({ ...run, comeUpMin: 8 }).moments.atPressureMin).toBe(33)
  })

  test('has canner, glass, liquid and kernel in that order while it heats', () => {
    const { cannerC, wallC, liquidC, coldSpotC } = jarPicture(run)
    for (let i = 40; i < 150; i += 1) {
      expect(cannerC[i]).toBeGreaterThanOrEqual(wallC![i]!)
      expect(wallC![i]).toBeGreaterThanOrEqual(liquidC![i]!)
      expect(liquidC![i]).toBeGreaterThanOrEqual(coldSpotC[i]! - 1e-9)
    }
    expect(jarPicture(solid)).toMatchObject({ wallC: null, liquidC: null })
  })

  test('has the cold spot and the worth that the study of the same jar has at its middle', () => {
    const { coldSpotC, rateFraction } = jarPicture(solid)
    const { endOfHoldC, lethalityMin } = studyJar(solid, 64)
    expect(coldSpotC[180]).toBe(endOfHoldC.mid)
    // The trapezoid of half-minute rates beside the exact sum over straight lines.
    const area = rateFraction.reduce((sum, rate) => sum + rate / 2, 0)
    expect(Math.abs(area / lethalityMin.mid - 1)).toBeLessThan(1e-3)
  })

  test('shows a cross-section that begins even, is warmest outside, and lags the closed series through its glass', () => {
    const { framesC, timesMin, nz, wallC, coolestC } = jarFrames(solid)
    expect(new Set(framesC[0])).toEqual(new Set([82]))
    expect(timesMin.at(-1)).toBe(165)
    for (const minute of [40, 60, 90]) {
      expect(wallC[minute]).toBeGreaterThan(coolestC[minute]!)
      const middle = 4 + 16
      const alongRadius = Array.from({ length: 14 }, (_, i) => framesC[minute]![i * nz + middle]!)
      expect(alongRadius).toEqual(alongRadius.toSorted((a, b) => a - b))
      expect(coolestC[minute]).toBeLessThan(jarPicture(solid).coldSpotC[minute * 2]! + 0.05)
    }
  })
})

describe('a band of curves', () => {
  test('holds the middle nine tenths at each reading, to a tenth of a degree', () => {
    const counted = createCurveBand(2)
    for (let k = 0; k <= 1000; k += 1) counted.add(Float64Array.of(50 + k / 20, 100))
    const { lowC, highC } = counted.band()
    expect(Math.abs(lowC[0]! - 52.5)).toBeLessThan(0.1)
    expect(Math.abs(highC[0]! - 97.5)).toBeLessThan(0.1)
    expect(Math.abs(lowC[1]! - 100)).toBeLessThan(0.11)
  })

  test('counts a shorter curve only where it has readings', () => {
    const counted = createCurveBand(2, 2)
    counted.add(Float64Array.of(20, 0, 60))
    for (let k = 0; k < 50; k += 1) counted.add(Float64Array.of(20))
    expect(Math.abs(counted.band().highC[1]! - 60)).toBeLessThan(0.11)
  })

  test('of a study lies about its middle and is the same each time', () => {
    const band = () => {
      const counted = createCurveBand(166, 2)
      let samplesCount = 0
      studyJar(solid, 512, (curve) => {
        samplesCount += 1
        counted.add(curve)
      })
      expect(samplesCount).toBe(512)
      return counted.band()
    }
    const { lowC, highC } = band()
    const { coldSpotC } = jarPicture(solid)
    for (const minute of [50, 70, 90]) {
      expect(lowC[minute]).toBeLessThan(coldSpotC[minute * 2]!)
      expect(highC[minute]).toBeGreaterThan(coldSpotC[minute * 2]!)
    }
    expect(band()).toEqual({ lowC, highC })
  })
})
