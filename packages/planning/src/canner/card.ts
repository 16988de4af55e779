/**
 * The card of one canner at one place: one number to hold for each gauge, the likelier route first, with its reasons.
 * Leaves out: minutes worked out from anything (they are looked up) and the paper it is printed on.
 */
import {
  askWhom,
  cautionsFor,
  findProcess,
  habitLine,
  type OffTablePressure,
  type ProcessOutcome,
  type ProcessQuery,
  type PublishedProcess,
  pressureRowFor,
  ventRule,
} from '@crib/guidance'
import type { Reckoned, Sentence } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { type ElevationKnownBy, setPressureFor } from '../shared/set-pressure.ts'
import type { Dial } from './dial.ts'
import { dialCard, type GaugeCard, weightCard } from './gauge-card.ts'

/** What a process lookup asks beside gauge and elevation, which the card brings. */
export type JarConditions = Omit<ProcessQuery, 'gauge' | 'elevationFt'>

export interface CardInput {
  readonly siteName?: string
  /** As typed. [ft] */
  readonly elevationFt: number
  readonly elevationKnownBy: ElevationKnownBy
  readonly dial?: Dial
  /** Weights at hand, by the figure stamped on each. [lb] */
  readonly weightsLb?: readonly number[]
  readonly rim?: 'gasket' | 'metal'
  readonly isElectric?: boolean
  readonly conditions: JarConditions
}

export interface CannerCard {
  readonly kind: 'card'
  readonly siteName?: string
  readonly elevation: Reckoned
  readonly elevationKnownBy: ElevationKnownBy
  /** Usable gauges first; among them a weight before a dial that is not clean. */
  readonly routes: readonly GaugeCard[]
  readonly vent: Reckoned
  /** Only once the standing was read and every condition is met. */
  readonly minutes?: Reckoned
  readonly process?: PublishedProcess
  /** Why no minutes are shown. */
  readonly withheld: readonly Sentence[]
  /** For which food the minutes were made and where they stand now. */
  readonly standing: readonly Sentence[]
  readonly reasons: readonly Sentence[]
  readonly cautions: readonly Sentence[]
}

export interface CardRefusal {
  readonly kind: 'refused'
  readonly refused: 'off-table' | 'margin-off-table' | 'electric-canner'
  readonly why: readonly Sentence[]
  readonly askWhom: readonly Sentence[]
  /** Printed figures that are no number to hold. */
  readonly forInformation: readonly Sentence[]
}

export type CardOutcome = CannerCard | CardRefusal

/**
 * The card, or why there is none.
 *
 * An elevation from a map or a phone counts 15 m (50 ft) higher; a surveyed one counts as it is. No number is ever
 * below the table's for the elevation as typed.
 *
 * @throws {RangeError} when the elevation is no number or a gauge's facts are none.
 * @source usda-aib-539-1994 (bands, venting); margin: project rule, common practice, no source
 */
export function cannerCard(asTyped: CardInput): CardOutcome {
  // 2,000 ft typed as 609.6 m is 2,000 ft again, and not the next band for binary dust.
  const input = { ...asTyped, elevationFt: Number(asTyped.elevationFt.toFixed(6)) }
  const { elevationFt, elevationKnownBy } = input
  if (input.isElectric) return refusal('electric-canner', [say('canner:electric-not-covered')])
  const typed = pressureRowFor('dial', elevationFt)
  if (typed.kind === 'off-table') return offTable('off-table', typed, typed.why)
  const raised = setPressureFor('dial', elevationFt, elevationKnownBy)
  if (raised.kind === 'off-table') {
    const why = [say('canner:margin-off-table', { elevation: feet(elevationFt) })]
    return offTable('margin-off-table', raised, why)
  }

  const routes = inRouteOrder(gaugeCards(input))
  const first = routes.find(({ usable }) => usable)
  const outcome = findProcess({ ...input.conditions, gauge: first?.gauge ?? 'dial', elevationFt })
  const opened = openedProcess(outcome, input.conditions.standingRead)
  const minutes = opened && minutesOf(opened)
  return {
    kind: 'card',
    ...(input.siteName !== undefined && { siteName: input.siteName }),
    elevation: elevationValue(elevationFt),
    elevationKnownBy,
    routes,
    vent: ventMinutes(),
    ...(opened && { process: opened }),
    ...(minutes && { minutes }),
    withheld: opened ? [] : withheldWhy(outcome),
    standing: standingOf(outcome, opened),
    reasons: [
      ...(first?.gauge === 'weight' && input.dial
        ? [say('canner:weight-first', { weight: quantityOf(first.holdAt!) })]
        : []),
      ...(minutes ? [say('canner:minutes-do-not-change', { minutes: quantityOf(minutes) })] : []),
      ...(first ? [] : [say('canner:no-usable-gauge')]),
    ],
    cautions: [
      ...(input.rim === undefined ? [] : [input.rim === 'metal' ? habitLine('rim').say : say('canner:rim-gasket')]),
      ...cautionsFor('vent'),
      ...cautionsFor('pressure'),
    ],
  }
}

