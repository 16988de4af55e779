import type { Calc } from '@crib/science'
import type { SproutCount } from './germination.ts'
import { SPROUTED, TESTED } from './seed-fields.ts'
import { sequentialTest, type TwoTestsInput, twoTests } from './two-tests.ts'

export const twoTestsCalc: Calc<TwoTestsInput> = {
  id: 'two-tests',
  title: 'Do two tests agree?',
  question: 'Two sprouting tests of one lot, made about the same time: do they say the same, or is a third wanted?',
  inputs: {
    firstSproutedCount: { ...SPROUTED, label: 'First test: kernels that sprouted' },
    firstTestedCount: { ...TESTED, label: 'First test: kernels tested' },
    secondSproutedCount: { ...SPROUTED, label: 'Second test: kernels that sprouted' },
    secondTestedCount: { ...TESTED, label: 'Second test: kernels tested' },
  },
  outputs: {
    differenceFraction: { label: 'First less second, with its range', unit: 'Fraction' },
    allowedPer100: { label: 'Most the rules allow between two tests of 400, of 100', unit: 'Count' },
  },
  sourceKeys: ['la-admin-7-xiii-139', 'newcombe-1998-difference', 'wilson-1927'],
  example: { firstSproutedCount: 380, firstTestedCount: 400, secondSproutedCount: 368, secondTestedCount: 400 },
  run: twoTests,
}

export const sequentialTestCalc: Calc<SproutCount> = {
  id: 'sequential-test',
  title: 'Forty kernels, then forty more?',
  question: 'After 40 kernels, or 80 in all: grow the lot anew, test more, or keep it?',
  inputs: { sproutedCount: SPROUTED, testedCount: TESTED },
  outputs: {
    growOutUpToCount: { label: 'Grow the lot anew when so many or fewer sprouted', unit: 'Count' },
    keepFromCount: { label: 'Keep it when so many or more sprouted', unit: 'Count' },
  },
  sourceKeys: ['rao-2006'],
  example: { sproutedCount: 71, testedCount: 80 },
  run: sequentialTest,
}
