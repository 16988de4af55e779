/** Every case of every scenario through package, HTTP and terminal: as the scenario says, and equal to the last digit. */
import { afterEach, expect, test, vi } from 'vitest'
import { readCases } from './case-files.ts'
import { openDoors } from './doors.ts'
import { faultsOf } from './faults-of.ts'

const cases = readCases()
const doors = await openDoors()

/** A folder that lost its files would otherwise pass. */
test('the scenario files cover the seed, sack, line, gauge, run and village days', () => {
  expect([...new Set(cases.map(({ scenario }) => scenario.slice(0, 2)))]).toEqual(['S1', 'S2', 'S3', 'S4', 'S5', 'S6'])
  for (const { expect: expected, file } of cases) {
    const said = [...(expected.mustSay ?? []), ...Object.keys(expected.values ?? {})]
    expect(said.length, `${file} asks for nothing`).toBeGreaterThan(0)
  }
})

for (const one of cases) {
  const name = `${one.scenario} case ${one.number} (${one.calc}${one.title ? `: ${one.title}` : ''})`

  test(`${name} comes out of every door as the scenario says`, async () => {
    const faults: string[] = []
    for (const door of doors) {
      const answer = await door.ask(one.calc, one.input)
      faults.push(...faultsOf(answer, one.expect).map((fault) => `${door.name}: ${fault}`))
    }
    expect(faults).toEqual([])
  })

  test(`${name} is the same to the last digit at every door`, async () => {
    const [first, ...others] = await Promise.all(doors.map((door) => door.ask(one.calc, one.input)))
    for (const other of others) expect(other.reckoning).toStrictEqual(first!.reckoning)
  })
}

const DIAL_TABLE = '../packages/guidance/data/pressure-bands-dial.json'

/** From here on the table has `wrong` where its page prints `printed`; modules are read anew. */
function breakDialTable(printed: number, wrong: number): void {
  vi.resetModules()
  vi.doMock(DIAL_TABLE, async (importOriginal) => {
    const { default: table } = await importOriginal<{ default: { rows: { setPsi: number }[] } }>()
    const rows = table.rows.map((row) => (row.setPsi === printed ? { ...row, setPsi: wrong } : row))
    return { default: { ...table, rows } }
  })
}

afterEach(() => {
  vi.doUnmock(DIAL_TABLE)
  vi.resetModules()
})

test('one wrong figure in the pressure table is seen at every door', async () => {
  breakDialTable(11, 10)
  const brokenDoors = await openDoors()
  const pressureCases = cases.filter(({ scenario, expect: { values } }) => scenario === 'S3' && values)
  expect(pressureCases.length).toBeGreaterThan(0)

  for (const door of brokenDoors) {
    const faults: string[] = []
    for (const one of pressureCases) faults.push(...faultsOf(await door.ask(one.calc, one.input), one.expect))
    const noticed = expect.arrayContaining([expect.stringContaining('is 10, not 11')])
    expect(faults, `${door.name} did not notice`).toEqual(noticed)
  }
})

test('a figure no table of its kind can have opens no door at all', async () => {
  breakDialTable(12, 11)
  await expect(openDoors()).rejects.toThrow('a higher band never asks for less pressure')
})
