import type { Calc, CalcResult } from '@crib/science'
import { say } from '../shared/say.ts'
import { amount, RULE, valuesOf } from './fields.ts'
import { coverL, type Wash, type WashInput, washPlan } from './rinse-wash.ts'

const sourceKeys = ['crank-1975', 'rinse-worked'] as const

export const rinsePlanCalc: Calc<WashInput> = {
  id: 'rinse-plan',
  title: 'The wash, for the water at hand',
  question: 'Which rinses, boils and stands leave least alkali in the kernel, for the water, time and fuel there is?',
  inputs: {
    dryCornKg: amount('Dry corn that was cooked', 'Kg', 0.05, 200),
    waterL: amount('Water for the whole wash', 'L', 0.1, 10_000),
    timeMin: amount('Time for it', 'Min', 5, 2880),
    boilsCount: {
      kind: 'count',
      label: 'Boils in fresh water that the fuel allows',
      min: 0,
      max: 8,
      limitSource: RULE,
    },
    cookedPerDry: {
      kind: 'quantity',
      label: 'Cooked kernels weigh, for each unit dry (2 unless told)',
      unit: 'Count',
      min: 1,
      max: 5,
      limitSource: RULE,
      optional: true,
    },
  },
  outputs: {
    bathsCount: { label: 'Baths', unit: 'Count' },
    waterEachL: { label: 'Water in each', unit: 'L' },
    takesMin: { label: 'It takes', unit: 'Min' },
    boilsCount: { label: 'Boils among them', unit: 'Count' },
    kernelFraction: { label: 'Alkali still in the kernel, of what the cook left', unit: 'Fraction' },
    bathFraction: { label: 'Strength of the running rinse at that moment', unit: 'Fraction' },
    afterStandingFraction: { label: 'Strength a test finds after a stand', unit: 'Fraction' },
  },
  sourceKeys,
  example: { dryCornKg: 0.68, waterL: 30, timeMin: 120, boilsCount: 3 },
  run: (input) => rinseResult(input, washPlan(input)),
}

/** A wash that was found, or none, as the calculation tells it: for a screen that looked for it elsewhere. */
export function rinseResult(input: WashInput, wash: Wash | null): CalcResult {
  if (!wash) {
    const why = [say('kettle:chem-rinse-no-water', { least: { value: Number(coverL(input).toFixed(1)), unit: 'L' } })]
    return { ok: false, refused: 'not-enough-water-or-time', why, askWhom: [] }
  }
  const { plan } = wash
  const value = valuesOf(input, sourceKeys)
  return {
    ok: true,
    values: [
      value('bathsCount', plan.baths.length, 'Count', 1),
      value('waterEachL', plan.baths[0]!.freshL, 'L', 0.1),
      value('takesMin', plan.minutes, 'Min', 1),
      value('boilsCount', plan.boilsCount, 'Count', 1),
      value('kernelFraction', wash.kernelFraction, 'Fraction', 0.01),
      value('bathFraction', wash.bathFraction, 'Fraction', 0.001),
      value('afterStandingFraction', wash.afterStandingFraction, 'Fraction', 0.01),
    ],
    reasons: [
      ...wash.steps,
      say('kettle:chem-rinse-inside', {
        bath: { value: Number(wash.bathFraction.toFixed(3)), unit: 'Fraction' },
        kernel: { value: Number(plan.kernelMean.toFixed(2)), unit: 'Fraction' },
      }),
      say('kettle:chem-rinse-model'),
    ],
    warnings: [say('kettle:chem-rinse-stand-test'), say('cautions:wash-caustic')],
  }
}
