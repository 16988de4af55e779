import { afterAll, expect, test } from 'vitest'
import { createTestingTerminal } from '../../testing/testing-terminal.ts'

const terminal = createTestingTerminal('2026-11-03T09:00:00Z')
afterAll(() => terminal.remove())
const { crib, cribWithInput } = terminal

test('a value typed with its unit comes out with label, unit in both measures, what stands behind it and its source', async () => {
  const { exitCode, out } = await crib('reckon', 'kernel-measure', '--set', 'massKg=9 lb')
  expect(exitCode).toBe(0)
  expect(out).toContain('Dry kernels, liquid measure (a jar, a jug): 6 liquid qt (5.68 L)') // 9 lb / 1.5 lb
  expect(out).toContain('our own arithmetic rule [')
  expect(out).toContain('Guidance edition ')
})

test('the same as JSON on standard input and out', async () => {
  const { exitCode, out } = await cribWithInput(
    '{"massKg":{"value":9,"unit":"Lb"}}',
    'reckon',
    'kernel-measure',
    '-',
    '--json',
  )
  expect(exitCode).toBe(0)
  const { kind, values } = JSON.parse(out)
  expect(kind).toBe('reckoned')
  expect(values.find(({ id }: { id: string }) => id === 'dryLiquidQt').shown).toBe(6)
})

test('a value outside its limits is named with limit, unit and source, and ends with 2', async () => {
  const { exitCode, out, err } = await crib('reckon', 'kernel-measure', '--set', 'massKg=-9 lb')
  expect(exitCode).toBe(2)
  expect(out).toBe('')
  expect(err).toMatch(/massKg is -4\.08 kg .* must lie between 0 kg .* and 100,000 kg .*project-rule/s)
  expect(err).toContain('crib reckon kernel-measure --list')
})

test.each(['NaN lb', 'a sackful', '9 psi'])('"%s" is no weight, and ends with 2', async (typed) => {
  const { exitCode, err } = await crib('reckon', 'kernel-measure', '--set', `massKg=${typed}`)
  expect(exitCode).toBe(2)
  expect(err).toContain('massKg is "')
})

test('an input nobody asks for is named, with those that are known', async () => {
  const { exitCode, err } = await crib('reckon', 'kernel-measure', '--set', 'massKg=9 lb', '--set', 'colour=red')
  expect(exitCode).toBe(2)
  expect(err).toContain('colour is not asked for here. Known: massKg, volumeL, testWeightLb')
})

test('bad input with --json is one JSON record on standard output', async () => {
  const { exitCode, out, err } = await crib('reckon', 'kernel-measure', '--json', '--set', 'massKg')
  expect(exitCode).toBe(2)
  expect(err).toBe('')
  expect(JSON.parse(out)).toMatchObject({
    kind: 'bad-input',
    faults: [{ text: expect.stringContaining('equals sign') }],
  })
})

test('a calculation nobody knows ends with 2 and points to the list', async () => {
  const { exitCode, err } = await crib('reckon', 'moon-phase')
  expect(exitCode).toBe(2)
  expect(err).toContain('moon-phase')
  expect(err).toContain('crib reckon --list')
})

test('the list names every calculation, and one with all it asks', async () => {
  const all = await crib('reckon', '--list')
  expect(all.out).toContain('kernel-measure')
  expect(all.out).toContain('steam-temperature')
  const one = await crib('reckon', 'kernel-measure', '--list')
  expect(one.out).toMatch(/massKg +0 kg \.\. 100,000 kg \(project-rule\)/)
  expect(one.out).toContain('{"massKg":{"value":9,"unit":"Lb"}}')
})

test('every calculation answers its own example without a fault', async () => {
  const listed = JSON.parse((await crib('reckon', '--list', '--json')).out) as { id: string }[]
  expect(listed.length).toBeGreaterThan(10)
  for (const { id } of listed) {
    const { exitCode, err } = await crib('reckon', id, '--example')
    expect({ id, err, exitCode }).toEqual({ id, err: '', exitCode: expect.toSatisfy((code) => code <= 1) })
  }
})

test('a verb nobody knows ends with 2, help with 0', async () => {
  expect((await crib('forecast')).exitCode).toBe(2)
  const help = await crib('--help')
  expect(help.exitCode).toBe(0)
  expect(help.out).toContain('reckon')
  expect((await crib()).out).toContain('reckon')
})
