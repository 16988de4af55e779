import { convert, type Sentence, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { conditionsOf, TRUE_DIAL } from './calc-fields.ts'
import { type CannerCard, type CardInput, cannerCard } from './card.ts'
import { confirmHold } from './confirm-hold.ts'
import { type Dial, daysBetween, dialOf, dialReading } from './dial.ts'

const words = createWords()
const told = (sentences: readonly Sentence[]) => sentences.map((one) => words.sentence(one)).join('\n')
const conditions = conditionsOf({ jar: 'pint', alkali: 'ash', standingRead: true }, 1)

/** Scenario S4's bench test: true 10, 11 and 15, the needle off by the same everywhere. */
const off = (errorPsi: number, more: Partial<Dial> = {}): Dial => ({
  marksEveryPsi: 1,
  restsAtPsi: 0,
  test: { readings: [10, 11, 15].map((truePsi) => ({ truePsi, readsPsi: truePsi + errorPsi })), testedDaysAgo: 0 },
  ...more,
})

function card(elevationFt: number, more: Partial<CardInput> = {}): CannerCard {
  const outcome = cannerCard({
    elevationFt,
    elevationKnownBy: 'map',
    dial: TRUE_DIAL,
    weightsLb: [10, 15],
    conditions,
    ...more,
  })
  if (outcome.kind !== 'card') throw new Error(`refused: ${outcome.refused}`)
  return outcome
}

const routes = ({ routes }: CannerCard) => routes.map(({ gauge, usable }) => `${gauge}${usable ? '' : ' not'}`)

describe('the route', () => {
  test('goes by a dial tested true, then the weight', () => {
    expect(routes(card(820))).toEqual(['dial', 'weight'])
  })

  test.each([
    ['reads 0.5 high', off(0.5)],
    ['reads 1.5 high', off(1.5)],
    ['reads 1 low', off(-1)],
  ])('goes by the weight first where the dial %s', (_, dial) => {
    expect(routes(card(1340, { dial }))).toEqual(['weight', 'dial'])
  })

  test.each([
    ['reads 3 high', off(3)],
    ['rests at 2', off(0, { restsAtPsi: 2 })],
    ['was never tested', { marksEveryPsi: 1, restsAtPsi: 0 }],
    ['was tested six years ago', off(0, { test: { ...off(0).test!, testedDaysAgo: 2190 } })],
    ['is marked every 5', off(0, { marksEveryPsi: 5 })],
  ] as const)('never goes by a dial that %s', (_, dial) => {
    const found = card(1340, { dial })
    expect(routes(found)).toEqual(['weight', 'dial not'])
    expect(found.routes[1]!.holdAt).toBeUndefined()
    expect(found.routes[1]!.required).toBeUndefined()
  })

  test('with no gauge that can be used says so and holds nothing', () => {
    const found = card(1340, { dial: off(3), weightsLb: [5, 10] })
    expect(routes(found)).toEqual(['dial not', 'weight not'])
    expect(told(found.reasons)).toContain('No gauge of this canner can be used')
  })
})

describe('the number', () => {
  test('of a heavier weight is used where the lighter is not at hand, and said', () => {
    const weight = card(500, { weightsLb: [15] }).routes.find(({ gauge }) => gauge === 'weight')!
    expect(shownValue(weight.holdAt!)).toBe(15)
    expect(shownValue(weight.table)).toBe(10)
    expect(told(weight.reasons)).toContain('presses more, with softer food')
  })

  test('is withheld for a dial whose test did not reach the pressure', () => {
    const dial: Dial = { ...off(0), test: { readings: [{ truePsi: 10, readsPsi: 10 }], testedDaysAgo: 1 } }
    expect(dialReading(dial, 11)).toMatchObject({ usable: false, verdict: 'unknown' })
  })

  test('is corrected by the error at its own pressure, while the worst error of the test decides whether it may be', () => {
    const bent = (at15: number): Dial => ({
      ...off(0),
      test: {
        readings: [
          { truePsi: 10, readsPsi: 10.5 },
          { truePsi: 15, readsPsi: at15 },
        ],
        testedDaysAgo: 1,
      },
    })
    // Between 0.5 at 10 and 1.5 at 15 a straight line gives 0.7 at 11.
    expect(dialReading(bent(16.5), 11)).toMatchObject({ usable: true, requiredReadingPsi: 11.7, holdAtPsi: 12 })
    expect(dialReading(bent(17.5), 11)).toMatchObject({ usable: false, verdict: 'refuse' })
  })

  test('is withheld where a map may be off the table, while a survey settles it', () => {
    // 2,430 m is 7,972.4 ft; 15 m more is above 8,000 ft.
    const place = { elevationFt: 7972.4, conditions, dial: TRUE_DIAL }
    expect(cannerCard({ ...place, elevationKnownBy: 'phone' })).toMatchObject({
      kind: 'refused',
      refused: 'margin-off-table',
    })
    const surveyed = cannerCard({ ...place, elevationKnownBy: 'survey' })
    expect(surveyed.kind === 'card' && shownValue(surveyed.routes[0]!.set)).toBe(14)
  })

  test.each([-1, 8000.4, 12_000])('is refused at %s ft', (elevationFt) => {
    const outcome = cannerCard({ elevationFt, elevationKnownBy: 'survey', dial: TRUE_DIAL, conditions })
    expect(outcome).toMatchObject({ kind: 'refused', refused: 'off-table' })
    expect(outcome.kind === 'refused' && told(outcome.askWhom)).toContain('ask your extension office')
  })

  test.each([304.8, 609.6, 1219.2, 1828.8, 2438.4])(
    'at the very edge of a band, %s m surveyed, is the lower band’s',
    (m) => {
      const inFeet = card(convert(m, 'M', 'Ft'), { elevationKnownBy: 'survey' })
      const justUnder = card(convert(m, 'M', 'Ft') - 1, { elevationKnownBy: 'survey' })
      expect(inFeet.routes.map(({ set }) => set.value)).toEqual(justUnder.routes.map(({ set }) => set.value))
    },
  )

  test('is refused for an electric canner', () => {
    const outcome = cannerCard({ elevationFt: 820, elevationKnownBy: 'map', isElectric: true, conditions })
    expect(outcome).toMatchObject({ kind: 'refused', refused: 'electric-canner' })
  })

  test('is never below the table, and a needle at it never means less than the table', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 7900, noNaN: true }),
        fc.constantFrom('map' as const, 'phone' as const, 'survey' as const),
        fc.integer({ min: -20, max: 20 }).map((tenths) => tenths / 10),
        fc.constantFrom(0.5, 1, 2),
        (elevationFt, elevationKnownBy, errorPsi, marksEveryPsi) => {
          const found = card(elevationFt, { elevationKnownBy, dial: off(errorPsi, { marksEveryPsi }) })
          for (const route of found.routes) {
            if (!route.usable) continue
            expect(route.set.value).toBeGreaterThanOrEqual(route.table.value)
            expect(route.holdAt!.value).toBeGreaterThanOrEqual(route.required!.value)
            const trulyPressed = route.required!.value - (route.error?.value ?? 0)
            expect(trulyPressed).toBeGreaterThanOrEqual(route.table.value - 1e-6)
          }
        },
      ),
      { numRuns: 300 },
    )
  })
})

