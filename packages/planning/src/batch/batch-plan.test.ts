/** Scenario S2, S2b and the corn of S6: literals from the scenarios' own working. */
import { shownValue } from '@crib/science'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { OSTREY_DAY as S2 } from '../../testing/ostrey-day.ts'
import { batchPlan } from './batch-plan.ts'
import type { BatchPlanInput } from './input.ts'
import { type BatchPlan, planValue } from './plan.ts'
import { ownStage, readStages } from './stages.ts'

function planned(input: BatchPlanInput): BatchPlan {
  const outcome = batchPlan(input)
  if (outcome.kind === 'refused') throw new Error(outcome.refused)
  return outcome
}

function shown(plan: BatchPlan, id: string): number | undefined {
  const value = planValue(plan, id)
  return value && shownValue(value)
}

describe('S2, from sack to shelf', () => {
  const plan = planned(S2)
  // scenarios.md S2, working 1 to 8
  test.each([
    ['dryCornLiquidQt', 6],
    ['ashCups', 6],
    ['ashLiquidQt', 1.5],
    ['cornPerPotLoadLiquidQt', 2],
    ['startingVolumeLiquidQt', 10],
    ['potLoads', 3],
    ['jars', 18],
    ['saltTbsp', 6],
    ['saltCups', 0.375],
    ['loads', 3],
    ['load:1', 6],
    ['load:2', 6],
    ['load:3', 6],
    ['dialPsi', 11],
    ['weightLb', 10],
    ['processMin', 70],
    ['ventAndProcessMin', 240],
    ['waterPerPotLoadLiquidGal', 19.5],
    ['waterLiquidGal', 58.5],
    ['waterL', 221],
  ])('%s is %s', (id, expected) => {
    expect(shown(plan, id)).toBe(expected)
  })

  test('the sheet is headed by the seed line', () => {
    expect(plan.reasons.slice(0, 2).map(({ key }) => key)).toEqual(['seed:first', 'seed:line-by-eye'])
  })

  test('jars and lids are set out for the high end', () => {
    expect(shown(plan, 'jarsToSetOut')).toBe(24) // 6 liquid qt x 4
    expect(shown(plan, 'lidsToSetOut')).toBe(24)
  })
})

describe('S2b, how full is a jar', () => {
  const plan = planned({ ...S2, fill: 'half', hominyPerDryVolume: { low: 2, middle: 4, high: 4, recordsCount: 1 } })
  test.each([
    ['hominyLiquidQt', 24],
    ['jars', 48],
    ['loads', 7],
    ['jarsLooseAsPrinted', 18],
  ])('%s is %s', (id, expected) => {
    expect(shown(plan, id)).toBe(expected)
  })

  test('seven loads of six or seven', () => {
    expect(plan.jars?.rounds.flat().map((load) => load.jarCount)).toEqual([7, 7, 7, 7, 7, 7, 6])
  })
})

describe('S6, corn for ninety-six pints', () => {
  const plan = planned({
    ...S2,
    from: { kind: 'jars', jarCount: 96 },
    jarSize: 'pint',
    sortedOutDryFraction: 0.1,
    spareLidFraction: 0.05,
    elevationFt: 1180,
    canners: [
      { name: 'A', gauges: ['weight'], capacityPints: 16, capacityQuarts: 7 },
      { name: 'B', gauges: ['dial'], capacityPints: 9, capacityQuarts: 7 },
      { name: 'C', gauges: ['weight'], capacityPints: 9, capacityQuarts: 7 },
    ],
  })
  // scenarios.md S6, working 1, 2, 3, 5
  test.each([
    ['dryCornLiquidQt', 16],
    ['cleanCornLb', 24],
    ['cornToShellLb', 26.7],
    ['jars', 96],
    ['rounds', 3],
    ['loads', 9],
    ['lids', 101],
    ['saltTsp', 48],
    ['saltTbsp', 16],
    ['saltCups', 1],
    ['dialPsi', 11],
    ['weightLb', 15],
  ])('%s is %s', (id, expected) => {
    expect(shown(plan, id)).toBe(expected)
  })

  test('each round is 14 + 9 + 9', () => {
    expect(plan.jars?.rounds.map((round) => round.map((load) => load.jarCount))).toEqual([
      [14, 9, 9],
      [14, 9, 9],
      [14, 9, 9],
    ])
  })
})

