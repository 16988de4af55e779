import { type CalcResult, convert, fToC, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { KEEPING_CALCS } from './keeping-calcs.ts'

const words = createWords()

const run = (id: string, input?: object): CalcResult => {
  const calc = KEEPING_CALCS.find((candidate) => candidate.id === id)
  if (!calc) throw new Error(`no calculation ${id}`)
  return calc.run((input ?? canonical(calc.example)) as never)
}
/** Examples as a door hands them on: °F in °C, in in m. */
function canonical(given: unknown): unknown {
  if (Array.isArray(given)) return given.map(canonical)
  if (typeof given !== 'object' || given === null) return given
  const { value, unit } = given as { value?: number; unit?: string }
  if (value !== undefined && unit === 'F') return fToC(value)
  if (value !== undefined && unit === 'In') return convert(value, 'In', 'M')
  return Object.fromEntries(Object.entries(given).map(([name, each]) => [name, canonical(each)]))
}
const shown = (result: CalcResult) => {
  if (!result.ok) throw new Error(result.refused)
  return Object.fromEntries(result.values.map((value) => [value.id, shownValue(value)]))
}
const said = (result: CalcResult) => {
  if (!result.ok) return [...result.why, ...result.askWhom].map((each) => words.sentence(each))
  return [...result.reasons, ...result.warnings].map((each) => words.sentence(each))
}

describe.each(KEEPING_CALCS)('$id', (calc) => {
  test('gives only outputs it names, in their units, and words all it says', () => {
    const result = run(calc.id)
    if (!result.ok) throw new Error(result.refused)
    expect(result.values.length).toBeGreaterThan(0)
    for (const value of result.values) expect(calc.outputs[value.id]?.unit).toBe(value.unit)
    for (const text of said(result)) expect(text).not.toContain('{{')
  })
})

test('recall counts the 27 pints of canner B (S6) and names their loads', () => {
  const result = run('recall')
  expect(shown(result)).toEqual({ recallLoads: 3, recallJars: 27, recallHouseholds: 3 })
  expect(said(result)).toEqual([
    'Loads: MILL-261003-B1, MILL-261003-B2, MILL-261003-B3.',
    'At: house 4, house 12, house 20.',
  ])
  expect(said(run('recall', { by: 'load', name: 'nowhere', jars: [] }))).toEqual([
    'Nothing in this book comes from there.',
  ])
})

// By hand: 5 (1 - 0.22)/(1 - 0.13) = 4.4827 kg, shown down to 4.48.
test('drying says the weight to stop at, and hours as a band for kernels in told air', () => {
  const result = run('drying')
  expect(shown(result)).toMatchObject({ stopAtKg: 4.48, waterGoneKg: 0.51 })
  const hours = result.ok && result.values.find(({ id }) => id === 'dryingH')
  expect(hours && hours.low! < hours.high!).toBe(true)
  expect(said(result)[0]).toContain('Stop when it weighs 4.48 kg')
})

// msu-01600519 prints 6 to 16 h; hominy at 75 % dried to 10 % keeps 27.8 % of its weight.
test('hominy has its printed hours, ears only their weight, and damp air is owned up to', () => {
  const hominy = run('drying', { what: 'hominy', massKg: 5, startWetFraction: 0.75, endWetFraction: 0.1 })
  expect(shown(hominy)).toMatchObject({ stopAtKg: 1.38, dryingH: 11 })
  expect(said(hominy).join(' ')).toContain('6 to 16 h')
  const ears = run('drying', { what: 'ears', massKg: 5, startWetFraction: 0.25, endWetFraction: 0.15 })
  expect(Object.keys(shown(ears))).toEqual(['stopAtKg', 'waterGoneKg'])
  const damp = [{ hours: 24, temperatureC: 30, humidityFraction: 0.8 }]
  const never = run('drying', { what: 'kernels', massKg: 5, startWetFraction: 0.22, endWetFraction: 0.13, air: damp })
  expect(said(never).join(' ')).toContain('This air never brings it so far')
  expect(run('drying', { what: 'ears', massKg: 5, startWetFraction: 0.1, endWetFraction: 0.15 }).ok).toBe(false)
})

test('a moisture test asks for what it lacks, refuses corn that grew heavier, and a clean salt jar proves nothing', () => {
  expect(said(run('moisture-test', { by: 'oven', dishG: 50 }))).toEqual(['This test also needs: withWetG, withDryG.'])
  const grew = run('moisture-test', { by: 'weight', startKg: 10, startWetFraction: 0.18, nowKg: 10.5 })
  expect(grew).toMatchObject({ ok: false, refused: 'grew-heavier' })
  // 75.3 % humidity at 25 °C (greenspan-1977) is 15.2 % by the standard's equation.
  const clean = run('moisture-test', { by: 'salt-jar', temperatureC: 25, saltClung: false })
  expect(said(clean)[0]).toContain('does not show that the corn is dry enough')
  expect(shown(clean).moistureFraction).toBe(0.152)
})

// 18 % at 60 °F: 50 days printed, 20 used: 40 %; 16 % at 50 °F: 230 printed, 60 used: 26 %; 230 (1 - 0.66087) = 78 left. Machine-shelled.
test('storage sums what was used of the printed days', () => {
  const history = [
    { days: 20, temperatureC: fToC(60), wetFraction: 0.18 },
    { days: 60, temperatureC: fToC(50), wetFraction: 0.16 },
  ]
  const result = run('corn-storage', { history, now: { temperatureC: fToC(50), wetFraction: 0.16 } })
  expect(shown(result)).toMatchObject({ usedFraction: 0.66, allowableDays: 230, leftDays: 78 })
  expect(said(result).join(' ')).toContain('More than half of its storage time is used')
  const seed = run('corn-storage', { history: [], now: { temperatureC: 20, wetFraction: 0.12 }, isSeed: true })
  expect(said(seed).join(' ')).toContain('Never heat seed')
})

// food-code-cooling: 2 h to 70 °F, 6 h in all to 41 °F.
test('the cooling clock gives both times, and says when it is too late', () => {
  expect(shown(run('cooling-clock'))).toMatchObject({ warmByClockMin: 720, coldByClockMin: 960 })
  const at = (clockMin: number, temperatureC: number) =>
    said(run('cooling-clock', { startClockMin: 600, reading: { clockMin, temperatureC } })).at(-1)
  expect(at(700, 40)).toBe('In time so far.')
  expect(at(730, 40)).toContain('throw it out')
  expect(at(730, 20)).toBe('In time so far.')
  expect(at(950, 5)).toBe('It is cold, in time.')
  expect(at(970, 5)).toContain('throw it out')
  expect(run('cooling-clock', { startClockMin: 600, reading: { clockMin: 500, temperatureC: 40 } }).ok).toBe(false)
})

// usda-garden-produce: 2 to 3 lb a cubic foot a day, 7 cubic feet: 14 to 21 lb.
test('a freezer of 7 cubic feet takes 14 to 21 lb a day', () => {
  const result = run('freezing-time')
  const load = result.ok && result.values.find(({ id }) => id === 'loadPerDayLb')
  expect(load).toMatchObject({ low: 14, high: 21 })
})

// By hand: 5 kg at 75 % is 1.25 kg dry; over 1 - 0.0979 that is 1.3857 kg; less 3 %, 1.3441 kg.
test('flour keeps the dry matter, less what the mill keeps', () => {
  expect(shown(run('flour'))).toEqual({ driedKg: 1.38, flourKg: 1.34 })
})

// Worked separately: flour at 9.79 % takes 1.005 L a kg to 55 %, and 1.255 L to 60 %; baking from 55 to 45.89 % loses 16.8 %.
test('masa takes the water its dry matter asks for', () => {
  expect(shown(run('masa'))).toEqual({ waterKg: 1, masaKg: 2, tortillas: 66, tortillaG: 24.9 })
  expect(shown(run('masa', { flourKg: 10, masaWetFraction: 0.6, ballG: 30 })).waterKg).toBe(12.55)
  expect(run('masa', { flourKg: 1, masaWetFraction: 0.45, ballG: 30, tortillaWetFraction: 0.5 }).ok).toBe(false)
})

// By hand: 0.5 kg dry over 0.97 is 0.5155 kg; 0.4845 kg of water at 2.26 MJ/kg is 1.1 MJ.
test('roasting drives the water off, with its cautions', () => {
  const result = run('roasted-yield')
  expect(shown(result)).toEqual({ roastedKg: 0.51, waterGoneKg: 0.49 })
  expect(said(result).join(' ')).toContain('at least 1.1 MJ')
  expect(said(result).join(' ')).toContain('break a tooth')
})
