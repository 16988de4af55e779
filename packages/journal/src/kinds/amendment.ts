import * as v from 'valibot'
import { defineKind, id, json, maybe, name } from './kind.ts'

/** A correction is a new entry; the one it corrects stays readable. */
export const entryCorrected = defineKind({
  kind: 'entry-corrected',
  version: 1,
  schema: v.strictObject({
    correctsId: id(),
    /** The whole body as it should have been, of the corrected entry's kind. */
    body: json(),
    /** When it truly happened, where that was wrong. */
    happenedAt: maybe(v.pipe(v.string(), v.isoTimestamp())),
    reason: name(),
  }),
  migrate: [],
  entity: ({ correctsId }) => `entry:${correctsId}`,
})

/** Takes an entry out of the facts; it stays readable. */
export const entryWithdrawn = defineKind({
  kind: 'entry-withdrawn',
  version: 1,
  schema: v.strictObject({ withdrawsId: id(), reason: name() }),
  migrate: [],
  entity: ({ withdrawsId }) => `entry:${withdrawsId}`,
})
