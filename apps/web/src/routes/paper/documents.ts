/** Documents of the book: facts and plans handed to the builders of package paper. Leaves out every number of its own. */
import { askWhom, cautionsFor, GUIDANCE_EDITION, lidWaitRule, MOMENTS, type Moment } from '@crib/guidance'
import { type CannerFact, cornOnPaper, type Facts, recordAddress, type Visibility } from '@crib/journal'
import {
  batchSheetOfPlan,
  cannerCardOfPlan,
  classSheetOfPlan,
  type GaugeTest,
  type PaperDocument,
  type PaperSize,
  type PrintSetting,
  wallBoard,
} from '@crib/paper'
import {
  amountName,
  type BatchPlan,
  cardOfCanner,
  classAmounts,
  type Day,
  dayForPlan,
  type HullingAlkali,
  type JarSize,
  jarCapacity,
  jarName,
  type Load,
  type PlannedDay,
  planLoads,
  plannedInputs,
  planOfBatch,
  sheetAmounts,
  sortPaper,
  testDueOn,
} from '@crib/planning'
import { CODE_VERSION, ceilCount, convert, type Reckoned, type Unit } from '@crib/science'
import { formatQuantity, type Words } from '@crib/wording'

export interface Desk {
  readonly facts: Facts
  readonly words: Words
  readonly paper: PaperSize
  readonly isLargePrint: boolean
  /** Whose eyes the sheet is for, where a sheet may be for others than the keeper. */
  readonly audience: Visibility
  /** YYYY-MM-DD */
  readonly today: string
  readonly isStandingRead: (alkali: HullingAlkali) => boolean
}

export function settingOf({ facts, paper, isLargePrint }: Desk): PrintSetting {
  return {
    paper,
    largePrint: isLargePrint,
    invented: facts.kitchen?.demo ?? false,
    edition: GUIDANCE_EDITION,
    madeAt: new Date().toISOString(),
  }
}

/** A plain number of the book, to be printed as it is. */
export function asTyped(value: number, unit: Unit): Reckoned {
  const rounding = { mode: 'nearest', step: 0.01 } as const
  return {
    id: unit,
    value,
    unit,
    rounding,
    basis: 'as-typed',
    sourceKeys: [],
    inputs: {},
    edition: GUIDANCE_EDITION,
    codeVersion: CODE_VERSION,
  }
}

export function elevationFt({ facts }: Desk): number | undefined {
  const metres = facts.kitchen?.elevationM
  return metres === undefined ? undefined : Number(convert(metres, 'M', 'Ft').toFixed(1))
}

/** The kitchen's name and elevation, on one line. */
function placeOf(desk: Desk): string {
  const ft = elevationFt(desk)
  const name = desk.facts.kitchen?.name ?? ''
  return [name, ft === undefined ? '' : formatQuantity({ value: ft, unit: 'Ft' })].filter(Boolean).join(', ')
}

export interface PlannedSheet {
  readonly batch: string
  readonly plan: BatchPlan
  readonly plannedDay: PlannedDay | null
  readonly record?: string
}

function loadsOf(desk: Desk, plan: BatchPlan, date: string): readonly Load[] {
  const { jars } = plan
  const jarCount = ceilCount(jars?.values.find(({ id }) => id === 'jars')?.value ?? 0)
  if (!jars || jarCount < 1) return []
  const planned = planLoads({
    jarCount,
    jarSize: jars.jarSize,
    canners: plan.input.canners.map((canner) => ({ name: canner.name, capacity: jarCapacity(canner, jars.jarSize) })),
    kitchenName: desk.facts.kitchen?.name ?? '',
    day: date,
  })
  return planned?.rounds.flat() ?? []
}

function holdOf(desk: Desk, plan: BatchPlan, date: string): (cannerName: string) => Reckoned | undefined {
  return (cannerName) => {
    const canner = Object.values(desk.facts.canners).find(({ name }) => name === cannerName)
    const card =
      canner &&
      cardOfCanner(canner, desk.facts.kitchen, {
        today: date,
        jarSize: plan.jars?.jarSize ?? 'quart',
        alkali: plan.input.alkali,
        isHotPack: plan.kettle.stages.at(-1)?.isHotPack === true,
        isStandingRead: plan.input.isStandingRead,
      })
    return card?.kind === 'card' ? card.routes.find(({ usable }) => usable)?.holdAt : undefined
  }
}

/** The clock of the day the sheet is for: of the kettle where it is laid out over two. */
function dayOf(plan: BatchPlan, plannedDay: PlannedDay | null): Day | undefined {
  if (!plannedDay || (plannedDay.counts !== 'canners' && plan.kettle.potLoads.length === 0)) return undefined
  const { day, twoDays } = dayForPlan(plan, plannedDay)
  return plannedDay.dayCount === 2 && twoDays ? twoDays.hull : day
}

