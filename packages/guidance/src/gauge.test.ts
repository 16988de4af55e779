import { expect, test } from 'vitest'
import { type GaugeFacts, gaugeRule } from './gauge.ts'

const good: GaugeFacts = { errorPsi: 0, restsAtPsi: 0, lastTestedDaysAgo: 30, marksEveryPsi: 1 }

// Acceptance scenario S4 and its variants; extension offices 2024.
test.each([
  ['tested true', {}, 'use', 0],
  ['1.5 high: usable today with a tag', { errorPsi: 1.5 }, 'use-tagged-replace-soon', 1.5],
  ['exactly 2 high', { errorPsi: 2 }, 'use-tagged-replace-soon', 2],
  ['2 high as the difference of two readings', { errorPsi: 13.1 - 11.1 }, 'use-tagged-replace-soon', 2],
  ['just above 2', { errorPsi: 2.01 }, 'refuse', 0],
  ['3 high', { errorPsi: 3 }, 'refuse', 0],
  ['3 low', { errorPsi: -3 }, 'refuse', 0],
  ['half high', { errorPsi: 0.5 }, 'use-corrected', 0.5],
  ['1 low', { errorPsi: -1 }, 'use-tagged-replace-soon', -1],
  ['needle rests at 2 when cold', { restsAtPsi: 2 }, 'replace', 0],
  ['last test six years ago', { lastTestedDaysAgo: 6 * 365 }, 'unknown', 0],
  ['tested 365 days ago', { lastTestedDaysAgo: 365 }, 'use', 0],
  ['tested 366 days ago', { lastTestedDaysAgo: 366 }, 'unknown', 0],
  ['never tested', { errorPsi: null, lastTestedDaysAgo: null }, 'unknown', 0],
  ['marks only every 5', { marksEveryPsi: 5 }, 'marks-too-coarse', 0],
] as const)('%s', (_what, change, verdict, correctionPsi) => {
  const outcome = gaugeRule({ ...good, ...change })
  expect(outcome.verdict).toBe(verdict)
  expect(outcome.correctionPsi).toBeCloseTo(correctionPsi, 12)
  expect(outcome.mayHoldPressure).toBe(verdict.startsWith('use'))
})

test('a resting needle off zero outranks a good test', () => {
  expect(gaugeRule({ ...good, restsAtPsi: 0.5, errorPsi: 0.5 }).verdict).toBe('replace')
})

test('the reason carries the error, high or low', () => {
  expect(gaugeRule({ ...good, errorPsi: 1.5 }).why[0]).toEqual({
    key: 'guidance:gauge-reads-high',
    params: { error: { value: 1.5, unit: 'PsiGauge' } },
  })
  expect(gaugeRule({ ...good, errorPsi: -1 }).why[0]).toMatchObject({ key: 'guidance:gauge-reads-low' })
})

test.each([{ errorPsi: Number.NaN }, { restsAtPsi: Number.NaN }, { lastTestedDaysAgo: -1 }, { marksEveryPsi: 0 }])(
  'refuses %o',
  (bad) => {
    expect(() => gaugeRule({ ...good, ...bad })).toThrow(RangeError)
  },
)
