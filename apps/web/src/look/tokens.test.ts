/** The contrast docs/look.md promises, computed from the tokens themselves. @source wcag-2.2 relative luminance and contrast ratio */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8')

type Tokens = Record<string, string>

/** The colours of every block whose selector line ends so. */
function block(opening: string): Tokens {
  const start = css.indexOf(opening)
  if (start < 0) throw new Error(`no ${opening} in tokens.css`)
  const body = css.slice(start + opening.length, css.indexOf('}', start))
  return Object.fromEntries([...body.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, hex]) => [name, hex]))
}

const LIGHT = block(':root {')
const DARK = block(':root[data-theme="dark"] {')
const CONTRAST = block(':root[data-theme="contrast"] {')
const inMedia = (query: string) => block(`@media (${query}) {\n  :root:not([data-theme]) {`)

const THEMES: Record<string, Tokens> = {
  light: LIGHT,
  dark: { ...LIGHT, ...DARK },
  contrast: { ...LIGHT, ...CONTRAST },
}

function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)) as [number, number, number]
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

function ratio(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

/** 7 : 1 for words (AAA), 3 : 1 for lines that carry meaning. */
const PROMISES: readonly (readonly [ink: string, ground: string, atLeast: number])[] = [
  ['ink', 'paper', 7],
  ['ink', 'paper-worn', 7],
  ['ink', 'hearth', 7],
  ['ink-soft', 'paper', 7],
  ['ink-soft', 'paper-worn', 7],
  ['ink-soft', 'hearth', 7],
  ['handle', 'paper', 7],
  ['on-handle', 'handle', 7],
  ['care', 'paper', 7],
  ['on-chosen', 'chosen', 7],
  ['twine', 'paper', 3],
  ['twine', 'hearth', 3],
  ['focus', 'paper', 3],
  ['focus', 'hearth', 3],
  ['kernel-line', 'corn-fill', 2],
]

test('black on white is 21 to 1, and mid grey on white 4.48 to 1', () => {
  expect(ratio('#000000', '#ffffff')).toBeCloseTo(21, 6)
  expect(ratio('#777777', '#ffffff')).toBeCloseTo(4.48, 2)
})

describe.each(Object.entries(THEMES))('%s', (_name, tokens) => {
  test.each(PROMISES)('%s on %s is at least %d to 1', (ink, ground, atLeast) => {
    expect(ratio(tokens[ink]!, tokens[ground]!)).toBeGreaterThanOrEqual(atLeast)
  })
})

test('the dark and the high-contrast theme are the same by hand and by the device', () => {
  expect(inMedia('prefers-color-scheme: dark')).toEqual(DARK)
  expect(inMedia('prefers-contrast: more')).toEqual(CONTRAST)
  expect(Object.keys(DARK).length).toBeGreaterThan(10)
})
