import fc from 'fast-check'
import * as v from 'valibot'
import { expect, test } from 'vitest'
import { demoKitchen } from '../demo.ts'
import type { Json } from '../json.ts'
import { handClock, repeatingRandom } from '../testing/invented.ts'
import { play, step } from '../testing/played.ts'
import { isKind, KINDS } from './index.ts'
import { quickParser, UNFIT } from './quick-parse.ts'

const parsers = Object.fromEntries(Object.entries(KINDS).map(([kind, { schema }]) => [kind, quickParser(schema)]))

/** What the quick reader takes, the library takes, and gives the same letter by letter. */
function agrees(kind: string, value: unknown): boolean {
  if (!isKind(kind)) throw new Error(kind)
  const quick = parsers[kind]!(value)
  if (quick === UNFIT) return false
  const slow = v.safeParse(KINDS[kind].schema, value)
  expect(
    slow.success,
    JSON.stringify([kind, value, slow.issues?.[0]?.message, slow.issues?.[0]?.path?.map((each) => each.key)]),
  ).toBe(true)
  expect(JSON.stringify(quick)).toBe(JSON.stringify(slow.output))
  return true
}

test('[J11] whole bodies are read quickly, and alike', () => {
  const { entries } = demoKitchen({ clock: handClock(), random: repeatingRandom(3), zone: 'UTC' })
  for (const { envelope, body } of entries) expect(agrees(envelope.kind, body!.value), envelope.kind).toBe(true)
})

test('[J11] an id that does not fit is left to the library each time, also between two that do', () => {
  const one = { potId: '016f5fb0-7f00-71ab-8895-d3378aaef5b1', name: 'pot', volumeL: 1, material: 'enamel' }
  const read = parsers['pot-recorded']!
  for (const _ of [1, 2, 3]) {
    expect(read(one)).toEqual(one)
    for (const potId of ['not an id', 'not an id', `${one.potId} `]) expect(read({ ...one, potId })).toBe(UNFIT)
  }
})

/** Values that fit some field and no other, and some that fit none. */
const odd: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(null, true, '', ' x', 'x ', 'dial', 'eaten', -1, 1e9, 0.5, NaN, [], ['dial'], {}, { type: 'zero' }),
  fc.string(),
  fc.double(),
)

test('[J11] a body with anything changed, missing or added is taken only where the library takes it', () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), fc.nat(), odd, fc.nat(), (steps, pick, value, how) => {
      for (const { envelope, body } of play(steps).entries) {
        const given = structuredClone(body!.value) as Record<string, unknown>
        const names = Object.keys(given)
        const name = names[pick % names.length]!
        const inner = given[name]
        if (how % 4 === 0) delete given[name]
        else if (how % 4 === 1) given.extra = value
        else if (how % 4 === 2 && inner !== null && typeof inner === 'object')
          (inner as Record<string, unknown>).type = value
        else given[name] = value
        agrees(envelope.kind, given)
        agrees(envelope.kind, body!.value)
      }
      agrees('run-event', value as Json)
    }),
    { numRuns: 400 },
  )
})