describe('what stops or closes a plan', () => {
  test.each([
    ['treated-seed', { isTreatedSeed: true }],
    ['aluminium-pot', { pots: [{ name: 'x', volumeLiquidQt: 20, material: 'aluminium' }] }],
    ['seed-reason-missing', { seed: { how: 'by-eye', plantingsCount: 1, places: [] } }],
    ['seed-weight-missing', { seed: { how: 'by-weight', plantingsCount: 2, places: [] } }],
    ['seed-takes-it-all', { seed: { how: 'by-weight', plantingsCount: 2, massKg: 5, places: [] } }],
    ['shares-not-whole', { endings: [{ ending: 'jars', shareFraction: 0.5 }] }],
    ['out-of-range', { from: { kind: 'corn', form: 'shelled', amount: { value: Number.NaN, unit: 'Lb' } } }],
    ['out-of-range', { from: { kind: 'corn', form: 'shelled', amount: { value: -9, unit: 'Lb' } } }],
    ['out-of-range', { potFillLimitFraction: 0.9 }],
    ['two-canners-one-name', { canners: [S2.canners[0]!, S2.canners[0]!] }],
  ] as [string, Partial<BatchPlanInput>][])('%s refuses', (refused, change) => {
    expect(batchPlan({ ...S2, ...change })).toMatchObject({ kind: 'refused', refused })
  })

  test('jars stay closed until their standing was read, and no minute or pressure is shown', () => {
    const plan = planned({ ...S2, isStandingRead: false })
    expect(plan.jars).toBeNull()
    expect(plan.jarsClosed?.why.map(({ key }) => key)).toContain('kettle:jars-open-after-reading')
    for (const id of ['jars', 'processMin', 'dialPsi', 'loads']) expect(shown(plan, id)).toBeUndefined()
  })

  test('above the table there is no jar plan, and someone to ask', () => {
    const plan = planned({ ...S2, elevationFt: 8005 })
    expect(plan.jars).toBeNull()
    expect(plan.jarsClosed?.askWhom.length).toBeGreaterThan(0)
  })
})

describe('the pressure of a plan near a line, as scenario S3 has it', () => {
  // 604 m is 1,981.6 ft, 18 ft under the line: a map is good to 15 m, a survey needs no margin.
  test.each([
    [1981.6, 'map', 12],
    [1981.6, 'phone', 12],
    [1981.6, 'survey', 11],
    [2007.9, 'survey', 12],
  ] as const)('%s ft known by %s asks %s psi of a dial', (elevationFt, elevationKnownBy, psi) => {
    expect(shown(planned({ ...S2, elevationFt, elevationKnownBy }), 'dialPsi')).toBe(psi)
  })
})

