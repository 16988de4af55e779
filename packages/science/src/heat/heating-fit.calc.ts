import type { Calc, SeriesPoint } from '../calc.ts'
import { nearest, valuesOf } from '../calc-value.ts'
import { fitHeating } from './empirical-heating.ts'

interface HeatingFitInput {
  readonly readings: readonly SeriesPoint[]
  readonly mediumC: number
  readonly initialC: number
  readonly straightFromMin?: number
}

const sourceKeys = ['ball-1923'] as const
const outputs = {
  fhMin: { label: 'fh, minutes to close nine tenths of the way', unit: 'Min' },
  jh: { label: 'jh, how late the line starts', unit: 'Count' },
  usedCount: { label: 'Readings the line is drawn through', unit: 'Count' },
  missFraction: { label: 'Typical miss of what is left to close', unit: 'Fraction' },
} as const
const temperature = (label: string) =>
  ({ kind: 'quantity', label, unit: 'C', min: -20, max: 150, limitSource: 'project-rule' }) as const

export const heatingFitCalc: Calc<HeatingFitInput> = {
  id: 'heating-fit',
  title: 'fh and jh of a trial with water or food',
  question:
    'What heating line lies nearest the readings of a jar in a steady canner? It describes that jar and sets no process.',
  inputs: {
    readings: { kind: 'series', label: 'Inside the jar, from the start of heating', unit: 'C', timeUnit: 'Min' },
    mediumC: temperature('The canner or bath around it, steady'),
    initialC: temperature('The jar when heating began'),
    straightFromMin: {
      kind: 'quantity',
      label: 'Readings before this are lag and left out; none unless said',
      unit: 'Min',
      min: 0,
      max: 600,
      limitSource: 'project-rule',
      optional: true,
    },
  },
  outputs,
  sourceKeys,
  // Invented: fh 20 min, jh 1.4, rounded to a tenth of a degree.
  example: {
    readings: [
      { time: 5, value: 73.5 },
      { time: 10, value: 92.1 },
      { time: 15, value: 102.6 },
      { time: 20, value: 108.4 },
      { time: 25, value: 111.7 },
    ],
    mediumC: { value: 116, unit: 'C' },
    initialC: { value: 62, unit: 'C' },
    straightFromMin: 5,
  },
  run: ({ readings, mediumC, initialC, straightFromMin = 0 }) => {
    const curve = readings.map(({ time, value }) => ({ timeMin: time, temperatureC: value }))
    const fit = fitHeating(curve, { mediumC, initialC, straightFromMin })
    const value = valuesOf(
      { outputs, sourceKeys },
      { readings: readings.map(({ time, value }) => ({ time, value })), mediumC, initialC, straightFromMin },
    )
    return {
      ok: true,
      values: [
        value('fhMin', fit.fhMin, nearest(0.1)),
        value('jh', fit.jh, nearest(0.01)),
        value('usedCount', fit.usedCount, nearest(1)),
        value('missFraction', 10 ** fit.missLog10 - 1, nearest(0.001)),
      ],
      reasons: [{ key: 'heat:fit-describes' }],
      warnings: [{ key: 'heat:does-not-change-directions' }],
    }
  },
}
