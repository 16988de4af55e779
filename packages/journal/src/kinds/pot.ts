import * as v from 'valibot'
import { defineKind, id, name, quantity, refuse } from './kind.ts'

const ALUMINIUM = /^\s*alumini?um/i

export const potRecorded = defineKind({
  kind: 'pot-recorded',
  version: 1,
  schema: v.strictObject({
    potId: id(),
    name: name(),
    volumeL: quantity({ min: 0.5, max: 500, unit: 'L' }),
    material: v.pipe(
      v.string(),
      // Hot alkali dissolves aluminium and gives off hydrogen.
      refuse(
        (material) => !ALUMINIUM.test(material),
        () => ({ code: 'aluminium-pot', params: {} }),
      ),
      v.picklist(['stainless', 'enamel', 'cast-iron', 'other']),
    ),
  }),
  migrate: [],
  entity: ({ potId }) => `pot:${potId}`,
})
