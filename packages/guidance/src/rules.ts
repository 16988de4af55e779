/**
 * Rules with one figure, or one per case: vent, lid wait, headspace and the like; what each source prints beside what is used.
 * Leaves out: process minutes and pressures (process.ts, pressure.ts) and what a canner run makes of a rule (planning).
 */
import type { Reckoned, Sentence, Unit } from '@crib/science'
import boilJson from '../data/boil-before-tasting.json' with { type: 'json' }
import waterJson from '../data/canner-water.json' with { type: 'json' }
import comeUpJson from '../data/come-up.json' with { type: 'json' }
import coolDownJson from '../data/cool-down.json' with { type: 'json' }
import fillJson from '../data/fill.json' with { type: 'json' }
import freezerLoadJson from '../data/freezer-load.json' with { type: 'json' }
import gaugeJson from '../data/gauge-rule.json' with { type: 'json' }
import headspaceJson from '../data/headspace.json' with { type: 'json' }
import storageJson from '../data/jar-storage.json' with { type: 'json' }
import lidWaitJson from '../data/lid-wait.json' with { type: 'json' }
import minimumLoadJson from '../data/minimum-load.json' with { type: 'json' }
import powerCutJson from '../data/power-cut.json' with { type: 'json' }
import refreezeJson from '../data/refreeze-headspace.json' with { type: 'json' }
import restartJson from '../data/restart.json' with { type: 'json' }
import saltJson from '../data/salt.json' with { type: 'json' }
import sealJson from '../data/seal-window.json' with { type: 'json' }
import ventingJson from '../data/venting.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Seen, type Standing } from '../schema/envelope.ts'
import type { PrintedJar } from '../schema/process-tables.ts'
import { isSameFigure, type RuleTable, ruleTableSchema } from '../schema/rule-table.ts'
import { printedFigure } from './figures.ts'
import { loadTable, tableSourceKeys } from './load.ts'
import { sentence } from './sentence.ts'

const load = (json: unknown): RuleTable => loadTable(ruleTableSchema, json)

const RULES = {
  'boil-before-tasting': load(boilJson),
  'canner-water': load(waterJson),
  'come-up': load(comeUpJson),
  'cool-down': load(coolDownJson),
  fill: load(fillJson),
  'freezer-load': load(freezerLoadJson),
  'gauge-rule': load(gaugeJson),
  headspace: load(headspaceJson),
  'jar-storage': load(storageJson),
  'lid-wait': load(lidWaitJson),
  'minimum-load': load(minimumLoadJson),
  'power-cut': load(powerCutJson),
  'refreeze-headspace': load(refreezeJson),
  restart: load(restartJson),
  salt: load(saltJson),
  'seal-window': load(sealJson),
  venting: load(ventingJson),
} as const

export type RuleTopic = keyof typeof RULES
export const RULE_TABLES: readonly RuleTable[] = Object.values(RULES)

/** What one source prints on the topic. */
export interface PrintedBySource {
  readonly value: number
  readonly high?: number
  readonly unit: Unit
  readonly printed: string
  /** Null for common practice and project rules. */
  readonly sourceKey: string | null
  readonly seen: Seen
}

