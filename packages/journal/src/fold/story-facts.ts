/** Which facts one story gives. Leaves out what crosses stories: balances, corn used, questions across (balance.ts). */
import type { Facts, LedgerLine, Question } from './facts.ts'
import { plantingStory, plotStory } from './field-stories.ts'
import { coolingStory, dryingStory } from './keeping-stories.ts'
import { seedLotStory } from './seed-lot-stories.ts'
import {
  alkaliLotStory,
  batchStory,
  cannerStory,
  cornLotStory,
  foodLotStory,
  photoStory,
  runStory,
  told,
} from './stories.ts'

/** The lists of facts that are keyed by id. */
export type Part = Exclude<keyof Facts, 'kitchen' | 'entryCount' | 'questions' | 'unread' | 'ledger'>

export type PutFact = <P extends Part>(part: P, id: string, fact: Facts[P][string] | null) => void

export function splitStory(story: string): { readonly type: string; readonly id: string } {
  const at = story.indexOf(':')
  return at < 0 ? { type: story, id: '' } : { type: story.slice(0, at), id: story.slice(at + 1) }
}

/** Hands each fact of the story to `put`, null where it gives none; what must be asked about the story by itself. */
export function foldStory(story: string, lines: readonly LedgerLine[], put: PutFact): Question[] {
  const { type, id } = splitStory(story)
  let found = true
  const may = <P extends Part>(part: P, fact: Facts[P][string] | null | undefined): boolean => {
    put(part, id, fact ?? null)
    return Boolean(fact)
  }
  if (type === 'lot') {
    const corn = may('cornLots', cornLotStory(lines))
    const food = may('foodLots', foodLotStory(lines))
    found = corn || food
  } else if (type === 'seed') may('seed', told(lines, 'seed-put-by').at(-1))
  else if (type === 'alkali-lot') found = may('alkaliLots', alkaliLotStory(lines))
  else if (type === 'pot') may('pots', told(lines, 'pot-recorded').at(-1))
  else if (type === 'canner') found = may('canners', cannerStory(lines))
  else if (type === 'standing') may('standings', told(lines, 'standing-read').at(-1))
  else if (type === 'batch') found = may('batches', batchStory(lines))
  else if (type === 'run') found = may('runs', runStory(lines))
  else if (type === 'plot') found = may('plots', plotStory(lines))
  else if (type === 'planting') found = may('plantings', plantingStory(lines))
  else if (type === 'seed-lot') found = may('seedLots', seedLotStory(lines))
  else if (type === 'recall') may('recalls', told(lines, 'recall-noted').at(-1))
  else if (type === 'photo') may('photos', photoStory(lines))
  else if (type === 'cooling') found = may('coolings', coolingStory(lines))
  else if (type === 'drying') found = may('dryings', dryingStory(lines))
  if (found || lines.length === 0) return []
  const entryIds = lines.map((line) => line.id)
  return [{ code: 'question-story-without-beginning', params: { kind: lines[0]!.kind }, entryIds, entities: [story] }]
}
