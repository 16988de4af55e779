/** Documents from the book and its plans: what each builder is handed. Leaves out: how they look (package paper). */
import { askWhom, boilBeforeTastingMin, cautionsFor, GUIDANCE_EDITION, lidWaitRule, type Moment } from '@crib/guidance'
import type { CannerFact, Facts } from '@crib/journal'
import {
  batchSheetOfPlan,
  processLog as blankLog,
  cannerCardOfPlan,
  LABEL_SHEETS,
  type LabelSheetId,
  labelsOfFood,
  type PaperDocument,
  processLogOfPlan,
  wallBoard,
} from '@crib/paper'
import {
  amountName,
  type BatchPlan,
  cannerLetter,
  cardOfCanner,
  type Day,
  dayOf,
  foodLabel,
  isStandingRead,
  jarName,
  loadCode,
  processLog,
  runClock,
  seasonYearOf,
  sheetAmounts,
  sortPaper,
  testDueOn,
} from '@crib/planning'
import { CODE_VERSION, convert, type Reckoned, type Unit } from '@crib/science'
import { formatQuantity, type Words } from '@crib/wording'
import type { CardOfCanner } from './card-of-book.ts'
import { EVENT_NAMES } from './event-typed.ts'
import { badInput } from './exit-codes.ts'
import { type PrintFlags, printSetting } from './print.ts'
import type { RunOfBook } from './run-of-book.ts'
import type { Door } from './verb.ts'

export interface Sheet {
  readonly facts: Facts
  readonly flags: PrintFlags
  readonly door: Door
  readonly words: Words
}

interface PlannedSheet extends Sheet {
  readonly plan: BatchPlan
  readonly day?: Day | undefined
  readonly title: string
  /** YYYY-MM-DD */
  readonly date: string
}

export function batchSheetDocument({ facts, plan, day, title, date, flags, door, words }: PlannedSheet): PaperDocument {
  const { toSetOut, toExpect, forJars } = sheetAmounts(plan)
  const place = placeOf(facts)
  return batchSheetOfPlan(
    plan,
    {
      batch: title,
      date,
      ...(place !== '' && { place }),
      amounts: [...toSetOut, ...toExpect, ...forJars].map((value) => ({
        label: amountName(value.id) ?? value.id,
        value,
      })),
      cautionsFor: (moment) => cautionsFor(moment as Moment),
      sortNotes: sortPaper(facts),
      ...(day && { day }),
      codeOf: ({ cannerName, round }) => codeOf(facts, plan, { cannerName, round, date }),
      holdOf: (cannerName) => holdOf(facts, plan, cannerName, date),
    },
    printSetting(facts, flags, door),
    words,
  )
}

/** Load codes and numbers only: no household, no keeper, no corn. */
export function wallBoardDocument({ facts, plan, day, date, flags, door, words }: PlannedSheet): PaperDocument {
  const loads = plan.jars?.rounds.flat() ?? []
  if (loads.length === 0) throw badInput('terminal:no-loads-planned')
  if (!day) throw badInput('terminal:board-needs-clock')
  return wallBoard(
    {
      date,
      loads: loads.map(({ cannerName, round, jarCount, number }) => {
        const hold = holdOf(facts, plan, cannerName, date)
        if (!hold) throw badInput('terminal:board-needs-card', { canner: cannerName })
        const steps = day.steps.filter((step) => step.load === number)
        return {
          code: codeOf(facts, plan, { cannerName, round, date }),
          canner: cannerName,
          jars: plain(jarCount, 'Count'),
          hold,
          startsAt: plain(Math.min(...steps.map(({ startMin }) => startMin)), 'ClockMin'),
        }
      }),
    },
    printSetting(facts, flags, door),
    words,
  )
}

export function cardDocument(
  card: CardOfCanner,
  { facts, flags, door, words }: Sheet,
  jarSize: 'half-pint' | 'pint' | 'quart',
): PaperDocument {
  const { name, canner, outcome } = card
  const test = canner?.gaugeTests.at(-1)
  const beside = {
    canner: name,
    site: placeOf(facts),
    jar: jarName(jarSize),
    lidWaitMin: lidWaitRule().figure,
    askWhom: askWhom(),
    ...(test && outcome.kind === 'card' && { gaugeTest: gaugeTestOf(test) }),
  }
  return cannerCardOfPlan(outcome, beside, printSetting(facts, flags, door), words)
}

function gaugeTestOf({ testedOn, tester, readings }: CannerFact['gaugeTests'][number]) {
  return {
    testedOn,
    tester,
    dueOn: testDueOn(testedOn),
    points: readings.map(({ truePsi, readsPsi }) => ({
      truth: plain(truePsi, 'PsiGauge', 0.01),
      reads: plain(readsPsi, 'PsiGauge', 0.01),
    })),
  }
}

