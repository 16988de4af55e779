import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { runState } from './run.ts'
import type { RunRecord } from './run-event.ts'
import { at, HARK_LAKE, log, WIND_UNDER_THE_KETTLE } from './run-testing.ts'

const words = createWords()
const upTo = (clock: string) => WIND_UNDER_THE_KETTLE.filter(({ happenedAtMs }) => happenedAtMs <= at(clock))
const told = (sentences: readonly { readonly key: string }[]) => sentences.map((one) => words.sentence(one)).join('\n')
const departureIds = (records: readonly RunRecord[], clock: string) =>
  runState(HARK_LAKE, records, at(clock)).departures.map(({ id }) => id)

describe('S5, wind under the kettle', () => {
  test('vents until ten minutes after steady steam', () => {
    const state = runState(HARK_LAKE, upTo('09:58'), at('10:01'))
    expect(state.phase).toBe('venting')
    expect(state.ventDueAtMs).toBe(at('10:08'))
    expect(words.sentence(state.next)).toBe('Let the steam run until 10:08.')
  })

  test('is first due an hour after the needle reached twelve', () => {
    const state = runState(HARK_LAKE, upTo('10:17'), at('10:30'))
    expect(state).toMatchObject({ phase: 'holding', dueAtMs: at('11:17'), firstDueAtMs: at('11:17'), countedMin: 13 })
    expect(words.sentence(state.next)).toBe('Hold 12 psi (83 kPa) or a little above until 11:17.')
  })

  test('has no finish while the dip is open, however late it gets', () => {
    const state = runState(HARK_LAKE, upTo('10:49'), at('15:00'))
    expect(state.phase).toBe('dipped')
    expect(state.dueAtMs).toBeUndefined()
    expect(state.countedMin).toBe(0)
    expect(state.openDip?.lostMin).toBe(32)
    expect(words.sentence(state.next)).toContain('The full 60 min starts again')
  })

  test('restarts at 10:56 and finishes at 11:56, the high spell notwithstanding', () => {
    const state = runState(HARK_LAKE, WIND_UNDER_THE_KETTLE, at('12:40'))
    expect(state.restarts).toMatchObject([{ dipAtMs: at('10:49'), regainedAtMs: at('10:56'), lostMin: 32 }])
    expect(state.firstDueAtMs).toBe(at('11:17'))
    expect(state.dueAtMs).toBe(at('11:56'))
    expect(state.outcome).toBe('time-ran')
    expect(state.departures).toEqual([])
    expect(told(state.notes)).toContain('The 32 min already run do not count')
    expect(told(state.notes)).toContain('Needle up to 15 psi (103 kPa) at 11:20: no restart.')
  })

  test('opens the lid from 12:49 and looks at seals from 00:49 to 12:49 next day, marked assumed', () => {
    const state = runState(HARK_LAKE, WIND_UNDER_THE_KETTLE, at('12:50'))
    expect(state.lidOffFromMs).toBe(at('12:49'))
    expect(state.sealWindow).toEqual({ fromMs: at('24:49'), toMs: at('36:49'), assumed: true })
    expect(told(state.notes)).toContain('Out of the canner at 12:49: assumed, not written down.')
  })

  test('is the same whether the needle was tapped as a dip or only read', () => {
    const asReadings = WIND_UNDER_THE_KETTLE.map((record): RunRecord => {
      if (record.event.type === 'dipped') return { ...record, event: { type: 'reading', psi: 10 } }
      if (record.event.type === 'regained') return { ...record, event: { type: 'reading', psi: 12 } }
      return record
    })
    expect(runState(HARK_LAKE, asReadings, at('12:50')).dueAtMs).toBe(at('11:56'))
  })
})

