import type { Calc, SeriesPoint } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { LETHALITY_121_1C, LETHALITY_250F } from './lethal-rate.ts'
import {
  hasEqualSteps,
  lethalityMin,
  lethalityRectangleMin,
  lethalitySimpsonMin,
  lethalityTrapezoidMin,
} from './lethality.ts'

interface LethalityInput {
  readonly readings: readonly SeriesPoint[]
  readonly reference?: keyof typeof MODELS
}

const MODELS = { '250 °F, z 18 °F': LETHALITY_250F, '121.1 °C, z 10 °C': LETHALITY_121_1C } as const
const sourceKeys = ['bigelow-1920', 'patashnik-1953', 'cartwright-2017'] as const
const outputs = {
  lethalityMin: { label: 'Lethality, straight lines between readings', unit: 'Min' },
  trapezoidMin: { label: 'By the trapezoid rule', unit: 'Min' },
  rectangleMin: { label: 'By the tabular sum, equal steps only', unit: 'Min' },
  simpsonMin: { label: 'By Simpson, equal steps only', unit: 'Min' },
} as const

export const lethalityCalc: Calc<LethalityInput> = {
  id: 'lethality',
  title: 'Lethality of a temperature record',
  question: 'How many minutes at the reference temperature is a record worth? It explains and never sets a process.',
  inputs: {
    readings: { kind: 'series', label: 'Temperature by time', unit: 'C', timeUnit: 'Min' },
    reference: { kind: 'choice', label: 'Reference and z', options: Object.keys(MODELS), optional: true },
  },
  outputs,
  sourceKeys,
  example: {
    readings: [
      { time: 0, value: 60 },
      { time: 10, value: 100 },
      { time: 20, value: 115 },
      { time: 30, value: 116 },
      { time: 40, value: 100 },
    ],
  },
  run: (input) => {
    const value = valuesOf(
      { outputs, sourceKeys },
      { ...input, readings: input.readings.map(({ time, value }) => ({ time, value })) },
    )
    const model = MODELS[input.reference ?? '250 °F, z 18 °F']
    const curve = input.readings.map(({ time, value }) => ({ timeMin: time, temperatureC: value }))
    const values = [
      value('lethalityMin', lethalityMin(curve, model), nearest(0.001)),
      value('trapezoidMin', lethalityTrapezoidMin(curve, model), nearest(0.001)),
    ]
    if (hasEqualSteps(curve)) {
      values.push(value('rectangleMin', lethalityRectangleMin(curve, model), nearest(0.001)))
      if (curve.length >= 3) values.push(value('simpsonMin', lethalitySimpsonMin(curve, model), nearest(0.001)))
    }
    return done(values)
  },
}
