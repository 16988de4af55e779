import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { readDryingAir } from './drying-air.ts'

const words = createWords()
const faults = (text: string, scale: 'F' | 'C' = 'C') => {
  const read = readDryingAir(text, scale)
  return read.kind === 'faults' ? read.faults.map((fault) => words.sentence(fault)) : read.kind
}

test('rows of hours are read with a heading or without, parted by commas, semicolons or tabs', () => {
  const spells = [
    { hours: 10, temperatureC: 38, humidityFraction: 0.3 },
    { hours: 14.5, temperatureC: 30, humidityFraction: 0.55 },
  ]
  for (const text of [
    'hours, warmth, humidity\n10, 38, 30\n14.5, 30, 55',
    '10;38;30 %\n14,5;30;55\n',
    '10\t38 °C\t30%\r\n14.5\t30 C\t55',
  ])
    expect(readDryingAir(text, 'C')).toEqual({ kind: 'air', spells })
  expect(readDryingAir('  \n', 'C')).toEqual({ kind: 'empty' })
  expect(readDryingAir('hours, warmth, humidity', 'C')).toEqual({ kind: 'empty' })
})

// 95 °F is 35 °C exactly.
test('clock times last until the next, the last until the first comes round; °F is converted', () => {
  expect(readDryingAir('08:00, 95, 40\n14:00, 104, 30\n20:30, 86, 60', 'F')).toEqual({
    kind: 'air',
    spells: [
      { hours: 6, temperatureC: 35, humidityFraction: 0.4 },
      { hours: 6.5, temperatureC: 40, humidityFraction: 0.3 },
      { hours: 11.5, temperatureC: 30, humidityFraction: 0.6 },
    ],
  })
})

test('each fault names its row, its column and what stands there', () => {
  expect(faults('hours, warmth, humidity\n10, 38')).toEqual([
    'Row 2: 2 cells stand there, and three are wanted: hours or clock, warmth, humidity. It says “10, 38”.',
  ])
  expect(faults('ten, 38, 30\n0, 38, 30\n10, warm, 30\n10, 38, dry')).toEqual([
    'Row 1, hours: “ten” is no number.',
    'Row 2, hours: 0 is off the range, 0.1 to 1,000 h (project rule).',
    'Row 3, warmth: “warm” is no number in °C.',
    'Row 4, humidity: “dry” is no number in %.',
  ])
  expect(faults('10, 22, 30\n10, 38, 95\n10, 38, 0.3')).toEqual([
    'Row 1, warmth: 22 is off the range of the measurements, 30 °C (86 °F) to 60 °C (140 °F) (Ordóñez 2012).',
    'Row 2, humidity: 95 is off the range of the measurements, 10 to 83 % (Misra and Brooker 1980).',
    'Row 3, humidity: 0.3 is off the range of the measurements, 10 to 83 % (Misra and Brooker 1980).',
  ])
})

test('another scale than the one chosen is asked about, not converted', () => {
  expect(faults('10, 95 F, 30', 'C')).toContain('Row 1, warmth: “95 F” is no number in °C.')
})

test('a clock that does not go forward, or is none, names its row', () => {
  expect(faults('08:00, 38, 30\n07:00, 38, 30')).toContain(
    'Row 1, clock: “08:00” is no time, or the row after it is no later.',
  )
  expect(faults('08:00, 38, 30\n25:00, 38, 30')).toContain(
    'Row 2, clock: “25:00” is no time, or the row after it is no later.',
  )
})

test('a table of one mistake made often tells the first eight and how many more', () => {
  const many = faults(Array.from({ length: 24 }, () => '1, 22, 30').join('\n'))
  expect(many).toHaveLength(9)
  expect(many.at(-1)).toBe('And 16 more of them.')
  expect(faults(Array.from({ length: 1001 }, () => '1, 38, 30').join('\n'))).toEqual([
    '1,001 rows stand there; 1,000 at most are read.',
  ])
})
