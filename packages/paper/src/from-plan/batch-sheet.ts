/** A batch plan, with its day where one is laid out, onto one sheet. */
import type { BatchPlan, Day, Stage } from '@crib/planning'
import type { Sentence } from '@crib/science'
import { CODE_VERSION, type Quantity, type Reckoned, type Unit } from '@crib/science/values'
import { formatQuantity, formatReckoned, type Words } from '@crib/wording'
import { type BatchLoad, type BatchStage, batchSheet, type StageWriteIn } from '../documents/batch-sheet.ts'
import type { LabelledValue, PrintSetting, Said } from '../documents/said.ts'
import type { PaperDocument } from '../model.ts'

type PlannedLoad = NonNullable<BatchPlan['jars']>['rounds'][number][number]

/** What the plan itself does not hold. */
export interface BatchBeside {
  readonly batch: string
  /** ISO 8601. */
  readonly date: string
  readonly place?: string
  /** The plan's amounts under their names, in the order of the sheet. */
  readonly amounts: readonly LabelledValue[]
  /** The published cautions of a moment, gravest first; each is printed once, at its first moment. */
  readonly cautionsFor: (moment: string) => readonly Sentence[]
  readonly day?: Day
  readonly codeOf: (load: PlannedLoad) => string
  /** The number on the canner's card. */
  readonly holdOf: (cannerName: string) => Reckoned | undefined
  /** Said at the sort after the cook. */
  readonly sortNotes?: readonly Sentence[]
  readonly notes?: readonly Said[]
  readonly record?: string
}

const WRITE_INS: Readonly<Partial<Record<Stage['kind'], readonly StageWriteIn[]>>> = {
  'sort-dry': ['amount'],
  'alkali-boil': ['start', 'end'],
  stand: ['start', 'end'],
  rub: ['count'],
  'sort-wet': ['amount'],
  'final-cook': ['start', 'end', 'amount'],
  own: ['clock'],
}

export function batchSheetOfPlan(
  plan: BatchPlan,
  beside: BatchBeside,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const { batch, date, place, amounts, notes, record } = beside
  const onlyOnce = onceEach(beside.cautionsFor)
  const stages = plan.kettle.stages.flatMap((stage) => stageOf(stage, plan, beside, onlyOnce, setting, words))
  const jars = plan.jars
  return batchSheet(
    {
      batch,
      date,
      ...(place !== undefined && { place }),
      seedLines: [...plan.seed.sentences, ...plan.seed.warnings],
      amounts,
      stages: [...stages, ...(jars ? jarStages(onlyOnce) : [])],
      loads: jars ? jars.rounds.flat().map((load) => loadOf(load, plan, beside, setting)) : [],
      standing: jars?.standing ?? plan.jarsClosed?.why ?? [],
      ...(notes && { notes }),
      ...(record !== undefined && { record }),
    },
    setting,
    words,
  )
}

/** A stage the own water record leaves out is left out, as in the day. */
function stageOf(
  stage: Stage,
  plan: BatchPlan,
  { day, sortNotes = [] }: BatchBeside,
  cautionsFor: (moments: readonly string[]) => readonly Sentence[],
  setting: PrintSetting,
  words: Words,
): BatchStage[] {
  const water = plan.kettle.water.find(({ stageKind }) => stageKind === stage.kind)
  const isLeftOut = plan.input.waterRecord && !water && stage.waterToCornRatio > 0
  if (isLeftOut) return []
  const times = water?.timesCount ?? stage.timesCount
  const step = day?.steps.find(({ id }) => id === `pot-load-1:${stage.id}`)
  const writeIns = WRITE_INS[stage.kind]
  return [
    {
      what: stage.title,
      ...(step && { clock: shown(step.startMin, 'ClockMin', setting) }),
      ...(times > 1 && { timesCount: times }),
      details: [
        [minutesText(stage, plan, words), waterText(water?.eachLiquidGal, words), words.sentence(stage.lookFor)]
          .filter((text) => text !== '')
          .join(' '),
        ...(stage.kind === 'sort-wet' ? sortNotes.map(words.sentence) : []),
      ],
      // How to taste a jar stands on its label, where the hand is.
      cautions: cautionsFor(stage.cautionMoments.filter((moment) => moment !== 'tasting')),
      ...(writeIns && { writeIns }),
    },
  ]
}

export function minutesText({ kind, lowMin, highMin }: Stage, plan: BatchPlan, words: Words): string {
  const boil = plan.values.find(({ id }) => id === 'alkaliBoilMin')
  if (kind === 'alkali-boil' && boil) return words.say('paper:stage-minutes-boil', { minutes: formatReckoned(boil) })
  if (highMin === 0) return ''
  if (lowMin === highMin) return words.say('paper:stage-minutes-exact', { minutes: lowMin })
  return words.say('paper:stage-minutes', { low: lowMin, high: highMin })
}

export function waterText(eachLiquidGal: number | undefined, words: Words): string {
  if (!eachLiquidGal) return ''
  const water: Quantity = { value: Number(eachLiquidGal.toFixed(1)), unit: 'LiquidGal' }
  return words.say('paper:stage-water', { water: formatQuantity(water, 'alone') })
}

function jarStages(cautionsFor: (moments: readonly string[]) => readonly Sentence[]): BatchStage[] {
  return [
    { what: { key: 'paper:stage-fill' }, cautions: cautionsFor(['pack']), writeIns: ['count'] },
    { what: { key: 'paper:stage-canner' }, cautions: cautionsFor(['load']), writeIns: ['start', 'end'] },
    { what: { key: 'paper:stage-seals' }, cautions: cautionsFor(['store']), writeIns: ['count'] },
  ]
}

function loadOf(
  load: PlannedLoad,
  plan: BatchPlan,
  { day, codeOf, holdOf }: BatchBeside,
  setting: PrintSetting,
): BatchLoad {
  const steps = day?.steps.filter((step) => step.load === load.number) ?? []
  const hold = holdOf(load.cannerName)
  const processMin = plan.jars?.processMin
  return {
    code: codeOf(load),
    canner: load.cannerName,
    jars: shown(load.jarCount, 'Count', setting),
    ...(hold && { hold }),
    ...(processMin !== undefined && { processMin: shown(processMin, 'Min', setting) }),
    ...(steps.length > 0 && {
      startsAt: shown(Math.min(...steps.map(({ startMin }) => startMin)), 'ClockMin', setting),
      endsAt: shown(Math.max(...steps.map(({ endMin }) => endMin)), 'ClockMin', setting),
    }),
  }
}

/** A plan's plain number, to be printed as it is. */
function shown(value: number, unit: Unit, { edition }: PrintSetting): Reckoned {
  const rounding = { mode: 'nearest', step: 1 } as const
  return {
    id: unit,
    value,
    unit,
    rounding,
    basis: 'computed',
    sourceKeys: [],
    inputs: {},
    edition,
    codeVersion: CODE_VERSION,
  }
}

/** Cautions of several moments, leaving out those already printed higher up. */
export function onceEach(cautionsFor: BatchBeside['cautionsFor']) {
  const printed = new Set<string>()
  return (moments: readonly string[]): readonly Sentence[] =>
    moments.flatMap(cautionsFor).filter(({ key }) => {
      const isNew = !printed.has(key)
      printed.add(key)
      return isNew
    })
}
