import { type Facts, foldFacts, NO_FACTS, type StoredEntry } from '@crib/journal'
import { shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { testKitchen } from '../../../journal/src/testing/invented.ts'
import { type RecallOrigin, recall, traceBack } from './recall.ts'
import { recallGraph } from './recall-graph.ts'
import { drillOutcome, recallDrill, recallValues } from './recall-numbers.ts'

const words = createWords()

interface LoadTold {
  readonly code: string
  readonly canner: 'A' | 'B' | 'C'
  readonly jars: number
}

/** S6: 24 households of 4 pints; canner A holds 14 a round, B and C 9; three rounds; the last ones short to 96. */
const LOADS: readonly LoadTold[] = [1, 2, 3].flatMap((round) => [
  { code: `MILL-261003-A${round}`, canner: 'A', jars: 14 } as const,
  { code: `MILL-261003-B${round}`, canner: 'B', jars: 9 } as const,
  { code: `MILL-261003-C${round}`, canner: 'C', jars: 9 } as const,
])

function village() {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const lotId = kitchen.newId()
  const ashId = kitchen.newId()
  const batchId = kitchen.newId()
  const canners = { A: kitchen.newId(), B: kitchen.newId(), C: kitchen.newId() }
  const entries: StoredEntry[] = [
    author.write('corn-lot-brought-in', {
      lotId,
      name: 'Copper Hinge flint',
      cornType: 'flint',
      form: 'shelled',
      massKg: 12,
      asTyped: '26.7 lb',
      treatedSeed: false,
    }),
    author.write('alkali-lot-recorded', { alkaliLotId: ashId, name: 'M-1', alkali: 'ash' }),
    author.write('batch-planned', {
      batchId,
      title: 'Village',
      inputs: {},
      edition: 'guidance-2026-11',
      codeVersion: '0.1.0',
      shown: {},
      corn: [{ lotId, massKg: 12 }],
    }),
    author.write('cook-noted', { batchId, potLoad: 1, seen: { type: 'alkali-added', alkaliLotId: ashId, cups: 16 } }),
  ]
  const lotIds: string[] = []
  let jar = 0
  for (const { code, canner, jars } of LOADS) {
    const runId = kitchen.newId()
    kitchen.clock.wait(30)
    entries.push(
      author.write('run-begun', {
        runId,
        batchId,
        cannerId: canners[canner],
        cannerName: canner,
        loadCode: code,
        jarSize: 'pint',
        jarCount: jars,
        gauge: canner === 'B' ? 'dial' : 'weight',
        requiredReadingPsi: canner === 'B' ? 11 : 15,
        ventMin: 10,
        processMin: 60,
        edition: 'guidance-2026-11',
        cardShown: {},
      }),
    )
    // Jars go home by the household they belong to: four each, in order.
    const counts = new Map<string, number>()
    for (let each = 0; each < jars; each++, jar++) {
      const household = `house ${Math.floor(jar / 4) + 1}`
      counts.set(household, (counts.get(household) ?? 0) + 1)
    }
    for (const [householdName, count] of counts) {
      const id = kitchen.newId()
      lotIds.push(id)
      entries.push(
        author.write('food-put-up', {
          lotId: id,
          runId,
          batchId,
          loadCode: code,
          form: 'jar',
          jarSize: 'pint',
          count,
          householdName,
          place: 'cellar',
        }),
      )
    }
  }
  return { kitchen, author, entries, canners, lotId, ashId, batchId, lotIds, facts: foldFacts(entries) }
}

const shown = (facts: Facts, origin: RecallOrigin) =>
  Object.fromEntries(recallValues(recall(facts, origin)).map((value) => [value.id, shownValue(value)]))

describe('S6: a later finding about canner B', () => {
  const { facts, canners, lotId, ashId } = village()

  test('reaches only B’s 27 pints, in its three loads', () => {
    const found = recall(facts, { by: 'canner', cannerId: canners.B })
    expect(found.loadCodes).toEqual(['MILL-261003-B1', 'MILL-261003-B2', 'MILL-261003-B3'])
    expect(shown(facts, { by: 'canner', cannerId: canners.B })).toMatchObject({
      recallLoads: 3,
      recallJars: 27,
      recallOnShelf: 27,
      recallAccountedFraction: 1,
    })
    // By hand: B's jars are numbers 15 to 23, 47 to 55 and 79 to 87, four to a house.
    const houses = [4, 5, 6, 12, 13, 14, 20, 21, 22].map((house) => `house ${house}`)
    expect([...found.households].sort()).toEqual(houses.sort())
  })

  test('a dial doubted reaches the loads it held; a weight none of them', () => {
    expect(recall(facts, { by: 'gauge', cannerId: canners.B, gauge: 'dial' }).loadCodes).toHaveLength(3)
    expect(recall(facts, { by: 'gauge', cannerId: canners.B, gauge: 'weight' }).loadCodes).toEqual([])
  })

  test('a gauge found true on a day leaves the loads before it in peace', () => {
    const [, , last] = Object.values(facts.runs).filter(({ begun }) => begun.cannerName === 'B')
    const sinceInstant = last!.begun.at.instant
    const origin = { by: 'gauge', cannerId: canners.B, gauge: 'dial', sinceInstant } as const
    expect(recall(facts, origin).loadCodes).toEqual(['MILL-261003-B3'])
  })

  test('the ash, the corn and the batch reach all 96', () => {
    for (const origin of [
      { by: 'alkali-lot', alkaliLotId: ashId },
      { by: 'corn-lot', lotId },
    ] as const)
      expect(shown(facts, origin)).toMatchObject({ recallLoads: 9, recallJars: 96, recallHouseholds: 24 })
  })

  test('an unknown origin says that nothing comes from there', () => {
    const found = recall(facts, { by: 'load', loadCode: 'MILL-261003-Z9' })
    expect(found.lots).toEqual([])
    expect(found.notes.map((note) => words.sentence(note))).toEqual(['Nothing in this book comes from there.'])
    expect(traceBack(facts, 'MILL-261003-Z9')).toBeNull()
  })
})

describe('where the jars went', () => {
  test('given, eaten, thrown out and never put on the shelf are told apart, and add up', () => {
    const { author, entries, lotIds, kitchen, canners } = village()
    const [first] = lotIds
    entries.push(
      author.write('lot-used', { lotId: first!, count: 1, how: 'given', toWhom: 'house 30' }),
      author.write('lot-used', { lotId: first!, count: 1, how: 'given' }),
      author.write('lot-used', { lotId: first!, count: 1, how: 'eaten' }),
      author.write('run-begun', {
        runId: kitchen.newId(),
        cannerId: canners.A,
        cannerName: 'A',
        loadCode: 'MILL-261004-A1',
        jarSize: 'pint',
        jarCount: 5,
        gauge: 'weight',
        requiredReadingPsi: 15,
        ventMin: 10,
        processMin: 60,
        edition: 'guidance-2026-11',
        cardShown: {},
        households: ['house 31'],
      }),
    )
    const facts = foldFacts(entries)
    const found = recall(facts, { by: 'canner', cannerId: canners.A })
    expect(shown(facts, { by: 'canner', cannerId: canners.A })).toMatchObject({
      recallJars: 47, // 3 x 14 and the 5 nobody put on the shelf
      recallOnShelf: 39,
      recallGiven: 2,
      recallEaten: 1,
      recallAccountedFraction: 0.872, // 41 of 47
    })
    expect(found.households).toEqual(expect.arrayContaining(['house 30', 'house 31']))
    for (const lot of found.lots) {
      const gone = lot.given.reduce((sum, { count }) => sum + count, 0) + lot.eatenCount + lot.discardedCount
      expect(lot.onShelfCount + gone + lot.usedInBatchCount + lot.untoldCount).toBe(lot.putUpCount)
    }
    expect(found.notes.map((note) => words.sentence(note))).toEqual([
      '1 was given away without a name in the book. Ask around.',
      '5 jars went into the canner and are told of nowhere since.',
    ])
  })

  test('food made from recalled food is recalled too, and traced back', () => {
    const { author, entries, lotIds, kitchen, ashId, canners } = village()
    const milled = kitchen.newId()
    const flour = kitchen.newId()
    entries.push(
      author.write('batch-planned', {
        batchId: milled,
        title: 'Ground again',
        inputs: {},
        edition: 'guidance-2026-11',
        codeVersion: '0.1.0',
        shown: {},
      }),
      author.write('lot-used', { lotId: lotIds[0]!, count: 1, how: 'used-in-batch', batchId: milled }),
      author.write('food-put-up', { lotId: flour, batchId: milled, loadCode: 'MILL-F', form: 'flour', count: 2 }),
    )
    const facts = foldFacts(entries)
    expect(recall(facts, { by: 'canner', cannerId: canners.A }).loadCodes).toContain('MILL-F')
    expect(recall(facts, { by: 'canner', cannerId: canners.C }).loadCodes).not.toContain('MILL-F')
    const back = traceBack(facts, 'MILL-F')
    expect(back?.madeFromCodes).toEqual(['MILL-261003-A1'])
    expect(back?.alkaliLotIds).toEqual([ashId])
  })

  test('two loads under one code are both listed, and that is said', () => {
    const { author, entries, kitchen, canners } = village()
    entries.push(
      author.write('run-begun', {
        runId: kitchen.newId(),
        cannerId: canners.C,
        cannerName: 'C',
        loadCode: 'MILL-261003-A1',
        jarSize: 'pint',
        jarCount: 1,
        gauge: 'weight',
        requiredReadingPsi: 15,
        ventMin: 10,
        processMin: 60,
        edition: 'guidance-2026-11',
        cardShown: {},
      }),
    )
    const found = recall(foldFacts(entries), { by: 'canner', cannerId: canners.C })
    expect(found.loadCodes).toContain('MILL-261003-A1')
    expect(words.sentence(found.notes[0]!)).toContain('More than one load carries the code MILL-261003-A1')
  })
})

test('flour ground from a doubted lot is reached without a batch between them, and leads back to it', () => {
  const { author, entries, kitchen, canners, lotIds } = village()
  const flour = kitchen.newId()
  entries.push(
    author.write('food-put-up', { lotId: flour, loadCode: 'MILL-F', form: 'flour', count: 2, massKg: 0.9 }),
    author.write('lot-used', { lotId: lotIds[0]!, count: 1, how: 'made-into', intoLotId: flour }),
  )
  const facts = foldFacts(entries)
  const found = recall(facts, { by: 'canner', cannerId: canners.A })
  expect(found.loadCodes).toContain('MILL-F')
  expect(found.lots.find(({ lotId }) => lotId === lotIds[0])).toMatchObject({ usedInBatchCount: 1, onShelfCount: 3 })
  expect(recall(facts, { by: 'canner', cannerId: canners.B }).loadCodes).not.toContain('MILL-F')
  expect(traceBack(facts, 'MILL-F')?.madeFromCodes).toEqual(['MILL-261003-A1'])
})

test('a lot labelled otherwise than its load is told of once, under its own label', () => {
  const { author, entries, kitchen, canners, facts } = village()
  const [runId] = Object.keys(facts.runs)
  const jar = { lotId: kitchen.newId(), runId: runId!, loadCode: 'OLD-7', form: 'jar', count: 3 } as const
  const found = recall(foldFacts([...entries, author.write('food-put-up', jar)]), { by: 'canner', cannerId: canners.A })
  expect(found.loadCodes).toContain('OLD-7')
  expect(found.lots.reduce((sum, { untoldCount }) => sum + untoldCount, 0)).toBe(0)
  expect(found.lots.reduce((sum, { putUpCount }) => sum + putUpCount, 0)).toBe(42 + 3)
})

/** Runs, batches and lots wired at random: what feeds what, which code is on which, what was used again. */
const wiring = fc.record({
  batches: fc.integer({ min: 1, max: 5 }),
  runs: fc.array(fc.record({ batch: fc.nat(5), canner: fc.nat(2), dial: fc.boolean(), code: fc.nat(8) }), {
    maxLength: 8,
  }),
  lots: fc.array(
    fc.record({ run: fc.nat(9), batch: fc.nat(5), code: fc.nat(8), usedIn: fc.nat(9), into: fc.nat(24) }),
    {
      minLength: 1,
      maxLength: 12,
    },
  ),
})

function wired({ batches, runs, lots }: typeof wiring extends fc.Arbitrary<infer W> ? W : never): Facts {
  const at = { instant: '2026-10-03T12:00:00Z' }
  const batchList = Array.from({ length: batches }, (_, index) => ({
    batchId: `batch-${index}`,
    plan: { inputs: {} },
    additions: [{ alkaliLotId: `ash-${index % 2}` }],
    cornUsed: [{ lotId: `corn-${index % 3}`, massKg: 1 }],
  }))
  const runList = runs.map(({ batch, canner, dial, code }, index) => ({
    runId: `run-${index}`,
    begun: {
      batchId: `batch-${batch}`,
      cannerId: `canner-${canner}`,
      gauge: dial ? 'dial' : 'weight',
      loadCode: `code-${code}`,
      jarCount: 1,
      at,
    },
  }))
  const lotList = lots.map(({ run, batch, code, usedIn, into }, index) => ({
    lotId: `lot-${index}`,
    ...(run < runs.length && { runId: `run-${run}` }),
    ...(batch < batches && { batchId: `batch-${batch}` }),
    loadCode: `code-${code}`,
    form: 'jar',
    count: 1,
    remainingCount: 0,
    uses: [
      ...(usedIn < batches ? [{ how: 'used-in-batch', count: 1, batchId: `batch-${usedIn}` }] : []),
      ...(into < lots.length ? [{ how: 'made-into', count: 1, intoLotId: `lot-${into}` }] : []),
    ],
  }))
  const byId = <T>(list: readonly T[], key: keyof T) => Object.fromEntries(list.map((each) => [each[key], each]))
  return {
    ...NO_FACTS,
    batches: byId(batchList, 'batchId'),
    runs: byId(runList, 'runId'),
    foodLots: byId(lotList, 'lotId'),
  } as unknown as Facts
}

describe('forward then back', () => {
  test('is the identity on load codes: what an origin reaches leads back to it, and nothing else does', () => {
    fc.assert(
      fc.property(wiring, (plan) => {
        const facts = wired(plan)
        const graph = recallGraph(facts)
        for (const code of graph.nodes.keys()) {
          const back = traceBack(facts, code, graph)!
          for (const origin of back.origins) expect(recall(facts, origin, graph).loadCodes).toContain(code)
        }
        const origins: RecallOrigin[] = [
          ...[0, 1, 2].map((id) => ({ by: 'canner', cannerId: `canner-${id}` }) as const),
          ...[0, 1].map((id) => ({ by: 'alkali-lot', alkaliLotId: `ash-${id}` }) as const),
          ...[0, 1, 2].map((id) => ({ by: 'corn-lot', lotId: `corn-${id}` }) as const),
          ...[0, 1, 2, 3, 4].map((id) => ({ by: 'batch', batchId: `batch-${id}` }) as const),
          ...[...graph.nodes.keys()].map((loadCode) => ({ by: 'load', loadCode }) as const),
        ]
        for (const origin of origins) {
          for (const code of recall(facts, origin, graph).loadCodes)
            expect(traceBack(facts, code, graph)!.origins).toContainEqual(origin)
        }
      }),
    )
  })
})

describe('a drill', () => {
  const { facts, lotIds } = village()

  test('picks a code by the number handed in and times the people', () => {
    const drill = recallDrill(facts, 0)!
    expect(drill.loadCode).toBe('MILL-261003-A1')
    expect(words.sentence(drill.task)).toContain('MILL-261003-A1')
    const outcome = drillOutcome({ drill, foundLotIds: lotIds, beganAtMs: 0, endedAtMs: 750_000 })
    expect(outcome.values.map(shownValue)).toEqual([12.5, 14, 0])
    expect(words.sentence(outcome.say)).toBe('All 14 found.')
  })

  test('says how many were missed and where the book puts them', () => {
    const drill = recallDrill(facts, 0)!
    const outcome = drillOutcome({ drill, foundLotIds: lotIds.slice(1), beganAtMs: 0, endedAtMs: 60_000 })
    expect(words.sentence(outcome.say)).toBe('4 not found. Look where the book says: cellar.')
  })

  test('refuses a clock that ran backwards, and a pick out of range', () => {
    const drill = recallDrill(facts, 0.999)!
    expect(drill.loadCode).toBe('MILL-261003-C3')
    expect(() => drillOutcome({ drill, foundLotIds: [], beganAtMs: 1, endedAtMs: 0 })).toThrow(RangeError)
    expect(() => recallDrill(facts, 1)).toThrow(RangeError)
    expect(recallDrill(NO_FACTS, 0)).toBeNull()
  })
})
