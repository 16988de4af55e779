import { type Calc, convert, type MaturityGroup, type Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { dayNumber } from './days.ts'
import { degreeDayPlan } from './degree-day-plan.ts'
import { readPasted, readRows, type Scale, type TypedDay } from './temperatures.ts'

interface DegreeDayFields {
  readonly plantedOn: string
  readonly pastedIn?: Scale
  readonly days?: readonly TypedDay[]
  readonly pasted?: string
  readonly group: MaturityGroup
  readonly ownToSilkF?: number
  readonly ownToRipeF?: number
}

const READING = { kind: 'quantity', unit: 'F', min: -76, max: 140, limitSource: 'project-rule' } as const
const OWN = {
  kind: 'quantity',
  unit: 'DegreeDaysF',
  min: 200,
  max: 6000,
  limitSource: 'project-rule',
  optional: true,
} as const

export const degreeDaysCalc: Calc<DegreeDayFields> = {
  id: 'degree-days',
  title: 'Degree-days to silk and to ripe',
  question: 'By these daily temperatures, how far has this planting come, when does it silk, and when is it ripe?',
  inputs: {
    plantedOn: { kind: 'text', maxLength: 10, label: 'Sown on, such as 2026-05-14' },
    days: {
      kind: 'table',
      label: 'Daily temperatures, from the sowing on',
      maxRows: 800,
      optional: true,
      columns: {
        date: { kind: 'text', maxLength: 10, label: 'Day, such as 2026-05-14' },
        high: { ...READING, label: 'High of the day' },
        low: { ...READING, label: 'Low of the day' },
      },
    },
    pasted: { kind: 'text', maxLength: 60_000, label: 'Or pasted: a line a day, date, high, low', optional: true },
    pastedIn: { kind: 'choice', options: ['F', 'C'], label: 'Pasted temperatures are in °F or °C', optional: true },
    group: {
      kind: 'choice',
      options: ['early', 'middle', 'late'],
      label: 'Maturity group, where there is no record of your own',
    },
    ownToSilkF: { ...OWN, label: 'Your own total to silk' },
    ownToRipeF: { ...OWN, label: 'Your own total to ripe' },
  },
  outputs: {
    degreeDaysSoFar: { label: 'Since sowing', unit: 'DegreeDaysF' },
    degreeDaysLately: { label: 'A day, over the last fourteen', unit: 'DegreeDaysF' },
    degreeDaysToSilk: { label: 'Taken as needed to silk', unit: 'DegreeDaysF' },
    degreeDaysToRipe: { label: 'Taken as needed to ripe', unit: 'DegreeDaysF' },
    daysToSilk: { label: 'From sowing to silk', unit: 'Days' },
    daysToRipe: { label: 'From sowing to ripe', unit: 'Days' },
  },
  sourceKeys: ['iowa-agron-541', 'hprcc-corn-stages'],
  example: {
    plantedOn: '2026-05-14',
    pastedIn: 'F',
    pasted: 'date, high, low\n2026-05-14, 72, 48\n2026-05-15, 76, 51\n2026-05-16, 81, 58\n2026-05-17, 87, 63',
    group: 'early',
  },
  run: ({ plantedOn, pastedIn, days, pasted, group, ownToSilkF, ownToRipeF }) => {
    const plantedDay = dayNumber(plantedOn)
    if (plantedDay === null) return refused('no-such-day', [say('field:no-such-day', { given: plantedOn })])
    if (days !== undefined && pasted !== undefined) return refused('readings-twice', [say('field:readings-twice')])
    const read = pasted === undefined ? readRows(days ?? [], 'F') : readPasted(pasted, pastedIn ?? 'F')
    if (!read.ok) return refused('readings-not-read', read.why)
    const toC = (degreeDaysF: number) => convert(degreeDaysF, 'DegreeDaysF', 'DegreeDaysC')
    const outcome = degreeDayPlan({
      days: read.days,
      missingDays: read.missingDays,
      plantedDay,
      group,
      ...(ownToSilkF !== undefined && { ownToSilkC: toC(ownToSilkF) }),
      ...(ownToRipeF !== undefined && { ownToRipeC: toC(ownToRipeF) }),
    })
    if (outcome.kind === 'refused') return refused(outcome.refused, outcome.why)
    const { values, reasons, warnings } = outcome
    return { ok: true, values, reasons, warnings }
  },
}

function refused(code: string, why: readonly Sentence[]) {
  return { ok: false, refused: code, why, askWhom: [] } as const
}
