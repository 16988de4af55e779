import { describe, expect, test } from 'vitest'
import { findProcess, findProcessIn, PROCESS_TABLES } from './process.ts'
import type { ProcessQuery } from './process-types.ts'

const base: ProcessQuery = {
  food: 'hominy',
  alkali: 'sodium-hydroxide',
  hotPack: true,
  fill: 'loose',
  liquidClear: true,
  headspaceIn: 1,
  jar: 'pint',
  gauge: 'dial',
  elevationFt: 820,
  standingRead: false,
}

// scenarios: process, plain hominy, hot pack: pints 60 min, quarts 70 min. thermal reference 1.1 and 1.3; 1.4 for odd jars.
test.each([
  ['sodium-hydroxide', 'pint', 60],
  ['sodium-hydroxide', 'quart', 70],
  ['sodium-hydroxide', 'half-pint', 60],
  ['sodium-hydroxide', 'twelve-ounce', 60],
  ['sodium-hydroxide', 'twenty-four-ounce', 70],
  ['sodium-hydroxide', 'twenty-eight-ounce', 70],
  ['baking-soda', 'pint', 60],
  ['baking-soda', 'quart', 70],
] as const)('%s hominy in a %s jar: %s min', (alkali, jar, processMin) => {
  const outcome = findProcess({ ...base, alkali, jar })
  expect(outcome).toMatchObject({ kind: 'found', process: { processMin, pressure: { setPsi: 11 } } })
})

test.each([
  ['pint', 55, true],
  ['quart', 85, true],
  ['quart', 85, false],
] as const)('whole-kernel corn in a %s jar: %s min, hot pack %s', (jar, processMin, hotPack) => {
  const outcome = findProcess({ ...base, food: 'whole-kernel-corn', alkali: 'none', jar, hotPack })
  expect(outcome).toMatchObject({ kind: 'found', process: { processMin, hearsay: [] } })
})

test('lye hominy is found as withdrawn, soda hominy as quoted from memory', () => {
  expect(findProcess(base)).toMatchObject({ process: { standing: { madeFor: 'lye-hominy', now: 'withdrawn' } } })
  expect(findProcess({ ...base, alkali: 'baking-soda' })).toMatchObject({
    process: { seen: 'from memory, not re-read' },
  })
})

test('the hearsay 80 stands beside 70 for quarts, and the 85 of sweet corn never does', () => {
  const outcome = findProcess({ ...base, jar: 'quart' })
  expect(outcome).toMatchObject({
    process: { processMin: 70, hearsay: [{ processMin: 80, sourceKey: 'hominy-forum-80' }] },
  })
  expect(JSON.stringify(outcome)).not.toContain('85')
  expect(findProcess({ ...base, jar: 'pint' })).toMatchObject({ process: { hearsay: [] } })
})

describe.each(['ash', 'calcium-hydroxide'] as const)('%s hominy', (alkali) => {
  const query = { ...base, alkali, jar: 'quart' } as const

  test('has no published process and gives no minutes before its standing was read', () => {
    const outcome = findProcess(query)
    expect(outcome).toMatchObject({
      kind: 'no-published-process',
      looksLike: ['lye-hominy-hot-pack'],
      standing: { madeFor: 'none', now: 'withdrawn' },
      unmet: ['alkali-not-tested'],
    })
    expect(outcome).not.toHaveProperty('openedByReading')
    expect(JSON.stringify(outcome)).not.toMatch(/processMin|\b70\b|\b80\b/)
  })

  test('opens the look-alike minutes once the standing was read, still as no published process', () => {
    expect(findProcess({ ...query, standingRead: true })).toMatchObject({
      kind: 'no-published-process',
      openedByReading: { processMin: 70, standing: { madeFor: 'none', now: 'withdrawn' }, pressure: { setPsi: 11 } },
    })
  })

  test.each([
    ['not-hot-pack', { hotPack: false }],
    ['packed-tight', { fill: 'packed-tight' }],
    ['cloudy-liquid', { liquidClear: false }],
    ['other-headspace', { headspaceIn: 0.5 }],
    ['jar-not-printed', { jar: 'half-gallon' }],
  ] as const)('stays closed with %s, even when the standing was read', (condition, change) => {
    const outcome = findProcess({ ...query, standingRead: true, ...change })
    expect(outcome).toMatchObject({ kind: 'no-published-process', unmet: ['alkali-not-tested', condition] })
    expect(outcome).not.toHaveProperty('openedByReading')
  })

  test('stays closed off the elevation table and says so', () => {
    const outcome = findProcess({ ...query, standingRead: true, elevationFt: 8005.2 })
    expect(outcome).not.toHaveProperty('openedByReading')
    expect(outcome).toMatchObject({ why: [{}, { key: 'guidance:elevation-above-table' }] })
  })
})

test.each([
  ['not-hot-pack', 'guidance:needs-hot-pack', { hotPack: false }],
  ['packed-tight', 'guidance:needs-loose-fill', { fill: 'packed-tight' }],
  ['cloudy-liquid', 'guidance:needs-clear-liquid', { liquidClear: false }],
  ['other-headspace', 'guidance:needs-headspace', { headspaceIn: 0.5 }],
  ['jar-not-printed', 'guidance:jar-not-printed', { jar: 'half-gallon' }],
] as const)('lye hominy with %s has no published process, naming the condition', (condition, key, change) => {
  expect(findProcess({ ...base, ...change })).toMatchObject({
    kind: 'no-published-process',
    unmet: [condition],
    why: [{ key }],
  })
})

test('dry corn boiled without alkali resembles nothing printed', () => {
  const outcome = findProcess({ ...base, alkali: 'none', standingRead: true })
  expect(outcome).toMatchObject({
    kind: 'no-published-process',
    looksLike: [],
    why: [{ key: 'guidance:no-process-for-this-food' }],
  })
  expect(outcome).not.toHaveProperty('openedByReading')
})

test('a published process off the elevation table is off the table', () => {
  expect(findProcess({ ...base, elevationFt: 8000.4 })).toMatchObject({ kind: 'off-table', tableMaxFt: 8000 })
  expect(findProcess({ ...base, elevationFt: -1 })).toMatchObject({ kind: 'off-table' })
})

test('two tables that print different minutes for one food are a conflict, not a choice', () => {
  const rival = structuredClone(PROCESS_TABLES[0]!)
  rival.id = 'invented-rival'
  rival.rows[1]!.processMin = 75
  const outcome = findProcessIn([...PROCESS_TABLES, rival], { ...base, jar: 'quart' })
  expect(outcome).toMatchObject({ kind: 'conflict', processes: [{ processMin: 70 }, { processMin: 75 }] })
  expect(findProcessIn([...PROCESS_TABLES, rival], base)).toMatchObject({ kind: 'found' })
})

test.each([{ headspaceIn: Number.NaN }, { elevationFt: Number.NaN }, { jar: 'bucket' as 'pint' }])(
  'refuses %o',
  (bad) => {
    expect(() => findProcess({ ...base, ...bad })).toThrow(RangeError)
  },
)
