import { type FoodLotFact, NO_FACTS, type RunFact } from '@crib/journal'
import { expect, test } from 'vitest'
import { foodLabel } from './food-label.ts'

const at = (instant: string) => ({ instant, zone: 'America/Toronto' })
const run = { runId: 'r', begun: { runId: 'r', loadCode: 'A1', at: at('2026-10-04T01:30:00Z') } } as unknown as RunFact
const lot = (more: Partial<FoodLotFact>): FoodLotFact =>
  ({
    lotId: '00000000-0000-7000-8000-0123456789ab',
    loadCode: 'A1',
    form: 'jar',
    count: 8,
    remainingCount: 8,
    uses: [],
    openings: [],
    workings: [],
    departures: [],
    runId: 'r',
    at: at('2026-10-05T13:00:00Z'),
    ...more,
  }) as unknown as FoodLotFact
const facts = { ...NO_FACTS, runs: { r: run } }

// 01:30 UTC on the 4th is the evening of the 3rd in Toronto.
test('a jar is dated by the day it was canned, by the calendar there, not by the day its seal was looked at', () => {
  expect(foodLabel(lot({}), facts).putUpOn).toBe('2026-10-03')
})

test('what went into the fridge instead, or came from no canner run, is dated by the day it was put up', () => {
  expect(foodLabel(lot({ form: 'fridge' }), facts).putUpOn).toBe('2026-10-05')
  expect(foodLabel(lot({ runId: 'unknown' }), facts).putUpOn).toBe('2026-10-05')
})
