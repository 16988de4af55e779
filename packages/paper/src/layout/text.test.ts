import fc from 'fast-check'
import { expect, test } from 'vitest'
import { breakLines } from './text.ts'

const widthOf = (line: string) => line.length * 5

test('no line is wider than its room, whatever is written, and no letter is lost', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), fc.integer({ min: 5, max: 400 }), (text, width) => {
      const lines = breakLines(text, width, widthOf)
      for (const line of lines) if ([...line].length > 1) expect(widthOf(line)).toBeLessThanOrEqual(width)
      expect(lines.join('').replace(/[ \t\n\u00a0]/g, '')).toBe(text.replace(/[ \t\n\u00a0]/g, ''))
    }),
  )
})

test('lines break at spaces, and inside a word only where the word alone is too wide', () => {
  expect(breakLines('keep the fire low', 50, widthOf)).toEqual(['keep the', 'fire low'])
  expect(breakLines('a nixtamalisation', 50, widthOf)).toEqual(['a', 'nixtamalis', 'ation'])
})

test('a number stays on the line of its unit', () => {
  expect(breakLines('wait for 10 min', 60, widthOf)).toEqual(['wait for', '10\u00a0min'])
  expect(breakLines('to 1 in (2.5 cm)', 65, widthOf)).toEqual(['to 1\u00a0in', '(2.5\u00a0cm)'])
})
