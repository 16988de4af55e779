import { describe, expect, test } from 'vitest'
import { contour, type Section } from './contours.ts'

/** 10 °C a ring, the same at every level. */
const section: Section = {
  framesC: Float64Array.from({ length: 4 * 3 }, (_, at) => 10 * Math.floor(at / 3)),
  nr: 4,
  nz: 3,
  rFacesM: [0, 1, 2, 3, 4],
  zFacesM: [0, 1, 2, 3],
}

describe('a line of equal temperature', () => {
  test('lies where straight lines between cells reach it', () => {
    const pieces = contour(section, 15)
    expect(pieces).toHaveLength(2)
    for (const [fromR, , toR] of pieces) expect([fromR, toR]).toEqual([2, 2])
  })

  test('is not there where nothing is so warm, or everything warmer', () => {
    expect(contour(section, 99)).toEqual([])
    expect(contour(section, -1)).toEqual([])
  })
})
