import type { Calc, Field } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { DRAINED_HOMINY, foodProperties } from './mixture.ts'

interface FoodPropertiesInput {
  readonly temperatureC: number
  readonly waterFraction?: number
  readonly proteinFraction?: number
  readonly fatFraction?: number
  readonly carbohydrateFraction?: number
  readonly fibreFraction?: number
  readonly ashFraction?: number
}

const sourceKeys = ['choi-okos-1986', 'ashrae-refrigeration-2006-ch9'] as const
const part = (label: string): Field => ({
  kind: 'quantity',
  label: `${label}, share of the mass, 0 to 1`,
  unit: 'Fraction',
  min: 0,
  max: 1,
  limitSource: 'project-rule',
  optional: true,
})
const outputs = {
  densityKgPerM3: { label: 'Density', unit: 'KgPerM3' },
  specificHeatKJPerKgK: { label: 'Specific heat', unit: 'KJPerKgK' },
  conductivityWPerMK: { label: 'Heat conductivity, from parts in series to parts side by side', unit: 'WPerMK' },
  diffusivityMm2PerS: { label: 'Heat diffusivity, over the same range', unit: 'Mm2PerS' },
} as const

export const foodPropertiesCalc: Calc<FoodPropertiesInput> = {
  id: 'food-properties',
  title: 'How a food takes up heat',
  question: 'How fast can heat travel through a food made of this much water, starch and the rest?',
  inputs: {
    temperatureC: {
      kind: 'quantity',
      label: 'Temperature',
      unit: 'C',
      min: 0,
      max: 150,
      limitSource: 'choi-okos-1986',
    },
    waterFraction: part('Water'),
    proteinFraction: part('Protein'),
    fatFraction: part('Fat'),
    carbohydrateFraction: part('Starch and sugars'),
    fibreFraction: part('Fibre'),
    ashFraction: part('Minerals'),
  },
  outputs,
  sourceKeys,
  example: {
    temperatureC: 115.6,
    waterFraction: DRAINED_HOMINY.water,
    proteinFraction: DRAINED_HOMINY.protein,
    fatFraction: DRAINED_HOMINY.fat,
    carbohydrateFraction: DRAINED_HOMINY.carbohydrate,
    fibreFraction: DRAINED_HOMINY.fibre,
    ashFraction: DRAINED_HOMINY.ash,
  },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const food = foodProperties(
      {
        water: input.waterFraction ?? 0,
        protein: input.proteinFraction ?? 0,
        fat: input.fatFraction ?? 0,
        carbohydrate: input.carbohydrateFraction ?? 0,
        fibre: input.fibreFraction ?? 0,
        ash: input.ashFraction ?? 0,
      },
      input.temperatureC,
    )
    const between = (low: number, high: number) => ({ low, high })
    const { conductivityParallelWPerMK: k, conductivitySeriesWPerMK: kLow } = food
    const alphaMm2PerS = food.diffusivityParallelM2PerS * 1e6
    const alphaLowMm2PerS = food.diffusivitySeriesM2PerS * 1e6
    return done([
      value('densityKgPerM3', food.densityKgPerM3, nearest(0.1)),
      value('specificHeatKJPerKgK', food.specificHeatKJPerKgK, nearest(0.001)),
      value('conductivityWPerMK', (k + kLow) / 2, nearest(0.001), between(kLow, k)),
      value(
        'diffusivityMm2PerS',
        (alphaMm2PerS + alphaLowMm2PerS) / 2,
        nearest(0.0001),
        between(alphaLowMm2PerS, alphaMm2PerS),
      ),
    ])
  },
}
