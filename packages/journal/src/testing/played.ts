/** A random but plausible life of an invented kitchen, for property tests: lots, seed, batches, jars, loads, canners. */
import fc from 'fast-check'
import type { Author } from '../author.ts'
import type { StoredEntry } from '../envelope.ts'
import type { Json } from '../json.ts'
import { type TestKitchen, testKitchen } from './invented.ts'

/** One thing done in an invented kitchen of a few lots, canners and people; numbers pick among what there is. */
export interface Step {
  readonly what: number
  readonly pick: number
  readonly grams: number
  readonly device: number
  readonly minute: number
}

export const step: fc.Arbitrary<Step> = fc.record({
  what: fc.nat({ max: 11 }),
  pick: fc.nat({ max: 7 }),
  grams: fc.nat({ max: 3000 }),
  device: fc.nat({ max: 2 }),
  minute: fc.integer({ min: -4000, max: 0 }),
})

export interface Story {
  readonly entries: StoredEntry[]
  /** Grams, added up here without the fold: brought in and gone, by lot. */
  readonly broughtInG: Map<string, number>
  readonly goneG: Map<string, number>
  readonly putUp: Map<string, number>
  readonly used: Map<string, number>
}

const DAY_MS = 86_400_000

/**
 * `amending`: corrections and withdrawals change what was told, so the sums kept here no longer hold. `skewDays`: how far
 * each of the three devices' clocks is off.
 */
export function play(steps: readonly Step[], amending = false, skewDays: readonly number[] = [0, 0, 0]): Story {
  const kitchen: TestKitchen = testKitchen()
  const authors: Author[] = skewDays.map((days) =>
    kitchen.author({ personId: kitchen.newId(), clock: { now: () => kitchen.clock.now() + days * DAY_MS } }),
  )
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
      const how = (['eaten', 'given', 'discarded', 'opened', 'made-into'] as const)[pick % 5]!
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
      const jarLot = { lotId: jars[pick % 2]!, count: pick }
      if (pick % 2) tell('food-opened', { ...jarLot, found: 'good' })
      else tell('lot-used', { ...jarLot, how: 'eaten' })
      more(story.used, jars[pick % 2]!, pick)
    } else if (what === 7) {
      const event = pick % 2 ? ({ type: 'heat-off' } as const) : ({ type: 'reading', psi: pick } as const)
      tell('run-event', { runId: runs[pick % 2]!, event })
      const id = runs[pick % 2]!
      const begun = {
        type: 'begun',
        name: `t${pick}`,
        what: 'ears',
        startWetFraction: 0.3,
        endWetFraction: 0.13,
      } as const
      const weighed = { type: 'weighed', massKg: massKg + 0.1 } as const
      tell('drying-noted', { dryingId: id, seen: pick > 4 ? { ...begun, massKg: massKg + 1 } : weighed })
      const read = { type: 'read', temperatureC: pick } as const
      tell('cooling-noted', { coolingId: id, seen: pick > 4 ? { type: 'off-heat', what: 'a pan' } : read })
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
