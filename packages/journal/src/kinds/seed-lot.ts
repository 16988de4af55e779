/** Seed of one harvest, kept as a unit: put by in tins, tested, given, sown; and off-types seen in what it grew. */
import * as v from 'valibot'
import { count, day, defineKind, id, massKg, maybe, name, note, quantity, refuse, seasonYear } from './kind.ts'

const ofLot = ({ seedLotId }: { seedLotId: string }): string => `seed-lot:${seedLotId}`
const kernels = () => count(1, 5_000_000, 'kernels')
/** Water over total weight; above it no seed is kept. */
const wetFraction = () => quantity({ min: 0.02, max: 0.4, unit: 'of kernel weight, wet basis' })
const storeC = () => quantity({ min: -40, max: 50, unit: '°C' })

/** A part of a whole number: the refusal names the whole. */
const notAbove = (field: string, value: number, max: number, unit: string) =>
  ({ code: 'out-of-limits', params: { field, value, min: 0, max, unit, source: 'project rule' } }) as const

export const seedLotRecorded = defineKind({
  kind: 'seed-lot-recorded',
  version: 1,
  schema: v.strictObject({
    seedLotId: id(),
    name: name(),
    /** Harvest it grew in. */
    seasonYear: seasonYear(),
    /** Day it was put by: its age in store counts from here. */
    putByOn: day(),
    source: v.picklist(['own', 'given', 'swapped', 'bought']),
    /** From whom, or from which field, in the keeper's words. */
    sourceNote: maybe(name()),
    /** Corn lot it was taken from. */
    lotId: maybe(id()),
    plantingId: maybe(id()),
    /** Ears that gave it, one a plant: parents are counted apart from kernels. */
    parentEarsCount: maybe(count(1, 1_000_000, 'ears')),
    /** The same from every ear; left out where shares were uneven or not counted. */
    kernelsPerEarCount: maybe(count(1, 2000, 'kernels')),
    /** Plants that stood and shed pollen where it grew. */
    plantsStoodCount: maybe(count(1, 5_000_000, 'plants')),
    kernelsCount: maybe(kernels()),
    massKg: maybe(massKg()),
    kernelsPerOz: maybe(quantity({ min: 20, max: 500, unit: 'kernels in an ounce' })),
    kernelWetFraction: maybe(wetFraction()),
    storeC: maybe(storeC()),
    containers: v.array(
      v.strictObject({ container: name(), place: name(), kernelsCount: maybe(kernels()), sealed: maybe(v.boolean()) }),
    ),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ofLot,
})

/** A sprouting test. Replicates, where told, are its parts and add up to it. */
export const germinationTested = defineKind({
  kind: 'germination-tested',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      seedLotId: id(),
      testedOn: day(),
      sproutedCount: count(0, 10_000, 'kernels'),
      ofCount: count(1, 10_000, 'kernels'),
      /** Of those sprouted, whole and strong seedlings. */
      strongCount: maybe(count(0, 10_000, 'kernels')),
      replicates: maybe(
        v.array(v.strictObject({ sproutedCount: count(0, 10_000, 'kernels'), ofCount: count(1, 10_000, 'kernels') })),
      ),
      note: maybe(note()),
    }),
    refuse(
      ({ sproutedCount, ofCount }) => sproutedCount <= ofCount,
      ({ sproutedCount, ofCount }) => notAbove('sproutedCount', sproutedCount, ofCount, 'kernels tested'),
    ),
    refuse(
      ({ strongCount = 0, sproutedCount }) => strongCount <= sproutedCount,
      ({ strongCount = 0, sproutedCount }) => notAbove('strongCount', strongCount, sproutedCount, 'kernels sprouted'),
    ),
    refuse(
      ({ replicates, sproutedCount, ofCount }) =>
        replicates === undefined ||
        (sum(replicates, 'sproutedCount') === sproutedCount && sum(replicates, 'ofCount') === ofCount),
      ({ replicates = [], sproutedCount, ofCount }) => ({
        code: 'wrong-value',
        params: {
          field: 'replicates',
          received: `${sum(replicates, 'sproutedCount')} of ${sum(replicates, 'ofCount')}`,
          expected: `${sproutedCount} of ${ofCount}`,
        },
      }),
    ),
  ),
  migrate: [],
  entity: ofLot,
})

type Part = { readonly sproutedCount: number; readonly ofCount: number }
function sum(parts: readonly Part[], field: keyof Part): number {
  return parts.reduce((total, part) => total + part[field], 0)
}

/** How warm or how dry it was found in store: the latest word stands until the next. */
export const seedStoreNoted = defineKind({
  kind: 'seed-store-noted',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      seedLotId: id(),
      notedOn: day(),
      storeC: maybe(storeC()),
      kernelWetFraction: maybe(wetFraction()),
      note: maybe(note()),
    }),
    refuse(
      ({ storeC, kernelWetFraction, note }) =>
        storeC !== undefined || kernelWetFraction !== undefined || note !== undefined,
      () => ({ code: 'amount-needed', params: { field: 'storeC' } }),
    ),
  ),
  migrate: [],
  entity: ofLot,
})

export const seedGiven = defineKind({
  kind: 'seed-given',
  version: 1,
  schema: v.strictObject({
    seedLotId: id(),
    givenOn: day(),
    kernelsCount: kernels(),
    toWhom: maybe(name()),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ofLot,
})

export const seedSown = defineKind({
  kind: 'seed-sown',
  version: 1,
  schema: v.strictObject({
    seedLotId: id(),
    sownOn: day(),
    kernelsCount: kernels(),
    plantingId: maybe(id()),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ofLot,
})

/** Plants, ears or kernels that do not match the sort, in what this seed grew. */
export const offTypesCounted = defineKind({
  kind: 'off-types-counted',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      seedLotId: id(),
      countedOn: day(),
      what: v.picklist(['plants', 'ears', 'kernels']),
      offTypesCount: count(0, 1_000_000),
      ofCount: count(1, 1_000_000),
      note: maybe(note()),
    }),
    refuse(
      ({ offTypesCount, ofCount }) => offTypesCount <= ofCount,
      ({ offTypesCount, ofCount, what }) => notAbove('offTypesCount', offTypesCount, ofCount, `${what} looked at`),
    ),
  ),
  migrate: [],
  entity: ofLot,
})
