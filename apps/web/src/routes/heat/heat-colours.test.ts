import { describe, expect, test } from 'vitest'
import { COOLEST_C, colourOf, HOTTEST_C, STEPS_C, stepOf } from './heat-colours.ts'

/** Relative luminance as WCAG 2.2 has it. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  }) as [number, number, number]
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

describe('the colours of temperature', () => {
  test('grow lighter at every step, from the coolest to the hottest, so that grey alone tells them in order', () => {
    const lights = STEPS_C.map((_, step) => luminance(colourOf(step)))
    for (let i = 1; i < lights.length; i += 1) expect(lights[i]! / lights[i - 1]!).toBeGreaterThan(1.04)
    expect((lights.at(-1)! + 0.05) / (lights[0]! + 0.05)).toBeGreaterThan(10)
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
