/** Both temperature scales of a drawing, °F at the left and °C at the right, and greys for a jar cut open. */
import { convert } from '@crib/science/values'
import { formatNumber, formatQuantity } from '@crib/wording'
import type { CutJarBlock, DrawnAxis } from '../drawn-blocks.ts'

const COOLEST_C = 30
const HOTTEST_C = 125
const FAHRENHEIT = [100, 140, 180, 220, 250]
const CELSIUS = [40, 60, 80, 100, 120]

/** In °C: the same height is read at both sides. */
export function temperatureAxes(): { readonly up: DrawnAxis; readonly upAlso: DrawnAxis } {
  const scale = { min: COOLEST_C, max: HOTTEST_C }
  return {
    up: { ...scale, ticks: FAHRENHEIT.map((F) => ({ at: convert(F, 'F', 'C'), text: `${F} °F` })) },
    upAlso: { ...scale, ticks: CELSIUS.map((C) => ({ at: C, text: `${C} °C` })) },
  }
}

const fahrenheit = (celsius: number) => convert(celsius, 'C', 'F')

const GREYS = 7
/** Narrowest step of a scale. [°C] */
const LEAST_STEP_C = 0.5

/** Grey steps shared by several sections, from the coolest cell of all to the hottest; each step tells its temperatures. */
export function greysOf(sections: readonly (readonly number[])[]): {
  readonly steps: readonly (readonly number[])[]
  readonly scale: CutJarBlock['scale']
} {
  const all = sections.flat()
  const low = Math.floor(Math.min(...all) * 2) / 2
  const stepC = Math.max(LEAST_STEP_C, Math.ceil(((Math.max(...all) - low) / GREYS) * 2) / 2)
  const count = Math.max(1, Math.ceil((Math.max(...all) - low) / stepC))
  const stepOf = (celsius: number) => Math.min(count - 1, Math.max(0, Math.floor((celsius - low) / stepC)))
  return {
    steps: sections.map((cells) => cells.map(stepOf)),
    scale: Array.from({ length: count }, (_, step) => {
      const from = low + step * stepC
      const to = low + (step + 1) * stepC
      return `${formatNumber(fahrenheit(from), 0)} – ${formatNumber(fahrenheit(to), 0)} °F (${formatNumber(from, 1)} – ${formatNumber(to, 1)} °C)`
    }),
  }
}

/** Minutes along the foot, from 0. */
export function minuteAxis(lastMin: number): DrawnAxis {
  const step = lastMin > 90 ? 20 : 10
  const ticks = Array.from({ length: Math.floor(lastMin / step) + 1 }, (_, i) => i * step)
  return {
    min: 0,
    max: lastMin,
    ticks: ticks.map((at) => ({
      at,
      text: at === 0 ? formatQuantity({ value: 0, unit: 'Min' }) : formatNumber(at, 0),
    })),
  }
}
