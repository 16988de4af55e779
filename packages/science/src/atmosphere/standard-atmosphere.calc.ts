import type { Calc } from '../calc.ts'
import { done, nearest, valuesOf } from '../calc-value.ts'
import { boilingTemperatureC } from '../steam/canner-steam.ts'
import { cToF } from '../units/convert-named.ts'
import { convert } from '../units/unit.ts'
import { STANDARD_ATMOSPHERE_ELEVATION_M, standardPressureKPaAbs } from './standard-atmosphere.ts'

const sourceKeys = ['us-standard-atmosphere-1976', 'iapws-r7-97'] as const
const outputs = {
  elevationFt: { label: 'Elevation', unit: 'Ft' },
  atmosphereKPaAbs: { label: 'Pressure of the standard atmosphere', unit: 'KPaAbs' },
  boilingC: { label: 'Water boils in an open pot at', unit: 'C' },
  boilingF: { label: 'The same in Fahrenheit', unit: 'F' },
} as const

export const standardAtmosphereCalc: Calc<{ readonly elevationM: number }> = {
  id: 'standard-atmosphere',
  title: 'Atmosphere by elevation',
  question: 'What does the air press at an elevation on an average day, and how hot does water boil there?',
  inputs: {
    elevationM: {
      kind: 'quantity',
      label: 'Elevation',
      unit: 'M',
      min: STANDARD_ATMOSPHERE_ELEVATION_M.min,
      max: STANDARD_ATMOSPHERE_ELEVATION_M.max,
      limitSource: STANDARD_ATMOSPHERE_ELEVATION_M.source,
    },
  },
  outputs,
  sourceKeys,
  example: { elevationM: 612 },
  run: (input) => {
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    const boilingC = boilingTemperatureC(input.elevationM)
    return done([
      value('elevationFt', convert(input.elevationM, 'M', 'Ft'), nearest(0.1)),
      value('atmosphereKPaAbs', standardPressureKPaAbs(input.elevationM), nearest(0.01)),
      value('boilingC', boilingC, nearest(0.1)),
      value('boilingF', cToF(boilingC), nearest(0.1)),
    ])
  },
}
