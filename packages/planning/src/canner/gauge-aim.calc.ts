import { headspaceRule } from '@crib/guidance'
import type { Calc, CalcResult, Field, GaugePoint, Reckoned } from '@crib/science'
import { say } from '../shared/say.ts'
import { conditionsOf, ELEVATION, KNOWN_BY, type PlaceInput } from './calc-fields.ts'
import { type CannerCard, cannerCard } from './card.ts'
import { nextTestSentence } from './gauge-card.ts'

interface GaugeAimInput extends PlaceInput {
  readonly test?: readonly GaugePoint[]
  readonly testedDaysAgo?: number
  readonly marksEvery: number
  readonly restsAt: number
  readonly weights: keyof typeof WEIGHTS_LB
  readonly rim?: 'gasket' | 'metal'
}

const WEIGHTS_LB = { none: [], '10': [10], '15': [15], '10-15': [10, 15], '5-10-15': [5, 10, 15] } as const

const psiField = (label: string, min: number, max: number): Field => ({
  kind: 'quantity',
  label,
  unit: 'PsiGauge',
  min,
  max,
  limitSource: 'project-rule',
})

export const gaugeAimCalc: Calc<GaugeAimInput> = {
  id: 'gauge-aim',
  title: 'What to aim at with the gauges of one canner',
  question: 'Which gauge goes first, may this dial be used, and where is its needle held?',
  inputs: {
    elevation: ELEVATION,
    knownBy: KNOWN_BY,
    test: {
      kind: 'table',
      label: 'Bench test of the dial',
      columns: { truePsi: psiField('True pressure', 0, 30), readsPsi: psiField('The needle showed', 0, 30) },
      maxRows: 50,
      optional: true,
    },
    testedDaysAgo: {
      kind: 'count',
      label: 'Days since that test',
      min: 0,
      max: 40_000,
      limitSource: 'project-rule',
      optional: true,
    },
    marksEvery: psiField('Marks on the face every', 0.1, 10),
    restsAt: psiField('Needle at rest when cold', -5, 30),
    weights: { kind: 'choice', label: 'Weights at hand, lb', options: Object.keys(WEIGHTS_LB) },
    rim: { kind: 'choice', label: 'Rim', options: ['gasket', 'metal'], optional: true },
  },
  outputs: {
    weightHoldLb: { label: 'Weight to use', unit: 'LbWeight' },
    dialSetPsi: { label: 'True pressure the table asks for, on a dial', unit: 'PsiGauge' },
    errorPsi: { label: 'The needle is off by (above 0: reads high)', unit: 'PsiGauge' },
    requiredReadingPsi: { label: 'The needle never under this; below it is a dip', unit: 'PsiGauge' },
    holdAtPsi: { label: 'Hold the needle at', unit: 'PsiGauge' },
    trueAtHoldPsi: { label: 'True pressure at that mark', unit: 'PsiGauge' },
    nextTestDueDays: { label: 'Next test of the dial due in', unit: 'Days' },
  },
  sourceKeys: ['usda-aib-539-1994', 'iowa-state-gauge-2024'],
  example: {
    elevation: '1340 ft',
    knownBy: 'map',
    test: [
      { truePsi: 10, readsPsi: 11.5 },
      { truePsi: 11, readsPsi: 12.5 },
      { truePsi: 15, readsPsi: 16.5 },
    ],
    testedDaysAgo: 0,
    marksEvery: 1,
    restsAt: 0,
    weights: '5-10-15',
    rim: 'metal',
  },
  run: (input) => {
    const { elevation, knownBy, test, testedDaysAgo, rim, weights } = input
    const isTested = test !== undefined && test.length > 0 && testedDaysAgo !== undefined
    const conditions = { jar: 'pint', alkali: 'ash', standingRead: false } as const
    const outcome = cannerCard({
      elevationFt: elevation,
      elevationKnownBy: knownBy,
      dial: {
        marksEveryPsi: input.marksEvery,
        restsAtPsi: input.restsAt,
        ...(isTested && { test: { readings: test, testedDaysAgo } }),
      },
      ...(weights !== 'none' && { weightsLb: WEIGHTS_LB[weights] }),
      ...(rim && { rim }),
      conditions: conditionsOf(conditions, headspaceRule().figure.value),
    })
    if (outcome.kind === 'refused') {
      const { refused, why, forInformation, askWhom } = outcome
      return { ok: false, refused, why: [...why, ...forInformation], askWhom }
    }
    return aim(outcome)
  },
}

function aim(card: CannerCard): CalcResult {
  const reasons = card.routes.flatMap((route) => route.reasons)
  if (card.routes.every(({ usable }) => !usable)) {
    const dial = card.routes.find(({ gauge }) => gauge === 'dial')!
    return {
      ok: false,
      refused: `dial-${dial.verdict}`,
      why: [...reasons, say('canner:no-usable-gauge')],
      askWhom: [say('canner:who-tests-dials')],
    }
  }
  const [first, ...others] = card.routes
  const dial = card.routes.find(({ gauge }) => gauge === 'dial')
  const second = others.find(({ gauge, usable }) => gauge === 'dial' && usable)
  return {
    ok: true,
    values: card.routes.flatMap(({ gauge, usable, set, holdAt, required, error, trueAtHold, nextTestDue }) =>
      gauge === 'weight'
        ? named([['weightHoldLb', usable ? holdAt : undefined]])
        : named([
            ['dialSetPsi', set],
            ['errorPsi', error],
            ['requiredReadingPsi', required],
            ['holdAtPsi', holdAt],
            ['trueAtHoldPsi', trueAtHold],
            ['nextTestDueDays', nextTestDue],
          ]),
    ),
    reasons: [
      ...(first?.gauge === 'weight' ? card.reasons : []),
      ...(second ? [say('canner:dial-second', { hold: { value: second.holdAt!.value, unit: 'PsiGauge' } })] : []),
      ...reasons,
    ],
    warnings: [...(dial?.nextTestDue ? [nextTestSentence(dial.nextTestDue)] : []), ...card.cautions],
  }
}

function named(values: readonly (readonly [id: string, value: Reckoned | undefined])[]): Reckoned[] {
  return values.flatMap(([id, value]) => (value ? [{ ...value, id }] : []))
}
