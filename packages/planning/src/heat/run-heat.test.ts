import { NO_FACTS, type RunFact } from '@crib/journal'
import { expect, test } from 'vitest'
import { runHeat } from './run-heat.ts'

/** Invented: an evening's load, begun at half past eleven where it stood and half past four by UTC. */
const said = (minute: number) => ({
  instant: new Date(Date.UTC(2026, 10, 4, 4, 30 + minute)).toISOString(),
  zone: 'America/Toronto',
  entryId: `line-${minute}`,
  personId: 'rook',
  deviceId: 'phone',
  visibility: 'keeper',
})
const run = {
  runId: 'late',
  begun: {
    runId: 'late',
    cannerId: 'canner-a',
    cannerName: 'yard canner',
    loadCode: 'LATE',
    jarSize: 'pint',
    jarCount: 9,
    gauge: 'dial',
    requiredReadingPsi: 12,
    ventMin: 10,
    processMin: 60,
    edition: 'guidance-2026-11',
    cardShown: {},
    at: said(0),
  },
  events: [
    { event: { type: 'steam-steady' }, ...said(10) },
    { event: { type: 'vent-closed' }, ...said(20) },
    { event: { type: 'at-pressure' }, ...said(28) },
    { event: { type: 'reading', psi: 12 }, ...said(60) },
    { event: { type: 'heat-off' }, ...said(90) },
    { event: { type: 'zero' }, ...said(130) },
  ],
} as unknown as RunFact

test("a load's temperatures bear the day it began where it stood, and its moments the clock of that place", () => {
  const heat = runHeat({ ...NO_FACTS, runs: { late: run } }, run)
  expect(heat.onDay).toBe('2026-11-03')
  expect(heat.marks.map(({ type, clock }) => [type, clock.unit, clock.value])).toEqual([
    ['steam-steady', 'ClockMin', 23 * 60 + 40],
    ['vent-closed', 'ClockMin', 23 * 60 + 50],
    ['at-pressure', 'ClockMin', 23 * 60 + 58],
    ['heat-off', 'ClockMin', 25 * 60],
    ['zero', 'ClockMin', 25 * 60 + 40],
  ])
})
