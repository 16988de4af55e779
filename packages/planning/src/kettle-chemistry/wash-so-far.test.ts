import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import type { WalkStep } from '../batch/kettle-walk.ts'
import { readStandTest, washSoFar } from './wash-so-far.ts'

const step = (kind: string, waterL: number | undefined, minutes = 5) =>
  ({
    stage: { kind, waterToCornRatio: 2 },
    begunAtMs: 0,
    doneAtMs: minutes * 60_000,
    ...(waterL !== undefined && { waterL }),
  }) as unknown as WalkStep

test('the water may look clean while most is still inside', () => {
  const steps = [1, 2, 3, 4].map(() => step('cold-rinse', 6))
  const four = washSoFar({ steps }, 0.68)
  expect([four.waterL.value, four.minutes.value, four.bathsCount]).toEqual([24, 20, 4])
  expect(four.kernelFraction!.value).toBeGreaterThan(0.5)
  expect(four.bathFraction!.value).toBeLessThan(0.05)
  expect(four.afterStandingFraction!.value).toBeGreaterThan(four.bathFraction!.value)
  const boiled = washSoFar({ steps: [...steps.slice(0, 2), step('re-boil', 6), step('re-boil', 6)] }, 0.68)
  expect(boiled.boilsCount.value).toBe(2)
  expect(boiled.kernelFraction!.value).toBeLessThan(four.kernelFraction!.value)
})

test('nothing is counted as left before a bath with its water, and other stages are no baths', () => {
  const none = washSoFar({ steps: [step('alkali-boil', 8), step('final-cook', 6)] }, 0.68)
  expect([none.bathsCount, none.kernelFraction]).toEqual([0, undefined])
  const untold = washSoFar({ steps: [step('cold-rinse', undefined)] }, 0.68)
  expect([untold.withoutWaterCount, untold.kernelFraction]).toEqual([1, undefined])
})

test('a strip after a stand says whether alkali comes out, and never that none does', () => {
  const words = createWords()
  const text = (pH: number) =>
    readStandTest(pH)
      .map((each) => words.sentence(each))
      .join('\n')
  expect(text(9)).toMatch(/Alkali still comes out/)
  expect(text(7.5)).toMatch(/Nothing here says done/)
  expect(text(7.5)).not.toMatch(/clean|safe/)
})
