import type { Calc, Fields } from '@crib/science'
import type { WeakAshInput } from '../batch/ash-advice.ts'
import { weakAshCalc } from '../batch/weak-ash.calc.ts'
import { say } from '../shared/say.ts'
import { amount } from './fields.ts'
import { type LotTest, lotStrength } from './lot-strength.ts'
import { TITRATION_FIELDS } from './titration.calc.ts'
import { weakLotAdvice } from './weak-lot.ts'

interface WeakLotForm extends WeakAshInput {
  readonly test: LotTest
  readonly gPerCup: number
  readonly waterL: number
  readonly recordEqPerKg?: number
  readonly recordGPerCup?: number
  readonly recordCupsPerLiquidQt?: number
}

const TEST_FIELDS = {
  ...TITRATION_FIELDS,
  steepedG: amount('Ash that was steeped', 'G', 1, 1e6),
  steepWaterL: amount('Water it was steeped in', 'L', 0.01, 1000),
} as const satisfies Fields

export const weakLotCalc: Calc<WeakLotForm> = {
  id: 'weak-lot',
  title: 'An ash that has gone flat, titrated',
  question: 'The hulls do not slip and the ash was titrated: what does each of the three rescues bring?',
  inputs: {
    ...weakAshCalc.inputs,
    test: { kind: 'record', label: 'Titration of the lot in the pot', fields: TEST_FIELDS },
    gPerCup: amount('A level cup of it weighs', 'G', 20, 300),
    waterL: amount('Water in the pot', 'L', 0.1, 1000),
    recordEqPerKg: amount('Strength of the lot that worked', 'EqPerKg', 0.01, 40, { optional: true }),
    recordGPerCup: amount('A level cup of that lot weighs', 'G', 20, 300, { optional: true }),
    recordCupsPerLiquidQt: amount('That lot, to one liquid qt of dry corn', 'Cup', 0.01, 24, { optional: true }),
  },
  outputs: {
    lotEqPerKg: { label: 'Alkali in this ash', unit: 'EqPerKg' },
    inPotEqPerKg: { label: 'On the corn so far', unit: 'EqPerKg' },
    wantedEqPerKg: { label: 'What the lot that worked brought', unit: 'EqPerKg' },
    stepEqPerKg: { label: 'One step of half a cup brings', unit: 'EqPerKg' },
    moreAshCups: { label: 'First: more of it', unit: 'Cup' },
    ashInAllCups: { label: 'then in all', unit: 'Cup' },
    moreAshG: { label: 'that is, weighed', unit: 'G' },
    calciumHydroxideG: { label: 'Or calcium hydroxide, food-grade', unit: 'G' },
    calciumHydroxideEqPerKg: { label: 'which brings', unit: 'EqPerKg' },
    hydroxideNowMolPerL: { label: 'Hydroxide now, near the boil', unit: 'MolPerL' },
    hydroxideWithLimeMolPerL: { label: 'with the calcium hydroxide', unit: 'MolPerL' },
  },
  sourceKeys: ['vinegar-titration-worked', 'iupac-weights-2021', 'naggayi-2020'],
  example: {
    ...weakAshCalc.example,
    test: {
      sampleMl: 50,
      coldMl: 0.9,
      boiledMl: 1.7,
      acidityGPer100Ml: 5,
      syringeStepMl: 0.1,
      steepedG: 100,
      steepWaterL: 1,
    },
    gPerCup: 100,
    waterL: 3.8,
    recordEqPerKg: 0.9,
    recordGPerCup: 100,
    recordCupsPerLiquidQt: 1,
  },
  run: ({ test, recordEqPerKg, recordGPerCup, recordCupsPerLiquidQt, ...input }) => {
    if (input.slippedCount > input.rubbedCount) {
      const why = [say('kettle:more-slipped', { slipped: input.slippedCount, rubbed: input.rubbedCount })]
      return { ok: false, refused: 'more-slipped-than-rubbed', why, askWhom: [] }
    }
    if (test.boiledMl < test.coldMl) {
      const why = [
        say('kettle:chem-boiled-less', {
          cold: { value: test.coldMl, unit: 'Ml' },
          boiled: { value: test.boiledMl, unit: 'Ml' },
        }),
      ]
      return { ok: false, refused: 'boiled-less-than-cold', why, askWhom: [] }
    }
    const { eqPerKg, hydroxideFraction } = lotStrength(test)
    const hasRecord = recordEqPerKg !== undefined && recordCupsPerLiquidQt !== undefined
    const { values, reasons, warnings } = weakLotAdvice({
      ...input,
      lotEqPerKg: eqPerKg,
      hydroxideFraction,
      ...(hasRecord && {
        record: {
          eqPerKg: recordEqPerKg,
          gPerCup: recordGPerCup ?? input.gPerCup,
          cupsPerLiquidQt: recordCupsPerLiquidQt,
        },
      }),
    })
    return { ok: true, values, reasons, warnings }
  },
}
