/** A batch plan as lines: seed first, what to set out, what to expect, loads, the walk, the day, why, and what to mind. */
import { amountName, type BatchPlan, type Day, type DayPlan, jarName, type Stage, sheetAmounts } from '@crib/planning'
import type { Reckoned, Sentence } from '@crib/science'
import { formatClock, formatDuration, formatReckoned, type Words } from '@crib/wording'
import { aligned, bullet, section } from './lines.ts'

export interface PlanToShow {
  readonly title: string
  readonly plan: BatchPlan
  readonly day: DayPlan | null
  /** Hull one day, can the next. */
  readonly isTwoDays: boolean
  readonly remembered: readonly Sentence[]
}

export function planLines(
  { title, plan, day, isTwoDays, remembered }: PlanToShow,
  words: Words,
  columns: number,
): string[] {
  const said = (sentences: readonly Sentence[]) => sentences.map(words.sentence)
  const seed = said([...plan.seed.sentences, ...plan.seed.warnings])
  // The plan's reasons and warnings open with the seed line, which heads this text already.
  const beside = (sentences: readonly Sentence[]) => said(sentences).filter((text) => !seed.includes(text))
  const { toSetOut, toExpect, forJars } = sheetAmounts(plan)
  const table = (key: 'set-out' | 'expect' | 'for-jars', values: readonly Reckoned[]) =>
    values.length === 0
      ? []
      : ['', words.say(`terminal:plan-${key}`), ...aligned(values.map((value) => amountRow(value, words)))]
  return [
    title,
    '',
    words.say('terminal:book-seed'),
    ...seed.map((text) => bullet(text, columns)),
    ...table('set-out', toSetOut),
    ...table('expect', toExpect),
    ...table('for-jars', forJars),
    ...loadLines(plan, words),
    ...section(
      words.say('terminal:plan-jars-closed'),
      said([...(plan.jarsClosed?.why ?? []), ...(plan.jarsClosed?.askWhom ?? [])]),
      columns,
    ),
    '',
    words.say('paper:walk'),
    ...aligned(plan.kettle.stages.map((stage) => stageRow(stage, words))),
    ...(day ? dayLines(day, isTwoDays, words) : []),
    ...section(
      words.say('workbench:reasons'),
      beside([...remembered, ...plan.reasons, ...(day?.reasons ?? [])]),
      columns,
    ),
    ...section(words.say('workbench:warnings'), beside([...plan.warnings, ...(day?.warnings ?? [])]), columns),
  ]
}

function amountRow(value: Reckoned, words: Words): string[] {
  const name = amountName(value.id)
  return [upperFirst(name ? words.sentence(name) : value.id), formatReckoned(value)]
}

function loadLines({ jars }: BatchPlan, words: Words): string[] {
  const loads = jars?.rounds.flat() ?? []
  if (loads.length === 0) return []
  const rows = loads.map(({ number, cannerName, jarCount }) => [
    `${number}`,
    cannerName,
    words.say('terminal:run-jars', { number: jarCount, jarName: words.sentence(jarName(jars!.jarSize)) }),
  ])
  return ['', words.say('paper:loads'), ...aligned(rows)]
}

function stageRow({ title, timesCount, lowMin, highMin }: Stage, words: Words): string[] {
  const minutes =
    lowMin === highMin ? formatDuration(highMin) : words.say('terminal:plan-minutes', { low: lowMin, high: highMin })
  return [timesCount > 1 ? `${timesCount} x` : '', words.sentence(title), highMin === 0 ? '' : minutes]
}

/** The one day, or the two when they were asked for. */
function dayLines({ day, twoDays, values }: DayPlan, isTwoDays: boolean, words: Words): string[] {
  if (isTwoDays && twoDays) {
    const { hull, can } = twoDays
    return [
      ...stepLines(words.say('terminal:plan-hull-day', { length: formatDuration(hull.doorToDoorMin) }), hull, words),
      ...stepLines(words.say('terminal:plan-can-day', { length: formatDuration(can.doorToDoorMin) }), can, words),
    ]
  }
  const { low, high } = values.find(({ id }) => id === 'doorToDoorMin') ?? {}
  const length =
    low === undefined || high === undefined || low === high
      ? formatDuration(day.doorToDoorMin)
      : words.say('terminal:plan-length', {
          middle: formatDuration(day.doorToDoorMin),
          low: formatDuration(low),
          high: formatDuration(high),
        })
  return stepLines(words.say('terminal:plan-day', { length }), day, words)
}

function stepLines(heading: string, { steps }: Day, words: Words): string[] {
  const rows = steps.map(({ title, where, potLoad, load, startMin, endMin }) => [
    `${clockOf(startMin)} - ${clockOf(endMin)}`,
    words.sentence(title),
    [
      where,
      potLoad && words.say('terminal:plan-pot-load', { number: potLoad }),
      load && words.say('terminal:plan-load', { number: load }),
    ]
      .filter(Boolean)
      .join(', '),
  ])
  return ['', heading, ...aligned(rows)]
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** Past midnight counts on: `01:30+1`. */
function clockOf(clockMin: number): string {
  const days = Math.floor(clockMin / 1440)
  return days === 0 ? formatClock(clockMin) : `${formatClock(clockMin)}+${days}`
}
