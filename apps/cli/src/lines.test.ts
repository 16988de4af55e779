import { expect, test } from 'vitest'
import { aligned, bullet, section, wrap } from './lines.ts'

test('no line passes the width, later lines hang, and no word is lost', () => {
  const text = 'Above 1,000 ft a weighted gauge takes the 15 lb weight; the needle is only a witness.'
  const lines = bullet(text, 40).split('\n')
  expect(lines.every((line) => line.length <= 40)).toBe(true)
  expect(lines[0]!.startsWith('  - Above')).toBe(true)
  expect(lines.slice(1).every((line) => /^ {4}\S/.test(line))).toBe(true)
  expect(lines.map((line) => line.replace(/^ {2}- | {4}/, '')).join(' ')).toBe(text)
})

test('a word longer than the width keeps its own line whole', () => {
  expect(wrap('a https://example.invalid/long b', 10)).toBe('a\nhttps://example.invalid/long\nb')
})

test('columns line up and trailing blanks are dropped', () => {
  expect(
    aligned([
      ['a', '1', ''],
      ['longer', '20', 'x'],
    ]),
  ).toEqual(['  a       1', '  longer  20  x'])
})

test('a section without sentences is not there at all', () => {
  expect(section('Why', [], 80)).toEqual([])
})
