/**
 * From a sack or ears to every ending, as amounts with reasons. Leaves out: clock times (day/), what a canner's needle
 * must show (canner/), and anything a keeper has not said and no book prints.
 */

import { whatAlkaliFrees } from '@crib/guidance'
import type { Reckoned, Sentence } from '@crib/science'
import { seedLine } from '../seed/seed-answer.ts'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { alkaliPlan } from './alkali.ts'
import { stoppedBy } from './check-input.ts'
import { type CornPlan, cornForJars, cornFromHand } from './corn.ts'
import { endingPlan } from './endings.ts'
import type { BatchPlanInput, Ending, Spread } from './input.ts'
import { jarProcess } from './jar-process.ts'
import { FILL_FRACTION, HOMINY_PER_DRY_VOLUME, JAR_LIQUID_QT, jarPlan } from './jars.ts'
import type { BatchOutcome, BatchPlan, JarSection, KettleSection, PlanSection } from './plan.ts'
import { POT_FILL_LIMIT_FRACTION, potLoads, WATER_TO_CORN_RATIO } from './pots.ts'
import { builtInStages, stageQuestions } from './stages.ts'
import { waterPlan } from './water.ts'

/** Volume doubles to triples in the cook, and goes on in the jar.  common practice, no source */
export const SWELLING_IN_POT: Spread = { low: 2, middle: 2.5, high: 3 }

/** In the order to offer them: jars last. */
const OFFER_ORDER: readonly Ending[] = ['tonight', 'freezer', 'dried', 'flour', 'roasted']

/**
 * A batch plan from what is at hand, or from the jars wanted. Seed comes off first; counts round up; food rounds down.
 * Nothing is thrown for what a keeper may mistype: the outcome says what stops it.
 */
export function batchPlan(input: BatchPlanInput): BatchOutcome {
  const stop = stoppedBy(input)
  if (stop) return { kind: 'refused', ...stop, askWhom: [] }
  const seedOutcome = seedLine(input.seed)
  if (seedOutcome.kind === 'refused') return { ...seedOutcome, askWhom: [] }
  const seed = seedOutcome.line

  const ratio = input.hominyPerDryVolume ?? HOMINY_PER_DRY_VOLUME
  const keptWet = 1 - (input.sortedOutWetFraction ?? 0)
  const jarShare = input.endings.find(({ ending }) => ending === 'jars')?.shareFraction ?? 0
  const corn =
    input.from.kind === 'jars'
      ? cornForJars(input, dryCornForJars(input, input.from.jarCount, ratio.middle * keptWet * jarShare))
      : cornFromHand(input, seed)
  if ('missingLb' in corn) {
    return {
      kind: 'refused',
      refused: 'seed-takes-it-all',
      why: [say('seed:first'), say('seed:takes-it-all')],
      askWhom: [],
    }
  }

  const dryCornLiquidQt = corn.dryCornLiquidQt
  const hominyQt = {
    low: dryCornLiquidQt * ratio.low * keptWet,
    middle: dryCornLiquidQt * ratio.middle * keptWet,
    high: dryCornLiquidQt * ratio.high * keptWet,
  }
  const isOwnRecord = input.hominyPerDryVolume !== undefined
  const kettle = kettleSection(input, corn, jarShare > 0)
  const hominy = hominySection(input, dryCornLiquidQt, hominyQt)
  const endings = OFFER_ORDER.flatMap((ending) => {
    const share = input.endings.find((each) => each.ending === ending)?.shareFraction ?? 0
    if (share === 0 || ending === 'jars') return []
    return [
      endingPlan(ending, share, {
        hominyQt: scaled(hominyQt, share),
        dryCornLb: corn.cleanCornLb * share,
        isOwnRecord,
      }),
    ]
  })
  const { jars, jarsClosed } = jarSection(input, kettle, dryCornLiquidQt, scaled(hominyQt, jarShare), jarShare)

  const seedValues = seed.seedPutByLb ? [seed.seedPutByLb] : []
  const sections: readonly PlanSection[] = [corn, kettle, hominy, ...(jars ? [jars] : [])]
  return {
    kind: 'planned',
    input,
    seed,
    corn,
    kettle,
    hominy,
    endings,
    jars,
    jarsClosed,
    values: [
      ...seedValues,
      ...sections.slice(0, 3).flatMap((section) => section.values),
      ...endings.flatMap((ending) => ending.values),
      ...(jars?.values ?? []),
    ],
    reasons: [
      ...seed.sentences,
      ...sections.slice(0, 3).flatMap((section) => section.reasons),
      ...(jarShare > 0 ? [say('kettle:fresh-frozen-dried-first')] : []),
      ...endings.flatMap((ending) => ending.sentences),
      ...(jars ? [...jars.standing, ...jars.reasons] : []),
      ...whatAlkaliFrees(),
    ],
    warnings: [...seed.warnings, ...sections.flatMap((section) => section.warnings), ...(jarsClosed?.why ?? [])],
  }
}

function scaled({ low, middle, high }: Spread, share: number): Spread {
  return { low: low * share, middle: middle * share, high: high * share }
}

function dryCornForJars(input: BatchPlanInput, jarCount: number, hominyPerDryQt: number): number {
  const { fill = 'loose-to-headspace', jarSize = 'quart' } = input
  return (jarCount * FILL_FRACTION[fill] * JAR_LIQUID_QT[jarSize]) / hominyPerDryQt
}