describe('every alkali', () => {
  test.each(['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'baking-soda'] as const)(
    '%s opens a jar plan only once its standing was read',
    (alkali) => {
      expect(planned({ ...S2, alkali, isStandingRead: false }).jars).toBeNull()
      expect(planned({ ...S2, alkali, isStandingRead: true }).jars?.processMin).toBe(70)
    },
  )

  test('calcium hydroxide at about 1 % of 9 lb is 40.8 g, with the range of commercial masa beside it', () => {
    const plan = planned({ ...S2, alkali: 'calcium-hydroxide' })
    expect(shown(plan, 'calciumHydroxideG')).toBe(40.8) // 4,082.3 g x 0.01
    expect(planValue(plan, 'calciumHydroxideG')!.low).toBeCloseTo(20.4, 1)
  })

  test('sodium hydroxide and soda only as printed: 2 oz to 2 liquid qt, 2 Tbsp to 1', () => {
    expect(shown(planned({ ...S2, alkali: 'sodium-hydroxide' }), 'sodiumHydroxideOz')).toBe(6)
    expect(shown(planned({ ...S2, alkali: 'baking-soda' }), 'bakingSodaTbsp')).toBe(12)
  })

  test('an ash that was not burnt of clean wood alone, or not sifted, is named', () => {
    const alkaliLot = { name: 'B', onlyCleanWood: false, sifted: false, judged: 'weak' } as const
    const keys = planned({ ...S2, alkaliLot }).warnings.map(({ key }) => key)
    expect(keys).toEqual(
      expect.arrayContaining(['kettle:ash-unclean-wood', 'kettle:ash-not-ready', 'kettle:ash-judged-weak']),
    )
  })
})

describe('ears, measures and pots', () => {
  test('70 lb of husked ears are 56 lb shelled: common practice, shelled by four in 1.4 h, 0.7 to 2.8', () => {
    const plan = planned({
      ...S2,
      from: { kind: 'corn', form: 'ears', amount: { value: 70, unit: 'Lb' } },
      shellersCount: 4,
    })
    expect(shown(plan, 'shelledLb')).toBe(56)
    const hours = planValue(plan, 'shellingH')!
    expect([shownValue(hours), hours.low, hours.high]).toEqual([1.4, 0.7, 2.8]) // 56 / (4 x 10), 20 and 5 lb an hour
    expect(hours.basis).toBe('common-practice')
  })

  test.each([
    [6, 'LiquidQt', 6],
    [24, 'Cup', 6],
    [1, 'Bu', 37.24], // 35.239 L over 0.94635 L
    [10, 'DryQt', 11.64], // dry over liquid 1.1636
    [5.678117676, 'L', 6],
    [9, 'Lb', 6],
    [4.08233133, 'Kg', 6],
  ] as const)('%s %s is %s liquid qt of dry corn', (value, unit, liquidQt) => {
    const plan = planned({ ...S2, from: { kind: 'corn', form: 'shelled', amount: { value, unit } } })
    expect(shown(plan, 'dryCornLiquidQt')).toBe(liquidQt)
  })

  test('a bare quart is said to be taken as liquid', () => {
    const amount = { value: 6, unit: 'LiquidQt', assumed: 'liquid' } as const
    const plan = planned({ ...S2, from: { kind: 'corn', form: 'shelled', amount } })
    expect(plan.reasons.map(({ key }) => key)).toContain('kettle:assumed-liquid')
  })

  test('two pots side by side halve the rounds, each within its two-thirds', () => {
    const pots = [...S2.pots, { name: 'second', volumeLiquidQt: 16, material: 'enamel' } as const]
    const { potLoads } = planned({ ...S2, pots }).kettle
    expect(potLoads.map(({ round, potName, cornLiquidQt }) => [round, potName, cornLiquidQt])).toEqual([
      [1, 'the big pot', 1.5],
      [1, 'second', 1.5],
      [2, 'the big pot', 1.5],
      [2, 'second', 1.5],
    ])
    for (const { potName, startingVolumeLiquidQt } of potLoads) {
      const { volumeLiquidQt } = pots.find(({ name }) => name === potName)!
      expect(startingVolumeLiquidQt).toBeLessThanOrEqual((volumeLiquidQt * 2) / 3)
    }
  })
})

describe('other endings', () => {
  test('the same hominy split over jars, bags, trays, flour, roast and tonight adds up', () => {
    const endings = [
      { ending: 'jars', shareFraction: 0.5 },
      { ending: 'freezer', shareFraction: 0.2 },
      { ending: 'dried', shareFraction: 0.1 },
      { ending: 'flour', shareFraction: 0.1 },
      { ending: 'roasted', shareFraction: 0.05 },
      { ending: 'tonight', shareFraction: 0.05 },
    ] as const
    const plan = planned({ ...S2, endings })
    const volumes = plan.endings.map(({ ending }) => planValue(plan, `${ending}HominyLiquidQt`)!.value)
    expect(volumes.reduce((sum, each) => sum + each, 0) + planValue(plan, 'jars')!.value).toBeCloseTo(18, 9)
    expect(shown(plan, 'jars')).toBe(9)
    expect(shown(plan, 'freezerBags')).toBe(8) // 18 x 0.2 = 3.6 liquid qt in bags of 1/2
    expect(shown(plan, 'flourLb')).toBe(0.8) // 0.9 lb x 0.87
  })

  test('without jars nothing of canners is asked or said', () => {
    const plan = planned({
      ...S2,
      endings: [{ ending: 'freezer', shareFraction: 1 }],
      isStandingRead: false,
      canners: [],
    })
    expect([plan.jars, plan.jarsClosed]).toEqual([null, null])
    expect(plan.warnings).toEqual([])
  })
})

describe('stages', () => {
  test('the printed pattern: hot and cold rinses, five 5-minute boils, a last cook of 30 to 45 min', () => {
    const stages = planned({ ...S2, washPattern: 'printed' }).kettle.stages
    expect(stages.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['hot-rinse', 'cold-rinse']))
    const boils = stages.find(({ kind }) => kind === 're-boil')!
    expect([boils.timesCount, boils.lowMin, boils.highMin]).toEqual([5, 5, 5])
    const last = stages.at(-1)!
    expect([last.isHotPack, last.lowMin, last.highMin]).toEqual([true, 30, 45])
  })

  test('an edited list survives the book, and anything else is not taken for one', () => {
    const edited = [
      ...planned(S2).kettle.stages,
      ownStage('bless', 'Say thanks', 'Everyone is there', { lowMin: 1, highMin: 2 }),
    ]
    expect(readStages(JSON.parse(JSON.stringify(edited)))).toEqual(edited)
    for (const other of [undefined, [], 'stages', [{ id: 'x' }], [{ ...edited[0], lowMin: Number.NaN }]]) {
      expect(readStages(other)).toBeNull()
    }
  })

  test('an edited list without the last cook is no hot pack: the jar plan closes and says why', () => {
    const stages = planned(S2).kettle.stages.filter(({ isHotPack }) => !isHotPack)
    const plan = planned({ ...S2, stages })
    expect(plan.jars).toBeNull()
    expect(plan.warnings.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['kettle:not-hot-pack', 'guidance:needs-hot-pack']),
    )
  })
})

