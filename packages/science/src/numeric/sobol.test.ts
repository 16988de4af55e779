import { expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { createSobol } from './sobol.ts'

const names = Array.from({ length: 10 }, (_, d) => `d${d + 1}`)
const table = readReferenceTable(new URL('./sobol.scipy.csv', import.meta.url), ['index', ...names])

test.each(table.rows)('point $index is that of another program, in ten dimensions', (row) => {
  const next = createSobol(10)
  let point = next()
  for (let k = 0; k < row.index!; k += 1) point = next()
  expect([...point]).toEqual(names.map((name) => row[name]))
})

test.each([0, 11, Number.NaN])('%s dimensions are refused', (dimensions) => {
  expect(() => createSobol(dimensions)).toThrow(ValidRangeError)
})
