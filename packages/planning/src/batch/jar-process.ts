/** Which pressure and minutes a jar plan may show: looked up, only after the standing was read. */
import { askWhom, findProcess, type GaugeKind, headspaceRule, type PublishedProcess, ventRule } from '@crib/guidance'
import { ceilCount, type Reckoned, type Sentence } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { pressureValue, setPressureFor } from '../shared/set-pressure.ts'
import type { BatchPlanInput } from './input.ts'
import type { Stage } from './stages.ts'

export interface OpenJars {
  readonly kind: 'open'
  readonly processMin?: number
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly standing: readonly Sentence[]
}

export interface ClosedJars {
  readonly kind: 'closed'
  readonly why: readonly Sentence[]
  readonly askWhom: readonly Sentence[]
}

/** Opens the jar plan, or says why it stays closed. `roundsCount` is 0 where no canner is known. */
export function jarProcess(
  input: BatchPlanInput,
  stages: readonly Stage[],
  roundsCount: number,
): OpenJars | ClosedJars {
  const elevationFt = input.elevationFt
  const lookUp = (gauge: GaugeKind) =>
    findProcess({
      food: 'hominy',
      alkali: input.alkali,
      hotPack: stages.at(-1)?.isHotPack === true,
      fill: 'loose',
      liquidClear: true,
      headspaceIn: headspaceRule().figure.value,
      jar: input.jarSize ?? 'quart',
      gauge,
      elevationFt: elevationFt ?? 0,
      standingRead: input.isStandingRead,
    })
  const outcome = lookUp('dial')
  if (outcome.kind === 'off-table') return { kind: 'closed', why: outcome.why, askWhom: outcome.askWhom }
  if (outcome.kind === 'conflict') return { kind: 'closed', why: outcome.why, askWhom: outcome.askWhom }
  const process = outcome.kind === 'found' ? outcome.process : outcome.openedByReading
  if (!input.isStandingRead || !process) {
    const why = outcome.kind === 'found' ? [] : outcome.why
    return {
      kind: 'closed',
      why: [...why, ...outcome.standingSentences, say('kettle:jars-open-after-reading')],
      askWhom: askWhom(),
    }
  }
  return opened(input, process, outcome.standingSentences, roundsCount)
}

function opened(
  input: BatchPlanInput,
  process: PublishedProcess,
  standing: readonly Sentence[],
  roundsCount: number,
): OpenJars | ClosedJars {
  const { elevationFt, elevationKnownBy = 'map' } = input
  const minutes = reckon({
    id: 'processMin',
    value: process.processMin,
    unit: 'Min',
    rounding: nearest(1),
    basis: 'published',
    sourceKeys: process.sourceKeys,
    inputs: { jar: process.jar, tableId: process.tableId },
  })
  const vent = { ...ventRule().figure, id: 'ventMin' }
  const alone = reckon({
    id: 'ventAndProcessMin',
    value: roundsCount * (vent.value + process.processMin),
    unit: 'Min',
    rounding: nearest(1),
    basis: 'published',
    sourceKeys: process.sourceKeys,
    inputs: { rounds: ceilCount(roundsCount), ventMin: vent.value, processMin: process.processMin },
  })
  const shared = {
    kind: 'open' as const,
    processMin: process.processMin,
    standing: [...standing, ...process.hearsay.map(({ note }) => note)],
  }
  if (elevationFt === undefined) {
    return { ...shared, values: [minutes, vent], reasons: [say('kettle:elevation-needed')] }
  }
  const dial = setPressureFor('dial', elevationFt, elevationKnownBy)
  const weight = setPressureFor('weight', elevationFt, elevationKnownBy)
  if (dial.kind === 'off-table') return { kind: 'closed', why: dial.why, askWhom: dial.askWhom }
  if (weight.kind === 'off-table') return { kind: 'closed', why: weight.why, askWhom: weight.askWhom }
  return {
    ...shared,
    values: [
      pressureValue('dialPsi', dial, elevationFt),
      pressureValue('weightLb', weight, elevationFt),
      minutes,
      vent,
      ...(roundsCount > 0 ? [alone] : []),
    ],
    reasons: [say('kettle:card-of-each-canner'), say('kettle:not-the-whole-day')],
  }
}