describe('seed and balance', () => {
  test('seed by weight comes off before anything is food', () => {
    const plan = planned({
      ...S2,
      seed: { how: 'by-weight', plantingsCount: 2, massKg: 0.45359237, places: ['a', 'b'] },
    })
    expect(shown(plan, 'cleanCornLb')).toBe(8)
    expect(plan.values[0]?.id).toBe('seedPutByLb')
  })

  test('seed already taken out is not taken off twice', () => {
    const seed = {
      how: 'by-weight',
      plantingsCount: 2,
      massKg: 1,
      places: ['a', 'b'],
      isAlreadyTakenOut: true,
    } as const
    expect(shown(planned({ ...S2, seed }), 'cleanCornLb')).toBe(9)
  })

  const lb = fc.double({ min: 0.5, max: 500, noNaN: true })
  const corn = (value: number): BatchPlanInput['from'] => ({
    kind: 'corn',
    form: 'shelled',
    amount: { value, unit: 'Lb' },
  })

  test('more corn never gives fewer jars, pot-loads or loads', () => {
    fc.assert(
      fc.property(lb, lb, (a, b) => {
        const small = planned({ ...S2, from: corn(Math.min(a, b)) })
        const large = planned({ ...S2, from: corn(Math.max(a, b)) })
        for (const id of ['jars', 'jarsToSetOut', 'potLoads', 'loads', 'lids']) {
          expect(shown(large, id)!).toBeGreaterThanOrEqual(shown(small, id)!)
        }
      }),
    )
  })

  test('loads hold every jar once, none above its canner, and pot-loads hold every quart', () => {
    fc.assert(
      fc.property(lb, (value) => {
        const plan = planned({ ...S2, from: corn(value) })
        const loads = plan.jars!.rounds.flat()
        expect(loads.reduce((sum, load) => sum + load.jarCount, 0)).toBe(shown(plan, 'jars'))
        expect(Math.max(...loads.map((load) => load.jarCount))).toBeLessThanOrEqual(7)
        const inPots = plan.kettle.potLoads.reduce((sum, load) => sum + load.cornLiquidQt, 0)
        expect(inPots).toBeCloseTo(value / 1.5, 9)
        expect(Math.max(...plan.kettle.potLoads.map((load) => load.cornLiquidQt))).toBeLessThanOrEqual(2 + 1e-9)
      }),
    )
  })

  test('food plus seed plus what was sorted out is what was brought', () => {
    fc.assert(
      fc.property(lb, fc.double({ min: 0, max: 0.9, noNaN: true }), (value, sortedOutDryFraction) => {
        const massKg = value * 0.2 * 0.45359237
        const seed = { how: 'by-weight', plantingsCount: 2, massKg, places: ['a', 'b'] } as const
        const plan = planned({ ...S2, from: corn(value), seed, sortedOutDryFraction })
        const clean = planValue(plan, 'cleanCornLb')!.value
        expect(clean).toBeCloseTo(value * 0.8 * (1 - sortedOutDryFraction), 9)
      }),
    )
  })
})

