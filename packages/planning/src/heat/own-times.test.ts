import type { RunFact } from '@crib/journal'
import { describe, expect, test } from 'vitest'
import { cannerOwnTimes } from './own-times.ts'

/** Invented. */
function run(runId: string, lines: readonly (readonly [string, number])[]): RunFact {
  const at = (min: number) => new Date(Date.UTC(2026, 9, 3, 12, min)).toISOString()
  return {
    runId,
    begun: {
      runId,
      cannerId: 'canner-a',
      cannerName: 'yard canner',
      loadCode: 'A',
      jarSize: 'pint',
      jarCount: 9,
      gauge: 'dial',
      requiredReadingPsi: 12,
      ventMin: 10,
      processMin: 60,
      edition: 'guidance-2026-11',
      cardShown: {},
      at: { instant: at(0), zone: 'UTC' },
    },
    events: lines.map(([type, min], i) => ({
      event: { type },
      instant: at(min),
      zone: 'UTC',
      entryId: `${runId}-${i}`,
      personId: 'p',
      deviceId: 'd',
    })),
  } as unknown as RunFact
}
const whole = (runId: string, coolMin: number) =>
  run(runId, [
    ['steam-steady', 15],
    ['vent-closed', 25],
    ['at-pressure', 33],
    ['heat-off', 93],
    ['zero', 93 + coolMin],
  ])

describe("a canner's own times", () => {
  test('are the printed ones until it has run', () => {
    const { comeUp, coolDown } = cannerOwnTimes({ runs: {} }, 'canner-a', 'pint')
    expect([comeUp.value, comeUp.recordsCount, comeUp.reckoned.basis]).toEqual([5, 0, 'published'])
    expect([coolDown.value, coolDown.recordsCount]).toEqual([30, 0])
    expect(cannerOwnTimes({ runs: {} }, 'canner-a', 'quart').coolDown.value).toBe(45)
  })

  test('move toward its own runs, with both numbers and how many', () => {
    const runs = { a: whole('a', 38), b: whole('b', 42) }
    const { comeUp, coolDown } = cannerOwnTimes({ runs }, 'canner-a', 'pint')
    // Two own of 38 and 42 weigh as much as the printed 30: (2 x 30 + 80) / 4.
    expect(coolDown).toMatchObject({ value: 35, bookValue: 30, ownMean: 40, recordsCount: 2 })
    expect(comeUp).toMatchObject({ value: 6.5, bookValue: 5, ownMean: 8, recordsCount: 2 })
    expect(coolDown.reckoned.basis).toBe('own-record')
  })

  test('leave out a cool-down that was forced, another jar size, another canner and a time no canner has', () => {
    const forced = run('f', [
      ['vent-closed', 25],
      ['at-pressure', 33],
      ['heat-off', 93],
      ['forced-cooling', 95],
      ['zero', 97],
    ])
    const runs = { forced, late: whole('l', 600) }
    expect(cannerOwnTimes({ runs }, 'canner-a', 'pint').coolDown.recordsCount).toBe(0)
    expect(cannerOwnTimes({ runs: { a: whole('a', 38) } }, 'canner-a', 'quart').coolDown.recordsCount).toBe(0)
    expect(cannerOwnTimes({ runs: { a: whole('a', 38) } }, 'canner-b', 'pint').comeUp.recordsCount).toBe(0)
  })
})
