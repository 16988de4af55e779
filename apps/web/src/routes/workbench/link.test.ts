import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fromHash, toHash } from './link.ts'
import type { Typed } from './typed.ts'

describe('inputs in a link', () => {
  test('come back as they were, whatever they hold', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (inputs) => {
        const sent = JSON.parse(JSON.stringify(inputs)) as Typed
        expect(fromHash(toHash(sent))).toEqual(sent)
      }),
    )
  })

  test('use only letters that an address may carry', () => {
    expect(toHash({ name: 'Fährte über ½ qt >>>???' })).toMatch(/^#with=[A-Za-z0-9_-]+$/)
  })

  test.each([
    ['#with=', 'nothing in it'],
    ['#with=eyJjb3', 'cut short'],
    ['#with=W10', 'a list'],
    ['#with=%%%', 'no letters'],
  ])('are called unreadable when there is %s (%s)', (hash) => {
    expect(fromHash(hash)).toBe('unreadable')
  })

  test('are absent from an address that only points at a place on the page', () => {
    expect(fromHash('#page')).toBeNull()
    expect(fromHash('')).toBeNull()
  })
})
