/** One story's lines into the rows that are kept of it. Pure: reads no table. */
import type {
  BatchFact,
  CornLotFact,
  Facts,
  FoodLotFact,
  Ledger,
  LedgerLine,
  Question,
  RunFact,
  SeedFact,
} from '../fold/facts.ts'
import { compareLines, standingLines, UNREAD } from '../fold/ledger.ts'
import { questionsAcross } from '../fold/questions.ts'
import { kitchenStory } from '../fold/stories.ts'
import { foldStory, type Part } from '../fold/story-facts.ts'
import { factText } from './fact-text.ts'
import type { FactRow, FiledLine, QuestionRows, RefRows } from './port.ts'

/** Questions are listed by rank: of stories by themselves first, then across them in this order. */
export const RANK = { own: 0, canners: 1, cornLots: 2, foodLots: 3, runs: 4 } as const

/** Parts kept as rows beyond the lists of `Facts`. */
export const KITCHEN_PART = 'kitchen'
export const UNREAD_PART = 'unread'

export interface StoryRows {
  readonly facts: readonly { readonly part: Part; readonly id: string; readonly fact: Facts[Part][string] | null }[]
  readonly kitchen: FactRow | null
  readonly questions: readonly QuestionRows[]
  readonly refs: RefRows
}

/** The stories of a page with the corrections that name their lines: as much of the ledger as folding them needs. */
export function pageLedger(stories: ReadonlyMap<string, readonly LedgerLine[]>): Ledger {
  const byEntity = Object.fromEntries([...stories].map(([story, lines]) => [story, lines.toSorted(compareLines)]))
  return { byEntity, entityOf: {}, questionsOf: {} }
}

export function storyRows(ledger: Ledger, story: string, kitchenId: string, mayBeAmended = true): StoryRows {
  const { lines, questions } = standingLines(ledger, story, mayBeAmended)
  const facts: StoryRows['facts'][number][] = []
  let kitchen: FactRow | null = null
  if (story === `kitchen:${kitchenId}`) {
    const told = kitchenStory(lines)
    kitchen = { part: KITCHEN_PART, id: kitchenId, open: true, value: told && factText(told) }
  } else questions.push(...foldStory(story, lines, (part, id, fact) => facts.push({ part, id, fact })))
  const ranks: QuestionRows[] = [{ story, rank: RANK.own, values: questions.map((each) => JSON.stringify(each)) }]
  for (const { part, id, fact } of facts) {
    if (part === 'foodLots')
      ranks.push(askAcross(story, RANK.foodLots, { foodLots: fact ? { [id]: fact as FoodLotFact } : {} }))
    if (part === 'runs') ranks.push(askAcross(story, RANK.runs, { runs: fact ? { [id]: fact as RunFact } : {} }))
    if (part === 'cornLots' && !fact) ranks.push({ story, rank: RANK.cornLots, values: [] })
  }
  return { facts, kitchen, questions: ranks, refs: { from: story, to: refsOf(facts) } }
}

export function askAcross(
  story: string,
  rank: number,
  facts: Partial<Pick<Facts, 'canners' | 'cornLots' | 'foodLots' | 'runs'>>,
): QuestionRows {
  const asked: Question[] = questionsAcross({ canners: {}, cornLots: {}, foodLots: {}, runs: {}, ...facts })
  return { story, rank, values: asked.map((each) => JSON.stringify(each)) }
}

/** Stories whose facts hang on this one's, or the other way round. */
function refsOf(facts: StoryRows['facts']): string[] {
  const to = new Set<string>()
  for (const { part, fact } of facts) {
    if (!fact) continue
    if (part === 'batches') for (const { lotId } of (fact as BatchFact).plan.corn ?? []) to.add(`lot:${lotId}`)
    if (part === 'seed' && (fact as SeedFact).lotId !== undefined) to.add(`lot:${(fact as SeedFact).lotId}`)
    if (part === 'cornLots')
      for (const { batchId } of (fact as CornLotFact).uses) if (batchId !== undefined) to.add(`batch:${batchId}`)
  }
  return [...to]
}

/** Rows of what is kept and not read, each by itself; `order` sorts them as the fold does. */
export function unreadRows({ line }: FiledLine): { fact: FactRow; questions: QuestionRows } {
  const { id, kind, kindVersion, why = 'unreadable-body', instant, deviceId, deviceSeq } = line
  const told = { entryId: id, kind, kindVersion, why }
  const ledger = pageLedger(new Map([[UNREAD, [line]]]))
  const { questions } = standingLines(ledger, UNREAD)
  return {
    fact: {
      part: UNREAD_PART,
      id,
      open: true,
      value: factText({ told, order: { id, instant, deviceId, deviceSeq } }),
    },
    questions: { story: `${UNREAD}:${id}`, rank: RANK.own, values: questions.map((each) => JSON.stringify(each)) },
  }
}

/** Something is left of it, or still to come. */
export function isOpen(part: Part, fact: Facts[Part][string]): boolean {
  if (part === 'foodLots') return (fact as FoodLotFact).remainingCount > 0
  if (part === 'cornLots') return ((fact as CornLotFact).balance?.leftKg ?? 1) > 0.0005
  if (part === 'runs')
    return !(fact as RunFact).events.some(({ event: { type } }) =>
      ['jars-out', 'seal-seen', 'abandoned'].includes(type),
    )
  return true
}

export function factRow(part: Part, id: string, fact: Facts[Part][string] | null): FactRow {
  return { part, id, open: fact !== null && isOpen(part, fact), value: fact && factText(fact) }
}
