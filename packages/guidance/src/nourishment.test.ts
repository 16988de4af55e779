import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { whatAlkaliFrees } from './nourishment.ts'

const spoken = whatAlkaliFrees().map((line) => createWords().sentence(line))

test('what alkali truly frees is said first', () => {
  expect(spoken[0]).toContain('niacin')
})

test('nothing is credited that is not there', () => {
  expect(spoken.join(' ')).toContain('no vitamin D')
})