describe('facts of the trade fall inside the ranges shown: common practice, no source', () => {
  const plan = planned({ ...S2, from: { kind: 'corn', form: 'shelled', amount: { value: 1, unit: 'LiquidQt' } } })
  const holds = (id: string, ...facts: number[]) => {
    const { low, high } = planValue(plan, id)!
    for (const fact of facts) {
      expect(fact).toBeGreaterThanOrEqual(low!)
      expect(fact).toBeLessThanOrEqual(high!)
    }
  }

  test('a quart of an easy-hulling large flint gives about four of hominy', () => holds('hominyLiquidQt', 4))
  test('volume doubles to triples in the cook', () => holds('swollenInPotLiquidQt', 2, 3))
  test('1.5 to 2 h of alkali boil for the easy ones, up to 4 h for thick hulls or feed corn', () =>
    holds('alkaliBoilMin', 90, 120, 240))
  test('two cups of sifted hardwood ash to one or two liquid quarts', () => {
    const { alkaliLot: _, ...noRecord } = S2
    const unrecorded = planned({
      ...noRecord,
      from: { kind: 'corn', form: 'shelled', amount: { value: 2, unit: 'LiquidQt' } },
    })
    const { low, high } = planValue(unrecorded, 'ashCups')!
    for (const cups of [2, 4]) {
      expect(cups).toBeGreaterThanOrEqual(low!)
      expect(cups).toBeLessThanOrEqual(high!)
    }
  })
  test('re-boils of 20 to 30 min in the common-practice pattern', () => {
    const { stages } = planned({ ...S2, washPattern: 'common-practice' }).kettle
    const reBoil = stages.find((stage) => stage.kind === 're-boil')!
    expect([reBoil.timesCount, reBoil.lowMin, reBoil.highMin]).toEqual([2, 20, 30])
  })
  test('70 min at 10 for quart jars near sea level, as the weight has it', () => {
    expect([shown(plan, 'processMin'), shown(plan, 'weightLb')]).toEqual([70, 10])
  })
  test('jars a third to half full are among the fills', () => {
    for (const fill of ['half', 'third'] as const) {
      const jars = planned({ ...S2, fill }).jars
      expect(jars?.reasons.map(({ key }) => key)).toContain(`kettle:fill-${fill}`)
    }
  })
})
