/** A batch plan onto a sheet for a class. Leaves out whose corn it is, the keeper's own steps, and jars. */
import type { BatchPlan } from '@crib/planning'
import type { Sentence } from '@crib/science'
import type { Words } from '@crib/wording'
import { classSheet } from '../documents/class-sheet.ts'
import type { LabelledValue, PrintSetting, Said } from '../documents/said.ts'
import type { PaperDocument } from '../model.ts'
import { minutesText, onceEach, waterText } from './batch-sheet.ts'

/** Said before anything is lit: whoever comes later in the walk is near the pot as well. */
const BEFORE = ['seed', 'alkali', 'first-rub']

export interface ClassBeside {
  /** Names a corn only where its lot is opened to the community. */
  readonly contents: Said
  readonly conditions: readonly string[]
  /** ISO 8601. */
  readonly date?: string
  readonly amounts: readonly LabelledValue[]
  readonly cautionsFor: (moment: string) => readonly Sentence[]
}

export function classSheetOfPlan(
  plan: BatchPlan,
  { cautionsFor, ...beside }: ClassBeside,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const onlyOnce = onceEach(cautionsFor)
  const before = onlyOnce(BEFORE)
  const stages = plan.kettle.stages
    // A keeper's own step is in their own words, which are theirs to hand on.
    .filter(({ kind }) => kind !== 'own')
    .map((stage) => {
      const water = plan.kettle.water.find(({ stageKind }) => stageKind === stage.kind)
      const details = [minutesText(stage, plan, words), waterText(water?.eachLiquidGal, words)]
      return {
        what: stage.title,
        details: details.filter((text) => text !== ''),
        lookFor: stage.lookFor,
        cautions: onlyOnce(stage.cautionMoments.filter((moment) => moment !== 'tasting')),
      }
    })
  return classSheet({ ...beside, before, stages }, setting, words)
}
