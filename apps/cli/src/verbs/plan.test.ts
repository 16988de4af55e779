import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { createTestingTerminal, type TestingTerminal } from '../../testing/testing-terminal.ts'

/** Scenario S2, the invented demo kitchen: 9 lb of Lantern flint, ash lot M-1, a 20 liquid qt pot, one dial canner. */
let terminal: TestingTerminal
beforeEach(async () => {
  terminal = createTestingTerminal('2026-11-03T07:00:00Z')
  await terminal.crib('demo')
})
afterEach(() => terminal.remove())

const SEED = ['--seed', 'by-eye', '--places', 'tin, cellar']
const plan = (...more: string[]) => terminal.crib('plan', '--corn', 'Lantern flint', ...more)

function shownOf(json: string): { readonly [id: string]: number } {
  const { values } = JSON.parse(json) as { values: { id: string; shown: number }[] }
  return Object.fromEntries(values.map(({ id, shown }) => [id, shown]))
}

test('the sack of S2 becomes its amounts, from the book alone', async () => {
  await terminal.crib('card', '--read')
  const { exitCode, out } = await plan('--ending', 'jars', '--salt', ...SEED, '--json')
  expect(exitCode).toBe(0)
  // Literals of scenario S2.
  expect(shownOf(out)).toMatchObject({ dryCornLiquidQt: 6, ashCups: 6, potLoads: 3, jars: 18, saltTbsp: 6, loads: 3 })
  expect(JSON.parse(out).loads.map(({ jarCount }: { jarCount: number }) => jarCount)).toEqual([6, 6, 6])
})

test('seed heads the plan, and without an answer there is no plan', async () => {
  const { exitCode, err } = await plan('--ending', 'freezer')
  expect(exitCode).toBe(2)
  expect(err).toContain('is seed put by for two plantings')
  const planned = await plan('--ending', 'freezer', ...SEED)
  expect(planned.out.indexOf('Seed first, then food.')).toBeLessThan(planned.out.indexOf('To set out'))
})

test('seed by weight comes off before anything is food', async () => {
  const { out } = await plan('--ending', 'freezer', '--seed', '3 lb', '--places', 'tin, cellar', '--json')
  expect(shownOf(out).dryCornLiquidQt).toBe(4) // (9 - 3) / 1.5
})

test('a jar plan stays closed until the standing was read, and the other endings are planned', async () => {
  const { exitCode, out } = await plan('--ending', 'jars=1/2,freezer=1/2', ...SEED)
  expect(exitCode).toBe(0)
  expect(out).toContain('No jar plan yet')
  expect(out).toContain('Freezer bags')
  expect(out).not.toContain('Canner loads')
})

test('in February the book still knows the seed and the reading of the autumn before', async () => {
  expect((await terminal.crib('card')).out).toContain('Minutes: not shown')
  await terminal.crib('card', '--read')
  const seed = ['seasonYear=2026', 'how=by-eye', 'plantingsCount=2', 'places=["tin","cellar"]']
  expect((await terminal.crib('note', 'seed-put-by', ...seed.flatMap((one) => ['--set', one]))).exitCode).toBe(0)
  terminal.now = Date.parse('2027-02-14T10:00:00Z')
  const { exitCode, out } = await plan('--ending', 'jars')
  expect(exitCode).toBe(0)
  expect(out).toContain('Canner loads')
  expect((await terminal.crib('card')).out).toContain('once at pressure')
  expect((await terminal.crib('card', '--read')).out).not.toContain('Written down')
})

test('no seed this year needs a reason', async () => {
  const { exitCode, out } = await plan('--ending', 'freezer', '--seed', 'not-this-year')
  expect(exitCode).toBe(1)
  expect(out).toContain('No plan')
  expect((await plan('--ending', 'freezer', '--seed', 'not-this-year', '--reason', 'drowned field')).exitCode).toBe(0)
})

test('a written plan sets its corn aside, and the next one says that nothing is left', async () => {
  expect((await plan('--ending', 'freezer', ...SEED, '--write')).exitCode).toBe(0)
  expect((await terminal.crib('book')).out).toMatch(/Lantern flint, 9 lb +planned/)
  const { exitCode, err } = await plan('--ending', 'freezer', ...SEED)
  expect(exitCode).toBe(2)
  expect(err).toContain('Of Lantern flint nothing is left')
})

test('the day is laid out from a start, and two days where they were asked for', async () => {
  const one = await plan('--ending', 'jars', ...SEED, '--start', '07:00', '--people', '1')
  expect(one.out).toMatch(/07:00 - 07:30 +Set up/)
  await terminal.crib('card', '--read')
  const two = await plan('--ending', 'jars', ...SEED, '--start', '07:00', '--people', '1', '--days', '2')
  expect(two.out).toContain('Today, hulling')
  expect(two.out).toMatch(/Tomorrow, canning.*Reheat in fresh water: hot pack/s)
})

