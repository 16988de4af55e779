import { afterEach, beforeEach, expect, test } from 'vitest'
import { createTestingTerminal, type TestingTerminal } from '../../testing/testing-terminal.ts'

/** Scenario S2, the invented demo kitchen, with a batch planned: 9 lb of Lantern flint in three pots. */
let terminal: TestingTerminal
beforeEach(async () => {
  terminal = createTestingTerminal('2026-11-03T07:00:00Z')
  await terminal.crib('demo')
  const seed = ['--seed', 'by-eye', '--places', 'tin, cellar']
  await terminal.crib('plan', '--corn', 'Lantern flint', '--ending', 'freezer', ...seed, '--title', 'Sorted', '--write')
})
afterEach(() => terminal.remove())

const sets = (...pairs: readonly string[]) => pairs.flatMap((pair) => ['--set', pair])
const seen = (words: object) =>
  terminal.crib('note', 'cook-noted', ...sets('batchId=Sorted', 'potLoad=1', `seen=${JSON.stringify(words)}`))

test('a pot without a sort has nothing to show, and a batch that is not there is named', async () => {
  const { exitCode, out } = await terminal.crib('sorted', 'Sorted')
  expect([exitCode, out]).toEqual([1, 'Nothing was sorted out of Sorted after a cook, and no hominy of it weighed.'])
  expect((await terminal.crib('sorted', 'Nowhere')).exitCode).toBe(2)
})

test('weighed tails stand by cause and share, beside yield and dry matter', async () => {
  const tails = JSON.stringify([{ cause: 'unhulled', massKg: 0.1 }])
  const pot = ['entity=batch', 'entityId=Sorted', 'when=wet', 'potLoad=1']
  expect(
    (await terminal.crib('note', 'corn-sorted', ...sets(...pot, 'removedKg=0.2 kg', `tails=${tails}`))).exitCode,
  ).toBe(0)
  expect((await seen({ type: 'hominy-weighed', massKg: 3.8, wetFraction: 0.75 })).exitCode).toBe(0)
  const { exitCode, out } = await terminal.crib('sorted', 'Sorted')
  expect(exitCode).toBe(0)
  // 0.2 kg of 4 kg; 0.1 kg of it in the hull.
  expect(out).toMatch(/Sorted out of this pot +5 %/)
  expect(out).toMatch(/hull still on +0\.1 kg.* +3 %/)
  // 3.8 kg from 3 lb (1.361 kg).
  expect(out).toMatch(/Hominy for each weight of dry corn +2\.79/)
})

test('mould in a handful stops and names whom to ask', async () => {
  await seen({ type: 'handful-sorted', ofCount: 50, tails: [{ cause: 'mould', count: 1 }] })
  const { out } = await terminal.crib('sorted', 'Sorted')
  expect(out).toContain('neither food nor feed')
  expect(out).toContain('Please ask your extension office.')
})

test('more dry matter out than in is refused', async () => {
  await seen({ type: 'hominy-weighed', massKg: 30, wetFraction: 0.7 })
  const { exitCode, out } = await terminal.crib('sorted', 'Sorted')
  expect(exitCode).toBe(1)
  expect(out).toContain('1.18 kg (2.61 lb) went in: that cannot be')
  expect(out).not.toContain('This corn lot')
})
