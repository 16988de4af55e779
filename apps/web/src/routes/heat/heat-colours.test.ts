import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../../../../packages/science/testing/reference-table.ts'
import { COOLEST_C, colourOf, HOTTEST_C, STEPS_C, stepOf } from './heat-colours.ts'

type Triple = readonly [number, number, number]

/** Linear parts of a colour, as IEC 61966-2-1 has them. */
function linear(hex: string): Triple {
  return [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  }) as unknown as Triple
}

/** Relative luminance as WCAG 2.2 has it. */
function luminance(hex: string): number {
  const [r, g, b] = linear(hex)
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

/** L*, a*, b* of linear sRGB under D65 (CIE 15). */
function lab(rgb: Triple): Triple {
  const [r, g, b] = rgb.map((part) => Math.min(1, Math.max(0, part))) as unknown as Triple
  const ratio = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116)
  const x = ratio((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505)
  const y = ratio(0.2126 * r + 0.7152 * g + 0.0722 * b)
  const z = ratio((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089)
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)]
}

const apart = (one: Triple, other: Triple) => Math.hypot(...one.map((part, i) => part - other[i]!))

const dichromacies = readReferenceTable(new URL('./heat-colours.dichromacy.csv', import.meta.url), [
  ...(['rr', 'rg', 'rb', 'gr', 'gg', 'gb', 'br', 'bg', 'bb'] as const),
])
const EYES = ['protanopia', 'deuteranopia', 'tritanopia'].map((name, row) => {
  const m = dichromacies.rows[row]!
  const seen = ([r, g, b]: Triple): Triple => [
    m.rr * r + m.rg * g + m.rb * b,
    m.gr * r + m.gg * g + m.gb * b,
    m.br * r + m.bg * g + m.bb * b,
  ]
  return { name, seen }
})
/** Neighbours at least this far apart; 2.3 is the difference commonly held to be just noticed (CIE 1976). */
const LEAST_DELTA_E = 3

describe('the colours of temperature', () => {
  test('grow lighter at every step, from the coolest to the hottest, so that grey alone tells them in order', () => {
    const lights = STEPS_C.map((_, step) => luminance(colourOf(step)))
    for (let i = 1; i < lights.length; i += 1) expect(lights[i]! / lights[i - 1]!).toBeGreaterThan(1.04)
    expect((lights.at(-1)! + 0.05) / (lights[0]! + 0.05)).toBeGreaterThan(10)
  })

  test.each([{ name: 'every colour', seen: (rgb: Triple) => rgb }, ...EYES])(
    'seen with $name: neighbouring steps stay apart, and each is lighter than the one before',
    ({ seen }) => {
      const colours = STEPS_C.map((_, step) => lab(seen(linear(colourOf(step)))))
      for (let i = 1; i < colours.length; i += 1) {
        expect(apart(colours[i]!, colours[i - 1]!)).toBeGreaterThan(LEAST_DELTA_E)
        expect(colours[i]![0]).toBeGreaterThan(colours[i - 1]![0])
      }
    },
  )

  test('printed in grey: neighbouring steps stay apart by lightness alone', () => {
    const lights = STEPS_C.map((_, step) => {
      const grey = luminance(colourOf(step))
      return lab([grey, grey, grey])[0]
    })
    for (let i = 1; i < lights.length; i += 1) expect(lights[i]! - lights[i - 1]!).toBeGreaterThan(LEAST_DELTA_E)
  })

  test('hold no green and no red: nothing in them says yes or no', () => {
    for (const step of STEPS_C.keys()) {
      const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(colourOf(step).slice(at, at + 2), 16)) as [
        number,
        number,
        number,
      ]
      expect(g > r + 20 && g > b + 20).toBe(false)
      expect(r > 1.6 * g).toBe(false)
    }
  })

  test('hold a temperature beyond their ends at the end', () => {
    expect(stepOf(COOLEST_C - 40)).toBe(0)
    expect(stepOf(HOTTEST_C + 40)).toBe(STEPS_C.length - 1)
    expect(stepOf(42)).toBe(2)
  })
})
