import fc from 'fast-check'
import { expect, test } from 'vitest'
import { sharesOfParts } from './shares.ts'

test('two parts to freeze and one to dry are two thirds and one third', () => {
  expect(sharesOfParts({ freezer: 2, dried: 1, jars: 0 })).toEqual([
    { ending: 'freezer', shareFraction: 2 / 3 },
    { ending: 'dried', shareFraction: 1 / 3 },
  ])
  expect(sharesOfParts({})).toEqual([])
})

test('whatever the parts, nothing of the batch is lost or counted twice', () => {
  const part = fc.integer({ min: 0, max: 99 })
  fc.assert(
    fc.property(fc.record({ jars: part, freezer: part, dried: part, flour: part, tonight: part }), (parts) => {
      const sum = sharesOfParts(parts).reduce((total, { shareFraction }) => total + shareFraction, 0)
      const isNone = Object.values(parts).every((count) => count === 0)
      return isNone ? sum === 0 : Math.abs(sum - 1) < 1e-9
    }),
  )
})
