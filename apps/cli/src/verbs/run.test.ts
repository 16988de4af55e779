import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { createTestingTerminal, type TestingTerminal } from '../../testing/testing-terminal.ts'

/** Scenario S5: Hark Lake landing, 2,150 ft, one dial canner with a true gauge, nine pints. */
let terminal: TestingTerminal
const note = (kind: string, body: object) => terminal.cribWithInput(JSON.stringify(body), 'note', kind, '-')

beforeEach(async () => {
  terminal = createTestingTerminal('2026-10-03T09:40:00Z')
  await note('kitchen-opened', { name: 'Hark Lake landing', demo: true })
  await note('kitchen-noted', { elevationM: '2150 ft', elevationKnownBy: 'map' })
  await note('canner-recorded', {
    name: 'shore canner',
    gauges: ['dial'],
    capacityPints: 9,
    capacityQuarts: 7,
    rim: 'gasket',
    electric: false,
  })
  const readings = [10, 12, 15].map((psi) => ({ truePsi: psi, readsPsi: psi }))
  await note('gauge-tested', {
    cannerId: 'shore canner',
    testedOn: '2026-04-11',
    tester: 'bench',
    readings,
    marksEveryPsi: 1,
    restsAtPsi: 0,
  })
})
afterEach(() => terminal.remove())

const begin = (...more: string[]) =>
  terminal.crib('run', 'begin', 'shore canner', '--jars', '9', '--size', 'pint', ...more)

test('no load is begun before the standing was read, and the answer says what to do', async () => {
  const { exitCode, out } = await begin()
  expect(exitCode).toBe(1)
  expect(out).toContain('Minutes: not shown')
  expect(out).toContain('crib card --read')
  expect((await terminal.crib('run', 'now')).exitCode).toBe(2)
})

test('the card holds 12 psi at 2,150 ft and shows its minutes once the standing was read', async () => {
  const before = await terminal.crib('card', '--size', 'pint')
  expect(before.out).toContain('Dial: hold at 12 psi (83 kPa)')
  expect(before.out).toContain('Minutes: not shown')
  const after = await terminal.crib('card', '--size', 'pint', '--read')
  expect(after.out).toContain('Hold 60 min, once at pressure')
  expect(after.out).toContain('Withdrawn')
})

test('a card is had from flags alone, without a book', async () => {
  terminal.bookFile = join(terminal.folder, 'none.sqlite')
  const camp = await terminal.crib('card', '--gauge', 'weight', '--elevation', '2440 m', '--size', 'pint')
  expect(camp.exitCode).toBe(1)
  expect(camp.out).toContain('no number')
  expect(camp.out).toContain('ask your extension office')
  const orchard = await terminal.crib('card', '--gauge', 'weight', '--elevation', '305 m', '--size', 'pint')
  expect(orchard.out).toContain('Weight: use the 15 lb weight (103 kPa)')
})

async function begun() {
  await terminal.crib('card', '--read', '--size', 'pint')
  return begin()
}

test('the afternoon of wind, told as it happens', async () => {
  const at = (clock: string) => {
    terminal.now = Date.parse(`2026-10-03T${clock}:00Z`)
  }
  const saw = (...words: string[]) => terminal.crib('run', 'saw', ...words)
  expect((await begun()).out).toContain('Load HARK-261003-A1')
  await saw('lid-seated')
  at('09:58')
  expect((await saw('steam-steady')).out).toContain('Vent may close from 10:08')

  at('10:03') // "that's plenty"
  const early = await saw('vent-closed')
  expect(early.exitCode).toBe(1)
  expect(early.out).toMatch(/10 min.*10:08/s)

  at('10:08')
  expect((await saw('vent-closed')).exitCode).toBe(0)
  at('10:17')
  expect((await saw('at-pressure')).out).toContain('Finish 11:17')
  at('10:49')
  const dip = await saw('dipped', '10')
  expect(dip.out).not.toContain('Finish')
  at('10:56')
  expect((await saw('regained')).out).toContain('Finish 11:56')
  at('11:20')
  expect((await saw('over-pressure', '15')).out).toContain('Finish 11:56')
  at('11:56')
  await saw('heat-off')
  at('12:39')
  expect((await saw('zero')).out).toContain('Lid off from 12:49')
  const now = JSON.parse((await terminal.crib('run', 'now', '--json')).out)
  expect(now.state.restarts).toHaveLength(1)
  expect((await terminal.crib('run', 'now')).out).toMatch(/seals from 00:49 next day to 12:49 next day/)
})

const SHEET = `clock,event,value
09:40,lid-seated
09:58,steam-steady
10:08,vent-closed
10:17,at-pressure
10:49,dipped,10
10:56,regained
11:20,over-pressure,15
12:39,zero
`

test('the same log typed in the next day gives the same finish', async () => {
  await begun()
  terminal.now = Date.parse('2026-10-04T08:00:00Z')
  const file = join(terminal.folder, 'sheet.csv')
  writeFileSync(file, SHEET)
  const { exitCode, out } = await terminal.crib('run', 'typed', file, '--date', '2026-10-03')
  expect(exitCode).toBe(0)
  expect(out).toContain('8 lines typed in.')
  const { out: log } = await terminal.crib('run', 'log', 'HARK-261003-A1')
  expect(log).toContain('Vented 10 min, held 12 psi (83 kPa) for 60 min')
  expect(log).toContain('11:56')
  expect(log.toLowerCase()).not.toContain('safe')
})

test('a typing slip names its line and writes nothing', async () => {
  await begun()
  terminal.now = Date.parse('2026-10-04T08:00:00Z')
  const { exitCode, err } = await terminal.cribWithInput(
    SHEET.replace('10:49,dipped', '10:49,sank'),
    ...['run', 'typed', '-', '--date', '2026-10-03'],
  )
  expect(exitCode).toBe(2)
  expect(err).toContain('Line 6 cannot be read: 10:49,sank,10')
  expect(JSON.parse((await terminal.crib('run', 'now', '--json')).out).state.phase).toBe('before-load')
})

test('a clock past midnight in a typed log is the next day', async () => {
  await begun()
  terminal.now = Date.parse('2026-10-05T08:00:00Z')
  const late = '22:50,steam-steady\n23:00,vent-closed\n23:10,at-pressure\n00:10,heat-off\n00:55,zero\n'
  const { out } = await terminal.cribWithInput(late, 'run', 'typed', '-', '--date', '2026-10-03')
  expect(out).toContain('Lid off from 01:05 next day')
})

test('a number below the table is refused with the lowest one allowed', async () => {
  await terminal.crib('card', '--read', '--size', 'pint')
  const { exitCode, err } = await begin('--hold', '11')
  expect(exitCode).toBe(2)
  expect(err).toContain('12 psi')
})

test.each([
  [['shake'], 'not something a load can tell'],
  [['seal-seen'], 'held and not held'],
  [['zero', '3'], 'takes no value'],
  [['reading', 'high'], 'give a number in psi'],
  [['reading', '99'], 'takes 0 to 30 psi'],
])('run saw %j is refused', async (words, reason) => {
  await begun()
  const { exitCode, err } = await terminal.crib('run', 'saw', ...words)
  expect(exitCode).toBe(2)
  expect(err).toContain(reason)
})
