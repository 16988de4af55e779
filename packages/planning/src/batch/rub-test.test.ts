import { cautionsFor, MOMENTS } from '@crib/guidance'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { rubTest } from './rub-test.ts'
import { builtInStages } from './stages.ts'

describe('a rub test', () => {
  test.each([
    [20, 20, 60, 'begin-wash'],
    [18, 20, 60, 'begin-wash'],
    [17, 20, 60, 'rub-again'],
    [0, 20, 60, 'rub-again'],
    [0, 20, 240, 'ask-the-ash'],
    [10, 20, 240, 'rub-again'],
  ] as const)('%s of %s at %s min says %s', (slippedCount, ofCount, boiledMin, says) => {
    expect(rubTest({ slippedCount, ofCount, boiledMin, rangeHighMin: 240 }).says).toBe(says)
  })

  test('promises nothing', () => {
    const words = createWords()
    for (const slippedCount of [0, 10, 20]) {
      const said = rubTest({ slippedCount, ofCount: 20, boiledMin: 300, rangeHighMin: 240 })
        .sentences.map((sentence) => words.sentence(sentence))
        .join(' ')
      expect(said).not.toMatch(/nearly|almost|soon|will be done|pH/)
    }
  })

  test.each([
    [21, 20],
    [-1, 20],
    [0, 0],
    [Number.NaN, 20],
  ])('refuses %s of %s', (slippedCount, ofCount) => {
    expect(() => rubTest({ slippedCount, ofCount })).toThrow(RangeError)
  })
})

test('every moment a stage names has its cautions', () => {
  for (const pattern of ['printed', 'common-practice'] as const) {
    for (const alkali of ['ash', 'sodium-hydroxide'] as const) {
      const stages = builtInStages({ pattern, cornType: 'flint', alkali, waterToCornRatio: 4 })
      for (const moment of stages.flatMap(({ cautionMoments }) => cautionMoments)) {
        const known = MOMENTS.find((each) => each === moment)
        expect([moment, known && cautionsFor(known).length > 0]).toEqual([moment, true])
      }
    }
  }
})
