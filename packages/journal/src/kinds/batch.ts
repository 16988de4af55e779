import * as v from 'valibot'
import { SORT_CAUSES } from './corn-lot.ts'
import { count, defineKind, id, json, massKg, maybe, name, note, quantity, refuse, volumeL } from './kind.ts'

const entity = ({ batchId }: { batchId: string }): string => `batch:${batchId}`

export const batchPlanned = defineKind({
  kind: 'batch-planned',
  version: 1,
  schema: v.strictObject({
    batchId: id(),
    title: name(),
    /** What the plan was made from, so that it can be worked out again. */
    inputs: json(),
    edition: name(),
    codeVersion: name(),
    /** Headline numbers as they were shown. */
    shown: json(),
    /** The corn the batch takes, by lot. Counts as used from the first thing noted at the kettle. */
    corn: maybe(v.array(v.strictObject({ lotId: id(), massKg: massKg() }))),
  }),
  migrate: [],
  entity,
})

const potLoad = () => count(1, 200, 'pot-loads')

export const stageNoted = defineKind({
  kind: 'stage-noted',
  version: 1,
  schema: v.strictObject({
    batchId: id(),
    potLoad: potLoad(),
    stageId: name(),
    what: v.picklist(['begun', 'done']),
    waterL: maybe(volumeL()),
    note: maybe(note()),
  }),
  migrate: [],
  entity,
})

const cookSeen = v.variant('type', [
  v.strictObject({ type: v.literal('boil') }),
  v.strictObject({ type: v.literal('topped-up'), waterL: volumeL() }),
  v.strictObject({ type: v.literal('darkening') }),
  v.strictObject({
    type: v.literal('rubbed'),
    slippedCount: count(0, 1000, 'kernels'),
    ofCount: count(1, 1000, 'kernels'),
  }),
  v.strictObject({
    type: v.literal('alkali-added'),
    alkaliLotId: id(),
    cups: maybe(quantity({ min: 0, max: 200, unit: 'cups' })),
    massKg: maybe(quantity({ min: 0, max: 100, unit: 'kg' })),
  }),
  v.strictObject({ type: v.literal('rinsed'), waterL: volumeL(), hot: v.boolean() }),
  v.strictObject({ type: v.literal('skimmed') }),
  /** A strip held in water the kernels stood in, or in kernels crushed in distilled water. */
  v.strictObject({
    type: v.literal('rinse-tested'),
    way: v.picklist(['stood', 'crushed']),
    stripPH: quantity({ min: 0, max: 14, unit: 'pH' }),
  }),
  /** Of a handful of cooked kernels, how many would be sorted out, by cause. */
  v.strictObject({
    type: v.literal('handful-sorted'),
    ofCount: count(1, 1000, 'kernels'),
    tails: v.array(v.strictObject({ cause: v.picklist(SORT_CAUSES), count: count(0, 1000, 'kernels') })),
  }),
  /** Kept after the sort, drained; its moisture where a sample was dried. */
  v.strictObject({
    type: v.literal('hominy-weighed'),
    massKg: quantity({ min: 0.001, max: 5000, unit: 'kg' }),
    wetFraction: maybe(quantity({ min: 0.05, max: 0.95, unit: 'of total weight' })),
  }),
  v.strictObject({ type: v.literal('hot-pack-ready') }),
  // biome-ignore lint/suspicious/noThenProperty: a word of the body, never a function, so nothing awaits it
  v.strictObject({ type: v.literal('off-heat'), then: v.picklist(['hot', 'chilled']) }),
])

const outOf = (tails: readonly { readonly count: number }[]) => tails.reduce((sum, { count }) => sum + count, 0)

/** Something seen or done at the pot. */
export const cookNoted = defineKind({
  kind: 'cook-noted',
  version: 1,
  schema: v.pipe(
    v.strictObject({ batchId: id(), potLoad: potLoad(), seen: cookSeen }),
    refuse(
      ({ seen }) => seen.type !== 'handful-sorted' || outOf(seen.tails) <= seen.ofCount,
      ({ seen }) => ({
        code: 'handful-beyond-whole',
        params: {
          field: 'seen.tails',
          ...(seen.type === 'handful-sorted' && { value: outOf(seen.tails), max: seen.ofCount }),
        },
      }),
    ),
  ),
  migrate: [],
  entity,
})
