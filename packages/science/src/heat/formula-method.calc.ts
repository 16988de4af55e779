import type { Calc } from '../calc.ts'
import { nearest, valuesOf } from '../calc-value.ts'
import { cToF } from '../units/convert-named.ts'
import {
  type FormulaResult,
  heatingTimeBall1923,
  heatingTimeStumbo1973,
  lethalityBall1923,
  lethalityStumbo1973,
} from './formula-method.ts'

interface FormulaMethodInput {
  readonly table: (typeof TABLES)[number]
  readonly retortC: number
  readonly initialC: number
  readonly fhMin: number
  readonly jh: number
  readonly jc?: number
  readonly heatingMin?: number
  readonly lethalityMin?: number
}

const TABLES = ['Stumbo', 'Ball'] as const
const BALL_JC = 1.41
const sourceKeys = ['stumbo-1973', 'ball-1923', 'food-biochemistry-ch38', 'bigelow-1920'] as const
const outputs = {
  lethalityMin: { label: 'Lethality at the cold spot, z 18 °F, reference 250 °F', unit: 'Min' },
  heatingMin: { label: 'Heating time in the formula; not a process time', unit: 'Min' },
  gDeltaF: { label: 'What the cold spot still lacks when heating ends (g)', unit: 'DeltaF' },
  fhPerU: { label: 'fh/U', unit: 'Count' },
} as const

export const formulaMethodCalc: Calc<FormulaMethodInput> = {
  id: 'formula-method',
  title: 'The formula method, by the table of Stumbo or of Ball',
  question:
    'What does a straight heating line come to by the old tables? For study: published process times are looked up, never worked out.',
  inputs: {
    table: { kind: 'choice', label: 'Whose table; the two are never mixed', options: TABLES },
    retortC: { kind: 'quantity', label: 'Heating medium', unit: 'C', min: 94, max: 137, limitSource: 'project-rule' },
    initialC: {
      kind: 'quantity',
      label: 'Food when heating begins',
      unit: 'C',
      min: 0,
      max: 136,
      limitSource: 'project-rule',
    },
    fhMin: {
      kind: 'quantity',
      label: 'fh, minutes to close nine tenths of the gap',
      unit: 'Min',
      min: 0.1,
      max: 1000,
      limitSource: 'project-rule',
    },
    jh: {
      kind: 'quantity',
      label: 'jh, lag factor of heating',
      unit: 'Count',
      min: 0.1,
      max: 5,
      limitSource: 'project-rule',
    },
    jc: {
      kind: 'quantity',
      label: 'jc, lag factor of cooling; 1.41 in the table of Ball',
      unit: 'Count',
      min: 0.4,
      max: 2,
      limitSource: 'food-biochemistry-ch38',
      optional: true,
    },
    heatingMin: {
      kind: 'quantity',
      label: 'Heating time, to get the lethality',
      unit: 'Min',
      min: 0.1,
      max: 10_000,
      limitSource: 'project-rule',
      optional: true,
    },
    lethalityMin: {
      kind: 'quantity',
      label: 'Or a lethality, to get the time in the formula',
      unit: 'Min',
      min: 0.01,
      max: 1000,
      limitSource: 'project-rule',
      optional: true,
    },
  },
  outputs,
  sourceKeys,
  example: {
    table: 'Stumbo',
    retortC: 115.6,
    initialC: 60,
    fhMin: 30,
    jh: 1.4,
    jc: 1.4,
    heatingMin: 54.05,
  },
  run: (input) => {
    const { table, heatingMin, lethalityMin, jc = BALL_JC } = input
    if ((heatingMin === undefined) === (lethalityMin === undefined)) {
      return refused('give-time-or-lethality', 'heat:formula-time-or-lethality')
    }
    if (table === 'Ball' && input.jc !== undefined && input.jc !== BALL_JC) {
      return refused('ball-has-one-jc', 'heat:formula-ball-jc')
    }
    const line = { retortF: cToF(input.retortC), initialF: cToF(input.initialC), fhMin: input.fhMin, jh: input.jh }
    let result: FormulaResult
    if (heatingMin !== undefined) {
      result = table === 'Ball' ? lethalityBall1923(line, heatingMin) : lethalityStumbo1973(line, jc, heatingMin)
    } else {
      const wanted = lethalityMin as number
      result = table === 'Ball' ? heatingTimeBall1923(line, wanted) : heatingTimeStumbo1973(line, jc, wanted)
    }
    const value = valuesOf({ outputs, sourceKeys }, { ...input })
    return {
      ok: true,
      values: [
        value('lethalityMin', result.lethalityMin, nearest(0.001)),
        value('heatingMin', result.heatingMin, nearest(0.01)),
        value('gDeltaF', result.gDeltaF, nearest(0.0001)),
        value('fhPerU', result.fhPerU, nearest(0.001)),
      ],
      reasons: [{ key: 'heat:formula-limits' }],
      warnings: [{ key: 'heat:does-not-change-directions' }],
    }
  },
}

function refused(what: string, key: string) {
  return { ok: false, refused: what, why: [{ key }], askWhom: [] } as const
}
