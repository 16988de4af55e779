import { type Calc, type CalcResult, convert, type Fields } from '@crib/science'
import { dayForPlan } from '../day/from-plan.ts'
import { say } from '../shared/say.ts'
import { BATCH_PLAN_FIELDS, BATCH_PLAN_OUTPUTS } from './batch-plan.fields.ts'
import { batchPlan } from './batch-plan.ts'
import type { BatchPlanInput, Ending, EndingShare, HullingAlkali, PlanCanner, Pot, WaterRecord } from './input.ts'
import type { WashPattern } from './stages.ts'

/** The flat form in which doors hand a batch over. */
export interface BatchPlanForm {
  readonly cornForm?: 'shelled' | 'ears'
  readonly cornLb?: number
  readonly cornLiquidQt?: number
  readonly cornMeasureAssumed?: 'liquid' | 'dry'
  readonly jarsWantedCount?: number
  readonly seedHow: 'by-eye' | 'by-weight' | 'not-this-year'
  readonly seedPlantingsCount?: number
  readonly seedLb?: number
  readonly seedPlaces?: string
  readonly seedReason?: string
  readonly seedAlreadyTakenOut?: boolean
  readonly cornName?: string
  readonly cornType: BatchPlanInput['cornType']
  readonly hull?: 'easy' | 'thick'
  readonly treatedSeed?: boolean
  readonly lbPerLiquidQt?: number
  readonly sortedOutDryFraction?: number
  readonly sortedOutWetFraction?: number
  readonly shellersCount?: number
  readonly shellingLbPerH?: number
  readonly alkali: HullingAlkali
  readonly alkaliLotName?: string
  readonly ashCupsPerLiquidQt?: number
  readonly slipMin?: number
  readonly alkaliJudged?: 'works' | 'weak' | 'unknown'
  readonly pots: readonly Pot[]
  readonly potFillLimitFraction?: number
  readonly waterPerCornLiquidQt?: number
  readonly washPattern?: WashPattern
  readonly waterRecordCornLiquidQt?: number
  readonly waterRecord?: WaterRecord['rows']
  readonly hominyLowLiquidQt?: number
  readonly hominyMiddleLiquidQt?: number
  readonly hominyHighLiquidQt?: number
  readonly jarsFraction?: number
  readonly freezerFraction?: number
  readonly driedFraction?: number
  readonly flourFraction?: number
  readonly roastedFraction?: number
  readonly tonightFraction?: number
  readonly fill?: BatchPlanInput['fill']
  readonly jarSize?: BatchPlanInput['jarSize']
  readonly canners: readonly CannerRow[]
  readonly elevationFt?: number
  readonly elevationKnownBy?: 'map' | 'phone' | 'survey'
  readonly standingRead: boolean
  readonly salt?: boolean
  readonly spareLidFraction?: number
  readonly peopleCount?: number
  readonly startClockMin?: number
}

export interface CannerRow {
  readonly name: string
  readonly gauge: 'dial' | 'weight' | 'dial and weight'
  readonly capacityPints: number
  readonly capacityQuarts: number
  readonly heatMin?: number
  readonly comeUpMin?: number
  readonly coolToZeroMin?: number
  readonly unloadMin?: number
  readonly reloadMin?: number
}

/** Drops what was not given, so that an absent field stays absent. */
function given<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never
}

export function plannedCanner(row: CannerRow): PlanCanner {
  const { name, capacityPints, capacityQuarts, heatMin, comeUpMin, coolToZeroMin, unloadMin, reloadMin } = row
  const times = [heatMin, comeUpMin, coolToZeroMin, unloadMin, reloadMin] as const
  const isTimed = times.every((minutes) => minutes !== undefined)
  const [heat, comeUp, coolToZero, unload, reload] = times as readonly number[] as [
    number,
    number,
    number,
    number,
    number,
  ]
  return {
    name,
    gauges: row.gauge === 'dial and weight' ? ['weight', 'dial'] : [row.gauge],
    capacityPints,
    capacityQuarts,
    ...(isTimed && { timingsMin: { heat, comeUp, coolToZero, unload, reload } }),
  }
}

