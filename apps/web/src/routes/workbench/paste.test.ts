import { describe, expect, test } from 'vitest'
import { isRows, rowsFrom } from './paste.ts'

const COLUMNS = [
  { name: 'truePsi', label: 'True pressure' },
  { name: 'readsPsi', label: 'The needle showed' },
]

describe('rows from a spreadsheet', () => {
  test('stand in the order of the form when they have no names', () => {
    expect(rowsFrom('10\t11.5\n11\t12.5\n', COLUMNS)).toEqual([
      { truePsi: '10', readsPsi: '11.5' },
      { truePsi: '11', readsPsi: '12.5' },
    ])
  })

  test('stand under their names when the first row names them, in any order, and a strange column is left', () => {
    expect(rowsFrom('the needle showed,who,TRUEPSI\r\n11.5,office,10\r\n', COLUMNS)).toEqual([
      { readsPsi: '11.5', truePsi: '10' },
    ])
  })

  test('keep what quotes hold together, also a line end and a doubled quote', () => {
    expect(rowsFrom('"a, ""b""",2\n"c\nd",3', COLUMNS)).toEqual([
      { truePsi: 'a, "b"', readsPsi: '2' },
      { truePsi: 'c\nd', readsPsi: '3' },
    ])
  })

  test('keep a decimal comma as written when cells are parted by tabs or semicolons', () => {
    expect(rowsFrom('10;11,5', COLUMNS)).toEqual([{ truePsi: '10', readsPsi: '11,5' }])
  })

  test('leave out empty lines and empty cells', () => {
    expect(rowsFrom('\n10\t\n\t\n', COLUMNS)).toEqual([{ truePsi: '10' }])
    expect(rowsFrom('', COLUMNS)).toEqual([])
  })

  test('are told from a word pasted into one field', () => {
    expect(isRows('9 lb')).toBe(false)
    expect(isRows('9 lb\n')).toBe(false)
    expect(isRows('10\t11')).toBe(true)
    expect(isRows('10\n11')).toBe(true)
  })
})
