import type { Calc } from '@crib/science'
import { say } from '../shared/say.ts'
import { type CoolingInput, coolingClock, type FreezingInput, freezingPlan } from './cold.ts'

const RULE = { limitSource: 'project-rule' } as const
const READING = {
  clockMin: { kind: 'clock', label: 'At' },
  temperatureC: { kind: 'quantity', label: 'Middle of the pan', unit: 'C', min: -5, max: 110, ...RULE },
} as const

export const coolingClockCalc: Calc<CoolingInput> = {
  id: 'cooling-clock',
  title: 'Cooling cooked hominy by the clock',
  question: 'By when must this pan be cold, and is it on its way?',
  inputs: {
    startClockMin: { kind: 'clock', label: 'Off the heat' },
    reading: { kind: 'record', label: 'Now', fields: READING, optional: true },
    before: { kind: 'record', label: 'A reading before', fields: READING, optional: true },
    aroundC: { kind: 'quantity', label: 'It stands in', unit: 'C', min: -40, max: 40, ...RULE, optional: true },
  },
  outputs: {
    warmByClockMin: { label: '70 °F (21 °C) by', unit: 'ClockMin' },
    coldByClockMin: { label: '41 °F (5 °C) by', unit: 'ClockMin' },
    warmAboutClockMin: { label: '70 °F (21 °C) at about', unit: 'ClockMin' },
    coldAboutClockMin: { label: '41 °F (5 °C) at about', unit: 'ClockMin' },
  },
  sourceKeys: ['food-code-cooling', 'newton-cooling'],
  example: {
    startClockMin: 600,
    before: { clockMin: 620, temperatureC: 60 },
    reading: { clockMin: 650, temperatureC: 40 },
    aroundC: 4,
  },
  run: (input) => {
    const { startClockMin, reading, before } = input
    const clocks = [startClockMin, before?.clockMin, reading?.clockMin].filter((each) => each !== undefined)
    if (clocks.some((each, index) => index > 0 && each < clocks[index - 1]!))
      return { ok: false, refused: 'clock-backwards', why: [say('keeping:clock-backwards')], askWhom: [] }
    if (reading && before && reading.temperatureC >= before.temperatureC)
      return { ok: false, refused: 'not-cooling', why: [say('keeping:not-cooling')], askWhom: [] }
    return { ok: true, ...coolingClock(input) }
  },
}

export const freezingCalc: Calc<FreezingInput> = {
  id: 'freezing-time',
  title: 'Freezing bags of hominy',
  question: 'How long until a flat bag is frozen through, and how much may go into the freezer in a day?',
  inputs: {
    bagThicknessM: { kind: 'quantity', label: 'Thickness of the bag, lying', unit: 'M', min: 0.005, max: 0.2, ...RULE },
    wetFraction: {
      kind: 'quantity',
      label: 'Water of the drained hominy, wet basis',
      unit: 'Fraction',
      min: 0.5,
      max: 0.9,
      ...RULE,
    },
    startC: { kind: 'quantity', label: 'Goes in at', unit: 'C', min: 0, max: 60, ...RULE },
    freezerC: { kind: 'quantity', label: 'Freezer', unit: 'C', min: -40, max: -10, ...RULE },
    freezerFt3: { kind: 'count', label: 'Room of the freezer, cubic ft', min: 1, max: 100, ...RULE, optional: true },
  },
  outputs: {
    freezingH: { label: 'Frozen through in', unit: 'H' },
    loadPerDayLb: { label: 'Most to put in within a day', unit: 'Lb' },
  },
  sourceKeys: ['pham-1986', 'ashrae-refrigeration-2006-ch9', 'usda-garden-produce'],
  example: {
    bagThicknessM: { value: 1, unit: 'In' },
    wetFraction: 0.75,
    startC: 5,
    freezerC: { value: 0, unit: 'F' },
    freezerFt3: 7,
  },
  run: (input) => ({ ok: true, ...freezingPlan(input) }),
}
