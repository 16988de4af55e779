/** The pot a dose is asked for, from a wish and what the book knows of the lot and the kitchen. */
import type { AlkaliLotFact, Facts } from '@crib/journal'
import { boilingTemperatureC, convert, type Quantity, type Sentence } from '@crib/science'
import { shelledLb } from '../shared/corn-measure.ts'
import { say } from '../shared/say.ts'
import type { DosedAlkali } from './alkali-dose.ts'
import { type DoseAsked, eqPerKgForHydroxide } from './dose-across.ts'
import { testedStrength } from './tested-lot.ts'

export interface DoseWish {
  readonly alkali: DosedAlkali
  readonly lot?: AlkaliLotFact | undefined
  /** Dry shelled corn, weighed or measured. */
  readonly corn: Quantity
  readonly waterL: number
  /** Alkali on the corn [eq/kg], or hydroxide in the pot [mol/L]. */
  readonly wish: 'on-corn' | 'in-pot'
  readonly wanted: number
}

export type DosePot =
  | {
      readonly kind: 'pot'
      readonly input: DoseAsked & { readonly temperatureC: number }
      /** All of it dissolved in that water. [eq/L] */
      readonly eqPerL: number
    }
  | { readonly kind: 'refused'; readonly why: readonly Sentence[] }

/** What calculation `alkali-dose` takes. [eq/kg, kg] */
const EQ_PER_KG = { min: 0.01, max: 1.5 } as const
const CORN_KG = { min: 0.05, max: 200 } as const

export function dosePot({ kitchen }: Pick<Facts, 'kitchen'>, wish: DoseWish): DosePot {
  const { alkali, lot, corn, waterL, wanted } = wish
  const cornKg = convert(shelledLb(corn, kitchen?.shelledLbPerLiquidQt), 'Lb', 'Kg')
  if (!(cornKg >= CORN_KG.min && cornKg <= CORN_KG.max)) {
    const [low, high, given] = [CORN_KG.min, CORN_KG.max, Number(cornKg.toFixed(3))].map((value) => ({
      value,
      unit: 'Kg' as const,
    })) as [Quantity, Quantity, Quantity]
    return { kind: 'refused', why: [say('kettle:dose-corn-outside', { given, low, high })] }
  }
  const tested = lot && testedStrength(lot)
  if (alkali === 'ash' && !tested) return { kind: 'refused', why: [say('kettle:chem-no-strength')] }
  const gPerCup = lot?.tests.findLast((test) => test.gPerCup !== undefined)?.gPerCup
  const pot = {
    alkali,
    cornKg,
    waterL,
    temperatureC: boilingTemperatureC(kitchen?.elevationM ?? 0),
    ...(tested && { lotEqPerKg: tested.strength.eqPerKg.value, hydroxideFraction: tested.strength.hydroxideFraction }),
    ...(gPerCup !== undefined && { gPerCup }),
  }
  const eqPerKgCorn = wish.wish === 'on-corn' ? wanted : eqPerKgForHydroxide(wanted, pot)
  if (eqPerKgCorn === null) return { kind: 'refused', why: [say('kettle:dose-unreachable')] }
  if (!(eqPerKgCorn >= EQ_PER_KG.min && eqPerKgCorn <= EQ_PER_KG.max)) {
    const [low, high, given] = [EQ_PER_KG.min, EQ_PER_KG.max, Number(eqPerKgCorn.toFixed(3))].map((value) => ({
      value,
      unit: 'EqPerKg' as const,
    })) as [Quantity, Quantity, Quantity]
    return { kind: 'refused', why: [say('kettle:dose-wanted-outside', { given, low, high })] }
  }
  return { kind: 'pot', input: { ...pot, eqPerKgCorn }, eqPerL: (eqPerKgCorn * cornKg) / waterL }
}
