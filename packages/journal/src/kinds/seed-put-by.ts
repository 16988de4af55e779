import * as v from 'valibot'
import { count, defineKind, id, massKg, maybe, name, refuse, seasonYear } from './kind.ts'

/** Seed kept back for the plantings ahead. "Put by, by eye" is a full answer. */
export const seedPutBy = defineKind({
  kind: 'seed-put-by',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      seedId: id(),
      lotId: maybe(id()),
      seasonYear: seasonYear(),
      how: v.picklist(['by-eye', 'by-weight', 'not-this-year']),
      massKg: maybe(massKg()),
      /** How many plantings it covers; two unless a reason is given. */
      plantingsCount: count(0, 20, 'plantings'),
      places: v.array(name()),
      reason: maybe(name()),
    }),
    refuse(
      ({ how, plantingsCount, reason }) => reason !== undefined || (how !== 'not-this-year' && plantingsCount >= 2),
      ({ plantingsCount }) => ({ code: 'reason-needed', params: { field: 'reason', value: plantingsCount, min: 2 } }),
    ),
    refuse(
      ({ how, massKg }) => how !== 'by-weight' || massKg !== undefined,
      () => ({ code: 'amount-needed', params: { field: 'massKg' } }),
    ),
  ),
  migrate: [],
  entity: ({ seedId }) => `seed:${seedId}`,
})
