/**
 * How long a single layer of corn takes in air that may change by the hour, as a band: hard flint kernels by their measured
 * diffusivity at the slow end, dent by the Page curve of the standard at the quick one, whichever way round they fall.
 * Leaves out: a deep heap, which dries from one side; ears and braids, for which no equation was found; taking up water
 * again from damp air, which is held still instead.
 */
import { ValidRangeError } from '../errors.ts'
import { dryToWetFraction, equilibriumMoistureHendersonDryFraction, wetToDryFraction } from './equilibrium-moisture.ts'
import {
  FLINT_KERNEL_RADIUS_M,
  flintDiffusivityM2PerS,
  hoursPage,
  moistureRatioPage,
  moistureRatioSphere,
  pageCurveMisraBrooker1980,
} from './thin-layer.ts'

/** Air that stays the same for a while. */
export interface AirSpell {
  readonly hours: number
  /** [°C] 30 to 60. */
  readonly temperatureC: number
  /** [fraction] 0.10 to 0.83. */
  readonly humidityFraction: number
}

export interface DryingWish {
  /** Moisture of the kernels at the start, wet basis. [fraction] */
  readonly startWetFraction: number
  readonly endWetFraction: number
  /** In order; begun again from the first when they are through, as days follow days. */
  readonly air: readonly AirSpell[]
  /** Through the layer. [m/s] */
  readonly airMPerS: number
}

export interface DryingBand {
  readonly quickHours: number
  readonly slowHours: number
  /** Where the driest of these spells would bring it in the end, wet basis. [fraction] */
  readonly settlesWetFraction: number
}

/** Longer than any household dries one layer; a drying that takes longer is answered as never. [h]  project rule */
const LIMIT_H = 2400

/**
 * Hours from one moisture to another as a band over two published models; null where this air never brings it so far, or
 * not within 100 days.
 *
 * Hourly air enters as equivalent time: each spell goes on from the share of water still to go in that spell's own air.
 *
 * @throws {ValidRangeError} for air, moisture or speed outside the ranges of the two models, or an end wetter than the start.
 * @source misra-brooker-1980; ordonez-2012; equilibrium by asae-d245 modified Henderson
 */
export function dryingHours(wish: DryingWish): DryingBand | null {
  const { startWetFraction, endWetFraction, air } = wish
  if (!(endWetFraction < startWetFraction)) {
    const range = { min: 0, max: startWetFraction, unit: 'of total weight', source: 'project-rule' }
    throw new ValidRangeError('endWetFraction', endWetFraction, range)
  }
  if (air.length === 0 || !air.every(({ hours }) => hours > 0)) {
    throw new ValidRangeError('air', air.length, { min: 1, max: 1000, unit: 'spells', source: 'project-rule' })
  }
  const settles = Math.min(...air.map(equilibriumMoistureHendersonDryFraction))
  const hours = [flintSphere, dentPage].map((model) => course(wish, model))
  if (hours.some((each) => each === null)) return null
  const [a, b] = hours as [number, number]
  return { quickHours: Math.min(a, b), slowHours: Math.max(a, b), settlesWetFraction: dryToWetFraction(settles) }
}

/** A model in one air: share left after some hours, and the hours to a share. */
interface ModelInAir {
  readonly after: (hours: number) => number
  readonly hoursTo: (ratio: number) => number
}

type Model = (spell: AirSpell, wish: DryingWish) => ModelInAir

function dentPage(
  { temperatureC, humidityFraction }: AirSpell,
  { startWetFraction, airMPerS }: DryingWish,
): ModelInAir {
  const startDryFraction = wetToDryFraction(startWetFraction)
  const curve = pageCurveMisraBrooker1980({ temperatureC, humidityFraction, startDryFraction, airMPerS })
  return { after: (hours) => moistureRatioPage(curve, hours), hoursTo: (ratio) => hoursPage(curve, ratio) }
}

function flintSphere({ temperatureC }: AirSpell): ModelInAir {
  const perHour = (flintDiffusivityM2PerS(temperatureC) * 3600) / FLINT_KERNEL_RADIUS_M ** 2
  return {
    after: (hours) => moistureRatioSphere(perHour * hours),
    hoursTo: (ratio) => sphereFourier(ratio) / perHour,
  }
}

/** D t / r^2 at which a share is left, by halving: the series falls steadily, so 60 halvings settle it. */
function sphereFourier(ratio: number): number {
  let low = 0
  let high = 4
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (moistureRatioSphere(middle) > ratio) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function course(wish: DryingWish, model: Model): number | null {
  const start = wetToDryFraction(wish.startWetFraction)
  const end = wetToDryFraction(wish.endWetFraction)
  const spells = wish.air.map((spell) => ({
    hours: spell.hours,
    settles: equilibriumMoistureHendersonDryFraction(spell),
    inAir: model(spell, wish),
  }))
  let moisture = start
  let elapsed = 0
  while (elapsed < LIMIT_H) {
    const before = moisture
    for (const { hours, settles, inAir } of spells) {
      // Damp air: nothing goes, and what would come back is not reckoned.
      if (settles < moisture) {
        const shareOf = (dry: number): number => (dry - settles) / (start - settles)
        const from = inAir.hoursTo(Math.min(1, shareOf(moisture)))
        if (end > settles) {
          const to = inAir.hoursTo(shareOf(end))
          if (to - from <= hours) return elapsed + Math.max(0, to - from)
        }
        moisture = settles + (start - settles) * inAir.after(from + hours)
      }
      elapsed += hours
    }
    if (before - moisture < 1e-7) return null
  }
  return null
}
