/** Sheets made from real plans of S2, S3 and S4: the invented days worked out by planning and guidance. */
import { askWhom, cautionsFor, lidWaitRule, type Moment } from '@crib/guidance'
import {
  amountName,
  type BatchPlan,
  type BatchPlanInput,
  batchPlan,
  type CardInput,
  cannerCard,
  dayForPlan,
  loadCode,
  sheetAmounts,
} from '@crib/planning'
import type { Words } from '@crib/wording'
import { OSTREY_DAY } from '../../planning/testing/ostrey-day.ts'
import { batchSheetOfPlan, cannerCardOfPlan, type PaperDocument, type PaperSize } from '../src/index.ts'
import { setting } from './invented-days.ts'

export const THICK_FOR_THE_FREEZER: Partial<BatchPlanInput> = {
  hull: 'thick',
  alkali: 'calcium-hydroxide',
  washPattern: 'common-practice',
  endings: [
    { ending: 'freezer', shareFraction: 0.5 },
    { ending: 'dried', shareFraction: 0.5 },
  ],
}

export function ostreyPlan(changes: Partial<BatchPlanInput> = {}): BatchPlan {
  const { waterRecord, alkaliLot, ...input } = OSTREY_DAY
  const own = changes.alkali ? {} : { waterRecord, alkaliLot }
  const outcome = batchPlan({ ...input, ...own, ...changes } as BatchPlanInput)
  if (outcome.kind === 'refused') throw new Error(outcome.refused)
  return outcome
}

export function plannedBatchSheet(plan: BatchPlan, paper: PaperSize, words: Words): PaperDocument {
  const { day } = dayForPlan(plan, { clock: { from: 'start', clockMin: 450 }, peopleCount: 1 })
  const amounts = sheetAmounts(plan)
  // The table of loads says how many; a lid goes with each jar.
  const isForJars = (id: string) => !['loads', 'lidsToSetOut'].includes(id)
  return batchSheetOfPlan(
    plan,
    {
      batch: 'Lantern flint, 9 lb',
      date: '2026-11-03',
      place: 'Ostrey Point, 820 ft',
      amounts: [...amounts.toSetOut, ...amounts.toExpect, ...amounts.forJars.filter(({ id }) => isForJars(id))].map(
        (value) => ({
          label: amountName(value.id) ?? value.id,
          value,
        }),
      ),
      cautionsFor: (moment) => cautionsFor(moment as Moment),
      day,
      codeOf: ({ round }) => loadCode({ kitchenName: 'Ostrey Point', day: '2026-11-03', letter: 'A', round }),
      holdOf: () => plan.values.find(({ id }) => id === 'dialPsi'),
      record: 'crib:batch/LF-3',
    },
    setting(paper),
    words,
  )
}

const CONDITIONS: CardInput['conditions'] = {
  food: 'hominy',
  alkali: 'ash',
  hotPack: true,
  fill: 'loose',
  liquidClear: true,
  headspaceIn: 1,
  jar: 'pint',
  standingRead: true,
}

/** S3: the neighbour's place, 604 m, a dial tested true. */
export const NEIGHBOUR: CardInput = {
  siteName: 'The neighbour’s place',
  elevationFt: 604 / 0.3048,
  elevationKnownBy: 'map',
  dial: {
    marksEveryPsi: 1,
    restsAtPsi: 0,
    test: { testedDaysAgo: 200, readings: [10, 11, 12, 15].map((psi) => ({ truePsi: psi, readsPsi: psi })) },
  },
  conditions: CONDITIONS,
}

/** S4: grandmother's gauge, the dial alone. */
export const TALLOW: CardInput = {
  siteName: 'Tallow Ridge',
  elevationFt: 1340,
  elevationKnownBy: 'survey',
  rim: 'metal',
  dial: {
    marksEveryPsi: 1,
    restsAtPsi: 0,
    test: {
      testedDaysAgo: 0,
      readings: [
        { truePsi: 10, readsPsi: 11.5 },
        { truePsi: 11, readsPsi: 12.5 },
        { truePsi: 15, readsPsi: 16.5 },
      ],
    },
  },
  conditions: CONDITIONS,
}

/** S3: the cousin's camp, 2,440 m. */
export const CAMP: CardInput = { ...NEIGHBOUR, siteName: 'A cousin’s camp', elevationFt: 2440 / 0.3048 }

export function plannedCard(input: CardInput, paper: PaperSize, words: Words): PaperDocument {
  const lidWaitMin = lidWaitRule().figure
  const beside = { canner: 'Canner B', site: input.siteName ?? '', lidWaitMin, askWhom: askWhom() }
  return cannerCardOfPlan(cannerCard(input), beside, setting(paper), words)
}
