/** A recall over rows that were typed: the jars that match, counted and named. */
import type { Reckoned, Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { countValue } from './recall-numbers.ts'

export interface RecallRow {
  readonly loadCode: string
  readonly jarsCount: number
  readonly canner?: string
  readonly alkaliLot?: string
  readonly cornLot?: string
  readonly household?: string
}

export function countOfJars(rows: readonly RecallRow[]): readonly Reckoned[] {
  return [
    countValue('recallLoads', codesOf(rows).length),
    countValue(
      'recallJars',
      rows.reduce((sum, { jarsCount }) => sum + jarsCount, 0),
    ),
    countValue('recallHouseholds', householdsOf(rows).length),
  ]
}

export function recallReasons(rows: readonly RecallRow[]): readonly Sentence[] {
  if (rows.length === 0) return [say('pantry:recall-nothing')]
  const households = householdsOf(rows)
  return [
    say('pantry:recall-codes', { codes: codesOf(rows).join(', ') }),
    ...(households.length > 0 ? [say('pantry:recall-whose', { households: households.join(', ') })] : []),
  ]
}

const codesOf = (rows: readonly RecallRow[]): string[] => [...new Set(rows.map(({ loadCode }) => loadCode))]

const householdsOf = (rows: readonly RecallRow[]): string[] => [
  ...new Set(rows.flatMap(({ household }) => household ?? [])),
]
