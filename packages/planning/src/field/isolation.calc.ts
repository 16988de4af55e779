import type { Calc, CalcResult } from '@crib/science'
import { say } from '../shared/say.ts'
import { dayNumber } from './days.ts'
import { isolation } from './isolation.ts'

interface IsolationFields {
  readonly neighbours: readonly {
    readonly name: string
    readonly distanceM: number
    readonly bearingDeg?: number
    readonly halfTasselOn?: string
    readonly wouldShow?: boolean
  }[]
  readonly halfSilkOn?: string
  readonly plotLengthM?: number
  readonly plotWidthM?: number
  readonly rowSpacingM?: number
  readonly borderRowsCount?: number
  readonly windFromDeg?: number
}

const LENGTH = { kind: 'quantity', unit: 'M', min: 0, max: 50_000, limitSource: 'project-rule' } as const
const BEARING = { kind: 'count', min: 0, max: 360, limitSource: 'project-rule', optional: true } as const
const DAY = { kind: 'text', maxLength: 10, optional: true } as const

export const isolationCalc: Calc<IsolationFields> = {
  id: 'isolation',
  title: 'Will it cross?',
  question:
    'How much of this seed may other corn have fathered, and what would distance, days, borders or the middle change?',
  inputs: {
    neighbours: {
      kind: 'table',
      label: 'Other corn near by',
      maxRows: 30,
      columns: {
        name: { kind: 'text', label: 'Whose, or where', maxLength: 80 },
        distanceM: { ...LENGTH, label: 'From nearest plant to nearest plant' },
        bearingDeg: { ...BEARING, label: 'Towards it, degrees clockwise from north' },
        halfTasselOn: { ...DAY, label: 'Day half its tassels were open, such as 2026-07-20' },
        wouldShow: { kind: 'flag', optional: true, label: 'Its pollen would show on your kernels' },
      },
    },
    halfSilkOn: { ...DAY, label: 'Day half of your plants showed silk, such as 2026-07-19' },
    plotLengthM: { ...LENGTH, min: 0.5, max: 5000, label: 'Your plot along the rows', optional: true },
    plotWidthM: { ...LENGTH, min: 0.5, max: 5000, label: 'Your plot across the rows', optional: true },
    rowSpacingM: { ...LENGTH, min: 0.1, max: 5, label: 'Between your rows', optional: true },
    borderRowsCount: {
      kind: 'count',
      min: 1,
      max: 100,
      limitSource: 'project-rule',
      label: 'Border rows to try',
      optional: true,
    },
    windFromDeg: { ...BEARING, label: 'Where the wind mostly comes from, degrees clockwise from north' },
  },
  outputs: {
    offKernelFraction: { label: 'Kernels other corn may have fathered', unit: 'Fraction' },
    offKernelsInEar: { label: 'In an ear of 300 kernels', unit: 'Count' },
    neighbourFraction: { label: 'by this one alone', unit: 'Fraction' },
    remedyFraction: { label: 'kernels crossed then', unit: 'Fraction' },
  },
  sourceKeys: [
    'baltazar-2015',
    'goggi-2007',
    'jemison-vayda-2001',
    'china-isolation-model',
    'extension-corn-flowering',
    'wac-16-302-295',
    'cfr-7-201-76',
    'iowa-allee-2003',
  ],
  example: {
    neighbours: [
      { name: 'the field over the road', distanceM: 120, bearingDeg: 240, halfTasselOn: '2026-07-24' },
      { name: 'the garden next door', distanceM: 40, bearingDeg: 90 },
    ],
    halfSilkOn: '2026-07-19',
    plotLengthM: 15,
    plotWidthM: 12,
    rowSpacingM: 0.9,
    windFromDeg: 250,
  },
  run: ({ neighbours, halfSilkOn, ...rest }) => {
    const wrong = [halfSilkOn, ...neighbours.map(({ halfTasselOn }) => halfTasselOn)].find(
      (given) => given !== undefined && dayNumber(given) === null,
    )
    if (wrong !== undefined) return refused('no-such-day', [say('field:no-such-day', { given: wrong })])
    const outcome = isolation({
      ...rest,
      ...(halfSilkOn !== undefined && { ownHalfSilkDay: dayNumber(halfSilkOn)! }),
      neighbours: neighbours.map(({ halfTasselOn, ...neighbour }) => ({
        ...neighbour,
        ...(halfTasselOn !== undefined && { halfTasselDay: dayNumber(halfTasselOn)! }),
      })),
    })
    if (outcome.kind === 'refused') return refused(outcome.refused, outcome.why)
    const { values, reasons, warnings } = outcome
    return { ok: true, values, reasons, warnings }
  },
}

function refused(code: string, why: (CalcResult & { ok: false })['why']): CalcResult {
  return { ok: false, refused: code, why, askWhom: [] }
}
