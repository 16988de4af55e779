/**
 * What is left of the dose of one pot, from its plan and what was written down: in the plan's own measure where one lot went
 * in, else by equivalents where every lot was titrated. Leaves out: whether more is wanted at all; the rub says that.
 */
import type { BatchFact, Facts } from '@crib/journal'
import { convert, type Reckoned, type Sentence, type Unit } from '@crib/science'
import { potDose, potWalk } from '../batch/kettle-walk.ts'
import type { BatchPlan } from '../batch/plan.ts'
import { say } from '../shared/say.ts'
import { partsLeft } from './dose-left.ts'
import { valuesOf } from './fields.ts'
import { alkaliInPot, alkaliOf } from './own-strengths.ts'

export interface PotDoseLeft {
  readonly left: Reckoned
  /** The next step: half of the dose at first, then a quarter. */
  readonly step: Reckoned
  readonly sentences: readonly Sentence[]
}

/** Null without a plan that tells a dose, or where two lots went in whose strengths nobody measured. */
export function potDoseLeft(
  facts: Facts,
  batch: BatchFact,
  plan: BatchPlan | null,
  potLoad: number,
  nextLotId: string | undefined,
): PotDoseLeft | null {
  const dose = potDose(plan, potLoad)
  if (!dose) return null
  const { seen } = potWalk(batch, plan, potLoad)
  const lots = new Set(batch.additions.filter((each) => each.potLoad === potLoad).map(({ alkaliLotId }) => alkaliLotId))
  const isOneLot = [...lots].every((lotId) => lotId === nextLotId)
  const soFar = isOneLot ? soFarIn(dose.unit, seen) : byStrength(facts, batch, plan, potLoad, dose, nextLotId)
  if (soFar === null) return null
  const { left, step, over } = partsLeft(dose.value, soFar)
  const value = valuesOf({ potLoad, wanted: dose.value, soFar }, dose.sourceKeys)
  const finest = dose.unit === 'Cup' || dose.unit === 'Tbsp' ? 0.25 : 0.1
  return {
    left: value('doseLeft', left, dose.unit, finest),
    step: value('doseStep', step, dose.unit, finest),
    sentences: [
      ...(over > 0 || left === 0 ? [say('kettle:dose-all-in')] : []),
      ...(left > 0 && soFar === 0 ? [say('kettle:dose-half-first')] : []),
      say('kettle:rub-not-clock'),
    ],
  }
}

/** What went in, in the plan's measure; null where some of it was told in the other. */
function soFarIn(
  unit: Unit,
  { alkaliCups, alkaliKg }: { readonly alkaliCups: number; readonly alkaliKg: number },
): number | null {
  if (unit === 'Cup') return alkaliKg > 0 ? null : alkaliCups
  const isMass = unit === 'G' || unit === 'Oz' || unit === 'Lb' || unit === 'Kg'
  if (!isMass) return alkaliKg + alkaliCups > 0 ? null : 0
  return alkaliCups > 0 ? null : convert(alkaliKg, 'Kg', unit)
}

/** The same by equivalents, told in the plan's measure of the next lot. */
function byStrength(
  facts: Facts,
  batch: BatchFact,
  plan: BatchPlan | null,
  potLoad: number,
  { unit }: Reckoned,
  nextLotId: string | undefined,
): number | null {
  const next = nextLotId === undefined ? undefined : facts.alkaliLots[nextLotId]
  const inPot = plan && alkaliInPot(facts, batch, potLoad)
  if (!next || !inPot) return null
  const one = unit === 'Cup' ? { cups: 1 } : unit === 'G' || unit === 'Oz' ? { massKg: convert(1, unit, 'Kg') } : null
  const eqOfOne = one && alkaliOf(next, one)
  return eqOfOne ? inPot.value / eqOfOne.value : null
}
