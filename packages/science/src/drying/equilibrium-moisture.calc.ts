import type { Calc } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { dryToWetFraction, equilibriumMoistureHendersonDryFraction } from './equilibrium-moisture.ts'

interface EquilibriumMoistureInput {
  readonly temperatureC: number
  readonly humidityFraction: number
  readonly cornType: 'dent' | 'flint' | 'flour' | 'popcorn'
}

/**
 * How far corn may lie from the equation. [fraction of total weight]  Authorities differ by half a point for dent; for
 * other sorts no equation was found, and hard kernels were measured up to a point below.
 */
const BELOW = { dent: 0.005, flint: 0.01, flour: 0.01, popcorn: 0.01 } as const
const ABOVE = { dent: 0.005, flint: 0.005, flour: 0.01, popcorn: 0.005 } as const

const sourceKeys = ['asae-d245', 'grain-fan-manual-emc'] as const
const outputs = {
  equilibriumWetFraction: { label: 'Where its moisture settles, wet basis', unit: 'Fraction' },
  equilibriumDryFraction: { label: 'The same on the dry basis', unit: 'Fraction' },
} as const

export const equilibriumMoistureCalc: Calc<EquilibriumMoistureInput> = {
  id: 'equilibrium-moisture',
  title: 'Where the moisture of shelled corn settles',
  question: 'In air of this temperature and humidity, what moisture does shelled corn come to in the end?',
  inputs: {
    temperatureC: { kind: 'quantity', label: 'Air', unit: 'C', min: 0, max: 60, limitSource: 'asae-d245' },
    humidityFraction: {
      kind: 'quantity',
      label: 'Relative humidity, 0.10 to 0.90',
      unit: 'Fraction',
      min: 0.1,
      max: 0.9,
      limitSource: 'asae-d245',
    },
    cornType: {
      kind: 'choice',
      label: 'Sort; the equation is of dent',
      options: ['dent', 'flint', 'flour', 'popcorn'],
    },
  },
  outputs,
  sourceKeys,
  example: { temperatureC: 21, humidityFraction: 0.6, cornType: 'flint' },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const dry = equilibriumMoistureHendersonDryFraction(input)
    const wet = dryToWetFraction(dry)
    const band = { low: Math.max(0, wet - BELOW[input.cornType]), high: wet + ABOVE[input.cornType] }
    return done([
      value('equilibriumWetFraction', wet, nearest(0.001), band),
      value('equilibriumDryFraction', dry, nearest(0.001)),
    ])
  },
}
