import { type Calc, type Mixture, type Solid, settle } from '@crib/science'
import { say } from '../shared/say.ts'
import { amount, corrosiveWarning, tooStrong, valuesOf } from './fields.ts'

interface WaterChemistryInput extends Mixture {
  readonly temperatureC: number
  readonly areSolidsLet?: boolean
}

const sourceKeys = ['plummer-busenberg-1982', 'davies-1962', 'thermoddem-1-10', 'phreeqc-3'] as const
const total = (label: string) => amount(label, 'MolPerL', 0, 1, { optional: true })
/** Calcite was not measured above it. [°C] */
const CALCITE_TO_C = 90

export const waterChemistryCalc: Calc<WaterChemistryInput> = {
  id: 'water-chemistry',
  title: 'What is in a kettle liquor',
  question: 'What pH, hydroxide and carbonate has a liquor made of these, and what lies at the bottom?',
  inputs: {
    sodium: total('Sodium, in all'),
    potassium: total('Potassium, in all'),
    calcium: total('Calcium, in all, dissolved or not'),
    magnesium: total('Magnesium, in all'),
    carbon: total('Carbonate, bicarbonate and CO2, in all'),
    boron: total('Boron, in all'),
    acetate: total('Acetate, in all'),
    chloride: total('Chloride, in all'),
    temperatureC: amount('Temperature', 'C', 0, 100),
    areSolidsLet: { kind: 'flag', label: 'Solids may lie at the bottom (yes unless told)', optional: true },
  },
  outputs: {
    pH: { label: 'pH at that temperature', unit: 'PH' },
    pHAt25C: { label: 'The same liquor cold, at 25 °C', unit: 'PH' },
    hydroxideMolPerL: { label: 'Hydroxide: how strongly it bites', unit: 'MolPerL' },
    carbonateMolPerL: { label: 'Carbonate', unit: 'MolPerL' },
    bicarbonateMolPerL: { label: 'Bicarbonate', unit: 'MolPerL' },
    calciumMolPerL: { label: 'Calcium in solution', unit: 'MolPerL' },
    ionicStrengthMolPerL: { label: 'Ionic strength', unit: 'MolPerL' },
    portlanditeMolPerL: { label: 'Calcium hydroxide at the bottom', unit: 'MolPerL' },
    calciteMolPerL: { label: 'Calcium carbonate at the bottom', unit: 'MolPerL' },
  },
  sourceKeys,
  example: { potassium: 0.09, carbon: 0.01, temperatureC: 25 },
  run: (input) => {
    const { temperatureC, areSolidsLet = true, ...mixture } = input
    const solidsAt = (t: number): readonly Solid[] =>
      areSolidsLet && mixture.calcium ? ['portlandite', ...(t <= CALCITE_TO_C ? (['calcite'] as const) : [])] : []
    const settled = settle(mixture, solidsAt(temperatureC), temperatureC)
    const cold = settle(mixture, solidsAt(25), 25)
    if (settled.kind !== 'settled' || cold.kind !== 'settled') return tooStrong
    const value = valuesOf(input, sourceKeys)
    const { liquor, portlanditeMolPerKg, calciteMolPerKg } = settled
    const { OH, CO3, HCO3, Ca, CaOH, CaCO3, CaHCO3 } = liquor.molPerKg
    return {
      ok: true,
      values: [
        value('pH', liquor.pH, 'PH', 0.01),
        value('pHAt25C', cold.liquor.pH, 'PH', 0.01),
        value('hydroxideMolPerL', OH, 'MolPerL', 0.0001),
        value('carbonateMolPerL', CO3, 'MolPerL', 0.0001),
        value('bicarbonateMolPerL', HCO3, 'MolPerL', 0.0001),
        value('calciumMolPerL', Ca + CaOH + CaCO3 + CaHCO3, 'MolPerL', 0.0001),
        value('ionicStrengthMolPerL', liquor.ionicStrengthMolPerKg, 'MolPerL', 0.0001),
        value('portlanditeMolPerL', portlanditeMolPerKg, 'MolPerL', 0.0001),
        value('calciteMolPerL', calciteMolPerKg, 'MolPerL', 0.0001),
      ],
      reasons: [
        ...(temperatureC > 30 ? [say('kettle:chem-hot-reading', { at: { value: temperatureC, unit: 'C' } })] : []),
        ...(portlanditeMolPerKg > 0 ? [say('kettle:chem-lime-reserve')] : []),
      ],
      warnings: [
        ...corrosiveWarning(cold.liquor.pH),
        ...(liquor.isBeyondModel ? [say('kettle:chem-beyond-model')] : []),
      ],
    }
  },
}
