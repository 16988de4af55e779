import * as v from 'valibot'
import { defineKind, id, maybe, note } from './kind.ts'

/**
 * Who may see a lot from now on; the latest word stands. `lotId` names a lot, seed put by, a batch, a run, a canner, a
 * pot or the kitchen itself. Conditions go wherever the lot goes.
 */
export const visibilitySet = defineKind({
  kind: 'visibility-set',
  version: 1,
  schema: v.strictObject({
    lotId: id(),
    visibility: v.picklist(['keeper', 'family', 'community', 'open']),
    conditions: maybe(note()),
  }),
  migrate: [],
  entity: ({ lotId }) => `share:${lotId}`,
})
