import * as v from 'valibot'
import { defineKind, id, name, seasonYear } from './kind.ts'

/** The keeper has read where a process stands: asked once a season and edition. */
export const standingRead = defineKind({
  kind: 'standing-read',
  version: 1,
  schema: v.strictObject({ readingId: id(), seasonYear: seasonYear(), edition: name(), food: name() }),
  migrate: [],
  entity: ({ readingId }) => `standing:${readingId}`,
})
