/**
 * What one test of an alkali lot says, however it was tried, and a lot's strength over time from all of them.
 * A titration tells capacity and hydroxide; a strip hydroxide alone, to a factor of three; a trial cup neither.
 */
import type { AlkaliLotFact, BodyOf } from '@crib/journal'
import {
  type AshKept,
  type CalcResult,
  clopperPearson1934,
  isCorrosive,
  liquorIntensity,
  lotStrengthEqPerKg,
  type Reckoned,
  type Sentence,
  type Spread,
  stripHydroxideMolPerL,
} from '@crib/science'
import { say } from '../shared/say.ts'
import { ashStrengthCalc } from './ash-strength.calc.ts'
import { corrosiveWarning, tooStrong, valuesOf, wider } from './fields.ts'
import { lotStrength } from './lot-strength.ts'
import { titrationCalc } from './titration.calc.ts'

export type LotTestFound = BodyOf<'alkali-lot-tested'>['found']
type Found<W extends LotTestFound['way']> = Extract<LotTestFound, { readonly way: W }>

const STRIP_SOURCES = ['davies-1962', 'phreeqc-3'] as const

/** What a test says, with its band. Refused where its figures contradict each other or leave the model. */
export function readLotTest(found: LotTestFound): CalcResult {
  switch (found.way) {
    case 'vinegar': {
      const { way: _, ...titration } = found
      return titrationCalc.run(titration)
    }
    case 'strip':
      return readStrip(found)
    case 'trial-cup':
      return readTrialCup(found)
  }
}

function readStrip(found: Found<'strip'>): CalcResult {
  const { stripPH, liquorC, steepedG, steepWaterL } = found
  if (!(stripPH >= 7 && stripPH <= 14)) {
    const why = [say('kettle:test-strip-range', { given: Number(stripPH.toFixed(1)) })]
    return { ok: false, refused: 'strip-below-seven', why, askWhom: [] }
  }
  const hydroxide = stripHydroxideMolPerL(stripPH, liquorC)
  const cold = hydroxide && liquorIntensity({ potassium: hydroxide.value }, 25)
  if (!hydroxide || !cold) return tooStrong
  const value = valuesOf(found, STRIP_SOURCES)
  return {
    ok: true,
    values: [
      value('stripHydroxideMolPerL', hydroxide, 'MolPerL', 0.0001),
      ...(steepedG !== undefined && steepWaterL !== undefined
        ? [value('lotHydroxideEqPerKg', perKg(hydroxide, steepedG, steepWaterL), 'EqPerKg', 0.001)]
        : []),
    ],
    reasons: [
      say('kettle:chem-strip-band'),
      ...(liquorC > 30 ? [say('kettle:chem-hot-reading', { at: { value: liquorC, unit: 'C' } })] : []),
    ],
    warnings: isCorrosive(cold.pHAt25C) ? corrosiveWarning(cold.pHAt25C) : [],
  }
}

function readTrialCup(found: Found<'trial-cup'>): CalcResult {
  const { slippedCount, ofCount } = found
  if (slippedCount > ofCount) {
    const why = [say('kettle:more-slipped', { slipped: slippedCount, rubbed: ofCount })]
    return { ok: false, refused: 'more-slipped-than-rubbed', why, askWhom: [] }
  }
  const { low, high } = clopperPearson1934({ foundCount: slippedCount, ofCount })
  const share = { value: slippedCount / ofCount, low, high }
  return {
    ok: true,
    values: [
      valuesOf(found, ['clopper-pearson-1934'])('slippedFraction', share, 'Fraction', 0.01, { basis: 'own-record' }),
    ],
    reasons: [say('kettle:test-trial-tells')],
    warnings: [],
  }
}

export interface TestOverTime {
  readonly entryId: string
  /** UTC instant. */
  readonly at: string
  readonly way: LotTestFound['way']
  /** Alkali of the lot; a titration with its steep alone. [eq/kg] */
  readonly alkali?: Reckoned
  /** Of it, as hydroxide; a strip's band is a factor of three either way. [eq/kg] */
  readonly hydroxide?: Reckoned
  readonly gPerCup?: number
  readonly read: CalcResult
  /** Why nothing can be told of the lot's strength from it, where its figures contradict each other. */
  readonly notForStrength: readonly Sentence[]
}

/** Every test of a lot, oldest first, with the strength it tells of the lot where it tells one. */
export function lotOverTime({ tests }: Pick<AlkaliLotFact, 'tests'>): readonly TestOverTime[] {
  return tests.map(({ found, gPerCup, at }) => {
    const read = readLotTest(found)
    return {
      entryId: at.entryId,
      at: at.instant,
      way: found.way,
      read,
      notForStrength: read.ok ? [] : [say('kettle:test-not-for-strength'), ...read.why],
      ...strengthOf(found),
      ...(gPerCup !== undefined && { gPerCup }),
    }
  })
}

function strengthOf(found: LotTestFound): Pick<TestOverTime, 'alkali' | 'hydroxide'> {
  if (found.way === 'trial-cup' || found.steepedG === undefined || found.steepWaterL === undefined) return {}
  const { steepedG, steepWaterL } = found
  if (found.way === 'strip') {
    const band = found.stripPH >= 7 ? stripHydroxideMolPerL(found.stripPH, found.liquorC) : null
    const value = valuesOf(found, STRIP_SOURCES)
    return band ? { hydroxide: value('hydroxide', perKg(band, steepedG, steepWaterL), 'EqPerKg', 0.001) } : {}
  }
  if (found.boiledMl < found.coldMl) return {}
  const { liquor, eqPerKg } = lotStrength({ ...found, steepedG, steepWaterL })
  const value = valuesOf(found, ['vinegar-titration-worked', 'iupac-weights-2021'])
  return {
    alkali: value('alkali', eqPerKg, 'EqPerKg', 0.01),
    hydroxide: value('hydroxide', perKg(liquor.hydroxideMolPerL, steepedG, steepWaterL), 'EqPerKg', 0.01),
  }
}

function perKg(liquor: Spread, steepedG: number, steepWaterL: number): Spread {
  return wider(liquor, lotStrengthEqPerKg(1, steepWaterL, steepedG))
}

/** An ash that nobody measured, by how it was kept, with its whole spread. */
export function unmeasuredAsh(kept: AshKept): CalcResult {
  return ashStrengthCalc.run({ kept })
}
