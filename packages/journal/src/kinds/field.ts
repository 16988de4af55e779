/** What is done and seen in the field: plots, what is sown where, stand, flowering, other corn near by, harvest. */
import * as v from 'valibot'
import { count, day, defineKind, id, json, massKg, maybe, name, note, quantity, refuse, seasonYear } from './kind.ts'

const ofPlot = ({ plotId }: { plotId: string }): string => `plot:${plotId}`
const ofPlanting = ({ plantingId }: { plantingId: string }): string => `planting:${plantingId}`

// From a bed by the door to a long field edge; shorter than a stride is a typing slip.
const edgeM = () => quantity({ min: 0.5, max: 5000, unit: 'm' })
const spacingM = () => quantity({ min: 0.02, max: 5, unit: 'm' })
/** Clockwise from north. */
const bearingDeg = () => quantity({ min: 0, max: 360, unit: '° from north' })

export const plotRecorded = defineKind({
  kind: 'plot-recorded',
  version: 1,
  schema: v.strictObject({
    plotId: id(),
    name: name(),
    /** Along the rows. */
    lengthM: maybe(edgeM()),
    /** Across the rows. */
    widthM: maybe(edgeM()),
    rowsBearingDeg: maybe(bearingDeg()),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ofPlot,
})

/** What a plot is to be planted with in a year, and what that was reckoned from; told again for the year, the latest stands. */
export const fieldPlanned = defineKind({
  kind: 'field-planned',
  version: 1,
  schema: v.strictObject({
    plotId: id(),
    seasonYear: seasonYear(),
    cornName: name(),
    seedLotId: maybe(id()),
    /** What the plan was made from, so that it can be worked out again. */
    inputs: json(),
    edition: name(),
    codeVersion: name(),
    /** Numbers as they were shown. */
    shown: json(),
  }),
  migrate: [],
  entity: ofPlot,
})

/** Other corn near by; told again with the same id, the latest word stands. */
export const neighbourCornRecorded = defineKind({
  kind: 'neighbour-corn-recorded',
  version: 1,
  schema: v.strictObject({
    plotId: id(),
    neighbourId: id(),
    name: name(),
    seasonYear: count(1900, 2200, 'CE'),
    /** From this plot towards the other corn. */
    bearingDeg: maybe(bearingDeg()),
    /** Edge to edge, from the nearest plant to the nearest plant. Beside it in one stand is no neighbour. */
    distanceM: quantity({ min: 0.5, max: 50_000, unit: 'm' }),
    tasselledOn: maybe(day()),
    plantedOn: maybe(day()),
    /** Whether its pollen would show on this corn's kernels in the same year. */
    wouldShow: maybe(v.boolean()),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ofPlot,
})

export const plantingRecorded = defineKind({
  kind: 'planting-recorded',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      plantingId: id(),
      plotId: id(),
      cornName: name(),
      seedLotId: maybe(id()),
      plantedOn: day(),
      pattern: v.picklist(['rows', 'hills']),
      rowsCount: maybe(count(1, 2000, 'rows')),
      rowSpacingM: maybe(spacingM()),
      /** Between plants in a row, or between hills. */
      inRowSpacingM: maybe(spacingM()),
      hillsCount: maybe(count(1, 100_000, 'hills')),
      kernelsSownCount: maybe(count(1, 5_000_000, 'kernels')),
      companions: maybe(v.array(v.picklist(['beans', 'squash']))),
      note: maybe(note()),
    }),
    refuse(
      ({ pattern, hillsCount }) => pattern === 'hills' || hillsCount === undefined,
      () => ({ code: 'wrong-value', params: { field: 'hillsCount', received: 'hills', expected: 'rows' } }),
    ),
  ),
  migrate: [],
  entity: ofPlanting,
})

export const standCounted = defineKind({
  kind: 'stand-counted',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      plantingId: id(),
      countedOn: day(),
      /** Where only a part was counted, both numbers are of that part. */
      plantsCount: count(0, 5_000_000, 'plants'),
      ofKernelsCount: maybe(count(1, 5_000_000, 'kernels')),
    }),
    refuse(
      ({ plantsCount, ofKernelsCount }) => ofKernelsCount === undefined || plantsCount <= ofKernelsCount,
      ({ plantsCount, ofKernelsCount = 0 }) => ({
        code: 'out-of-limits',
        params: {
          field: 'plantsCount',
          value: plantsCount,
          min: 0,
          max: ofKernelsCount,
          unit: 'kernels sown',
          source: 'project rule',
        },
      }),
    ),
  ),
  migrate: [],
  entity: ofPlanting,
})

const seen = {
  plantingId: id(),
  seenOn: day(),
  /** Half is the day the trade counts by. */
  howMany: v.picklist(['first', 'half', 'all']),
  note: maybe(note()),
}

export const tasselSeen = defineKind({
  kind: 'tassel-seen',
  version: 1,
  schema: v.strictObject(seen),
  migrate: [],
  entity: ofPlanting,
})

export const silkSeen = defineKind({
  kind: 'silk-seen',
  version: 1,
  schema: v.strictObject(seen),
  migrate: [],
  entity: ofPlanting,
})

/** Ears brought in from a planting. The crib's lot has an entry of its own, named here by `lotId`. */
export const harvestBroughtIn = defineKind({
  kind: 'harvest-brought-in',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      plantingId: id(),
      harvestedOn: day(),
      lotId: maybe(id()),
      form: v.picklist(['ears', 'shelled']),
      massKg: maybe(massKg()),
      earsCount: maybe(count(0, 1_000_000, 'ears')),
      /** Of the kernels, water over total weight. */
      kernelWetFraction: maybe(quantity({ min: 0, max: 0.6, unit: 'of kernel weight, wet basis' })),
      plantsHarvestedCount: maybe(count(1, 5_000_000, 'plants')),
      note: maybe(note()),
    }),
    refuse(
      ({ massKg, earsCount }) => massKg !== undefined || earsCount !== undefined,
      () => ({ code: 'amount-needed', params: { field: 'massKg' } }),
    ),
  ),
  migrate: [],
  entity: ofPlanting,
})
