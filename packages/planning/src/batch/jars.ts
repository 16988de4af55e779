/** Jars, lids, salt and loads for the hominy that goes into jars: plan the middle, set out the high end. */
import { saltRule } from '@crib/guidance'
import { ceilCount, type Reckoned, type Sentence } from '@crib/science'
import { cannerLoads, type RoundOfLoads } from '../shared/canner-loads.ts'
import { nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import type { BatchPlanInput, Fill, JarSize, OwnSpread, PlanCanner } from './input.ts'

/**
 * Hominy per volume of dry corn, liquid in the jar counted as the printed yields do.
 * Low 9 qt to about 20 qt; middle 2 qt to about 6 quart jars; high 1 to 4, common practice, no source.
 * @source hominy-yield-statements; so-easy-to-preserve-1999 p. 66
 */
export const HOMINY_PER_DRY_VOLUME: OwnSpread = { low: 2.2, middle: 3, high: 4 }
/** Quart jars printed for one liquid quart of dry corn, filled loosely.  @source so-easy-to-preserve-1999 p. 66 */
export const PRINTED_JARS_PER_DRY_QT = 3

/** How much of the jar is hominy before liquid goes in. Loose to headspace is what the printed yields count. */
export const FILL_FRACTION: Record<Fill, number> = { 'loose-to-headspace': 1, half: 1 / 2, third: 1 / 3 }
export const JAR_LIQUID_QT: Record<JarSize, number> = { 'half-pint': 0.25, pint: 0.5, quart: 1 }

export interface JarPlan {
  /** Unrounded, before counting jars. */
  readonly jarCount: number
  readonly jarSize: JarSize
  readonly fill: Fill
  readonly rounds: readonly RoundOfLoads[]
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
}

export interface JarChoice {
  readonly input: BatchPlanInput
  readonly dryCornLiquidQt: number
  /** Hominy meant for jars. [liquid qt] */
  readonly hominyLiquidQt: { readonly low: number; readonly middle: number; readonly high: number }
}

export function jarCapacity(canner: PlanCanner, jarSize: JarSize): number {
  return jarSize === 'quart' ? canner.capacityQuarts : canner.capacityPints
}

export function jarPlan({ input, dryCornLiquidQt, hominyLiquidQt }: JarChoice): JarPlan {
  const jarSize = input.jarSize ?? 'quart'
  const fill = input.fill ?? 'loose-to-headspace'
  const jarQt = JAR_LIQUID_QT[jarSize]
  const jarsFor = (hominy: number) => hominy / (FILL_FRACTION[fill] * jarQt)
  const isFixed = input.from.kind === 'jars'
  const jars = input.from.kind === 'jars' ? input.from.jarCount : jarsFor(hominyLiquidQt.middle)
  const jarCount = ceilCount(jars)
  const setOut = isFixed ? jarCount : Math.max(jarCount, ceilCount(jarsFor(hominyLiquidQt.high)))
  const spare = input.spareLidFraction ?? 0
  const isOwn = input.hominyPerDryVolume !== undefined
  const basis = isFixed ? ('as-typed' as const) : isOwn ? ('own-record' as const) : ('published' as const)
  const sourceKeys = isFixed || isOwn ? [] : ['so-easy-to-preserve-1999', 'hominy-yield-statements']
  const inputs = { dryCornLiquidQt, jarSize, fill, hominyLiquidQt: hominyLiquidQt.middle }
  const count = { unit: 'Count' as const, rounding: up(1), basis, sourceKeys, inputs }

  const rounds = cannerLoads(
    jarCount,
    input.canners.map((canner) => ({ name: canner.name, capacity: jarCapacity(canner, jarSize) })),
  )
  // A half-pint takes half of what is printed for a pint: the amount is by volume, and for taste alone.
  const printedSalt = saltRule(jarSize === 'quart' ? 'quart' : 'pint')
  const saltTsp = (printedSalt.figure.value / (jarSize === 'half-pint' ? 2 : 1)) * jarCount
  const salt = { basis: 'published' as const, sourceKeys: printedSalt.sourceKeys, inputs: { jarCount, jarSize } }
  const loads = rounds.flat()
  return {
    jarCount,
    jarSize,
    fill,
    rounds,
    values: [
      reckon({
        id: 'jars',
        value: jars,
        ...count,
        ...(!isFixed && { low: jarsFor(hominyLiquidQt.low), high: Math.max(jars, jarsFor(hominyLiquidQt.high)) }),
      }),
      reckon({ id: 'jarsToSetOut', value: setOut, ...count }),
      reckon({
        id: 'jarsLooseAsPrinted',
        value: ((PRINTED_JARS_PER_DRY_QT * dryCornLiquidQt) / jarQt) * jarShare(input),
        unit: 'Count',
        rounding: up(1),
        basis: 'published',
        sourceKeys: ['so-easy-to-preserve-1999'],
        inputs,
      }),
      reckon({
        id: 'lids',
        value: jarCount * (1 + spare),
        ...count,
        basis: 'project-rule',
        inputs: { jarCount, spareLidFraction: spare },
      }),
      reckon({
        id: 'lidsToSetOut',
        value: setOut * (1 + spare),
        ...count,
        basis: 'project-rule',
        inputs: { jarsToSetOut: setOut, spareLidFraction: spare },
      }),
      ...(input.wantsSalt === false
        ? []
        : [
            reckon({ id: 'saltTsp', value: saltTsp, unit: 'Tsp', rounding: nearest(0.25), ...salt }),
            reckon({ id: 'saltTbsp', value: saltTsp / 3, unit: 'Tbsp', rounding: nearest(0.25), ...salt }),
            reckon({ id: 'saltCups', value: saltTsp / 48, unit: 'Cup', rounding: nearest(0.125), ...salt }),
          ]),
      ...(rounds.length === 0
        ? []
        : [
            reckon({ id: 'rounds', value: rounds.length, ...count, basis: 'project-rule' }),
            reckon({ id: 'loads', value: loads.length, ...count, basis: 'project-rule' }),
            ...loads.map((load) =>
              reckon({
                id: `load:${load.number}`,
                value: load.jarCount,
                unit: 'Count',
                rounding: up(1),
                basis: 'project-rule',
                inputs: { canner: load.cannerName, round: load.round },
              }),
            ),
          ]),
    ],
    reasons: [
      input.fill ? say(`kettle:fill-${fill}` as const) : say('kettle:fill-asked'),
      say('kettle:plan-middle'),
      say('kettle:swells-in-jar'),
      ...(input.wantsSalt === false ? [] : [say('kettle:salt-optional')]),
      ...(rounds.length > 0 ? [say('kettle:loads-spread')] : []),
    ],
  }
}

function jarShare(input: BatchPlanInput): number {
  return input.endings.find(({ ending }) => ending === 'jars')?.shareFraction ?? 1
}
