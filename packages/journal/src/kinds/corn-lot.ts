import * as v from 'valibot'
import { count, defineKind, id, massKg, maybe, minutes, name, note, volumeL } from './kind.ts'

export const cornLotBroughtIn = defineKind({
  kind: 'corn-lot-brought-in',
  version: 1,
  schema: v.strictObject({
    lotId: id(),
    name: name(),
    cornType: v.picklist(['flint', 'flour', 'dent', 'popcorn', 'unknown']),
    form: v.picklist(['ears', 'shelled']),
    massKg: maybe(massKg()),
    volumeL: maybe(volumeL()),
    /** The amount in the keeper's own words, `9 lb`. */
    asTyped: v.pipe(v.string(), v.maxLength(200)),
    /** Dressed with a seed treatment: such corn is seed and never food. */
    treatedSeed: v.boolean(),
    householdName: maybe(name()),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ({ lotId }) => `lot:${lotId}`,
})

/** Kernels or rubbish taken out: dry from a lot, or wet from a batch. */
export const cornSorted = defineKind({
  kind: 'corn-sorted',
  version: 1,
  schema: v.strictObject({
    entityId: id(),
    entity: v.picklist(['lot', 'batch']),
    when: v.picklist(['dry', 'wet']),
    removedKg: massKg(),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ({ entity, entityId }) => `${entity}:${entityId}`,
})

export const cornShelled = defineKind({
  kind: 'corn-shelled',
  version: 1,
  schema: v.strictObject({
    lotId: id(),
    /** Ears shelled; left out, all ears that were left. */
    earsKg: maybe(massKg()),
    shelledKg: massKg(),
    helpersCount: maybe(count(1, 500, 'people')),
    minutes: maybe(minutes()),
  }),
  migrate: [],
  entity: ({ lotId }) => `lot:${lotId}`,
})
