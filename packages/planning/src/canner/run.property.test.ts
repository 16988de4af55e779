/** What must hold for every log a person could type, however muddled. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { runState } from './run.ts'
import type { RunEvent, RunRecord } from './run-event.ts'
import { at, HARK_LAKE } from './run-testing.ts'

const START_MS = at('09:00')
const MIN_MS = 60_000

const event: fc.Arbitrary<RunEvent> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom<RunEvent>({ type: 'at-pressure' }, { type: 'regained' }) },
  { weight: 4, arbitrary: fc.record({ type: fc.constant('reading' as const), psi: fc.integer({ min: 0, max: 20 }) }) },
  { weight: 3, arbitrary: fc.constant<RunEvent>({ type: 'dipped' }) },
  {
    weight: 10,
    arbitrary: fc.constantFrom<RunEvent>(
      { type: 'canner-loaded', waterIn: 2 },
      { type: 'lid-seated' },
      { type: 'steam-steady' },
      { type: 'vent-closed' },
      { type: 'vent-opened' },
      { type: 'over-pressure' },
      { type: 'relief-plug-blown' },
      { type: 'boiled-dry' },
      { type: 'fuel-out' },
      { type: 'abandoned' },
      { type: 'heat-off' },
      { type: 'forced-cooling' },
      { type: 'zero' },
      { type: 'weight-off' },
      { type: 'lid-off' },
      { type: 'jars-out' },
      { type: 'seal-seen', sealedCount: 9, unsealedCount: 0 },
    ),
  },
)

const records: fc.Arbitrary<RunRecord[]> = fc
  .array(fc.record({ minute: fc.integer({ min: 0, max: 400 }), event }), { maxLength: 14 })
  .map((lines) =>
    lines.map(({ minute, event }, index) => ({
      id: `line-${index}`,
      happenedAtMs: START_MS + minute * MIN_MS,
      tiebreak: String(index).padStart(3, '0'),
      event,
    })),
  )

/** A plain run to disturb: pressure at minute 20, due at 80, and then the way out. */
const plainRun: RunRecord[] = (
  [
    [0, 'steam-steady'],
    [10, 'vent-closed'],
    [20, 'at-pressure'],
    [81, 'heat-off'],
    [120, 'zero'],
  ] as const
).map(([minute, type]) => ({ id: `plain-${type}`, happenedAtMs: START_MS + minute * MIN_MS, event: { type } }))

const disturbed = fc.oneof(
  records,
  records.map((more) => [...plainRun, ...more]),
)
const now = fc.integer({ min: 0, max: 600 }).map((minute) => START_MS + minute * MIN_MS)
const processMin = fc.integer({ min: 10, max: 90 })

/** By its own light: every line that says the pressure is there, and every line that says it may not be. */
const saysThere = ({ event }: RunRecord, psi: number) =>
  event.type === 'at-pressure' || event.type === 'regained' || (event.type === 'reading' && event.psi >= psi)
const saysGone = ({ event }: RunRecord, psi: number) =>
  ['dipped', 'fuel-out', 'vent-opened', 'relief-plug-blown', 'zero', 'lid-off', 'jars-out'].includes(event.type) ||
  ['weight-off', 'forced-cooling', 'heat-off', 'abandoned', 'boiled-dry'].includes(event.type) ||
  (event.type === 'reading' && event.psi < psi)

test('no order of lines finishes a run earlier than the published minutes after pressure was last regained', () => {
  let ran = 0
  fc.assert(
    fc.property(disturbed, now, processMin, (lines, nowMs, minutes) => {
      const state = runState({ ...HARK_LAKE, processMin: minutes }, lines, nowMs)
      if (state.outcome !== 'time-ran') return
      ran++
      const dueMs = state.dueAtMs!
      const fromMs = dueMs - minutes * MIN_MS
      expect(state.asOfMs).toBeGreaterThanOrEqual(dueMs)
      // Something written down says that pressure was there when the count began,
      expect(lines.some((line) => saysThere(line, 12) && line.happenedAtMs === fromMs)).toBe(true)
      // and nothing written down says that it went before the count was over.
      const gone = lines.filter((l) => saysGone(l, 12) && l.happenedAtMs > fromMs && l.happenedAtMs < dueMs)
      expect(gone).toEqual([])
    }),
    { numRuns: 3000 },
  )
  // Muddled logs alone would never finish, and the property would hold for nothing.
  expect(ran).toBeGreaterThan(200)
})

test('the order of arrival and lines sent twice change nothing', () => {
  fc.assert(
    fc.property(disturbed, now, fc.integer(), (lines, nowMs, seed) => {
      const twice = [...lines, ...lines.slice(0, 3)]
      const shuffled = twice
        .map((line, index) => ({ line, key: Math.imul(index + 1, seed | 1) >>> 0 }))
        .sort((a, b) => a.key - b.key)
        .map(({ line }) => line)
      expect(runState(HARK_LAKE, shuffled, nowMs)).toEqual(runState(HARK_LAKE, lines, nowMs))
    }),
    { numRuns: 500 },
  )
})

test('one dip more never brings the finish earlier', () => {
  fc.assert(
    fc.property(disturbed, now, fc.integer({ min: 0, max: 400 }), (lines, nowMs, minute) => {
      const dip: RunRecord = { id: 'one-more', happenedAtMs: START_MS + minute * MIN_MS, event: { type: 'dipped' } }
      // Both are asked at the same instant, which no line lies beyond.
      const askedMs = Math.max(nowMs, ...[...lines, dip].map(({ happenedAtMs }) => happenedAtMs))
      const without = runState(HARK_LAKE, lines, askedMs)
      const withDip = runState(HARK_LAKE, [...lines, dip], askedMs)
      if (withDip.outcome !== 'time-ran') return
      expect(without.outcome).toBe('time-ran')
      expect(withDip.dueAtMs!).toBeGreaterThanOrEqual(without.dueAtMs!)
    }),
    { numRuns: 3000 },
  )
})

test('a higher number to hold never takes a dip away', () => {
  fc.assert(
    fc.property(
      disturbed,
      now,
      fc.integer({ min: 5, max: 15 }),
      fc.integer({ min: 0, max: 4 }),
      (lines, nowMs, psi, more) => {
        const seen = (requiredReadingPsi: number) =>
          runState({ ...HARK_LAKE, requiredReadingPsi }, lines, nowMs)
            .dips.filter(({ cause }) => cause === 'dipped' || cause === 'reading')
            .map(({ atMs, cause, psi: read }) => `${atMs} ${cause} ${read ?? ''}`)
        const atLower = seen(psi)
        const atHigher = new Set(seen(psi + more))
        expect(atLower.filter((dip) => !atHigher.has(dip))).toEqual([])
      },
    ),
    { numRuns: 2000 },
  )
})

test('no log, however muddled, stops the state from being told', () => {
  fc.assert(
    fc.property(disturbed, now, (lines, nowMs) => {
      const state = runState(HARK_LAKE, lines, nowMs)
      expect(state.next.key).toMatch(/^canner:/)
      expect(state.countedMin).toBeGreaterThanOrEqual(0)
      expect(state.countedMin).toBeLessThanOrEqual(60)
    }),
  )
})