describe('venting', () => {
  const early = log([
    ['09:58', 'steam-steady'],
    ['10:05', 'vent-closed'],
  ])

  test('closed at seven minutes is written beside the published ten, and venting again is offered', () => {
    const state = runState(HARK_LAKE, early, at('10:06'))
    expect(told(state.departures.map(({ sentence }) => sentence))).toBe(
      'Vented 7 min; 10 min of steady steam is published. Air was left in.',
    )
    expect(told(state.departures.flatMap(({ remedy }) => remedy ?? []))).toContain('open the vent and vent again')
    expect(state.allowed).toContain('vent-opened')
  })

  test('again for ten minutes leaves no departure behind', () => {
    const again = [
      ...early,
      ...log([
        ['10:06', 'vent-opened'],
        ['10:07', 'steam-steady'],
        ['10:17', 'vent-closed'],
        ['10:25', 'at-pressure'],
      ]).map((record) => ({ ...record, id: `again-${record.id}` })),
    ]
    const state = runState(HARK_LAKE, again, at('10:30'))
    expect(state.departures).toEqual([])
    expect(state.questions).toEqual([])
    expect(state.dueAtMs).toBe(at('11:25'))
  })

  test('closed one second early is not ten minutes', () => {
    const records = log([
      ['09:58:00', 'steam-steady'],
      ['10:07:59', 'vent-closed'],
    ])
    expect(told(runState(HARK_LAKE, records, at('10:08')).departures.map(({ sentence }) => sentence))).toContain(
      'Vented 9.9 min',
    )
  })

  test('that nobody timed is said, not guessed', () => {
    expect(departureIds(log([['10:05', 'vent-closed']]), '10:06')).toEqual(['vent-unknown'])
    expect(departureIds(log([['10:05', 'at-pressure']]), '10:06')).toEqual(['vent-unknown'])
  })

  test('that ended only after pressure was claimed restarts the count and asks', () => {
    const records = log([
      ['09:58', 'steam-steady'],
      ['10:05', 'at-pressure'],
      ['10:08', 'vent-closed'],
    ])
    const state = runState(HARK_LAKE, records, at('12:00'))
    expect(state.outcome).toBe('under-way')
    expect(state.dueAtMs).toBeUndefined()
    expect(told(state.questions)).toContain('Pressure is written down at 10:05, and no vent closed before it.')
  })
})

const heldUntil = (...more: Parameters<typeof log>[0]) =>
  log([['09:58', 'steam-steady'], ['10:08', 'vent-closed'], ['10:17', 'at-pressure'], ...more])

describe('the end of the heat', () => {
  test('before the time is up is a short process, never a finish', () => {
    const records = heldUntil(['11:16', 'heat-off'])
    const state = runState(HARK_LAKE, records, at('20:00'))
    expect(state.outcome).toBe('short')
    expect(state.dueAtMs).toBeUndefined()
    expect(told(state.departures.map(({ sentence }) => sentence))).toBe(
      'The full time did not run: 59 min of the published 60 min at the end.',
    )
    expect(told(state.whatNow)).toContain('Heat off, hands away.')
    expect(told(state.whatNow)).toContain('within 2 h')
  })

  test('at the very minute the time is up is in time; a dip at that minute is not', () => {
    expect(runState(HARK_LAKE, heldUntil(['11:17', 'heat-off']), at('11:18')).outcome).toBe('time-ran')
    expect(runState(HARK_LAKE, heldUntil(['11:17', 'dipped']), at('11:18')).phase).toBe('dipped')
  })

  test('with the needle still up is not a regain', () => {
    const records = heldUntil(['10:40', 'heat-off'], ['10:41', { type: 'reading', psi: 13 }])
    expect(runState(HARK_LAKE, records, at('20:00')).outcome).toBe('short')
  })

  test('lit again and back at pressure runs the full time from then', () => {
    const records = heldUntil(['10:40', 'heat-off'], ['10:50', 'regained'])
    const state = runState(HARK_LAKE, records, at('11:55'))
    expect(state).toMatchObject({ outcome: 'time-ran', dueAtMs: at('11:50') })
    expect(state.departures).toEqual([])
  })

  test('after zero was reached asks for venting again', () => {
    const records = heldUntil(['10:40', 'fuel-out'], ['11:20', 'zero'], ['11:40', 'at-pressure'])
    const state = runState(HARK_LAKE, records, at('12:41'))
    expect(state.dueAtMs).toBe(at('12:40'))
    expect(state.departures.map(({ id }) => id)).toEqual(['vent-unknown'])
  })
})

describe('bad ends', () => {
  test.each(['relief-plug-blown', 'boiled-dry', 'abandoned'] as const)('%s says what to do with the food', (type) => {
    const state = runState(HARK_LAKE, heldUntil(['10:40', type]), at('18:00'))
    expect(state.outcome).not.toBe('time-ran')
    expect(told(state.whatNow)).toMatch(
      /hands away[\s\S]*cool by itself[\s\S]*Chill[\s\S]*freeze[\s\S]*full process again/,
    )
  })

  test('a canner found dry after its time counts no time at all', () => {
    const state = runState(HARK_LAKE, heldUntil(['11:20', 'heat-off'], ['12:30', 'boiled-dry']), at('12:31'))
    expect(state.outcome).toBe('dry')
    expect(state.departures.map(({ id }) => id)).toContain('boiled-dry')
  })

  test('fuel out with no regain can never finish', () => {
    const state = runState(HARK_LAKE, heldUntil(['10:40', 'fuel-out']), at('20:00'))
    expect(state.phase).toBe('dipped')
    expect(state.dueAtMs).toBeUndefined()
  })

  test('cooling by force and an early lid travel with the jars', () => {
    const records = heldUntil(['11:20', 'heat-off'], ['11:25', 'forced-cooling'], ['11:30', 'lid-off'])
    expect(departureIds(records, '11:31')).toEqual(['forced-cooling', 'lid-off-early'])
  })

  test('a lid off two minutes after zero is written beside the published ten', () => {
    const records = heldUntil(['11:20', 'heat-off'], ['12:00', 'zero'], ['12:00', 'weight-off'], ['12:02', 'lid-off'])
    expect(told(runState(HARK_LAKE, records, at('12:03')).departures.map(({ sentence }) => sentence))).toBe(
      'The lid came off 2 min after the weight; 10 min is published.',
    )
  })
})

