/** Every public calculation of seed. */
import type { Calc } from '@crib/science'
import { germinationIntervalCalc, germinationSampleSizeCalc, replicateToleranceCalc } from './germination.calc.ts'
import { alleleLossCalc, effectiveSizeCalc, offTypeTrendCalc } from './line-advice.calc.ts'
import { seedLifeCalc, seedWhatIfCalc } from './seed-life.calc.ts'
import { seedLineCalc } from './seed-line.calc.ts'
import { seedReserveCalc } from './seed-reserve.calc.ts'
import { sequentialTestCalc, twoTestsCalc } from './two-tests.calc.ts'

export const SEED_CALCS: readonly Calc[] = [
  seedLineCalc,
  seedReserveCalc,
  germinationIntervalCalc,
  germinationSampleSizeCalc,
  replicateToleranceCalc,
  twoTestsCalc,
  sequentialTestCalc,
  seedLifeCalc,
  seedWhatIfCalc,
  effectiveSizeCalc,
  alleleLossCalc,
  offTypeTrendCalc,
]
