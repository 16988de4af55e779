import { boilingTemperatureC, type Calc, cookTimeFactor, SOFTENING_Z_C } from '@crib/science'
import { say } from '../shared/say.ts'
import { amount, valuesOf } from './fields.ts'

interface CookAltitudeInput {
  readonly elevationM: number
  readonly seaLevelMin: number
}

const sourceKeys = ['quast-silva-1977', 'iapws-r7-97', 'us-standard-atmosphere-1976'] as const

export const cookAltitudeCalc: Calc<CookAltitudeInput> = {
  id: 'cook-altitude',
  title: 'An open pot higher up',
  question: 'How much longer does a cook at the boil take where water boils cooler?',
  inputs: {
    elevationM: amount('Elevation', 'M', -100, 3100),
    seaLevelMin: amount('Minutes it takes near sea level', 'Min', 1, 1440),
  },
  outputs: {
    boilingC: { label: 'Water boils at', unit: 'C' },
    cookMin: { label: 'The cook may take', unit: 'Min' },
  },
  sourceKeys,
  example: { elevationM: 1524, seaLevelMin: 60 },
  run: (input) => {
    const value = valuesOf(input, sourceKeys)
    const corn = input.seaLevelMin * cookTimeFactor(input.elevationM, SOFTENING_Z_C.corn)
    const beans = input.seaLevelMin * cookTimeFactor(input.elevationM, SOFTENING_Z_C.beans)
    const [low, high] = corn < beans ? [corn, beans] : [beans, corn]
    return {
      ok: true,
      values: [
        value('boilingC', boilingTemperatureC(input.elevationM), 'C', 0.1),
        value('cookMin', { value: corn, low, high }, 'Min', 1),
      ],
      reasons: [say('kettle:chem-altitude-no-corn'), say('kettle:rub-not-clock')],
      warnings: [say('kettle:chem-altitude-open-pot')],
    }
  },
}
