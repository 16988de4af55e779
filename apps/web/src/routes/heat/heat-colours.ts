/**
 * Colours of temperature: from dark and blue to pale and yellow, each step lighter than the one before, so that they tell
 * warmer from cooler to an eye that sees no colour, and on paper printed in grey. Lines and numbers say it again.
 */
const STOPS = [
  [0x20, 0x26, 0x4f],
  [0x43, 0x50, 0x6f],
  [0x75, 0x75, 0x7a],
  [0xa8, 0x8f, 0x62],
  [0xd9, 0xb2, 0x5a],
  [0xf9, 0xea, 0xb8],
] as const

export const COOLEST_C = 30
export const HOTTEST_C = 125
export const STEP_C = 5
/** Lower edges of the steps. [°C] */
export const STEPS_C = Array.from({ length: (HOTTEST_C - COOLEST_C) / STEP_C }, (_, i) => COOLEST_C + i * STEP_C)

/** Which step a temperature falls in; beyond the ends, the end. */
export function stepOf(temperatureC: number): number {
  return Math.min(STEPS_C.length - 1, Math.max(0, Math.floor((temperatureC - COOLEST_C) / STEP_C)))
}

/** `#rrggbb` of a step. */
export function colourOf(step: number): string {
  const along = (step / (STEPS_C.length - 1)) * (STOPS.length - 1)
  const from = Math.min(STOPS.length - 2, Math.floor(along))
  const share = along - from
  const parts = STOPS[from]!.map((part, i) => Math.round(part + share * (STOPS[from + 1]![i]! - part)))
  return `#${parts.map((part) => part.toString(16).padStart(2, '0')).join('')}`
}
