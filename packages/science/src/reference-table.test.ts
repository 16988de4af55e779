import { describe, expect, test } from 'vitest'
import { parseReferenceTable } from '../testing/reference-table.ts'

const HEAD = '# source: iapws-r7-97 table 36\n# printed-to: 1e-6 K\n'

describe('the reader of published tables', () => {
  test('gives source, printed digits and rows by column name', () => {
    const table = parseReferenceTable(
      `${HEAD}pressureMPa,temperatureK\n0.1,372.755919\n1,453.035632\n`,
      ['pressureMPa', 'temperatureK'],
      't',
    )
    expect(table.source).toBe('iapws-r7-97 table 36')
    expect(table.printedTo).toBe('1e-6 K')
    expect(table.rows).toEqual([
      { pressureMPa: 0.1, temperatureK: 372.755919 },
      { pressureMPa: 1, temperatureK: 453.035632 },
    ])
  })

  test.each([
    ['no source', '# printed-to: 1\na\n1\n'],
    ['no rows', `${HEAD}a\n`],
    ['another column', `${HEAD}b\n1\n`],
    ['a word in a cell', `${HEAD}a\none\n`],
    ['an empty cell', `${HEAD}a\n1\n ,\n`],
  ])('refuses a table with %s', (_what, text) => {
    expect(() => parseReferenceTable(text, ['a'], 't')).toThrow(/^t:/)
  })
})
