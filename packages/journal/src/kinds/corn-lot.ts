import * as v from 'valibot'
import { kg } from '../refusal.ts'
import { count, defineKind, id, massKg, maybe, minutes, name, note, refuse, volumeL } from './kind.ts'

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

/** Why a kernel is sorted out, in the order a sheet lists them; mould first. */
export const SORT_CAUSES = [
  'mould',
  /** The hull still on, or part of it. */
  'unhulled',
  /** The black tip or eye left on. */
  'dark-tip',
  'broken',
  'discoloured',
  'shrivelled',
  /** Holes of insects, birds, mice. */
  'field-damage',
  /** Stones, cob, other seeds. */
  'foreign',
] as const

/** What becomes of tails above the keeper's own line. */
export const TAILS_GO = ['sort-again', 'cook-tails-again', 'grind', 'feed', 'discard'] as const

const DUST_KG = 0.001

/** Kernels or rubbish taken out: dry from a lot, or wet from a batch. */
export const cornSorted = defineKind({
  kind: 'corn-sorted',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      entityId: id(),
      entity: v.picklist(['lot', 'batch']),
      when: v.picklist(['dry', 'wet']),
      removedKg: massKg(),
      /** Of a batch cooked in several. */
      potLoad: maybe(count(1, 200, 'pot-loads')),
      /** Of it, by cause; what no cause was told for is the rest. */
      tails: maybe(v.array(v.strictObject({ cause: v.picklist(SORT_CAUSES), massKg: massKg() }))),
      /** What became of it. */
      wentTo: maybe(v.picklist(TAILS_GO)),
      note: maybe(note()),
    }),
    refuse(
      ({ removedKg, tails = [] }) => tails.reduce((sum, { massKg }) => sum + massKg, 0) <= removedKg + DUST_KG,
      ({ removedKg, tails = [] }) => ({
        code: 'tails-beyond-whole',
        params: { field: 'tails', value: kg(tails.reduce((sum, { massKg }) => sum + massKg, 0)), max: kg(removedKg) },
      }),
    ),
  ),
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