export function batchSheetDocument(desk: Desk, { batch, plan, plannedDay, record }: PlannedSheet): PaperDocument {
  const date = plannedDay?.date ?? desk.today
  const loads = loadsOf(desk, plan, date)
  const day = dayOf(plan, plannedDay)
  const { toSetOut, toExpect, forJars } = sheetAmounts(plan)
  return batchSheetOfPlan(
    plan,
    {
      batch,
      date,
      place: placeOf(desk),
      amounts: [...toSetOut, ...toExpect, ...forJars].map((value) => ({
        label: amountName(value.id) ?? value.id,
        value,
      })),
      cautionsFor: (moment) => (isMoment(moment) ? cautionsFor(moment) : []),
      sortNotes: sortPaper(desk.facts),
      ...(day && { day }),
      codeOf: ({ number }) => loads[number - 1]?.loadCode ?? String(number),
      holdOf: holdOf(desk, plan, date),
      notes: plan.warnings,
      ...(record !== undefined && { record }),
    },
    settingOf(desk),
    desk.words,
  )
}

function isMoment(moment: string): moment is Moment {
  return (MOMENTS as readonly string[]).includes(moment)
}

/** Null where the batch was planned by something that kept other inputs, or its plan no longer stands. */
export function sheetOfBatch(desk: Desk, batchId: string): PlannedSheet | null {
  const batch = desk.facts.batches[batchId]
  if (!batch) return null
  const plan = planOfBatch(batch)
  if (plan?.kind !== 'planned') return null
  return {
    batch: batch.plan.title,
    plan,
    plannedDay: plannedInputs(batch)?.day ?? null,
    record: recordAddress('batch', batchId),
  }
}

/** For whoever comes to learn: no household, no lot, a corn only where it is opened to the community. */
export function classSheetDocument(desk: Desk, batchId: string): PaperDocument | null {
  const sheet = sheetOfBatch(desk, batchId)
  if (!sheet) return null
  const { corn, conditions } = cornOnPaper(desk.facts, batchId, 'community')
  const date = sheet.plannedDay?.date
  return classSheetOfPlan(
    sheet.plan,
    {
      contents: corn === undefined ? { key: 'pantry:hominy' } : { key: 'pantry:hominy-of', params: { name: corn } },
      conditions,
      ...(date !== undefined && { date }),
      amounts: classAmounts(sheet.plan).map((value) => ({ label: amountName(value.id) ?? value.id, value })),
      cautionsFor: (moment) => (isMoment(moment) ? cautionsFor(moment) : []),
    },
    settingOf(desk),
    desk.words,
  )
}

export interface CardChoice {
  readonly canner: CannerFact
  readonly jarSize: JarSize
  readonly alkali: HullingAlkali
  readonly loadCodes: readonly string[]
}

/** Null while the kitchen's elevation is not told. */
export function cannerCardDocument(
  desk: Desk,
  { canner, jarSize, alkali, loadCodes }: CardChoice,
): PaperDocument | null {
  const card = cardOfCanner(canner, desk.facts.kitchen, {
    today: desk.today,
    jarSize,
    alkali,
    isHotPack: true,
    isStandingRead: desk.isStandingRead(alkali),
  })
  if (!card) return null
  const test = canner.gaugeTests.at(-1)
  return cannerCardOfPlan(
    card,
    {
      canner: canner.name,
      site: placeOf(desk),
      jar: jarName(jarSize),
      lidWaitMin: lidWaitRule().figure,
      askWhom: askWhom(),
      ...(loadCodes.length > 0 && { loadCodes }),
      ...(test && { gaugeTest: gaugeTestOf(test) }),
    },
    settingOf(desk),
    desk.words,
  )
}

function gaugeTestOf({ testedOn, tester, readings }: CannerFact['gaugeTests'][number]): GaugeTest {
  return {
    testedOn,
    tester,
    dueOn: testDueOn(testedOn),
    points: readings.map(({ truePsi, readsPsi }) => ({
      truth: asTyped(truePsi, 'PsiGauge'),
      reads: asTyped(readsPsi, 'PsiGauge'),
    })),
  }
}

/** Load codes only; null where the plan has no loads or a canner no number. */
export function wallBoardDocument(desk: Desk, { plan, plannedDay }: PlannedSheet): PaperDocument | null {
  const date = plannedDay?.date ?? desk.today
  const loads = loadsOf(desk, plan, date)
  const hold = holdOf(desk, plan, date)
  const day = plannedDay && dayForPlan(plan, plannedDay)
  const steps = (plannedDay?.dayCount === 2 && day?.twoDays ? day.twoDays.can : day?.day)?.steps ?? []
  const rows = loads.flatMap((load, index) => {
    const held = hold(load.cannerName)
    const begins = steps.find(({ id }) => id === `load-${index + 1}:heat`)?.startMin
    if (!held || begins === undefined) return []
    return [
      {
        code: load.loadCode,
        canner: load.cannerName,
        jars: asTyped(load.jarCount, 'Count'),
        hold: held,
        startsAt: asTyped(Math.round(begins), 'ClockMin'),
      },
    ]
  })
  return rows.length === 0 ? null : wallBoard({ date, loads: rows }, settingOf(desk), desk.words)
}
