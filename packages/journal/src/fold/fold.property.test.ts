import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Author } from '../author.ts'
import type { StoredEntry } from '../envelope.ts'
import type { Json } from '../json.ts'
import { type TestKitchen, testKitchen } from '../testing/invented.ts'
import type { Facts } from './facts.ts'
import { applyEntries, foldFacts } from './fold.ts'

/** One thing done in an invented kitchen of a few lots, canners and people; numbers pick among what there is. */
interface Step {
  readonly what: number
  readonly pick: number
  readonly grams: number
  readonly device: number
  readonly minute: number
}

const step: fc.Arbitrary<Step> = fc.record({
  what: fc.nat({ max: 11 }),
  pick: fc.nat({ max: 7 }),
  grams: fc.nat({ max: 3000 }),
  device: fc.nat({ max: 2 }),
  minute: fc.integer({ min: -4000, max: 0 }),
})

interface Story {
  readonly entries: StoredEntry[]
  /** Grams, added up here without the fold: brought in and gone, by lot. */
  readonly broughtInG: Map<string, number>
  readonly goneG: Map<string, number>
  readonly putUp: Map<string, number>
  readonly used: Map<string, number>
}

/** `amending`: corrections and withdrawals change what was told, so the sums kept here no longer hold. */
function play(steps: readonly Step[], amending = false): Story {
  const kitchen: TestKitchen = testKitchen()
  const authors: Author[] = [0, 1, 2].map(() => kitchen.author({ personId: kitchen.newId() }))
  const story: Story = {
    entries: [],
    broughtInG: new Map(),
    goneG: new Map(),
    putUp: new Map(),
    used: new Map(),
  }
  const lots = [0, 1, 2].map(() => kitchen.newId())
  const jars = [0, 1].map(() => kitchen.newId())
  const runs = [0, 1].map(() => kitchen.newId())
  const more = (map: Map<string, number>, key: string, by: number): void => {
    map.set(key, (map.get(key) ?? 0) + by)
  }
  for (const { what, pick, grams, device, minute } of steps) {
    kitchen.clock.wait(1)
    const author = authors[device]!
    const lotId = lots[pick % 3]!
    const massKg = grams / 1000
    const options = { happenedAt: { instant: kitchen.clock.now() + minute * 60_000 } }
    const tell = ((kind, body) => {
      const entry = author.write(kind, body, options)
      story.entries.push(entry)
      return entry
    }) as Author['write']
    if (what === 0 && !story.broughtInG.has(lotId)) {
      const lot = { cornType: 'flint', form: 'shelled', asTyped: '', treatedSeed: pick === 7 } as const
      tell('corn-lot-brought-in', { lotId, name: `lot ${pick}`, massKg, ...lot })
      story.broughtInG.set(lotId, grams)
    } else if (what === 1) {
      tell('corn-sorted', { entityId: lotId, entity: 'lot', when: 'dry', removedKg: massKg })
      more(story.goneG, lotId, grams)
    } else if (what === 2) {
      const seed = { seedId: kitchen.newId(), lotId, seasonYear: 2026, how: 'by-weight', massKg } as const
      tell('seed-put-by', { ...seed, plantingsCount: 2, places: [] })
      more(story.goneG, lotId, grams)
    } else if (what === 3) {
      const how = (['eaten', 'given', 'discarded', 'opened'] as const)[pick % 4]!
      tell('lot-used', { lotId, massKg, how })
      more(story.goneG, lotId, grams)
    } else if (what === 4) {
      const batchId = kitchen.newId()
      const plan = { batchId, title: 'x', inputs: {}, edition: 'e', codeVersion: '0', shown: {} }
      tell('batch-planned', { ...plan, corn: [{ lotId, massKg }] })
      if (pick > 3) {
        tell('cook-noted', { batchId, potLoad: 1, seen: { type: 'boil' } })
        more(story.goneG, lotId, grams)
      }
    } else if (what === 5) {
      const jarLot = jars[pick % 2]!
      if (!story.putUp.has(jarLot)) {
        tell('food-put-up', { lotId: jarLot, loadCode: `J${pick}`, form: 'jar', jarSize: 'pint', count: pick })
        story.putUp.set(jarLot, pick)
      }
    } else if (what === 6) {
      tell('lot-used', { lotId: jars[pick % 2]!, count: pick, how: 'eaten' })
      more(story.used, jars[pick % 2]!, pick)
    } else if (what === 7) {
      const event = pick % 2 ? ({ type: 'heat-off' } as const) : ({ type: 'reading', psi: pick } as const)
      tell('run-event', { runId: runs[pick % 2]!, event })
    } else if (what === 8 && story.entries.length > 0) {
      const target = story.entries[pick % story.entries.length]!
      const { id, kind } = target.envelope
      const body = target.body!.value as object
      const changed = amending && kind === 'corn-sorted' ? { ...body, removedKg: massKg } : body
      tell('entry-corrected', { correctsId: id, body: changed as Json, reason: 'wrote it again' })
    } else if (what === 9 && story.entries.length > 0) {
      const correction = story.entries.findLast(({ envelope }) => envelope.kind === 'entry-corrected')
      const target = amending ? story.entries[grams % story.entries.length] : correction
      if (target) tell('entry-withdrawn', { withdrawsId: target.envelope.id, reason: 'x' })
    } else if (what === 10) {
      const cannerId = kitchen.newId()
      const capacity = { capacityPints: 9, capacityQuarts: 7 }
      tell('canner-recorded', {
        cannerId,
        name: `c${pick % 2}`,
        gauges: ['dial'],
        ...capacity,
        rim: 'metal',
        electric: false,
      })
    } else if (what === 11) {
      tell('kitchen-noted', { kitchenId: kitchen.kitchenId, elevationM: grams, ...(pick > 3 && { vagueQuart: 'dry' }) })
    }
  }
  return story
}

