import * as v from 'valibot'
import { count, day, defineKind, id, maybe, minutes, name, psi, quantity } from './kind.ts'

const entity = ({ cannerId }: { cannerId: string }): string => `canner:${cannerId}`

export const cannerRecorded = defineKind({
  kind: 'canner-recorded',
  version: 1,
  schema: v.strictObject({
    cannerId: id(),
    name: name(),
    gauges: v.pipe(v.array(v.picklist(['dial', 'weight'])), v.minLength(1), v.maxLength(2)),
    /** Figures stamped on the weights at hand; absent where nobody told. [lb] */
    weightsLb: maybe(v.pipe(v.array(v.picklist([5, 10, 15])), v.minLength(1), v.maxLength(3))),
    capacityPints: count(0, 200, 'jars'),
    capacityQuarts: count(0, 200, 'jars'),
    rim: v.picklist(['gasket', 'metal']),
    electric: v.boolean(),
    /** This kitchen's own timings of one load. */
    timingsMin: maybe(
      v.strictObject({
        heat: minutes(),
        comeUp: minutes(),
        coolToZero: minutes(),
        unload: minutes(),
        reload: minutes(),
      }),
    ),
  }),
  migrate: [],
  entity,
})

/** A dial beside a gauge known to be true. */
export const gaugeTested = defineKind({
  kind: 'gauge-tested',
  version: 1,
  schema: v.strictObject({
    cannerId: id(),
    testedOn: day(),
    tester: name(),
    readings: v.pipe(v.array(v.strictObject({ truePsi: psi(), readsPsi: psi() })), v.maxLength(50)),
    marksEveryPsi: quantity({ min: 0.1, max: 10, unit: 'psi' }),
    /** Where the needle stands on the cold, empty canner. */
    restsAtPsi: quantity({ min: -5, max: 30, unit: 'psi' }),
  }),
  migrate: [],
  entity,
})
