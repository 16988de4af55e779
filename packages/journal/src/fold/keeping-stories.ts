/** What cools and what dries, from the lines told of it. */
import type { CoolingFact, DryingFact, LedgerLine } from './facts.ts'
import { told } from './stories.ts'

export function coolingStory(lines: readonly LedgerLine[]): CoolingFact | null {
  const notes = told(lines, 'cooling-noted')
  const begun = notes.flatMap(({ coolingId, seen, at }) => {
    if (seen.type !== 'off-heat') return []
    const { type: _, ...what } = seen
    return [{ coolingId, ...what, at }]
  })
  const first = begun.at(-1)
  if (!first) return null
  const readings = notes.flatMap(({ seen, at }) => {
    if (seen.type !== 'read') return []
    const { type: _, ...read } = seen
    return [{ ...read, at }]
  })
  const ended = notes.flatMap(({ seen, at }) => (seen.type === 'ended' ? [{ how: seen.how, at }] : []))
  return { ...first, readings, ended: ended.at(-1) ?? null }
}

export function dryingStory(lines: readonly LedgerLine[]): DryingFact | null {
  const notes = told(lines, 'drying-noted')
  const begun = notes.flatMap(({ dryingId, seen, at }) => {
    if (seen.type !== 'begun') return []
    const { type: _, ...what } = seen
    return [{ dryingId, ...what, at }]
  })
  const first = begun.at(-1)
  if (!first) return null
  const weights = notes.flatMap(({ seen, at }) => (seen.type === 'weighed' ? [{ massKg: seen.massKg, at }] : []))
  const ended = notes.flatMap(({ seen, at }) => (seen.type === 'ended' ? [{ how: seen.how, at }] : []))
  return { ...first, weights, ended: ended.at(-1) ?? null }
}
