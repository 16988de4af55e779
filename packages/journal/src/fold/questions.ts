/** Where the book does not agree with itself: both sides are kept and people are asked. */
import { kg } from '../refusal.ts'
import { MASS_DUST_KG, shelledBeyond } from './balance.ts'
import type { CannerFact, CornLotFact, Facts, FoodLotFact, Question, RunFact } from './facts.ts'

/** Names are one when they differ only in case and spaces. */
export function sameName(a: string, b: string): boolean {
  return plainName(a) === plainName(b)
}

function plainName(name: string): string {
  return name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase()
}

/** Questions that need more than one story, or the balance. */
export function questionsAcross(facts: Pick<Facts, 'canners' | 'cornLots' | 'foodLots' | 'runs'>): Question[] {
  return [
    ...canners(Object.values(facts.canners)),
    ...Object.values(facts.cornLots).flatMap(cornLot),
    ...Object.values(facts.foodLots).flatMap(foodLot),
    ...Object.values(facts.runs).flatMap(run),
  ]
}

function canners(all: readonly CannerFact[]): Question[] {
  return [...Map.groupBy(all, ({ name }) => plainName(name)).values()].flatMap((alike) => {
    const [first] = alike
    if (!first || alike.length < 2) return []
    return [
      {
        code: 'question-two-canners-one-name',
        params: { name: first.name, count: alike.length },
        entryIds: alike.map(({ at }) => at.entryId),
        entities: alike.map(({ cannerId }) => `canner:${cannerId}`),
      },
    ]
  })
}

function cornLot(lot: CornLotFact): Question[] {
  const { balance } = lot
  if (!balance) return []
  const questions: Question[] = []
  const ask = (code: Question['code'], params: Question['params']): void => {
    questions.push({ code, params, entryIds: [lot.at.entryId], entities: [`lot:${lot.lotId}`] })
  }
  const { broughtInKg, leftKg, seedKg, usedInBatchesKg, eatenKg } = balance
  if (seedKg > broughtInKg + MASS_DUST_KG)
    ask('question-seed-over-lot', { name: lot.name, seed: kg(seedKg), broughtIn: kg(broughtInKg) })
  if (leftKg < -MASS_DUST_KG || shelledBeyond(lot)) {
    const used = kg(broughtInKg - leftKg)
    ask('question-corn-used-beyond', { name: lot.name, used, broughtIn: kg(broughtInKg) })
  }
  if (lot.treatedSeed && usedInBatchesKg + eatenKg > 0) ask('question-treated-seed-used', { name: lot.name })
  return questions
}

function foodLot(lot: FoodLotFact): Question[] {
  if (lot.remainingCount >= 0 && (lot.remainingKg ?? 0) >= -MASS_DUST_KG) return []
  const { lotId, loadCode, count, usedCount } = lot
  return [
    {
      code: 'question-lot-eaten-twice',
      params: { name: loadCode, count, usedCount },
      entryIds: [lot.at.entryId, ...lot.uses.map(({ at }) => at.entryId)],
      entities: [`lot:${lotId}`],
    },
  ]
}

/** One person may turn the heat off, on and off again; two people telling two times is asked about. */
function run({ runId, begun, events }: RunFact): Question[] {
  const offs = events.filter(({ event }) => event.type === 'heat-off')
  const [first, ...others] = offs
  const other = others.find(
    ({ personId, deviceId, instant }) =>
      (personId !== first?.personId || deviceId !== first?.deviceId) && instant !== first?.instant,
  )
  if (!first || !other) return []
  return [
    {
      code: 'question-two-heat-off-times',
      params: { name: begun.loadCode, firstAt: first.instant, otherAt: other.instant },
      entryIds: offs.map(({ entryId }) => entryId),
      entities: [`run:${runId}`],
    },
  ]
}