export interface Rule {
  readonly topic: RuleTopic
  /** The figure used. A range has its ends in low and high, and its low end as value. */
  readonly figure: Reckoned
  /** Every figure in print on the topic and case, the used one among them. */
  readonly printed: readonly PrintedBySource[]
  readonly standing: Standing
  readonly seen: Seen
  readonly tableId: string
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/**
 * The rule of a topic, and of one case where the topic has several (`appliesTo`).
 *
 * @throws {RangeError} when the topic has no such case.
 */
export function ruleFor(topic: RuleTopic, appliesTo?: string): Rule {
  const table = RULES[topic]
  const rule = table.rules.find((candidate) => candidate.appliesTo === appliesTo)
  if (!rule) {
    const cases = table.rules.map((candidate) => candidate.appliesTo ?? 'no case')
    throw new RangeError(`${topic} has no case "${appliesTo}"; ${table.source} covers ${cases.join(', ')}`)
  }
  const used = table.rows.find((row) => isSameFigure(rule, row))!
  const sourceKeys = used.source ? [used.source] : []
  return {
    topic,
    figure: printedFigure({
      id: appliesTo ? `${topic}-${appliesTo}` : topic,
      value: rule.value,
      high: rule.high,
      unit: rule.unit,
      seen: used.seen,
      sourceKeys,
      inputs: appliesTo ? { appliesTo } : {},
    }),
    printed: table.rows
      .filter((row) => appliesTo === undefined || row.appliesTo === undefined || row.appliesTo === appliesTo)
      .map(({ value, high, unit, printed, source, seen }) => ({
        value,
        ...(high !== undefined && { high }),
        unit,
        printed,
        sourceKey: source,
        seen,
      })),
    standing: table.standing,
    seen: used.seen,
    tableId: table.id,
    sourceKeys: tableSourceKeys(table),
    edition: GUIDANCE_EDITION,
  }
}

export interface WordedRule extends Rule {
  /** The rule in one line, with its reason. */
  readonly say: Sentence
}

/** Steady steam before the vent is closed. [min]  10, every load.  @source usda-aib-539-1994 guide 1; pnw-421 */
export function ventRule(): WordedRule {
  const rule = ruleFor('venting')
  return { ...rule, say: sentence('guidance:vent-rule', { minutes: quantity(rule.figure) }) }
}

/** From zero, weight off, to unfastening the lid. [min]  10; older text 2.  @source usda-aib-539-2015 from memory */
export function lidWaitRule(): WordedRule {
  const rule = ruleFor('lid-wait')
  return { ...rule, say: sentence('guidance:lid-wait-rule', { minutes: quantity(rule.figure) }) }
}

/** When seals are checked, counted from the jars coming out. [h]  12 to 24.  @source usda-aib-539-1994 guide 1 */
export function sealWindow(): WordedRule {
  const rule = ruleFor('seal-window')
  return { ...rule, say: sentence('guidance:seal-window', { from: rule.figure.low!, to: rule.figure.high! }) }
}

/** Minutes credited from before a dip. [min]  None: the full time starts again.  @source usda-aib-539-2015 */
export function restartRule(): WordedRule {
  return { ...ruleFor('restart'), say: sentence('guidance:restart-rule') }
}

/** Hot water in the canner. [in]  2 to 3, more where the maker says so.  @source usda-aib-539-1994 guide 1 */
export function cannerWaterRule(): WordedRule {
  const rule = ruleFor('canner-water')
  return {
    ...rule,
    say: sentence('guidance:canner-water', {
      from: quantity({ ...rule.figure, value: rule.figure.low! }),
      to: quantity({ ...rule.figure, value: rule.figure.high! }),
    }),
  }
}

/** Space above the liquid in a hominy jar. [in]  1; old copies print 1/2.  @source nchfp-hominy-without-lye */
export function headspaceRule(): WordedRule {
  const rule = ruleFor('headspace')
  return { ...rule, say: sentence('guidance:headspace-rule', { headspace: quantity(rule.figure) }) }
}

/** Salt a jar, optional, for flavour only. [tsp]  @source nchfp-hominy-without-lye */
export function saltRule(jar: PrintedJar): WordedRule {
  const rule = ruleFor('salt', jar)
  return { ...rule, say: sentence('guidance:salt-rule', { salt: quantity(rule.figure) }) }
}

/** Fewest jars a load, by a jar maker's advice; federal guidance sets none. [count]  @source canner-booklet-load */
export function minimumLoad(jar: PrintedJar): WordedRule {
  const rule = ruleFor('minimum-load', jar)
  return { ...rule, say: sentence('guidance:minimum-load', { least: rule.figure.value }) }
}

/** How long pressure takes to fall by itself. [min]  @source pnw-421; thin-walled usda-aib-539-1994 */
export function coolDownRule(canner: 'heavy-pint' | 'heavy-quart' | 'thin'): Rule {
  return ruleFor('cool-down', canner)
}

function quantity({ value, unit }: Reckoned): { value: number; unit: Unit } {
  return { value, unit }
}