/** The plan's input from the flat form, or null when the amount is not told exactly once. */
export function batchPlanInput(form: BatchPlanForm): BatchPlanInput | null {
  const amounts = [form.cornLb, form.cornLiquidQt, form.jarsWantedCount].filter((amount) => amount !== undefined)
  if (amounts.length !== 1) return null
  const from: BatchPlanInput['from'] =
    form.jarsWantedCount !== undefined
      ? { kind: 'jars', jarCount: form.jarsWantedCount }
      : {
          kind: 'corn',
          form: form.cornForm ?? 'shelled',
          amount:
            form.cornLb !== undefined
              ? { value: form.cornLb, unit: 'Lb' }
              : {
                  value: form.cornLiquidQt!,
                  unit: 'LiquidQt',
                  ...(form.cornMeasureAssumed && { assumed: form.cornMeasureAssumed }),
                },
        }
  const shares: readonly [Ending, number | undefined][] = [
    ['jars', form.jarsFraction],
    ['freezer', form.freezerFraction],
    ['dried', form.driedFraction],
    ['flour', form.flourFraction],
    ['roasted', form.roastedFraction],
    ['tonight', form.tonightFraction],
  ]
  const lot = given({
    cupsPerLiquidQt: form.ashCupsPerLiquidQt,
    slipMin: form.slipMin,
    judged: form.alkaliJudged,
  })
  const { hominyLowLiquidQt: low, hominyMiddleLiquidQt: middle, hominyHighLiquidQt: high } = form
  return {
    from,
    seed: {
      how: form.seedHow,
      plantingsCount: form.seedPlantingsCount ?? 2,
      places: (form.seedPlaces ?? '').split(',').flatMap((place) => (place.trim() ? [place.trim()] : [])),
      ...given({
        massKg: form.seedLb === undefined ? undefined : convert(form.seedLb, 'Lb', 'Kg'),
        reason: form.seedReason,
        isAlreadyTakenOut: form.seedAlreadyTakenOut,
      }),
    },
    cornType: form.cornType,
    alkali: form.alkali,
    pots: form.pots,
    canners: form.canners.map(plannedCanner),
    endings: shares.flatMap(([ending, shareFraction]): EndingShare[] =>
      shareFraction ? [{ ending, shareFraction }] : [],
    ),
    isStandingRead: form.standingRead,
    ...(form.alkaliLotName !== undefined || Object.keys(lot).length > 0
      ? { alkaliLot: { name: form.alkaliLotName ?? 'at hand', ...lot } }
      : {}),
    ...(middle !== undefined && {
      hominyPerDryVolume: { low: low ?? middle, middle, high: high ?? middle },
    }),
    ...(form.waterRecord &&
      form.waterRecordCornLiquidQt !== undefined && {
        waterRecord: { cornLiquidQt: form.waterRecordCornLiquidQt, rows: form.waterRecord },
      }),
    ...given({
      cornName: form.cornName,
      hull: form.hull,
      isTreatedSeed: form.treatedSeed,
      lbPerLiquidQt: form.lbPerLiquidQt,
      sortedOutDryFraction: form.sortedOutDryFraction,
      sortedOutWetFraction: form.sortedOutWetFraction,
      shellersCount: form.shellersCount,
      shellingLbPerH: form.shellingLbPerH,
      potFillLimitFraction: form.potFillLimitFraction,
      waterToCornRatio: form.waterPerCornLiquidQt,
      washPattern: form.washPattern,
      fill: form.fill,
      jarSize: form.jarSize,
      elevationFt: form.elevationFt,
      elevationKnownBy: form.elevationKnownBy,
      wantsSalt: form.salt,
      spareLidFraction: form.spareLidFraction,
    }),
  }
}

/** When the work begins if the keeper named no clock; only the length is shown then. [ClockMin] */
const SOME_MORNING_MIN = 480

function run(form: BatchPlanForm): CalcResult {
  const input = batchPlanInput(form)
  if (!input) return { ok: false, refused: 'amount-not-once', why: [say('kettle:amount-not-once')], askWhom: [] }
  const plan = batchPlan(input)
  if (plan.kind === 'refused') return { ok: false, refused: plan.refused, why: plan.why, askWhom: plan.askWhom }
  const closed = plan.jarsClosed ? plan.jarsClosed.askWhom : []
  if (plan.kettle.potLoads.length === 0) {
    return { ok: true, values: plan.values, reasons: plan.reasons, warnings: [...plan.warnings, ...closed] }
  }
  const day = dayForPlan(plan, {
    clock: { from: 'start', clockMin: form.startClockMin ?? SOME_MORNING_MIN },
    peopleCount: form.peopleCount ?? 1,
  })
  const dayValues = day.values.filter(({ unit }) => unit !== 'ClockMin' || form.startClockMin !== undefined)
  return {
    ok: true,
    // Seed heads the sheet, then the true length of the day, then amounts.
    values: [...plan.values, ...dayValues],
    reasons: [...plan.reasons, ...day.reasons],
    warnings: [...plan.warnings, ...closed, ...day.warnings],
  }
}

export const batchPlanCalc: Calc<BatchPlanForm> = {
  id: 'batch-plan',
  title: 'From sack to shelf',
  question: 'What does this much corn take and give: alkali, pots, water, hominy, jars, loads and hours?',
  inputs: BATCH_PLAN_FIELDS satisfies Fields,
  outputs: BATCH_PLAN_OUTPUTS,
  sourceKeys: [
    'so-easy-to-preserve-1999',
    'nchfp-hominy-without-lye',
    'hominy-yield-statements',
    'usda-aib-539-1994',
    'rankin-wisconsin-bushels',
    'usda-sr',
    'fao-maize-1992',
  ],
  example: {
    cornLb: 9,
    seedHow: 'by-eye',
    cornName: 'Lantern flint (invented)',
    cornType: 'flint',
    alkali: 'ash',
    alkaliLotName: 'M-1',
    ashCupsPerLiquidQt: 1,
    slipMin: 55,
    pots: [{ name: 'big pot', volumeLiquidQt: 20, material: 'stainless' }],
    jarsFraction: 0.5,
    freezerFraction: 0.5,
    jarSize: 'quart',
    fill: 'loose-to-headspace',
    canners: [{ name: 'yard canner', gauge: 'dial', capacityPints: 9, capacityQuarts: 7 }],
    elevationFt: 820,
    standingRead: true,
    startClockMin: 480,
  },
  run,
}
