import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { createTestingTerminal, type TestingTerminal } from '../../testing/testing-terminal.ts'

let terminal: TestingTerminal
beforeEach(async () => {
  terminal = createTestingTerminal('2026-11-03T18:00:00Z')
  await terminal.crib('note', 'kitchen-opened', '--set', 'name=Ostrey Point', '--set', 'demo=yes')
})
afterEach(() => terminal.remove())

const bringIn = () =>
  terminal.crib(
    'note',
    'corn-lot-brought-in',
    ...sets('name=Lantern flint', 'cornType=flint', 'form=shelled', 'massKg=9 lb', 'asTyped=9 lb', 'treatedSeed=no'),
  )

function sets(...pairs: readonly string[]): string[] {
  return pairs.flatMap((pair) => ['--set', pair])
}

test('what is brought in, sorted and put by stands in the book with what is left', async () => {
  expect((await bringIn()).exitCode).toBe(0)
  const lot = 'Lantern flint'
  await terminal.crib('note', 'corn-sorted', ...sets(`entityId=${lot}`, 'entity=lot', 'when=dry', 'removedKg=1 lb'))
  const seed = ['how=by-weight', 'massKg=2 lb', 'plantingsCount=2', 'places=tin by the bed, cellar', 'seasonYear=2026']
  expect((await terminal.crib('note', 'seed-put-by', ...sets(`lotId=${lot}`, ...seed))).exitCode).toBe(0)

  const { out, exitCode } = await terminal.crib('book')
  expect(exitCode).toBe(0)
  expect(out).toContain('Ostrey Point: 4 lines')
  expect(out).toContain('Invented demo')
  expect(out).toMatch(/Lantern flint +flint +9 lb +6 lb \(2\.72 kg\) left \(shelled\)/) // 9 - 1 - 2
  expect(out).toMatch(/2026 +put by, weighed +2 lb \(0\.907 kg\) +for 2 plantings +tin by the bed, cellar/)
})

test('an entry keeps the moment it was told to have happened at', async () => {
  const { out } = await terminal.crib(
    'note',
    'corn-lot-brought-in',
    ...sets('name=Heron Foot flint', 'cornType=flint', 'form=ears', 'massKg=45 lb', 'asTyped=a sack', 'treatedSeed=no'),
    '--at',
    '2026-10-04 16:30',
  )
  expect(out).toContain('2026-10-04 16:30')
  const lines = JSON.parse((await terminal.crib('book', 'lines', '--json')).out)
  expect(lines[0].envelope.happenedAt.instant).toBe('2026-10-04T16:30:00.000Z')
  expect(lines[0].envelope.writtenAt).toBe('2026-11-03T18:00:00.000Z')
})

test('a time still to come is refused and nothing is written', async () => {
  const { exitCode, err } = await terminal.crib(
    'note',
    'pot-recorded',
    ...sets('name=Big pot', 'volumeL=20 qt', 'material=stainless'),
    '--at',
    '19:00',
  )
  expect(exitCode).toBe(2)
  expect(err).toContain('still to come')
  expect((await terminal.crib('book')).out).toContain('1 line')
})

test('the book asks before two canners bear one name, and takes it when it was so', async () => {
  const canner = sets(
    'name=Old Blue',
    'gauges=dial, weight',
    'capacityPints=9',
    'capacityQuarts=7',
    'rim=metal',
    'electric=no',
  )
  await terminal.crib('note', 'canner-recorded', ...canner)
  const asked = await terminal.crib('note', 'canner-recorded', ...canner)
  expect(asked.exitCode).toBe(1)
  expect(asked.out).toContain('already called Old Blue')
  expect(asked.out).toContain('--anyway')

  const anyway = await terminal.crib('note', 'canner-recorded', ...canner, '--anyway')
  expect(anyway.exitCode).toBe(0)
  expect((await terminal.crib('book')).out).toContain('The book asks')
})

test.each([
  ['an aluminium pot', 'pot-recorded', ['name=Pot', 'volumeL=20 qt', 'material=aluminium'], 'hot alkali eats it'],
  [
    'a weight below nothing',
    'corn-lot-brought-in',
    ['name=x', 'cornType=flint', 'form=ears', 'massKg=-3', 'asTyped=', 'treatedSeed=no'],
    'massKg is -3 kg; this book takes 0 to 5,000 kg (project rule)',
  ],
  [
    'a weight that is no number',
    'corn-lot-brought-in',
    ['name=x', 'cornType=flint', 'form=ears', 'massKg=lots', 'asTyped=', 'treatedSeed=no'],
    'give a number in kg',
  ],
  [
    'one planting of seed without a reason',
    'seed-put-by',
    ['how=by-eye', 'plantingsCount=1', 'places=tin', 'seasonYear=2026'],
    'note why',
  ],
  ['a canner nobody knows', 'gauge-tested', ['cannerId=Old Red'], 'nothing in this book is called that'],
  ['a missing field', 'pot-recorded', ['name=Pot', 'material=stainless'], 'volumeL is still missing'],
])('%s is refused with its reason, and nothing is written', async (_, kind, pairs, reason) => {
  const { exitCode, err } = await terminal.crib('note', kind, ...sets(...pairs))
  expect(err).toContain(reason)
  expect(exitCode).toBe(2)
  expect((await terminal.crib('book')).out).toContain('1 line')
})