function gaugeCards({ dial, weightsLb, siteName, elevationFt, elevationKnownBy }: CardInput): GaugeCard[] {
  const place = { elevationFt, elevationKnownBy, ...(siteName !== undefined && { siteName }) }
  return [...(dial ? [dialCard(dial, place)] : []), ...(weightsLb ? [weightCard(weightsLb, place)] : [])]
}

/** Needs no test and cannot drift: a weight goes before a dial that is anything but tested true. */
function inRouteOrder(cards: readonly GaugeCard[]): GaugeCard[] {
  const rank = ({ gauge, usable, verdict }: GaugeCard): number => {
    if (!usable) return 3
    if (gauge === 'weight') return 1
    return verdict === 'use' ? 0 : 2
  }
  return [...cards].sort((a, b) => rank(a) - rank(b))
}

function openedProcess(outcome: ProcessOutcome, standingRead: boolean): PublishedProcess | null {
  if (!standingRead) return null
  if (outcome.kind === 'found') return outcome.process
  return (outcome.kind === 'no-published-process' && outcome.openedByReading) || null
}

function withheldWhy(outcome: ProcessOutcome): readonly Sentence[] {
  if (outcome.kind === 'found') return [say('canner:minutes-after-reading')]
  if (outcome.kind !== 'no-published-process') return outcome.why
  const onlyUnread = outcome.unmet.every((condition) => condition === 'alkali-not-tested')
  return [...outcome.why, ...(onlyUnread ? [say('canner:minutes-after-reading')] : [])]
}

function standingOf(outcome: ProcessOutcome, opened: PublishedProcess | null): readonly Sentence[] {
  if (outcome.kind === 'conflict') return outcome.why
  return [...outcome.standingSentences, ...(opened?.hearsay.map(({ note }) => note) ?? [])]
}

function minutesOf(process: PublishedProcess): Reckoned {
  return reckon({
    id: 'processMin',
    value: process.processMin,
    unit: 'Min',
    rounding: nearest(1),
    basis: 'published',
    sourceKeys: process.sourceKeys,
    inputs: { jar: process.jar, timeAs: process.timeAs, tableId: process.tableId },
  })
}

export function ventMinutes(): Reckoned {
  return { ...ventRule().figure, id: 'ventMin' }
}

export function elevationValue(elevationFt: number): Reckoned {
  const rounding = nearest(0.1)
  return reckon({
    id: 'elevationFt',
    value: elevationFt,
    unit: 'Ft',
    rounding,
    basis: 'as-typed',
    inputs: { elevationFt },
  })
}

function offTable(refused: CardRefusal['refused'], row: OffTablePressure, why: readonly Sentence[]): CardRefusal {
  return { ...refusal(refused, why), forInformation: row.forInformation ? [row.forInformation] : [] }
}

function refusal(refused: CardRefusal['refused'], why: readonly Sentence[]): CardRefusal {
  return { kind: 'refused', refused, why, askWhom: askWhom(), forInformation: [] }
}

function feet(elevationFt: number) {
  // One decimal, as guidance says it.
  return { value: Number(elevationFt.toFixed(1)), unit: 'Ft' } as const
}

function quantityOf({ value, unit }: Reckoned) {
  return { value, unit }
}
