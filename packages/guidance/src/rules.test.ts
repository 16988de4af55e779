import * as v from 'valibot'
import { describe, expect, test } from 'vitest'
import lidWait from '../data/lid-wait.json' with { type: 'json' }
import { ruleTableSchema } from '../schema/rule-table.ts'
import {
  cannerWaterRule,
  coolDownRule,
  headspaceRule,
  lidWaitRule,
  minimumLoad,
  restartRule,
  ruleFor,
  saltRule,
  sealWindow,
  ventRule,
} from './rules.ts'

// Expected figures: AIB 539 guide 1, PNW 421, NCHFP and the copies named in each data file.
test.each([
  ['vent', ventRule(), 10, undefined, 'Min'],
  ['lid wait', lidWaitRule(), 10, undefined, 'Min'],
  ['seal window', sealWindow(), 12, 24, 'H'],
  ['restart credit', restartRule(), 0, undefined, 'Min'],
  ['canner water', cannerWaterRule(), 2, 3, 'In'],
  ['headspace', headspaceRule(), 1, undefined, 'In'],
  ['salt a pint jar', saltRule('pint'), 0.5, undefined, 'Tsp'],
  ['salt a quart jar', saltRule('quart'), 1, undefined, 'Tsp'],
  ['fewest pint jars', minimumLoad('pint'), 4, undefined, 'Count'],
  ['fewest quart jars', minimumLoad('quart'), 2, undefined, 'Count'],
  ['cool-down, heavy canner, pint jars', coolDownRule('heavy-pint'), 30, undefined, 'Min'],
  ['cool-down, heavy canner, quart jars', coolDownRule('heavy-quart'), 45, undefined, 'Min'],
  ['cool-down, thin canner', coolDownRule('thin'), 20, 30, 'Min'],
  ['headspace of a jar frozen instead', ruleFor('refreeze-headspace'), 1.5, undefined, 'In'],
  ['storage', ruleFor('jar-storage', 'best'), 50, 70, 'F'],
  ['hottest storage', ruleFor('jar-storage', 'never-above'), 95, undefined, 'F'],
] as const)('%s', (_what, rule, value, high, unit) => {
  expect(rule.figure).toMatchObject({ value, unit, edition: 'guidance-2026-11' })
  expect(rule.figure.high).toBe(high)
  expect(rule.sourceKeys.length).toBeGreaterThan(0)
})

describe('where sources differ', () => {
  test.each([
    [ventRule(), [10, 10, 7]],
    [lidWaitRule(), [10, 2, 2]],
    [headspaceRule(), [1, 0.5]],
    [saltRule('pint'), [0.5, 0.25]],
    [ruleFor('refreeze-headspace'), [1.5, 1.5, 1]],
  ])('every printed figure stays beside the one used: $topic', (rule, figures) => {
    expect(rule.printed.map((printed) => printed.value)).toEqual(figures)
  })

  test('a figure from memory says so', () => {
    expect(lidWaitRule().seen).toBe('from memory, not re-read')
  })
})

test('a rule whose figure no source prints does not load', () => {
  expect(v.safeParse(ruleTableSchema, lidWait).success).toBe(true)
  const drifted = structuredClone(lidWait)
  drifted.rules[0]!.value = 5
  expect(v.safeParse(ruleTableSchema, drifted).success).toBe(false)
})

test('a figure without a source must admit it', () => {
  const orphan = structuredClone(lidWait) as { rows: { source: string | null }[] }
  orphan.rows[0]!.source = null
  expect(v.safeParse(ruleTableSchema, orphan).success).toBe(false)
})

test('a case the topic does not have is refused, naming those it has', () => {
  expect(() => ruleFor('salt', 'half-gallon')).toThrow(/salt has no case "half-gallon".*pint, quart/)
})
