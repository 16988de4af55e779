import { type Calc, fitPeleg, pelegMassG, type SeriesPoint } from '@crib/science'
import { say } from '../shared/say.ts'
import { amount, valuesOf } from './fields.ts'

interface HydrationInput {
  readonly weighings: readonly SeriesPoint[]
  readonly afterMin: number
}

const sourceKeys = ['peleg-1988'] as const

export const hydrationCalc: Calc<HydrationInput> = {
  id: 'hydration',
  title: 'Kernels that soak',
  question: 'What curve do my own weighings of soaking kernels follow, and where does it level off?',
  inputs: {
    weighings: { kind: 'series', label: 'Weighings, the first dry, at 0 min', unit: 'G', timeUnit: 'Min' },
    afterMin: amount('Weight after', 'Min', 0, 6000),
  },
  outputs: {
    massG: { label: 'Weight by the curve', unit: 'G' },
    plateauG: { label: 'Weight it levels off at', unit: 'G' },
    missG: { label: 'The curve misses the weighings by', unit: 'G' },
  },
  sourceKeys,
  example: {
    weighings: [
      { time: 0, value: 100 },
      { time: 60, value: 114 },
      { time: 120, value: 120 },
      { time: 240, value: 127 },
      { time: 480, value: 132 },
      { time: 720, value: 135 },
    ],
    afterMin: 360,
  },
  run: (input) => {
    const rows = input.weighings.map(({ time, value }) => ({ hours: time / 60, massG: value }))
    const start = rows[0]
    const laterCount = rows.filter(({ massG }) => start && massG > start.massG).length
    const fit = start && start.hours === 0 && laterCount >= 2 && rows.length <= 500 ? fitPeleg(rows) : null
    if (!fit || !start) return { ok: false, refused: 'no-plateau', why: [say('kettle:chem-no-plateau')], askWhom: [] }
    const value = valuesOf(input, sourceKeys)
    return {
      ok: true,
      values: [
        value('massG', pelegMassG(start.massG, fit, input.afterMin / 60), 'G', 0.1),
        value('plateauG', fit.plateauG, 'G', 0.1),
        value('missG', fit.rmsG, 'G', 0.1),
      ],
      reasons: [say('kettle:chem-hydration-own')],
      warnings: [say('kettle:chem-hydration-no-boil')],
    }
  },
}
