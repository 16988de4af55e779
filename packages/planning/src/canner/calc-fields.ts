/** Input fields that several canner calculations share. */
import { JAR_KEYS } from '@crib/guidance'
import type { Field, Fields } from '@crib/science'
import type { ElevationKnownBy } from '../shared/set-pressure.ts'
import type { JarConditions } from './card.ts'
import type { Dial } from './dial.ts'

/** Wider than any table, so that a place outside one gets an answer and not a fault. */
export const ELEVATION: Field = {
  kind: 'quantity',
  label: 'Elevation',
  unit: 'Ft',
  min: -1500,
  max: 30_000,
  limitSource: 'project-rule',
}

export const KNOWN_BY: Field = { kind: 'choice', label: 'Elevation known by', options: ['map', 'phone', 'survey'] }

const HEADSPACE: Field = {
  kind: 'quantity',
  label: 'Headspace',
  unit: 'In',
  min: 0,
  max: 4,
  limitSource: 'project-rule',
  optional: true,
}

/** What a process lookup asks, beside gauge and elevation. */
export const JAR_FIELDS = {
  jar: { kind: 'choice', label: 'Jar', options: JAR_KEYS },
  alkali: {
    kind: 'choice',
    label: 'Hulled with',
    options: ['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'baking-soda'],
  },
  standingRead: { kind: 'flag', label: 'Where this process stands was read this season' },
  hotPack: { kind: 'flag', label: 'Reheated 30 to 45 min in fresh water, filled hot', optional: true },
  fill: { kind: 'choice', label: 'Fill', options: ['loose', 'packed-tight'], optional: true },
  liquidClear: { kind: 'flag', label: 'Liquid clear', optional: true },
  headspaceIn: HEADSPACE,
} as const satisfies Fields

export interface JarInput {
  readonly jar: JarConditions['jar']
  readonly alkali: Exclude<JarConditions['alkali'], 'none'>
  readonly standingRead: boolean
  readonly hotPack?: boolean
  readonly fill?: JarConditions['fill']
  readonly liquidClear?: boolean
  readonly headspaceIn?: number
}

export interface PlaceInput {
  readonly elevation: number
  readonly knownBy: ElevationKnownBy
}

/** What is not said is as directed: hot pack, loose fill, clear liquid, the printed headspace. */
export function conditionsOf(input: JarInput, headspaceIn: number): JarConditions {
  const { jar, alkali, standingRead, hotPack = true, fill = 'loose', liquidClear = true } = input
  return {
    food: 'hominy',
    jar,
    alkali,
    standingRead,
    hotPack,
    fill,
    liquidClear,
    headspaceIn: input.headspaceIn ?? headspaceIn,
  }
}

/** A dial tested true this year, marked every 1 psi: what the table itself is printed for. */
export const TRUE_DIAL: Dial = {
  marksEveryPsi: 1,
  restsAtPsi: 0,
  test: { readings: [5, 10, 15, 20].map((psi) => ({ truePsi: psi, readsPsi: psi })), testedDaysAgo: 0 },
}