test('[J21] any order and any splitting of one set of entries, with some handed in twice, gives the same facts', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 40 }), fc.infiniteStream(fc.nat()), (steps, numbers) => {
      const { entries } = play(steps, true)
      const next = (below: number): number => (numbers.next().value as number) % below
      const expected = foldFacts(entries)
      const shuffled = [...entries, ...entries.filter(() => next(4) === 0)]
      for (let i = shuffled.length - 1; i > 0; i -= 1) {
        const j = next(i + 1)
        ;[shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!]
      }
      let facts: Facts = foldFacts([])
      while (shuffled.length > 0) facts = applyEntries(facts, shuffled.splice(0, 1 + next(7)))
      // As text: the order of ids, of questions and of fields is part of it.
      expect(JSON.stringify(facts)).toBe(JSON.stringify(expected))
    }),
    { numRuns: 300 },
  )
})

test('[J24] corn brought in is corn gone and corn left, to the gram', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
      const { entries, broughtInG, goneG } = play(steps)
      const facts = foldFacts(entries)
      expect(Object.keys(facts.cornLots).sort()).toEqual([...broughtInG.keys()].sort())
      for (const [lotId, grams] of broughtInG) {
        const balance = facts.cornLots[lotId]!.balance!
        expect(Math.round(balance.leftKg * 1000)).toBe(grams - (goneG.get(lotId) ?? 0))
        const { cobsKg, sortedOutKg, seedKg, usedInBatchesKg, eatenKg, givenKg, discardedKg, leftKg } = balance
        const named = cobsKg + sortedOutKg + seedKg + usedInBatchesKg + eatenKg + givenKg + discardedKg + leftKg
        expect(named).toBeCloseTo(balance.broughtInKg, 9)
        const asked = facts.questions.some(
          ({ code, entities }) => code === 'question-corn-used-beyond' && entities.includes(`lot:${lotId}`),
        )
        expect(asked).toBe(grams < (goneG.get(lotId) ?? 0))
      }
    }),
    { numRuns: 300 },
  )
})

test('[J24] jars put up are jars used and jars remaining', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
      const { entries, putUp, used } = play(steps)
      const facts = foldFacts(entries)
      for (const [lotId, count] of putUp) {
        const lot = facts.foodLots[lotId]!
        expect(lot.usedCount).toBe(used.get(lotId) ?? 0)
        expect(lot.remainingCount + (used.get(lotId) ?? 0)).toBe(count)
      }
    }),
    { numRuns: 300 },
  )
})