describe('a weight', () => {
  const weight = { ...HARK_LAKE, gauge: 'weight', requiredReadingPsi: 15 } as const

  test('has no dip by a witness needle, only by its stopping', () => {
    const low = heldUntil(['10:40', { type: 'reading', psi: 9 }])
    expect(runState(weight, low, at('10:41')).phase).toBe('holding')
    const stopped = heldUntil(['10:40', 'dipped'], ['10:45', 'regained'])
    const state = runState(weight, stopped, at('10:50'))
    expect(state.dueAtMs).toBe(at('11:45'))
    expect(told(state.notes)).toContain('the weight stopped')
  })
})

describe('clocks and odd input', () => {
  test('a line ahead of now asks and does not fail', () => {
    const state = runState(HARK_LAKE, heldUntil(), at('09:00'))
    expect(state.asOfMs).toBe(at('10:17'))
    expect(told(state.questions)).toContain('lies ahead of this device')
  })

  test('a clock set forward an hour moves the finish an hour on, so sixty true minutes run', () => {
    const keptInstant = new Date(at('10:30')).toISOString()
    const set = heldUntil(['11:30', { type: 'clock-questioned', jumpMs: 3_600_000, keptInstant }])
    expect(runState(HARK_LAKE, set, at('11:31'))).toMatchObject({
      outcome: 'under-way',
      dueAtMs: at('12:17'),
      countedMin: 14,
    })
    const later = runState(HARK_LAKE, set, at('12:17'))
    expect(later.outcome).toBe('time-ran')
    expect(told(later.questions)).toContain('The finish moved 60 min later')
  })

  test('a device that only slept keeps its finish', () => {
    const keptInstant = new Date(at('11:00')).toISOString()
    const slept = heldUntil(['11:00', { type: 'clock-questioned', jumpMs: 1_800_000, keptInstant }])
    expect(runState(HARK_LAKE, slept, at('11:05')).dueAtMs).toBe(at('11:17'))
  })

  test('a reading that is no number, and a line without a time, count for nothing and ask', () => {
    const records: RunRecord[] = [
      ...heldUntil(['10:40', { type: 'reading', psi: Number.NaN }]),
      { id: 'lost', happenedAtMs: Number.NaN, event: { type: 'dipped' } },
    ]
    const state = runState(HARK_LAKE, records, at('10:41'))
    expect(state.dueAtMs).toBe(at('11:17'))
    expect(state.questions).toHaveLength(2)
  })

  test.each([0, -11, Number.NaN, 400])('refuses to hold %s psi', (requiredReadingPsi) => {
    expect(() => runState({ ...HARK_LAKE, requiredReadingPsi }, [], at('10:00'))).toThrow('requiredReadingPsi')
  })

  test('steps out of their order ask, and nothing is dropped', () => {
    const records = log([
      ['10:30', 'heat-off'],
      ['10:40', 'lid-seated'],
      ['10:35', 'zero'],
      ['10:36', 'canner-loaded'],
    ])
    expect(() => runState(HARK_LAKE, records, at('11:00'))).not.toThrow()
  })

  test('a finish with seconds in it is shown as the next whole minute', () => {
    const records = log([
      ['09:58', 'steam-steady'],
      ['10:08', 'vent-closed'],
      ['10:17:01', 'at-pressure'],
    ])
    expect(words.sentence(runState(HARK_LAKE, records, at('10:20')).next)).toContain('until 11:18')
  })

  test('clock times are those of the kitchen, whatever the zone of the machine', () => {
    const setup = { ...HARK_LAKE, zone: 'America/Chicago' }
    expect(words.sentence(runState(setup, heldUntil(), at('10:20')).next)).toContain('until 06:17')
  })
})