function kettleSection(input: BatchPlanInput, corn: CornPlan, hasJars: boolean): KettleSection {
  const waterToCornRatio = input.waterToCornRatio ?? WATER_TO_CORN_RATIO
  const fillLimitFraction = input.potFillLimitFraction ?? POT_FILL_LIMIT_FRACTION
  const { alkali, cornType, hull, pots } = input
  const stages =
    input.stages ??
    builtInStages({ pattern: input.washPattern ?? 'common-practice', cornType, hull, alkali, waterToCornRatio })
  const dose = alkaliPlan(input, corn.dryCornLiquidQt, corn.cleanCornLb)
  const loads = potLoads({ dryCornLiquidQt: corn.dryCornLiquidQt, pots, fillLimitFraction, waterToCornRatio })
  const largest = loads.reduce((most, load) => Math.max(most, load.cornLiquidQt), 0)
  const inputs = { potFillLimitFraction: fillLimitFraction, waterToCornRatio, dryCornLiquidQt: corn.dryCornLiquidQt }
  const volume = (id: string, value: number): Reckoned =>
    reckon({ id, value, unit: 'LiquidQt', rounding: nearest(0.01), basis: 'project-rule', inputs })
  const water = loads.length > 0 ? waterPlan(stages, loads, input.waterRecord) : null
  return {
    potLoads: loads,
    stages,
    water: water?.stages ?? [],
    values: [
      ...dose.values,
      dose.alkaliBoilMin,
      ...(loads.length === 0
        ? []
        : [
            volume('cornPerPotLoadLiquidQt', largest),
            volume('startingVolumeLiquidQt', largest * (1 + waterToCornRatio)),
            reckon({
              id: 'potLoads',
              value: loads.length,
              unit: 'Count',
              rounding: { mode: 'up', step: 1 },
              basis: 'project-rule',
              inputs,
            }),
          ]),
      ...(water ? [water.waterPerPotLoadLiquidGal, water.waterLiquidGal, water.waterL] : []),
    ],
    reasons: [
      ...dose.reasons,
      say('kettle:pot-two-thirds'),
      ...(water
        ? [say(input.waterRecord ? 'kettle:water-own-record' : 'kettle:water-common'), say('kettle:water-not-counted')]
        : []),
    ],
    warnings: [
      ...dose.warnings,
      ...stageQuestions(stages, hasJars),
      ...(pots.length === 0 ? [say('kettle:no-pot')] : loads.length === 0 ? [say('kettle:pots-too-small')] : []),
    ],
  }
}

function hominySection(input: BatchPlanInput, dryCornLiquidQt: number, hominyQt: Spread): PlanSection {
  const own = input.hominyPerDryVolume
  const ratio = own ?? HOMINY_PER_DRY_VOLUME
  const inputs = {
    dryCornLiquidQt,
    hominyPerDryVolume: { ...ratio },
    sortedOutWetFraction: input.sortedOutWetFraction ?? 0,
  }
  const reasons: Sentence[] = [
    own
      ? say('kettle:hominy-own-record', {
          ratio: own.middle,
          count: own.recordsCount ?? 1,
          book: HOMINY_PER_DRY_VOLUME.middle,
        })
      : say('kettle:hominy-range', { low: ratio.low, middle: ratio.middle, high: ratio.high }),
  ]
  return {
    values: [
      reckon({
        id: 'hominyLiquidQt',
        value: hominyQt.middle,
        unit: 'LiquidQt',
        rounding: nearest(0.1),
        low: hominyQt.low,
        high: hominyQt.high,
        basis: own ? 'own-record' : 'published',
        sourceKeys: own ? [] : ['so-easy-to-preserve-1999', 'hominy-yield-statements'],
        inputs,
      }),
      reckon({
        id: 'swollenInPotLiquidQt',
        value: dryCornLiquidQt * SWELLING_IN_POT.middle,
        unit: 'LiquidQt',
        rounding: nearest(0.1),
        low: dryCornLiquidQt * SWELLING_IN_POT.low,
        high: dryCornLiquidQt * SWELLING_IN_POT.high,
        basis: 'common-practice',
        inputs,
      }),
    ],
    reasons,
    warnings: [],
  }
}

function jarSection(
  input: BatchPlanInput,
  kettle: KettleSection,
  dryCornLiquidQt: number,
  hominyLiquidQt: Spread,
  jarShare: number,
): Pick<BatchPlan, 'jars' | 'jarsClosed'> {
  if (jarShare === 0) return { jars: null, jarsClosed: null }
  const plan = jarPlan({ input, dryCornLiquidQt, hominyLiquidQt })
  const process = jarProcess(input, kettle.stages, plan.rounds.length)
  if (process.kind === 'closed') return { jars: null, jarsClosed: { why: process.why, askWhom: process.askWhom } }
  const jars: JarSection = {
    jarSize: plan.jarSize,
    fill: plan.fill,
    rounds: plan.rounds,
    ...(process.processMin !== undefined && { processMin: process.processMin }),
    standing: process.standing,
    values: [...plan.values, ...process.values],
    reasons: [...plan.reasons, ...process.reasons],
    warnings: plan.rounds.length === 0 ? [say('kettle:no-canner')] : [],
  }
  return { jars, jarsClosed: null }
}