export function logDocument(chosen: RunOfBook | null, { facts, flags, door, words }: Sheet): PaperDocument {
  const setting = printSetting(facts, flags, door)
  if (!chosen) return blankLog({ head: {}, standing: [] }, setting, words)
  const { run, setup, records } = chosen
  const { loadCode: code, cannerName, jarCount, jarSize, gauge } = run.begun
  const elevationM = facts.kitchen?.elevationM
  const elevationFt = elevationM === undefined ? undefined : convert(elevationM, 'M', 'Ft')
  const log = processLog({
    setup,
    records,
    nowMs: door.terminal.now(),
    loadCode: code,
    cannerName,
    ...(elevationFt !== undefined && { elevationFt }),
  })
  const { requiredReadingPsi, processMin } = run.begun
  const head = {
    loadCode: code,
    date: dayOf(run.begun.at),
    canner: cannerName,
    gauge,
    jars: `${jarCount} ${words.sentence(jarName(jarSize))}`,
    hold: plain(requiredReadingPsi, gauge === 'dial' ? 'PsiGauge' : 'LbWeight', 0.01),
    processMin: plain(processMin, 'Min'),
    ...(elevationFt !== undefined && { elevation: plain(elevationFt, 'Ft') }),
  }
  const clock = runClock(setup, records)
  const inOrder = [...records].sort((a, b) => a.happenedAtMs - b.happenedAtMs)
  const lines = inOrder.map(({ happenedAtMs, event }) => ({
    clock: plain(clock.clock(happenedAtMs).value, 'ClockMin'),
    what: { key: EVENT_NAMES[event.type] },
    ...('psi' in event && event.psi !== undefined && { reading: plain(event.psi, 'PsiGauge', 0.01) }),
  }))
  return processLogOfPlan(log, { head, standing: [], lines }, setting, words)
}

export interface LabelWish {
  readonly sheet: string
  readonly skip: number
  /** Load or lot code; all in the pantry when absent. */
  readonly code?: string
}

/** Labels for what the book holds in that form: one for each jar or bag that is left. */
export function labelDocument(
  form: 'jar' | 'bag',
  wish: LabelWish,
  { facts, flags, door, words }: Sheet,
): PaperDocument {
  const choice = { sheet: readLabelSheet(wish.sheet), skipCount: wish.skip }
  const lots = Object.values(facts.foodLots).filter(
    (lot) =>
      (lot.form === 'jar') === (form === 'jar') &&
      lot.remainingCount > 0 &&
      (wish.code === undefined || lot.loadCode.toLowerCase() === wish.code.toLowerCase()),
  )
  if (lots.length === 0) throw badInput('terminal:nothing-to-label')
  const elevationM = facts.kitchen?.elevationM
  if (form === 'jar' && elevationM === undefined) throw badInput('terminal:no-elevation')
  return labelsOfFood(
    lots.map((lot) => ({ label: foodLabel(lot, facts), count: lot.remainingCount })),
    { ...choice, ...(elevationM !== undefined && { boilMin: boilBeforeTastingMin(convert(elevationM, 'M', 'Ft')) }) },
    printSetting(facts, flags, door),
    words,
  )
}

function readLabelSheet(given: string): LabelSheetId {
  if (Object.hasOwn(LABEL_SHEETS, given)) return given as LabelSheetId
  throw badInput('terminal:not-one-of', { flag: '--labels', given, known: Object.keys(LABEL_SHEETS).join(', ') })
}

function placeOf({ kitchen }: Facts): string {
  if (kitchen?.elevationM === undefined) return kitchen?.name ?? ''
  const elevation = formatQuantity({ value: convert(kitchen.elevationM, 'M', 'Ft'), unit: 'Ft' }, 'alone')
  return [kitchen.name, elevation].filter(Boolean).join(', ')
}

/** As `crib run begin` will call it: the canner's letter is its place among the book's canners. */
function codeOf(
  { canners, kitchen }: Facts,
  { input }: BatchPlan,
  { cannerName, round, date }: { cannerName: string; round: number; date: string },
): string {
  const inBook = Object.values(canners).findIndex(({ name }) => name === cannerName)
  const index = inBook >= 0 ? inBook : input.canners.findIndex(({ name }) => name === cannerName)
  return loadCode({ kitchenName: kitchen?.name ?? '', day: date, letter: cannerLetter(Math.max(0, index)), round })
}

/** The number on the canner's own card; absent while the book has no card for it. */
function holdOf(facts: Facts, { input, kettle }: BatchPlan, cannerName: string, today: string): Reckoned | undefined {
  const canner = Object.values(facts.canners).find(({ name }) => name === cannerName)
  if (!canner) return undefined
  const outcome = cardOfCanner(canner, facts.kitchen, {
    today,
    jarSize: input.jarSize ?? 'quart',
    alkali: input.alkali,
    isHotPack: kettle.stages.at(-1)?.isHotPack === true,
    isStandingRead: isStandingRead(facts, input.alkali, seasonYearOf(facts, today)),
  })
  return outcome?.kind === 'card' ? outcome.routes.find(({ usable }) => usable)?.holdAt : undefined
}

/** A number of the book printed as it stands. */
function plain(value: number, unit: Unit, step = 1): Reckoned {
  const rounding = { mode: 'nearest', step } as const
  const standing = { basis: 'as-typed', sourceKeys: [], inputs: {}, edition: GUIDANCE_EDITION } as const
  return { id: unit, value, unit, rounding, ...standing, codeVersion: CODE_VERSION }
}
