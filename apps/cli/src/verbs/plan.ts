/** `crib plan`: a batch from what is at hand to every ending, seed first; shown, written down, printed. */
import {
  type BatchPlan,
  batchInputFromFacts,
  batchPlan,
  batchPlannedBody,
  type DayPlan,
  dayForPlan,
  seasonYearOf,
} from '@crib/planning'
import { convert, shownValue } from '@crib/science'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { type BookFlags, type OpenBook, withFacts, withOpenBook } from '../book.ts'
import { dateOf } from '../clock-times.ts'
import { badInput, EXIT } from '../exit-codes.ts'
import { section, wrap } from '../lines.ts'
import { type PlanFlags, readDayCount, readDayWish, readWish, withPlanFlags, withPots } from '../plan-flags.ts'
import { planLines } from '../plan-lines.ts'
import { type PrintFlags, printPdf, withPrintFlags } from '../print.ts'
import { batchSheetDocument } from '../sheets.ts'
import { type AddVerb, printJson, verb, withBook } from '../verb.ts'
import { noteDown } from './note.ts'

interface PlanVerbFlags extends BookFlags, PlanFlags, PrintFlags {
  readonly date?: string
  readonly title?: string
  readonly write?: true
  readonly sheet?: string
}

export const addPlan: AddVerb = (program, door) => {
  const { terminal, words, end } = door
  withPrintFlags(withPlanFlags(withBook(verb(program, door, 'plan', 'terminal:about-plan'), door), door), door)
    .option('--date <day>', words.say('terminal:flag-plan-date'))
    .option('--title <title>', words.say('terminal:flag-title'))
    .option('--write', words.say('terminal:flag-write'))
    .option('--sheet <file>', words.say('terminal:flag-sheet'))
    .action(async (flags: PlanVerbFlags) => {
      const date = flags.date ?? dateOf(terminal.now(), terminal.zone)
      if (Number.isNaN(Date.parse(date))) throw badInput('terminal:not-a-date', { given: date })
      const planned = await withFacts(flags, terminal, async (book) => planFromBook(book, flags, date))
      const { own, outcome, wish, remembered } = planned
      if (outcome.kind === 'refused') {
        end(EXIT.refused)
        const why = outcome.why.map(own.sentence)
        const askWhom = outcome.askWhom.map(own.sentence)
        if (flags.json) return printJson(door, { kind: 'refused', refused: outcome.refused, why, askWhom })
        const lines = [words.say('terminal:no-plan'), ...why.map((text) => wrap(text, terminal.columns, '  '))]
        return terminal.out(
          [...lines, ...section(words.say('workbench:ask-whom'), askWhom, terminal.columns)].join('\n'),
        )
      }
      const dayWish = readDayWish(flags)
      const day = dayWish && dayForPlan(outcome, dayWish)
      const isTwoDays = readDayCount(flags) === 2
      if (isTwoDays && !day?.twoDays) throw badInput('terminal:no-two-days')
      const title = flags.title ?? titleOf(outcome, planned.isMetric)
      if (flags.write) await write(flags, outcome, { date, day, dayWish, title, wish })
      if (flags.json) printJson(door, planJson(outcome, day, own))
      else
        terminal.out(planLines({ title, plan: outcome, day, isTwoDays, remembered }, own, terminal.columns).join('\n'))
      if (flags.sheet !== undefined) {
        await withFacts(flags, terminal, async ({ facts }) => {
          const sheet = batchSheetDocument({
            facts,
            plan: outcome,
            day: day?.day,
            title,
            date,
            flags,
            door,
            words: own,
          })
          await printPdf(sheet, flags.sheet!, door, flags)
        })
      }
    })

  interface Written {
    readonly date: string
    readonly day: DayPlan | null
    readonly dayWish: ReturnType<typeof readDayWish>
    readonly title: string
    readonly wish: ReturnType<typeof readWish>
  }

  function write(flags: PlanVerbFlags, plan: BatchPlan, { date, dayWish, title, wish }: Written): Promise<void> {
    return withOpenBook(flags, terminal, async (book) => {
      const { cornLotId, alkaliLotId, cannerIds } = wish
      const beside = {
        ...(cornLotId !== undefined && { cornLotId }),
        ...(alkaliLotId !== undefined && { alkaliLotId }),
        ...(cannerIds && { cannerIds }),
        ...(dayWish && {
          day: { date, clock: dayWish.clock, peopleCount: dayWish.peopleCount ?? 1, dayCount: readDayCount(flags) },
        }),
      }
      const body = batchPlannedBody({ batchId: book.newId(), title, plan, beside })
      await noteDown(book, 'batch-planned', body)
      if (!flags.json) terminal.out(`${words.say('terminal:plan-written', { title })}\n`)
    })
  }
}

function planFromBook({ facts, words }: Pick<OpenBook, 'facts' | 'words'>, flags: PlanVerbFlags, date: string) {
  const wish = readWish(flags, facts)
  const read = batchInputFromFacts(facts, wish, seasonYearOf(facts, date))
  if (read.kind === 'asks') {
    if (flags.corn !== undefined && read.asks.includes('corn'))
      throw badInput('terminal:nothing-left', { name: flags.corn })
    const asked = read.asks.map((ask) => words.say(`terminal:plan-asks-${ask}`))
    throw badInput('terminal:plan-asks', { asked: asked.join(' ') })
  }
  const isMetric = facts.kitchen?.measureFirst === 'metric'
  return { own: words, isMetric, outcome: batchPlan(withPots(read.input, flags)), wish, remembered: read.remembered }
}

/** `Lantern flint, 9 lb`: what people call a batch when nobody named it. */
function titleOf({ input }: BatchPlan, isMetric: boolean): string {
  const { from, cornName = '' } = input
  if (from.kind === 'jars') return [cornName, String(from.jarCount)].filter(Boolean).join(', ')
  // What is left of a lot is kept in kg; people who weigh in lb call it so.
  const inLb = from.amount.unit === 'Kg' && !isMetric
  const { value, unit } = from.amount
  const amount = formatQuantity(inLb ? { value: convert(value, unit, 'Lb'), unit: 'Lb' } : { value, unit }, 'alone')
  return [cornName, amount].filter(Boolean).join(', ')
}

function planJson(plan: BatchPlan, day: DayPlan | null, words: OpenBook['words']) {
  const worded = (sentences: BatchPlan['reasons']) =>
    sentences.map((sentence) => ({ ...sentence, text: words.sentence(sentence) }))
  const values = [...plan.values, ...(day?.values ?? [])]
  return {
    kind: 'planned',
    values: values.map((value) => ({ ...value, shown: shownValue(value), text: formatReckoned(value) })),
    seed: worded(plan.seed.sentences),
    stages: plan.kettle.stages.map(({ title, ...stage }) => ({ ...stage, title: words.sentence(title) })),
    loads: plan.jars?.rounds.flat() ?? [],
    jarsClosed: plan.jarsClosed && worded(plan.jarsClosed.why),
    steps: day?.day.steps.map(({ title, ...step }) => ({ ...step, title: words.sentence(title) })) ?? [],
    reasons: worded([...plan.reasons, ...(day?.reasons ?? [])]),
    warnings: worded([...plan.warnings, ...(day?.warnings ?? [])]),
  }
}
