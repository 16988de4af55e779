import type { Calc, Field } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { UP_TO_WHOLE } from '../reckoned.ts'
import {
  type GaugePoint,
  gaugeErrorPsi,
  nextFaceMarkPsi,
  requiredReadingPsi,
  truePsiAtReading,
} from './gauge-correction.ts'

interface GaugeCorrectionInput {
  readonly test: readonly GaugePoint[]
  readonly truePsi: number
  readonly marksEveryPsi?: number
}

const sourceKeys = ['iowa-state-gauge-2024'] as const
const outputs = {
  errorPsi: { label: 'The needle is off by (above 0: reads high)', unit: 'PsiGauge' },
  requiredReadingPsi: { label: 'Least reading; below it is a dip', unit: 'PsiGauge' },
  holdAtPsi: { label: 'Mark to hold the needle at', unit: 'PsiGauge' },
  trueAtHoldPsi: { label: 'True pressure at that mark', unit: 'PsiGauge' },
} as const

const psiField = (label: string): Field => ({
  kind: 'quantity',
  label,
  unit: 'PsiGauge',
  min: 0,
  max: 30,
  limitSource: 'project-rule',
})

export const gaugeCorrectionCalc: Calc<GaugeCorrectionInput> = {
  id: 'gauge-correction',
  title: 'Dial gauge against its bench test',
  question: 'What must the needle show for a true pressure, and which mark on the face is that?',
  inputs: {
    test: {
      kind: 'table',
      label: 'Bench test',
      columns: { truePsi: psiField('True pressure'), readsPsi: psiField('The needle showed') },
      maxRows: 50,
    },
    truePsi: psiField('True pressure wanted'),
    marksEveryPsi: {
      kind: 'quantity',
      label: 'Marks on the face every',
      unit: 'PsiGauge',
      min: 0.1,
      max: 15,
      limitSource: 'project-rule',
      optional: true,
    },
  },
  outputs,
  sourceKeys,
  example: {
    test: [
      { truePsi: 10, readsPsi: 10.5 },
      { truePsi: 15, readsPsi: 16 },
    ],
    truePsi: 11,
    marksEveryPsi: 1,
  },
  run: ({ test, truePsi, marksEveryPsi = 1 }) => {
    const inputs = { test: test.map((point) => ({ ...point })), truePsi, marksEveryPsi }
    const value = valuesOf({ outputs, sourceKeys }, inputs)
    const requiredPsi = requiredReadingPsi(test, truePsi)
    const holdPsi = nextFaceMarkPsi(requiredPsi, marksEveryPsi)
    const values = [
      value('errorPsi', gaugeErrorPsi(test, truePsi), nearest(0.01)),
      value('requiredReadingPsi', requiredPsi, { ...UP_TO_WHOLE, step: 0.01 }),
      value('holdAtPsi', holdPsi, { ...UP_TO_WHOLE, step: 0.01 }, { basis: 'project-rule' }),
    ]
    // No line is drawn past the test, so a mark above its last reading has no known true pressure.
    if (holdPsi <= Math.max(...test.map(({ readsPsi }) => readsPsi))) {
      values.push(value('trueAtHoldPsi', truePsiAtReading(test, holdPsi), nearest(0.01)))
    }
    return done(values)
  },
}
