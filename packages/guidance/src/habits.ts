/** Where a habit and today's direction differ: one line with both, and why. */
import type { Sentence, Unit } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import json from '../data/habits.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Seen, type Standing } from '../schema/envelope.ts'
import { type HabitTopic, habitsSchema } from '../schema/list-tables.ts'
import { loadTable } from './load.ts'
import { sentence } from './sentence.ts'

export const HABITS = loadTable(habitsSchema, json)
export const HABIT_TOPICS: readonly HabitTopic[] = HABITS.rows.map((row) => row.topic)

export interface HabitLine {
  readonly topic: HabitTopic
  /** Both and why, in one line. */
  readonly say: Sentence
  readonly habit: number | null
  readonly today: number | null
  readonly unit: Unit | null
  readonly seen: Seen
  readonly standing: Standing
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/**
 * The line for a habit.
 *
 * @throws {RangeError} for a topic the table does not know.
 * @source the row's own sources; a habit without one is common practice
 */
export function habitLine(topic: HabitTopic): HabitLine {
  const row = HABITS.rows.find((candidate) => candidate.topic === topic)
  if (!row) throw new RangeError(`topic is "${String(topic)}"; habits covers ${HABIT_TOPICS.join(', ')}`)
  const { message, habit, today, unit, habitSource, todaySource, seen } = row
  return {
    topic,
    // habits.test.ts checks that every row names a message that exists.
    say: sentence(`guidance:${message}` as MessageKey),
    habit,
    today,
    unit,
    seen,
    standing: HABITS.standing,
    sourceKeys: habitSource ? [todaySource, habitSource] : [todaySource],
    edition: GUIDANCE_EDITION,
  }
}
