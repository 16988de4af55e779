/** Documents of the book: facts and plans handed to the builders of package paper. Leaves out every number of its own. */
import {
  askWhom,
  boilBeforeTastingMin,
  cautionsFor,
  GUIDANCE_EDITION,
  lidWaitRule,
  MOMENTS,
  type Moment,
} from '@crib/guidance'
import type { CannerFact, Facts, FoodLotFact, RunFact } from '@crib/journal'
import {
  bagLabels,
  batchSheetOfPlan,
  cannerCardOfPlan,
  type GaugeTest,
  jarLabels,
  type LabelSheetId,
  type PaperDocument,
  type PaperSize,
  type PrintSetting,
  processLogOfPlan,
  processLog as processLogSheet,
  wallBoard,
} from '@crib/paper'
import {
  amountName,
  type BatchPlan,
  cardOfCanner,
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
  processLog,
  publishedRunRules,
  runClock,
  runRecords,
  sheetAmounts,
} from '@crib/planning'
import { CODE_VERSION, ceilCount, convert, type Reckoned, type Unit } from '@crib/science'
import { formatQuantity, type Words } from '@crib/wording'

export interface Desk {
  readonly facts: Facts
  readonly words: Words
  readonly paper: PaperSize
  /** YYYY-MM-DD */
  readonly today: string
  readonly isStandingRead: (alkali: HullingAlkali) => boolean
}

function settingOf({ facts, paper }: Desk): PrintSetting {
  return {
    paper,
    invented: facts.kitchen?.demo ?? false,
    edition: GUIDANCE_EDITION,
    madeAt: new Date().toISOString(),
  }
}

/** A plain number of the book, to be printed as it is. */
function asTyped(value: number, unit: Unit): Reckoned {
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

function elevationFt({ facts }: Desk): number | undefined {
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
  if (!plannedDay || plan.kettle.potLoads.length === 0) return undefined
  const { day, twoDays } = dayForPlan(plan, { clock: plannedDay.clock, peopleCount: plannedDay.peopleCount })
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
    record: `crib:batch/${batchId}`,
  }
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
  const due = new Date(`${testedOn}T00:00:00Z`)
  due.setUTCFullYear(due.getUTCFullYear() + 1)
  return {
    testedOn,
    tester,
    dueOn: due.toISOString().slice(0, 10),
    points: readings.map(({ truePsi, readsPsi }) => ({
      truth: asTyped(truePsi, 'PsiGauge'),
      reads: asTyped(readsPsi, 'PsiGauge'),
    })),
  }
}

export function blankLogDocument(desk: Desk): PaperDocument {
  const ft = elevationFt(desk)
  return processLogSheet(
    { head: ft === undefined ? {} : { elevation: asTyped(ft, 'Ft') }, standing: [] },
    settingOf(desk),
    desk.words,
  )
}

export function runLogDocument(desk: Desk, run: RunFact): PaperDocument {
  const { begun } = run
  const { words } = desk
  const setup = {
    gauge: begun.gauge,
    requiredReadingPsi: begun.requiredReadingPsi,
    processMin: begun.processMin,
    rules: publishedRunRules(),
    zone: begun.at.zone,
  }
  const records = runRecords(run)
  const ft = elevationFt(desk)
  const log = processLog({
    setup,
    records,
    nowMs: Date.now(),
    loadCode: begun.loadCode,
    cannerName: begun.cannerName,
    ...(ft !== undefined && { elevationFt: ft }),
  })
  const clock = runClock(setup, records)
  return processLogOfPlan(
    log,
    {
      head: {
        loadCode: begun.loadCode,
        date: begun.at.instant.slice(0, 10),
        canner: begun.cannerName,
        gauge: words.say(`shell:gauge-${begun.gauge}`),
        jars: `${begun.jarCount}, ${words.sentence(jarName(begun.jarSize))}`,
        ...(ft !== undefined && { elevation: asTyped(ft, 'Ft') }),
        hold: asTyped(begun.requiredReadingPsi, begun.gauge === 'dial' ? 'PsiGauge' : 'LbWeight'),
        processMin: asTyped(begun.processMin, 'Min'),
      },
      standing: [],
      lines: records.map(({ happenedAtMs, event }) => ({
        clock: asTyped(clock.clock(happenedAtMs).value, 'ClockMin'),
        what: words.say(`shell:print-event-${event.type}`),
        ...('psi' in event && event.psi !== undefined && { reading: asTyped(event.psi, 'PsiGauge') }),
      })),
    },
    settingOf(desk),
    words,
  )
}

/** One label for each jar or bag still held. */
export function labelsDocument(
  desk: Desk,
  lots: readonly FoodLotFact[],
  sheet: LabelSheetId,
  skipCount: number,
): PaperDocument {
  const { words } = desk
  const setting = settingOf(desk)
  const each = <T>(lot: FoodLotFact, label: T): T[] =>
    Array.from({ length: Math.max(0, lot.remainingCount) }, () => label)
  const shared = (lot: FoodLotFact) => ({
    date: lot.at.instant.slice(0, 10),
    contents: contentsOf(desk, lot),
    ...(lot.householdName !== undefined && { household: lot.householdName }),
    record: `crib:lot/${lot.lotId.slice(-12)}`,
  })
  if (lots.every(({ form }) => form === 'jar')) {
    const boilMin = boilBeforeTastingMin(elevationFt(desk) ?? 0)
    return jarLabels(
      lots.flatMap((lot) =>
        each(lot, {
          ...shared(lot),
          loadCode: lot.loadCode,
          boilMin,
          departed: (lot.departures?.length ?? 0) > 0,
        }),
      ),
      { sheet, skipCount },
      setting,
      words,
    )
  }
  return bagLabels(
    lots.flatMap((lot) =>
      each(lot, { ...shared(lot), lotCode: lot.loadCode, lines: [words.say(`pantry:label-${lot.form}`)] }),
    ),
    { sheet, skipCount },
    setting,
    words,
  )
}

/** "Lantern flint hominy", by the corn that went in. */
export function contentsOf({ facts, words }: Pick<Desk, 'facts' | 'words'>, lot: FoodLotFact): string {
  const batch = lot.batchId === undefined ? undefined : facts.batches[lot.batchId]
  const cornLotId = batch?.plan.corn?.[0]?.lotId
  const corn = cornLotId === undefined ? undefined : facts.cornLots[cornLotId]?.name
  return corn === undefined ? words.say('pantry:hominy') : words.say('pantry:hominy-of', { name: corn })
}

/** Load codes only; null where the plan has no loads or a canner no number. */
export function wallBoardDocument(desk: Desk, { plan, plannedDay }: PlannedSheet): PaperDocument | null {
  const date = plannedDay?.date ?? desk.today
  const loads = loadsOf(desk, plan, date)
  const hold = holdOf(desk, plan, date)
  const day = plannedDay && dayForPlan(plan, { clock: plannedDay.clock, peopleCount: plannedDay.peopleCount })
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
