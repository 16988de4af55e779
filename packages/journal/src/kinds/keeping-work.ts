/** What is done to food that is kept: cooled, dried by weight, ground, roasted. */
import * as v from 'valibot'
import { count, defineKind, id, massKg, maybe, minutes, name, note, quantity } from './kind.ts'

const temperatureC = (min: number, max: number) => quantity({ min, max, unit: '°C' })
const wetFraction = () => quantity({ min: 0.01, max: 0.95, unit: 'of total weight' })

/** A pan of cooked food on its way to cold, from the moment it left the heat. */
export const coolingNoted = defineKind({
  kind: 'cooling-noted',
  version: 1,
  schema: v.strictObject({
    coolingId: id(),
    seen: v.variant('type', [
      v.strictObject({ type: v.literal('off-heat'), what: name(), batchId: maybe(id()) }),
      v.strictObject({
        type: v.literal('read'),
        temperatureC: temperatureC(-5, 110),
        aroundC: maybe(temperatureC(-40, 40)),
      }),
      v.strictObject({ type: v.literal('ended'), how: v.picklist(['fridge', 'freezer', 'eaten', 'thrown-out']) }),
    ]),
  }),
  migrate: [],
  entity: ({ coolingId }) => `cooling:${coolingId}`,
})

/** A tray, braid or marked ear that dries towards a weight. Weights are without the tray. */
export const dryingNoted = defineKind({
  kind: 'drying-noted',
  version: 1,
  schema: v.strictObject({
    dryingId: id(),
    seen: v.variant('type', [
      v.strictObject({
        type: v.literal('begun'),
        name: name(),
        what: v.picklist(['kernels', 'hominy', 'ears']),
        massKg: quantity({ min: 0.001, max: 5000, unit: 'kg' }),
        /** Wet basis: water over total weight. */
        startWetFraction: wetFraction(),
        endWetFraction: wetFraction(),
        cornLotId: maybe(id()),
        batchId: maybe(id()),
      }),
      v.strictObject({ type: v.literal('weighed'), massKg: quantity({ min: 0.001, max: 5000, unit: 'kg' }) }),
      v.strictObject({ type: v.literal('ended'), how: v.picklist(['dry', 'stopped', 'thrown-out']) }),
    ]),
  }),
  migrate: [],
  entity: ({ dryingId }) => `drying:${dryingId}`,
})

/** Where all that is left of a lot stands from now on. */
export const foodMoved = defineKind({
  kind: 'food-moved',
  version: 1,
  schema: v.strictObject({ lotId: id(), place: name() }),
  migrate: [],
  entity: ({ lotId }) => `lot:${lotId}`,
})

/** How a lot of food came to be by grinding or roasting another: what went in, what came out. Told of the new lot. */
export const foodWorked = defineKind({
  kind: 'food-worked',
  version: 1,
  schema: v.strictObject({
    lotId: id(),
    how: v.picklist(['ground', 'roasted-dry', 'roasted-in-oil']),
    fromLotId: maybe(id()),
    inKg: massKg(),
    outKg: massKg(),
    /** Times through the mill. */
    passesCount: maybe(count(1, 50, 'passes')),
    minutes: maybe(minutes()),
    /** Of oven, pan or oil. */
    temperatureC: maybe(temperatureC(20, 300)),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ({ lotId }) => `lot:${lotId}`,
})
