import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type LoggerReading, readLogger } from './logger.ts'
import { type LoggerMapping, proposeLoggerMapping } from './logger-mapping.ts'

const words = createWords()
const MAPPING: LoggerMapping = {
  delimiter: ',',
  decimal: '.',
  time: { column: 'time (min)', kind: 'minutes' },
  values: [
    { column: 'jar °C', unit: 'C' },
    { column: 'gauge psi', unit: 'PsiGauge' },
  ],
}
const HEADER = 'time (min),jar °C,gauge psi\n'

async function read(text: string, mapping: LoggerMapping = MAPPING, pieceLength = text.length) {
  const readings: LoggerReading[] = []
  const pieces = Array.from({ length: Math.ceil(text.length / pieceLength) }, (_, i) =>
    text.slice(i * pieceLength, (i + 1) * pieceLength),
  )
  const outcome = await readLogger(pieces, mapping, (reading) => readings.push(reading))
  const said = outcome.ok ? null : words.sentence(outcome.refused)
  return { outcome, readings, said, faults: outcome.faults.map(({ sentence }) => words.sentence(sentence)) }
}

describe("a logger's file", () => {
  test('is read in the units said', async () => {
    const { outcome, readings } = await read(`${HEADER}0,20,0\n0.5,21.5,0\r\n1,25,0.5`)
    expect(outcome).toMatchObject({ ok: true, rowCount: 4, readingCount: 3, faults: [] })
    expect(readings).toEqual([
      { atMin: 0, values: [20, 0] },
      { atMin: 0.5, values: [21.5, 0] },
      { atMin: 1, values: [25, 0.5] },
    ])
  })

  test('gives °C and psi whatever it holds', async () => {
    const mapping: LoggerMapping = {
      ...MAPPING,
      delimiter: ';',
      decimal: ',',
      time: { column: 't', kind: 'seconds' },
      values: [
        { column: 'a', unit: 'F' },
        { column: 'b', unit: 'KPaGauge' },
      ],
    }
    const { readings } = await read('t;a;b\n0;212;68,94757293168\n30,5;240,8;0\n', mapping)
    expect(readings[0]?.values[0]).toBeCloseTo(100, 9)
    expect(readings[0]?.values[1]).toBeCloseTo(10, 9)
    expect(readings[1]?.atMin).toBeCloseTo(30.5 / 60, 12)
    expect(readings[1]?.values[0]).toBeCloseTo(116, 9)
  })

  test('gives the same readings however it is cut into pieces', async () => {
    const text = `${HEADER}${Array.from({ length: 30 }, (_, i) => `${i},${20 + i},${i / 10}\n`).join('')}`
    const whole = await read(text)
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 60 }), async (pieceLength) => {
        expect((await read(text, MAPPING, pieceLength)).readings).toEqual(whole.readings)
      }),
      { numRuns: 20 },
    )
  })

  test('whose times run backward is refused with the row', async () => {
    const { outcome, said } = await read(`${HEADER}0,20,0\n2,21,0\n1,22,0\n3,23,0\n`)
    expect(outcome.ok).toBe(false)
    expect(said).toContain('Row 4, column "time (min)": the time runs backward')
  })

  test('in °F read as °C is refused with the row', async () => {
    const { said } = await read(`${HEADER}0,70,0\n1,130,0\n2,212,0\n`)
    expect(said).toContain('Row 4, column "jar °C": 212 is hotter than a canner can be in °C. It looks like °F')
  })

  test('in kPa read as psi is refused with the row', async () => {
    const { said } = await read(`${HEADER}0,70,0\n1,80,75.8\n`)
    expect(said).toContain('Row 3, column "gauge psi": 75.8 is more than a canner can hold in psi. It looks like kPa')
  })

  test('with empty, wordy and broken cells has each named by row and column, and nothing put in its place', async () => {
    const { outcome, readings, faults } = await read(`${HEADER}0,20,0\n1,,0\n2,ERR,0\n3,1372,0\nx,20,0\n4,24\n5,25,0\n`)
    expect(outcome).toMatchObject({
      ok: true,
      faultCounts: { 'drop-out': 2, 'no-number': 1, 'no-time': 1, 'short-row': 1 },
    })
    expect(readings.map(({ values }) => values)).toEqual([
      [20, 0],
      [null, 0],
      [null, 0],
      [null, 0],
      [24, null],
      [25, 0],
    ])
    expect(faults).toEqual([
      'Row 3, column "jar °C" is empty.',
      'Row 4, column "jar °C": "ERR" is not a number.',
      'Row 5, column "jar °C": 1372 is what a broken sensor reads; left out.',
      'Row 6, column "time (min)": "x" is not a time as the column was said to hold.',
      'Row 7 ends before column "gauge psi".',
    ])
  })

  // Every bad input by its name: what is said names the row, and the column it is in.
  const GAPPED = [0, 0.5, 1, 1.5, 9].map((t) => `${t},20,0\n`).join('')
  test.each([
    ['a missing cell', '0,20,0\n1,,0\n2,21,0\n', 'Row 3, column "jar °C" is empty.'],
    ['a row cut short', '0,20,0\n1,21\n2,21,0\n', 'Row 3 ends before column "gauge psi".'],
    ['a word for a number', '0,20,0\n1,21,OL\n2,21,0\n', 'Row 3, column "gauge psi": "OL" is not a number.'],
    ['a word for a time', '0,20,0\n?,21,0\n2,21,0\n', 'Row 3, column "time (min)": "?" is not a time'],
    ['a repeated row', '0,20,0\n0,20,0\n2,21,0\n', 'Row 3, column "time (min)": repeats the row before'],
    ['a repeated time', '0,20,0\n0,21,0\n2,21,0\n', 'Row 3, column "time (min)": the time of the row before'],
    [
      'a sensor that dropped out',
      '0,20,0\n1,999.9,0\n2,21,0\n',
      'Row 3, column "jar °C": 999.9 is what a broken sensor',
    ],
    ['a time that runs backward', '1,20,0\n0,20,0\n', 'Row 3, column "time (min)": the time runs backward'],
    ['°F read as °C', '0,70,0\n1,240,0\n', 'Row 3, column "jar °C": 240 is hotter than a canner can be in °C'],
    ['kPa read as psi', '0,70,0\n1,80,76\n', 'Row 3, column "gauge psi": 76 is more than a canner can hold in psi'],
  ])('with %s names it', async (_name, rows, part) => {
    const { said, faults } = await read(HEADER + rows)
    expect([...faults, said ?? ''].join('\n')).toContain(part)
  })

  test('with missing rows names the row after them', async () => {
    expect((await read(HEADER + GAPPED)).outcome.gaps).toEqual([{ fromMin: 1.5, toMin: 9, beforeRow: 6 }])
  })

  test('takes a repeated row once, and says when the repeat says otherwise', async () => {
    const { readings, faults } = await read(`${HEADER}0,20,0\n0,20,0\n1,21,0\n1,22,0\n2,23,0\n`)
    expect(readings).toHaveLength(3)
    expect(faults[0]).toBe('Row 3, column "time (min)": repeats the row before; counted once.')
    expect(faults[1]).toContain(
      'Row 5, column "time (min)": the time of the row before, and other readings; the first was kept.',
    )
  })

  test('by the clock runs past midnight, less what the clock was ahead', async () => {
    const mapping: LoggerMapping = {
      ...MAPPING,
      time: { column: 'clock', kind: 'clock' },
      values: [{ column: 'c', unit: 'C' }],
      clockAheadMin: 5,
    }
    const { readings } = await read('clock,c\n23:59:30,20\n00:00:30,21\n', mapping)
    expect(readings.map(({ atMin }) => atMin)).toEqual([1434.5, 1435.5])
  })

  test('by instants wants their zone', async () => {
    const mapping: LoggerMapping = {
      ...MAPPING,
      time: { column: 'at', kind: 'instant' },
      values: [{ column: 'c', unit: 'C' }],
    }
    const { outcome, readings } = await read(
      'at,c\n2026-09-12T10:00:00-04:00,20\n2026-09-12T10:01:00,20\n2026-09-12T14:02:00Z,21\n',
      mapping,
    )
    expect(outcome.faultCounts).toEqual({ 'no-time': 1 })
    expect(readings[1]!.atMin - readings[0]!.atMin).toBe(2)
  })

  test.each([
    ['without the column named', 'time (min),jar\n0,1\n', 'The file has no column "jar °C". It has: time (min), jar.'],
    ['with one reading', `${HEADER}0,20,0\n`, 'fewer than two readings'],
    ['that is empty', '', 'fewer than two readings'],
    ['that has no lines', 'x'.repeat(100_001), 'does not look like a logger'],
  ])('%s is refused', async (_what, text, part) => {
    expect((await read(text)).said).toContain(part)
  })

  test('of a million rows is read without keeping them', async () => {
    function* rows() {
      yield HEADER
      for (let i = 0; i < 1_000_000; i += 1000) {
        yield Array.from({ length: 1000 }, (_, k) => `${(i + k) / 60},20,0\n`).join('')
      }
    }
    let readingCount = 0
    const before = process.memoryUsage().heapUsed
    let most = 0
    const outcome = await readLogger(rows(), MAPPING, () => {
      readingCount += 1
      if (readingCount % 50_000 === 0) most = Math.max(most, process.memoryUsage().heapUsed - before)
    })
    expect(outcome).toMatchObject({ ok: true, readingCount: 1_000_000 })
    expect(readingCount).toBe(1_000_000)
    expect(most).toBeLessThan(64e6)
  })
})

describe('a proposed reading of the columns', () => {
  test('takes units from the header, and asks for one it does not name', () => {
    const proposed = proposeLoggerMapping('Time (s);Probe 1 (°F);Gauge kPa;Probe 2', '0;70,5;0;20')
    expect(proposed?.mapping).toEqual({
      delimiter: ';',
      decimal: ',',
      time: { column: 'Time (s)', kind: 'seconds' },
      values: [
        { column: 'Probe 1 (°F)', unit: 'F' },
        { column: 'Gauge kPa', unit: 'KPaGauge' },
        { column: 'Probe 2', unit: 'C' },
      ],
    })
    expect(proposed?.unitUnsaid).toEqual(['Probe 2'])
  })

  test('is not made without a time column', () => {
    expect(proposeLoggerMapping('a,b', '1,2')).toBeNull()
  })

  test('reads quoted names', () => {
    expect(proposeLoggerMapping('"clock","jar, inner °C"', '10:00,20')?.mapping).toMatchObject({
      time: { column: 'clock', kind: 'clock' },
      values: [{ column: 'jar, inner °C', unit: 'C' }],
    })
  })
})
