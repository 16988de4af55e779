import { describe, expect, test } from 'vitest'
import { unsealedChoices } from './unsealed.ts'

const ALL = ['refrigerate', 'freeze', 'full-process-again']

// UNL Extension and MSU 01600593: 24 h; UNL: 2 h where the method was wrong.
describe('an unsealed jar', () => {
  test.each([
    [0, true, ALL],
    [11, true, ALL],
    [24, true, ALL],
    [24.1, true, ['discard']],
    [1, false, ALL],
    [2, false, ALL],
    [2.1, false, ['discard']],
    [30, false, ['discard']],
  ])('%s h out, method right %s: %s', (hours, methodWasRight, keys) => {
    expect(unsealedChoices(hours, methodWasRight).choices.map((choice) => choice.key)).toEqual(keys)
  })

  test('says how long each choice stays open', () => {
    expect(unsealedChoices(20, true).choices[0]).toMatchObject({ hoursLeft: 4 })
    expect(unsealedChoices(25, true).choices[0]).toMatchObject({ hoursLeft: null })
  })

  test('is frozen with an inch and a half of headspace', () => {
    expect(unsealedChoices(1, true).choices[1]!.say).toEqual({
      key: 'guidance:unsealed-freeze',
      params: { headspace: { value: 1.5, unit: 'In' } },
    })
  })

  test('names the stricter source only where the method was wrong', () => {
    expect(unsealedChoices(1, false).why.map((why) => why.key)).toContain('guidance:unsealed-stricter-source')
    expect(unsealedChoices(1, true).why).toHaveLength(1)
  })

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('%s h is refused', (hours) => {
    expect(() => unsealedChoices(hours, true)).toThrow(RangeError)
  })
})