describe('the minutes', () => {
  test.each([
    ['pint', 60],
    ['quart', 70],
    ['half-pint', 60],
  ] as const)('for a %s are %s once the standing was read', (jar, minutes) => {
    expect(card(820, { conditions: { ...conditions, jar } }).minutes?.value).toBe(minutes)
  })

  test('stay away before that, and where a condition is not met', () => {
    expect(card(820, { conditions: { ...conditions, standingRead: false } }).minutes).toBeUndefined()
    const cold = card(820, { conditions: { ...conditions, hotPack: false } })
    expect(cold.minutes).toBeUndefined()
    expect(told(cold.withheld)).toContain('hot pack only')
    expect(card(820, { conditions: { ...conditions, fill: 'packed-tight' } }).minutes).toBeUndefined()
  })

  test('for sodium hydroxide wait for the reading too, since their directions were withdrawn', () => {
    const lye = { ...conditions, alkali: 'sodium-hydroxide' } as const
    expect(card(820, { conditions: { ...lye, standingRead: false } }).minutes).toBeUndefined()
    expect(card(820, { conditions: lye }).minutes?.value).toBe(60)
  })
})

describe('a number confirmed for a run', () => {
  const near = card(1981.6).routes[0]!

  test('may be the card’s or more; the run then holds to the card', () => {
    expect(confirmHold(near, 12)).toMatchObject({ ok: true, requiredReadingPsi: 12, notes: [] })
    expect(confirmHold(near, 14)).toMatchObject({ ok: true, requiredReadingPsi: 12 })
  })

  test('between the table’s and the card’s is written down', () => {
    const found = confirmHold(near, 11)
    expect(found).toMatchObject({ ok: true, requiredReadingPsi: 11 })
    expect(found.ok && told(found.notes)).toContain("below the card's 12 psi")
  })

  test.each([10.9, 0, -5, Number.NaN])('of %s, below the table, is refused', (psi) => {
    expect(confirmHold(near, psi).ok).toBe(false)
  })

  test('on a dial that reads high is floored by what the needle must show', () => {
    const dial = card(1340, { dial: off(1.5) }).routes.find(({ gauge }) => gauge === 'dial')!
    expect(confirmHold(dial, 12).ok).toBe(false)
    expect(confirmHold(dial, 13)).toMatchObject({ ok: true, requiredReadingPsi: 12.5 })
  })

  test('on an untested dial is written down as untested; on a refused one it is no number', () => {
    const untested = card(1340, { dial: { marksEveryPsi: 1, restsAtPsi: 0 } }).routes[1]!
    const found = confirmHold(untested, 11)
    expect(found.ok && told(found.notes)).toContain('not tested')
    expect(confirmHold(card(1340, { dial: off(3) }).routes[1]!, 14).ok).toBe(false)
  })

  test('on a weight is the weight', () => {
    const weight = card(500).routes[1]!
    expect(confirmHold(weight, 15)).toMatchObject({ ok: true, requiredReadingPsi: 15 })
    expect(confirmHold(weight, 5).ok).toBe(false)
  })
})

describe('a dial from the book', () => {
  test('is the last test, aged to today', () => {
    const gaugeTests = [{ testedOn: '2025-09-01', readings: [], marksEveryPsi: 1, restsAtPsi: 0 }]
    expect(dialOf({ gaugeTests } as never, '2026-09-02').test?.testedDaysAgo).toBe(366)
    expect(dialOf({ gaugeTests: [] }, '2026-09-02').test).toBeUndefined()
  })

  test('asks for dates it can read', () => {
    expect(() => daysBetween('last spring', '2026-09-02')).toThrow('YYYY-MM-DD')
  })
})

test('a metal rim brings its lubricant line, at the card', () => {
  expect(told(card(1340, { rim: 'metal' }).cautions)).toContain('thin film of the lubricant its manual names')
})
