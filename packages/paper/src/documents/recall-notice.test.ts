import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { boardNotice, keeperList } from '../../testing/recalled-day.ts'

const words = createWords()

test('the notice that hangs in public holds no household, though the recall it is made from knows them all', () => {
  expect(JSON.stringify(boardNotice('letter', words))).not.toMatch(/house \d/)
  expect(JSON.stringify(keeperList('letter', words))).toContain('house 4')
})

test('a jar given on is called for where it is now: four of house 5, one of them at house 30', () => {
  const table = keeperList('a4', words).blocks.find((block) => block.kind === 'table')
  const rows = table?.kind === 'table' ? table.rows : []
  expect(rows.find(([household]) => household === 'house 5')?.[2]).toBe('3')
  expect(rows.find(([household]) => household === 'house 30')?.slice(1, 3)).toEqual(['MILL-261103-B1', '1'])
})
