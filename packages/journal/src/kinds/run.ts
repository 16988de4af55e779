import * as v from 'valibot'
import { count, defineKind, id, json, maybe, minutes, name, note, psi, quantity } from './kind.ts'

const entity = ({ runId }: { runId: string }): string => `run:${runId}`

export const runBegun = defineKind({
  kind: 'run-begun',
  version: 1,
  schema: v.strictObject({
    runId: id(),
    batchId: maybe(id()),
    cannerId: id(),
    cannerName: name(),
    loadCode: name(),
    jarSize: v.picklist(['half-pint', 'pint', 'quart']),
    jarCount: count(1, 200, 'jars'),
    gauge: v.picklist(['dial', 'weight']),
    /** A reading below this is a dip. In the gauge's own printed psi. */
    requiredReadingPsi: psi(),
    ventMin: minutes(),
    processMin: minutes(),
    edition: name(),
    cardShown: json(),
    households: maybe(v.array(name())),
  }),
  migrate: [],
  entity,
})

const jarCount = () => count(0, 200, 'jars')

const runEvent = v.variant('type', [
  v.strictObject({ type: v.literal('canner-loaded'), waterIn: maybe(quantity({ min: 0, max: 12, unit: 'in' })) }),
  v.strictObject({ type: v.literal('lid-seated') }),
  v.strictObject({ type: v.literal('steam-steady') }),
  v.strictObject({ type: v.literal('vent-closed') }),
  v.strictObject({ type: v.literal('vent-opened') }),
  v.strictObject({ type: v.literal('at-pressure') }),
  v.strictObject({ type: v.literal('reading'), psi: psi() }),
  v.strictObject({ type: v.literal('dipped'), psi: maybe(psi()) }),
  v.strictObject({ type: v.literal('regained') }),
  v.strictObject({ type: v.literal('over-pressure'), psi: maybe(psi()) }),
  v.strictObject({ type: v.literal('relief-plug-blown') }),
  v.strictObject({ type: v.literal('boiled-dry') }),
  v.strictObject({ type: v.literal('fuel-out') }),
  v.strictObject({ type: v.literal('abandoned'), why: maybe(note()) }),
  v.strictObject({ type: v.literal('heat-off') }),
  v.strictObject({ type: v.literal('forced-cooling'), how: maybe(note()) }),
  v.strictObject({ type: v.literal('zero') }),
  v.strictObject({ type: v.literal('weight-off') }),
  v.strictObject({ type: v.literal('lid-off') }),
  v.strictObject({ type: v.literal('jars-out') }),
  v.strictObject({ type: v.literal('seal-seen'), sealedCount: jarCount(), unsealedCount: jarCount() }),
  v.strictObject({
    type: v.literal('clock-questioned'),
    /** How far the wall clock jumped against the steady one; negative is back. */
    jumpMs: quantity({ min: -1e13, max: 1e13, unit: 'ms' }),
    keptInstant: v.pipe(v.string(), v.isoTimestamp()),
  }),
])

export const runEventHappened = defineKind({
  kind: 'run-event',
  version: 1,
  schema: v.strictObject({ runId: id(), event: runEvent }),
  migrate: [],
  entity,
})

/** What can happen to a canner load, from loaded to seals seen. */
export type RunEvent = Readonly<v.InferOutput<typeof runEvent>>
