import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cannerLetter, loadCode } from './load-code.ts'
import { type LoadsInput, planLoads } from './loads.ts'

const words = createWords()
const DAY = { kitchenName: 'Millrind', day: '2026-10-03', jarSize: 'pint' } as const
const canners = (...capacities: number[]) =>
  capacities.map((capacity, index) => ({ name: cannerLetter(index), capacity }))
const plan = (jarCount: number, list: LoadsInput['canners']) => planLoads({ ...DAY, jarCount, canners: list })!
const counts = (jarCount: number, ...capacities: number[]) =>
  plan(jarCount, canners(...capacities)).rounds.map((loads) => loads.map((load) => load.jarCount))

describe('loads', () => {
  test('S2: eighteen quarts in a canner of seven are six, six and six', () => {
    expect(counts(18, 7)).toEqual([[6], [6], [6]])
  })

  test('S2b: forty-eight quarts are seven loads of six or seven', () => {
    const loads = counts(48, 7).flat()
    expect(loads).toHaveLength(7)
    expect(new Set(loads)).toEqual(new Set([6, 7]))
  })

  test('S6: ninety-six pints over sixteen, nine and nine are three rounds of fourteen, nine and nine', () => {
    const found = plan(96, canners(16, 9, 9))
    expect(found.rounds.map((loads) => loads.map((load) => load.jarCount))).toEqual([
      [14, 9, 9],
      [14, 9, 9],
      [14, 9, 9],
    ])
    expect(found.loadCount).toBe(9)
    expect(found.shares.map(({ letter, jarCount, loadCount }) => [letter, jarCount, loadCount])).toEqual([
      ['A', 42, 3],
      ['B', 27, 3],
      ['C', 27, 3],
    ])
    expect(found.notes.map((note) => words.sentence(note)).join('\n')).toMatch(
      /at least 4[\s\S]*federal guidance sets no minimum/,
    )
  })

  test('jars balance, no canner is overfilled, and every load has a code of its own', () => {
    const list = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 5 })
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), list, (jarCount, capacities) => {
        const found = planLoads({ ...DAY, jarCount, canners: canners(...capacities) })
        const places = capacities.reduce((sum, capacity) => sum + capacity, 0)
        if (places === 0) {
          expect(found).toBeNull()
          return
        }
        const loads = found!.rounds.flat()
        expect(loads.reduce((sum, load) => sum + load.jarCount, 0)).toBe(jarCount)
        expect(found!.shares.reduce((sum, share) => sum + share.jarCount, 0)).toBe(jarCount)
        expect(found!.rounds).toHaveLength(Math.ceil(jarCount / places))
        for (const load of loads) {
          expect(load.jarCount).toBeGreaterThan(0)
          expect(load.jarCount).toBeLessThanOrEqual(capacities[load.letter.charCodeAt(0) - 65]!)
        }
        const inRound = found!.rounds.map((round) => round.reduce((sum, load) => sum + load.jarCount, 0))
        expect(Math.max(...inRound) - Math.min(...inRound)).toBeLessThanOrEqual(1)
        expect(new Set(loads.map((load) => load.loadCode)).size).toBe(loads.length)
      }),
      { numRuns: 300 },
    )
  })

  test('two canners of one name stay two, and the letter is said to tell them apart', () => {
    const twins = [
      { name: 'Old Blue', capacity: 7 },
      { name: 'Old Blue', capacity: 7 },
    ]
    const found = plan(14, twins)
    expect(found.shares.map(({ letter, jarCount }) => [letter, jarCount])).toEqual([
      ['A', 7],
      ['B', 7],
    ])
    expect(found.notes.map((note) => words.sentence(note)).join('\n')).toContain('Two canners are called Old Blue')
  })

  test.each([0, -3, Number.NaN, 1e9])('refuses %s jars', (jarCount) => {
    expect(() => plan(jarCount, canners(7))).toThrow('jarCount')
  })
})

describe('a load code', () => {
  test('says kitchen, day, canner and round', () => {
    expect(loadCode({ kitchenName: 'Millrind', day: '2026-10-03', letter: 'B', round: 2 })).toBe('MILL-261003-B2')
  })

  test('goes on after the rounds a canner has already run that day', () => {
    const again = plan(7, [{ name: 'A', capacity: 7, roundsDone: 2 }])
    expect(again.rounds[0]![0]!.loadCode).toBe('MILL-261003-A3')
  })

  test('needs no letters of the Latin script, and drops accents', () => {
    expect(loadCode({ kitchenName: 'Ñandú', day: '2026-10-03', letter: 'A', round: 1 })).toBe('NAND-261003-A1')
    expect(loadCode({ kitchenName: 'ᏣᎳᎩ', day: '2026-10-03', letter: 'A', round: 1 })).toBe('CRIB-261003-A1')
  })

  test.each(['03.10.2026', '2026-13-40', ''])('refuses the day "%s"', (day) => {
    expect(() => loadCode({ kitchenName: 'Millrind', day, letter: 'A', round: 1 })).toThrow('YYYY-MM-DD')
  })

  test('letters go on after Z', () => {
    expect([0, 25, 26, 27, 52].map(cannerLetter)).toEqual(['A', 'Z', 'AA', 'AB', 'BA'])
  })
})
