/** A class, a year and four kinds of pack to print, invented: S1's seed, S2's corn and plan, S5's load. */
import { cautionsFor, type Moment } from '@crib/guidance'
import { amountName, classAmounts, type FoodLabel, type YearSummary } from '@crib/planning'
import type { Words } from '@crib/wording'
import { classSheetOfPlan, type PaperDocument, type PaperSize, yearSheet } from '../src/index.ts'
import { reckoned, setting } from './invented-days.ts'
import { ostreyPlan, THICK_FOR_THE_FREEZER } from './planned-days.ts'

/** S2's corn for the freezer, its lot opened to the community on a condition. */
export function ostreyClass(paper: PaperSize, words: Words, corn?: string): PaperDocument {
  const plan = ostreyPlan(THICK_FOR_THE_FREEZER)
  return classSheetOfPlan(
    plan,
    {
      contents: corn === undefined ? { key: 'pantry:hominy' } : { key: 'pantry:hominy-of', params: { name: corn } },
      conditions: corn === undefined ? [] : ['Not to be sold.'],
      date: '2026-11-14',
      amounts: classAmounts(plan).map((value) => ({ label: amountName(value.id) ?? value.id, value })),
      cautionsFor: (moment) => cautionsFor(moment as Moment),
    },
    setting(paper),
    words,
  )
}

const count = (value: number) =>
  reckoned(value, 'Count', { basis: 'own-record', rounding: { mode: 'nearest', step: 1 } })
const share = (id: YearSummary['strands'][number]['id'], massKg: number, isGap = false) =>
  ({ id, name: `shell:strand-${id}`, massKg, isGap }) as const

/** 14.3 kg (31.5 lb, S1's food and seed) of two corns. */
export const KETTLEBROOK_YEAR: YearSummary = {
  year: 2026,
  cornNames: ['Heron Foot flint', 'Lantern flint'],
  broughtInKg: 20.4,
  strands: [
    share('cobs', 4.1, true),
    share('sorted-out', 1.2, true),
    share('seed', 0.3),
    share('kettle', 9.2),
    share('eaten', 1.5),
    share('left', 4.1),
  ],
  notes: [{ key: 'paper:year-unweighed', params: { count: 1 } }],
  putUp: [
    { form: 'freezer', putUp: count(8), gone: count(3), left: count(5) },
    { form: 'dried', putUp: count(4), gone: count(0), left: count(4) },
    { form: 'jar', putUp: count(18), gone: count(6), left: count(12) },
  ],
  loads: ['A1', 'A2', 'A3'].map((load, index) => ({
    code: `OSTR-261103-${load}`,
    canner: 'The old dial',
    jars: count(6),
    processMin: reckoned(70, 'Min'),
    departed: index === 2,
  })),
  seed: [
    {
      name: 'Heron Foot flint',
      seasonYear: 2026,
      kernelsLeft: count(1020),
      germination: reckoned(0.92, 'Fraction', {
        low: 0.8077,
        high: 0.9778,
        rounding: { mode: 'nearest', step: 0.01 },
        basis: 'computed',
      }),
      testAgainBy: '2027-04-02',
    },
    { name: 'Lantern flint', seasonYear: 2025 },
  ],
}

export function kettlebrookYear(paper: PaperSize, words: Words): PaperDocument {
  return yearSheet(
    { summary: KETTLEBROOK_YEAR, kitchen: 'Kettlebrook Hollow', audience: 'keeper' },
    setting(paper),
    words,
  )
}

/** One of each way to keep it; the days are those of the printed advice, 8 to 12 months and 3 to 4 days. */
export const PACKS: readonly FoodLabel[] = (
  [
    ['freezer', '2027-07-03', '2027-11-03'],
    ['fridge', '2026-11-06', '2026-11-07'],
    ['dried', '2027-11-03', '2027-11-03'],
    ['flour'],
    ['roasted'],
  ] as const
).map(([form, useFirstBy, bestUntil], index) => ({
  form,
  code: `LF-${index + 1}`,
  putUpOn: '2026-11-03',
  contents: { key: 'pantry:hominy-of', params: { name: 'Lantern flint' } },
  each: reckoned(0.5, 'Kg', { rounding: { mode: 'nearest', step: 0.01 } }),
  keep: { key: `pantry:label-${form}` },
  ...(useFirstBy !== undefined && { useFirstBy }),
  ...(bestUntil !== undefined && { bestUntil }),
  departed: false,
  conditions: form === 'flour' ? ['Not to be sold.'] : [],
  record: `crib:lot/4c1d9e0a7b2${index}`,
}))
