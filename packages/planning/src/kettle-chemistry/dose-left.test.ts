import { ValidRangeError } from '@crib/science'
import { expect, test } from 'vitest'
import { doseLeftCalc } from './dose-left.calc.ts'
import { doseLeft } from './dose-left.ts'

// 0.68 kg of corn at 0.1 eq/kg wants 0.068 eq: 80 g of a lot of 0.85 eq/kg.
const POT = { wantedEqPerKgCorn: 0.1, cornKg: 0.68, nextLotEqPerKg: 0.85 }
const put = (massG: number, lotEqPerKg = 0.85) => ({ massG, lotEqPerKg })

test('half goes in first, then a quarter each time, until all is in', () => {
  expect(doseLeft({ ...POT, additions: [] })).toMatchObject({ leftEq: 0.068, overEq: 0 })
  expect(doseLeft({ ...POT, additions: [] }).stepG).toBeCloseTo(40, 9)
  expect(doseLeft({ ...POT, additions: [put(40)] }).stepG).toBeCloseTo(20, 9)
  expect(doseLeft({ ...POT, additions: [put(40), put(30)] }).stepG).toBeCloseTo(10, 9)
  expect(doseLeft({ ...POT, additions: [put(40), put(40)] }).leftG).toBeCloseTo(0, 9)
})

test('a weaker lot counts for what it brings, and what is over is told', () => {
  expect(doseLeft({ ...POT, additions: [put(80, 0.425)] }).leftG).toBeCloseTo(40, 9)
  const over = doseLeft({ ...POT, additions: [put(100)] })
  expect(over.overEq).toBeCloseTo(0.017, 9)
  expect(over.stepG).toBe(0)
})

test('a strength no lot has is refused', () => {
  expect(() => doseLeft({ ...POT, additions: [], nextLotEqPerKg: 0 })).toThrow(ValidRangeError)
  expect(() => doseLeft({ ...POT, additions: [put(-1)] })).toThrow('massG')
})

test('as a calculation it shows what is on the corn, what is left and the next step', () => {
  const result = doseLeftCalc.run(doseLeftCalc.example as never)
  if (!result.ok) throw new Error(result.refused)
  const of = (id: string) => result.values.find((value) => value.id === id)!.value
  expect(of('soFarEqPerKg')).toBeCloseTo((0.05 * 0.9) / 0.68, 9)
  expect(of('leftG')).toBeCloseTo((0.13 * 0.68 * 1000) / 0.9 - 50, 9)
  expect(of('stepG')).toBeCloseTo((0.13 * 0.68 * 250) / 0.9, 9)
})
