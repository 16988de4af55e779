import * as v from 'valibot'
import { count, defineKind, id, massKg, maybe, name, note, quantity, refuse } from './kind.ts'

const entity = ({ lotId }: { lotId: string }): string => `lot:${lotId}`

export const foodPutUp = defineKind({
  kind: 'food-put-up',
  version: 1,
  schema: v.strictObject({
    lotId: id(),
    batchId: maybe(id()),
    runId: maybe(id()),
    loadCode: name(),
    form: v.picklist(['jar', 'fridge', 'freezer', 'dried', 'flour', 'roasted', 'tonight']),
    jarSize: maybe(v.picklist(['half-pint', 'pint', 'quart'])),
    count: count(0, 10_000, 'jars or packs'),
    massKg: maybe(massKg()),
    place: maybe(name()),
    householdName: maybe(name()),
    /** Moisture on the wet basis, where it was told. */
    wetFraction: maybe(quantity({ min: 0.01, max: 0.95, unit: 'of total weight' })),
    /** Where the load departed from the direction, in words; travels with every jar. */
    departures: maybe(v.array(note())),
  }),
  migrate: [],
  entity,
})

/** Corn or food that left its lot. */
export const lotUsed = defineKind({
  kind: 'lot-used',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      lotId: id(),
      count: maybe(count(0, 10_000, 'jars or packs')),
      massKg: maybe(massKg()),
      how: v.picklist(['eaten', 'given', 'opened', 'discarded', 'used-in-batch', 'made-into']),
      toWhom: maybe(name()),
      batchId: maybe(id()),
      /** The lot it was made into: dried hominy ground, or roasted. */
      intoLotId: maybe(id()),
      note: maybe(note()),
    }),
    refuse(
      ({ count, massKg }) => count !== undefined || massKg !== undefined,
      () => ({ code: 'amount-needed', params: { field: 'count' } }),
    ),
  ),
  migrate: [],
  entity,
})
