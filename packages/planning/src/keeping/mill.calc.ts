import type { Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import {
  type FlourInput,
  flourFromHominy,
  type MasaInput,
  masaFromFlour,
  type RoastInput,
  roastedYield,
} from './mill.ts'

const RULE = { limitSource: 'project-rule' } as const
const kg = (label: string) => ({ kind: 'quantity', label, unit: 'Kg', min: 0.001, max: 5000, ...RULE }) as const
const share = (label: string, min: number, max: number) =>
  ({ kind: 'quantity', label, unit: 'Fraction', min, max, ...RULE }) as const
const FLOUR_WATER = { ...share('Water of the flour; left out, 9.79 %', 0.02, 0.2), optional: true } as const

export const flourCalc: Calc<FlourInput> = {
  id: 'flour',
  title: 'Flour from hominy',
  question: 'How much flour does this hominy give once dried and ground?',
  inputs: {
    hominyKg: kg('Hominy, drained'),
    hominyWetFraction: share('Its water, wet basis', 0.3, 0.9),
    flourWetFraction: FLOUR_WATER,
    millLossFraction: { ...share('Left in mill and sieve; left out, 3 %', 0, 0.5), optional: true },
  },
  outputs: { driedKg: { label: 'Dried hominy', unit: 'Kg' }, flourKg: { label: 'Flour', unit: 'Kg' } },
  sourceKeys: ['hicks-cloud-nch-61', 'usda-sr'],
  example: { hominyKg: 5, hominyWetFraction: 0.75 },
  run: (input) => ({ ok: true, ...flourFromHominy(input) }),
}

export const masaCalc: Calc<MasaInput> = {
  id: 'masa',
  title: 'Water for masa, and tortillas',
  question: 'How much water does this flour take, and how many tortillas come of it?',
  inputs: {
    flourKg: kg('Flour of hominy'),
    flourWetFraction: FLOUR_WATER,
    masaWetFraction: share('Water of the dough, wet basis', 0.4, 0.7),
    ballG: { kind: 'quantity', label: 'Dough for one', unit: 'G', min: 5, max: 500, ...RULE },
    tortillaWetFraction: { ...share('Water of the tortilla; left out, 45.9 %', 0.2, 0.7), optional: true },
  },
  outputs: {
    waterKg: { label: 'Water', unit: 'Kg' },
    masaKg: { label: 'Dough', unit: 'Kg' },
    tortillas: { label: 'Tortillas', unit: 'Count' },
    tortillaG: { label: 'Each, off the griddle', unit: 'G' },
  },
  sourceKeys: ['usda-sr'],
  example: { flourKg: 1, masaWetFraction: 0.55, ballG: 30 },
  run: (input) => {
    const { masaWetFraction, tortillaWetFraction = 0 } = input
    if (tortillaWetFraction > masaWetFraction)
      return { ok: false, refused: 'not-drier', why: [say('keeping:tortilla-not-drier')], askWhom: [] }
    return { ok: true, ...masaFromFlour(input) }
  },
}

export const roastCalc: Calc<RoastInput> = {
  id: 'roasted-yield',
  title: 'Roasted or parched hominy',
  question: 'What is left of these kernels once roasted, and how much water must go?',
  inputs: {
    kernelsKg: kg('Kernels, surface dry'),
    kernelWetFraction: share('Their water, wet basis', 0.1, 0.85),
    roastedWetFraction: share('Water once roasted, about 0.02 to 0.04', 0.01, 0.1),
  },
  outputs: { roastedKg: { label: 'Roasted', unit: 'Kg' }, waterGoneKg: { label: 'Water gone', unit: 'Kg' } },
  sourceKeys: ['hicks-cloud-nch-61'],
  example: { kernelsKg: 1, kernelWetFraction: 0.5, roastedWetFraction: 0.03 },
  run: (input) => ({ ok: true, ...roastedYield(input) }),
}