test('a bare quart is taken as liquid and shown so', async () => {
  const { out } = await terminal.crib('plan', '--amount', '6 quarts', '--ending', 'freezer', ...SEED)
  expect(out).toContain('6 liquid qt')
  expect(out).not.toMatch(/\d quarts?\b/)
})

test('a plan is had from flags alone, without a book', async () => {
  terminal.bookFile = join(terminal.folder, 'none.sqlite')
  const { exitCode, out } = await terminal.crib(
    ...['plan', '--amount', '9 lb', '--ending', 'dried', '--pot', '20 liquid qt', ...SEED, '--json'],
  )
  expect(exitCode).toBe(0)
  expect(shownOf(out)).toMatchObject({ dryCornLiquidQt: 6, potLoads: 3 })
  expect(existsSync(terminal.bookFile)).toBe(false)
})

test.each([
  [['--amount', 'a sackful'], 'no amount'],
  [['--amount', '-9 lb'], 'no amount'],
  [['--ending', 'pickled'], 'must be one of: jars, freezer'],
  [['--ending', 'jars=3'], 'no share'],
  [['--ending', 'freezer', '--start', '7', ...SEED], 'give a clock time'],
  [['--ending', 'freezer', '--start', '07:00', '--finish', '20:00', ...SEED], 'not both'],
  [['--ending', 'freezer', '--ash', 'Z-9', ...SEED], 'nothing in this book is called that'],
  [['--ending', 'freezer', '--days', '2', ...SEED], 'Two days need'],
])('%j is refused with what to type instead', async (flags, reason) => {
  const { exitCode, err } = await plan(...flags)
  expect(err).toContain(reason)
  expect(exitCode).toBe(2)
})

const isPdf = (file: string) => readFileSync(file).subarray(0, 5).toString('latin1') === '%PDF-'

test('sheet, card, log, board and labels come out as PDF files', async () => {
  await terminal.crib('card', '--read')
  const sheet = join(terminal.folder, 'sheet.pdf')
  await plan('--ending', 'jars', ...SEED, '--start', '07:00', '--days', '2', '--write', '--sheet', sheet)
  expect(isPdf(sheet)).toBe(true)
  await terminal.crib('run', 'begin', 'yard canner', '--jars', '6')
  const lot = { loadCode: 'OSTR-261103-A1', form: 'jar', jarSize: 'quart', count: 6 }
  await terminal.cribWithInput(JSON.stringify(lot), 'note', 'food-put-up', '-')
  const bags = { loadCode: 'LF-1', form: 'freezer', count: 4 }
  await terminal.cribWithInput(JSON.stringify(bags), 'note', 'food-put-up', '-')

  for (const args of [
    ['batch-sheet', '--paper', 'a4'],
    ['canner-card'],
    ['process-log'],
    ['process-log', '--load', 'OSTR-261103-A1'],
    ['wall-board'],
    ['jar-labels'],
    ['jar-labels', '--large'],
    ['bag-labels', '--labels', 'a4-3x7', '--skip', '2'],
    ['batch-sheet', '--large'],
    ['class-sheet'],
    ['year', '--for', 'community'],
    ['recall-notice', '--canner', 'yard canner', '--contact', 'the kitchen by the mill'],
    ['call-list', '--load', 'OSTR-261103-A1'],
  ]) {
    const file = join(terminal.folder, `${args.join('-')}.pdf`)
    const { exitCode, err } = await terminal.crib('paper', ...args, '--out', file)
    expect({ args, err, exitCode }).toEqual({ args, err: '', exitCode: 0 })
    expect(isPdf(file), file).toBe(true)
  }
})

test('card and log print themselves as well', async () => {
  await terminal.crib('card', '--read')
  await terminal.crib('run', 'begin', 'yard canner', '--jars', '6')
  const [card, log] = ['card.pdf', 'log.pdf'].map((name) => join(terminal.folder, name))
  expect((await terminal.crib('card', '--pdf', card!)).exitCode).toBe(0)
  expect((await terminal.crib('run', 'log', '--pdf', log!, '--paper', 'a4')).exitCode).toBe(0)
  expect(isPdf(card!)).toBe(true)
  expect(isPdf(log!)).toBe(true)
})

test.each([
  [['poster'], 'must be one of: batch-sheet'],
  [['jar-labels'], 'Nothing in the pantry to label'],
  [['batch-sheet', '--batch', 'Heron Foot'], 'No batch in this book is called Heron Foot'],
  [['recall-notice'], 'begins with a load, a canner or a corn'],
  [['call-list', '--load', 'B-9'], 'Nothing in this book comes from there.'],
  [['year', '--for', 'strangers'], 'must be one of: keeper, family, community, open'],
  [['canner-card', '--paper', 'foolscap'], 'must be one of: letter, a4'],
])('crib paper %j is refused and no file is left', async (args, reason) => {
  const file = join(terminal.folder, 'x.pdf')
  const { exitCode, err } = await terminal.crib('paper', ...args, '--out', file)
  expect(err).toContain(reason)
  expect(exitCode).toBe(2)
  expect(existsSync(file)).toBe(false)
})
