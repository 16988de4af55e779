import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { sequentialStep, twoTestsGap } from './two-tests.ts'

const table = <const C extends string>(name: string, columns: readonly C[]) =>
  readReferenceTable(new URL(`./${name}`, import.meta.url), columns).rows

describe('two tests of 400', () => {
  test.each(table('two-tests.printed.csv', ['meanPercent', 'limit', 'mirroredLimit']))(
    'of mean $meanPercent % may lie $limit apart',
    ({ meanPercent, limit, mirroredLimit }) => {
      expect(twoTestsGap([meanPercent * 4, meanPercent * 4]).limitPercent).toBe(limit)
      const low = (101 - meanPercent) * 4
      expect(twoTestsGap([low, low]).limitPercent).toBe(mirroredLimit)
    },
  )

  // Worked from the printed rows: 95 and 92, mean 93.5, read at 94.
  test('agree, or do not', () => {
    expect(twoTestsGap([380, 368])).toEqual({ meanPercent: 94, gapPercent: 3, limitPercent: 4 })
    expect(twoTestsGap([384, 364])).toEqual({ meanPercent: 94, gapPercent: 5, limitPercent: 4 })
  })

  test('have no limit where the table has no row', () => {
    expect(twoTestsGap([400, 400]).limitPercent).toBeNull()
    expect(twoTestsGap([0, 0]).limitPercent).toBeNull()
  })

  test.each([
    [401, 300],
    [-1, 300],
    [300.5, 300],
  ])('of %s and %s are refused', (first, second) => {
    expect(() => twoTestsGap([first, second])).toThrow(ValidRangeError)
  })
})

describe('one test after another', () => {
  test.each(table('two-tests.flowchart.csv', ['tested', 'growOutUpTo', 'keepFrom']))(
    'of $tested kernels',
    ({ tested, growOutUpTo, keepFrom }) => {
      const step = (sprouted: number) => sequentialStep(sprouted, tested).step
      expect([step(0), step(growOutUpTo), step(growOutUpTo + 1)]).toEqual(['grow-out', 'grow-out', 'test-more'])
      if (keepFrom === 0) expect(step(tested)).toBe('test-more')
      else expect([step(keepFrom - 1), step(keepFrom), step(tested)]).toEqual(['test-more', 'keep', 'keep'])
    },
  )

  test.each([
    [30, 50],
    [100, 120],
    [41, 40],
    [-1, 40],
  ])('%s of %s is refused', (sprouted, tested) => {
    expect(() => sequentialStep(sprouted, tested)).toThrow(ValidRangeError)
  })
})
