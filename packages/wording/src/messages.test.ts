/** What no sentence of ours may say (docs/nomenclature.md), whoever adds it. */
import { describe, expect, test } from 'vitest'
import { ENGLISH } from './messages.ts'

const FORBIDDEN: readonly (readonly [string, RegExp])[] = [
  ['"safe" as a verdict', /\bsafe(ly)?\b/i],
  ['a bare quart', /(?<!(liquid|dry)[ -])\bquarts?\b(?!-?[ -]jar)/i],
  ['a bare pound', /\bpounds?\b/i],
  ['bare lime', /(?<!(food-grade|garden|builder's|pickling|slaked) )\blime\b/i],
  ['bare lye', /(?<!(food-grade|old|ash) )\blye\b(?! (hominy|directions))/i],
  ['a bare gallon', /(?<!US[ -])\bgallons?\b/i],
]

/** A sentence that must quote the word, and why. */
const EXCUSED: Readonly<Record<string, string>> = {}

const sentences = Object.entries(ENGLISH).flatMap(([part, texts]) =>
  Object.entries(texts as Record<string, string>).map(([key, text]) => ({ key: `${part}:${key}`, text })),
)

describe('message files', () => {
  test('there are sentences to look at', () => {
    expect(sentences.length).toBeGreaterThan(40)
  })

  test.each(FORBIDDEN)('no sentence says %s', (_what, pattern) => {
    const found = sentences.filter(
      ({ key, text }) => !(key in EXCUSED) && pattern.test(text.replace(/\{\{.*?\}\}/g, '')),
    )
    expect(found).toEqual([])
  })

  test('every excuse is for a sentence that exists', () => {
    const keys = new Set(sentences.map(({ key }) => key))
    expect(Object.keys(EXCUSED).filter((key) => !keys.has(key))).toEqual([])
  })
})