test('a kind nobody knows is named with those there are', async () => {
  const { exitCode, err } = await terminal.crib('note', 'moon-seen')
  expect(exitCode).toBe(2)
  expect(err).toContain('corn-lot-brought-in')
})

test('the kinds are listed, and one with its fields', async () => {
  expect((await terminal.crib('note', '--list')).out.split('\n')).toContain('gauge-tested')
  const one = await terminal.crib('note', 'run-event', '--list')
  expect(one.out).toMatch(/event +canner-loaded \| lid-seated \| steam-steady/)
})

test('a nested body comes in as JSON', async () => {
  await terminal.crib(
    'note',
    'canner-recorded',
    ...sets('name=Old Blue', 'gauges=dial', 'capacityPints=9', 'capacityQuarts=7', 'rim=metal', 'electric=no'),
  )
  const body = {
    cannerId: 'Old Blue',
    testedOn: '2026-04-11',
    tester: 'bench',
    readings: [{ truePsi: 10, readsPsi: 11.5 }],
    marksEveryPsi: 1,
    restsAtPsi: 0,
  }
  expect((await terminal.cribWithInput(JSON.stringify(body), 'note', 'gauge-tested', '-')).exitCode).toBe(0)
  expect((await terminal.crib('book')).out).toContain('gauge tested 2026-04-11')
})

test('a book goes out to a file whole and comes in elsewhere once, however often it is handed in', async () => {
  await bringIn()
  const file = join(terminal.folder, 'all.jsonl')
  expect((await terminal.crib('book', 'export', file)).out).toContain('2 lines')

  terminal.bookFile = join(terminal.folder, 'other', 'book.sqlite')
  expect((await terminal.crib('book', 'import', file)).out).toContain('taken in: 2; here already: 0; refused: 0')
  expect((await terminal.crib('book', 'import', file)).out).toContain('taken in: 0; here already: 2; refused: 0')
  expect((await terminal.crib('book')).out).toContain('Lantern flint')
  expect((await terminal.crib('book', 'verify')).exitCode).toBe(0)
})

test('a line changed in an exported file is refused by name and ends with 3', async () => {
  await bringIn()
  const file = join(terminal.folder, 'all.jsonl')
  await terminal.crib('book', 'export', file)
  writeFileSync(file, readFileSync(file, 'utf8').replace('Lantern flint', 'Lantern flour'))
  terminal.bookFile = join(terminal.folder, 'other.sqlite')
  const { exitCode, out } = await terminal.crib('book', 'import', file)
  expect(exitCode).toBe(3)
  expect(out).toContain('taken in: 1; here already: 0; refused: 1')
})

test('reading a book that is not there says so and leaves no file', async () => {
  terminal.bookFile = join(terminal.folder, 'nowhere.sqlite')
  const { exitCode, err } = await terminal.crib('book')
  expect(exitCode).toBe(2)
  expect(err).toContain('There is no book at')
  expect(existsSync(terminal.bookFile)).toBe(false)
})

test('importing a file that is not there ends with 3, a file that is no JSON with 2', async () => {
  expect((await terminal.crib('book', 'import', join(terminal.folder, 'none.jsonl'))).exitCode).toBe(3)
  const file = join(terminal.folder, 'bad.jsonl')
  writeFileSync(file, '{"envelope":\n')
  const { exitCode, err } = await terminal.crib('book', 'import', file)
  expect(exitCode).toBe(2)
  expect(err).toContain('bad.jsonl:1')
})

test('the terminal writes as one device of its own, kept beside the book', async () => {
  await bringIn()
  const { deviceId } = JSON.parse(readFileSync(`${terminal.bookFile}.device.json`, 'utf8'))
  const lines: { envelope: { deviceId: string; deviceSeq: number } }[] = JSON.parse(
    (await terminal.crib('book', 'lines', '--json')).out,
  )
  expect(lines.map(({ envelope }) => [envelope.deviceId, envelope.deviceSeq])).toEqual([
    [deviceId, 1],
    [deviceId, 2],
  ])
})

test('the demo kitchen goes into a new book of its own name, marked invented, and into no other', async () => {
  terminal.bookFile = join(terminal.folder, 'demo.sqlite')
  expect((await terminal.crib('demo')).exitCode).toBe(0)
  const { out } = await terminal.crib('book')
  expect(out).toContain('Ostrey Point')
  expect(out).toContain('Invented demo')
  expect(out).toMatch(/Lantern flint +flint +9 lb/)
  expect(out).toMatch(/M-1 +ash +works +1 cup \(237 mL\) to each liquid qt/)
  expect((await terminal.crib('book', 'verify')).exitCode).toBe(0)
  expect((await terminal.crib('demo')).exitCode).toBe(2)
})
