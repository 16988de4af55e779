/** The papers of seed and field out of a book told from the terminal. Every name and number is invented. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { POPPLER_FOUND, textOf } from '../../../../packages/paper/testing/read-pdf.ts'
import { KETTLEBROOK_FIELD } from '../../../../packages/planning/testing/kettlebrook-field.ts'
import { createTestingTerminal, type TestingTerminal } from '../../testing/testing-terminal.ts'

let terminal: TestingTerminal
beforeEach(async () => {
  terminal = createTestingTerminal('2026-11-03T07:00:00Z')
  await terminal.crib('demo')
})
afterEach(() => terminal.remove())

const SEED_LOT = '0190f3a0-0000-7000-8000-0000000000a1'
const PLOT = '0190f3a0-0000-7000-8000-0000000000a2'

async function note(kind: string, body: object): Promise<void> {
  const { exitCode, err } = await terminal.cribWithInput(JSON.stringify(body), 'note', kind, '-')
  expect({ err, exitCode }).toEqual({ err: '', exitCode: 0 })
}

async function tellTheBook(): Promise<void> {
  await note('seed-lot-recorded', {
    seedLotId: SEED_LOT,
    name: 'Heron Foot flint',
    seasonYear: 2026,
    putByOn: '2026-10-20',
    source: 'own',
    parentEarsCount: 60,
    kernelsCount: 1150,
    containers: [
      { container: 'tin', place: 'the loft' },
      { container: 'glass jar', place: 'the cellar' },
    ],
  })
  await note('germination-tested', { seedLotId: SEED_LOT, testedOn: '2026-11-01', sproutedCount: 46, ofCount: 50 })
  await note('plot-recorded', { plotId: PLOT, name: 'behind the house', rowsBearingDeg: 90 })
  await note('neighbour-corn-recorded', {
    plotId: PLOT,
    name: 'over the road',
    seasonYear: 2027,
    distanceM: 120,
    bearingDeg: 270,
  })
  await note('field-planned', {
    plotId: PLOT,
    seasonYear: 2027,
    cornName: 'Heron Foot flint',
    edition: 'e',
    codeVersion: '0',
    shown: {},
    inputs: { ...KETTLEBROOK_FIELD, foodLb: 20, reserveKernelsCount: 980, rowSpacingM: 0.9, inRowSpacingM: 0.25 },
  })
}

// 240 plants at 0.92 x 0.80: 344 kernels at 95 %, as scenario S1 has it.
test.runIf(POPPLER_FOUND).each([
  [
    ['field-sheet', '--plot', 'Behind the House'],
    ['behind the house', '344', 'over the road', '980 kernels'],
  ],
  [
    ['seed-envelope', '--seed', 'heron foot flint'],
    ['Heron Foot flint', '81 and 98 %'],
  ],
  [['sprouting-test'], ['Heron Foot flint', '100']],
  [
    ['reserve-tags', '--paper', 'a4'],
    ['the loft', 'the cellar'],
  ],
])('crib paper %j says what the book holds', async (args, words) => {
  await tellTheBook()
  const file = join(terminal.folder, 'paper.pdf')
  const { exitCode, err } = await terminal.crib('paper', ...args, '--out', file)
  expect({ err, exitCode }).toEqual({ err: '', exitCode: 0 })
  const printed = textOf(readFileSync(file))
  for (const word of words) expect(printed).toContain(word)
})

test.runIf(POPPLER_FOUND).each([
  ['us', '9 lb (4.08 kg)'],
  ['metric', '4.08 kg (9 lb)'],
])('the year sheet of a kitchen that puts %s first says %s', async (measureFirst, said) => {
  await note('kitchen-noted', { measureFirst })
  const file = join(terminal.folder, 'year.pdf')
  expect((await terminal.crib('paper', 'year', '--out', file)).exitCode).toBe(0)
  expect(textOf(readFileSync(file))).toContain(said)
})

test.each([
  [['field-sheet'], 'no plan to draw'],
  [['seed-envelope', '--seed', 'Lantern'], 'No seed lot in this book is called that'],
])('crib paper %j is refused and no file is left', async (args, reason) => {
  const file = join(terminal.folder, 'x.pdf')
  const { exitCode, err } = await terminal.crib('paper', ...args, '--out', file)
  expect(err).toContain(reason)
  expect(exitCode).toBe(2)
  expect(existsSync(file)).toBe(false)
})
