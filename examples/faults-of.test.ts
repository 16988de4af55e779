/** The checker itself: an answer that is wrong in one way is named in that way. */
import type { Reckoning } from '@crib/catalogue'
import { expect, test } from 'vitest'
import type { Answer } from './doors.ts'
import { faultsOf } from './faults-of.ts'

const value = { id: 'jars', shown: 18 } as never
const reckoned = { kind: 'reckoned', calc: 'x', values: [value], reasons: [], warnings: [] } as Reckoning
const refused = { kind: 'refused', calc: 'x', refused: 'off-table', why: [], askWhom: [] } as Reckoning
const answer: Answer = { reckoning: reckoned, text: 'Jars: 18. Plan the\n    middle, set out the high end.' }

test('a right answer has no fault, whatever its line breaks and capitals', () => {
  expect(faultsOf(answer, { values: { jars: 18 }, mustSay: ['plan the middle'], mustNotSay: ['safe'] })).toEqual([])
  expect(faultsOf({ reckoning: refused, text: 'Ask.' }, { refused: 'off-table', mustSay: ['ask'] })).toEqual([])
})

test.each([
  [answer, { values: { jars: 17 } }, 'jars is 18, not 17'],
  [answer, { values: { lids: 18 } }, 'lids is missing'],
  [answer, { mustSay: ['seed first'] }, 'does not say "seed first"'],
  [answer, { mustNotSay: ['High End'] }, 'says "High End"'],
  [answer, { refused: 'off-table' }, 'reckoned instead of an honest refusal'],
  [{ reckoning: refused, text: '' }, { values: { jars: 18 } }, 'refused instead of numbers: '],
  [{ reckoning: refused, text: '' }, { refused: 'electric-canner' }, 'refused as off-table, not electric-canner'],
] as const)('a wrong answer is named', (given, expected, fault) => {
  expect(faultsOf(given, expected)).toEqual([fault])
})
