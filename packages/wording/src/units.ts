/**
 * Values with units as text, in one place: US-customary first with metric beside it, or the other way round.
 * Never a bare "quart" or "pound" (docs/nomenclature.md).
 */
import { convert, type Quantity, type Reckoned, shownValue, type Unit } from '@crib/science/values'

export type Companion = 'both' | 'alone'

interface Style {
  readonly name: string
  /** Unit shown in brackets beside this one. */
  readonly beside?: Unit
  readonly kitchenFractions?: true
  /** Digits of the companion: significant, or decimals for a pressure. */
  readonly besideDecimals?: number
  readonly plural?: string
  /** Most decimals shown; 2 unless a unit's everyday figures are smaller than that. */
  readonly decimals?: number
}

const STYLES: Record<Unit, Style> = {
  Kg: { name: 'kg', beside: 'Lb' },
  G: { name: 'g', beside: 'Oz' },
  Mg: { name: 'mg' },
  Ug: { name: 'µg' },
  Lb: { name: 'lb', beside: 'Kg' },
  Oz: { name: 'oz', beside: 'G' },
  L: { name: 'L', beside: 'LiquidQt' },
  Ml: { name: 'mL' },
  LiquidGal: { name: 'US gal', beside: 'L' },
  LiquidQt: { name: 'liquid qt', beside: 'L' },
  LiquidPt: { name: 'liquid pt', beside: 'L' },
  Cup: { name: 'cup', plural: 'cups', beside: 'Ml', kitchenFractions: true },
  Tbsp: { name: 'Tbsp', kitchenFractions: true },
  Tsp: { name: 'tsp', kitchenFractions: true },
  DryQt: { name: 'dry qt', beside: 'L' },
  Bu: { name: 'bu', beside: 'L' },
  PsiGauge: { name: 'psi', beside: 'KPaGauge', besideDecimals: 0 },
  LbWeight: { name: 'lb weight', beside: 'KPaGauge', besideDecimals: 0 },
  KPaGauge: { name: 'kPa' },
  KPaAbs: { name: 'kPa absolute' },
  M: { name: 'm', beside: 'Ft', besideDecimals: 0 },
  Mm: { name: 'mm' },
  Cm: { name: 'cm', beside: 'In' },
  In: { name: 'in', beside: 'Cm', kitchenFractions: true },
  Ft: { name: 'ft', beside: 'M', besideDecimals: 0 },
  Min: { name: 'min' },
  S: { name: 's' },
  H: { name: 'h' },
  Days: { name: 'days' },
  Years: { name: 'years' },
  C: { name: '°C', beside: 'F', besideDecimals: 0 },
  F: { name: '°F', beside: 'C', besideDecimals: 0 },
  Fraction: { name: '%' },
  Count: { name: '' },
  ClockMin: { name: '' },
  Kcal: { name: 'kcal' },
  M2: { name: 'm²', beside: 'Ft2' },
  Ft2: { name: 'sq ft', beside: 'M2' },
  Acre: { name: 'acre', plural: 'acres', beside: 'M2' },
  Ha: { name: 'ha', beside: 'Acre' },
  DegreeDaysC: { name: 'degree-days °C', beside: 'DegreeDaysF', besideDecimals: 0 },
  DegreeDaysF: { name: 'degree-days °F', beside: 'DegreeDaysC', besideDecimals: 0 },
  KgPerHa: { name: 'kg/ha', beside: 'BuPerAcre' },
  BuPerAcre: { name: 'bu/acre', beside: 'KgPerHa' },
  MolPerL: { name: 'mol/L', decimals: 4 },
  Eq: { name: 'eq', decimals: 3 },
  EqPerL: { name: 'eq/L', decimals: 4 },
  EqPerKg: { name: 'eq/kg', decimals: 3 },
  PH: { name: 'pH' },
  DeltaC: { name: '°C apart' },
  DeltaF: { name: '°F apart', beside: 'DeltaC' },
  WPerMK: { name: 'W/(m K)', decimals: 4 },
  KgPerM3: { name: 'kg/m³' },
  KJPerKgK: { name: 'kJ/(kg K)', decimals: 4 },
  Mm2PerS: { name: 'mm²/s', decimals: 4 },
}

/** Eighths and thirds that a measuring cup or spoon has. */
const KITCHEN_FRACTIONS: readonly (readonly [number, string])[] = [
  [0.125, '1/8'],
  [0.25, '1/4'],
  [1 / 3, '1/3'],
  [0.375, '3/8'],
  [0.5, '1/2'],
  [0.625, '5/8'],
  [2 / 3, '2/3'],
  [0.75, '3/4'],
  [0.875, '7/8'],
]

function kitchenNumber(value: number): string | null {
  const whole = Math.floor(value)
  const rest = value - whole
  const found = KITCHEN_FRACTIONS.find(([size]) => Math.abs(size - rest) < 1e-6)
  if (!found) return null
  return whole === 0 ? found[1] : `${whole} ${found[1]}`
}

export function formatNumber(value: number, maximumFractionDigits = 2): string {
  return numberFormat({ maximumFractionDigits }).format(value)
}

const FORMATS = new Map<string, Intl.NumberFormat>()

/** Making one costs a hundred times what using it does. */
function numberFormat(options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = JSON.stringify(options)
  const format = FORMATS.get(key) ?? new Intl.NumberFormat('en-US', options)
  FORMATS.set(key, format)
  return format
}

/** The short name a unit has beside a number, empty for counts and clock times: `liquid qt`, `psi`, `%`. */
export function unitName(unit: Unit): string {
  return STYLES[unit].name
}

/** Clock text of minutes after midnight, without the day: 989 is `16:29`. */
export function formatClock(clockMin: number): string {
  const minuteOfDay = ((Math.round(clockMin) % 1440) + 1440) % 1440
  const hours = String(Math.floor(minuteOfDay / 60)).padStart(2, '0')
  const minutes = String(minuteOfDay % 60).padStart(2, '0')
  return `${hours}:${minutes}`
}

/** A duration as a person says it: `7 h 59 min`. */
export function formatDuration(minutes: number): string {
  const whole = Math.round(minutes)
  if (whole < 120) return `${whole} min`
  const rest = whole % 60
  return rest === 0 ? `${whole / 60} h` : `${Math.floor(whole / 60)} h ${rest} min`
}

/**
 * A quantity as text, for example `12 psi (83 kPa)`, `6 liquid qt (5.68 L)`, `3/8 cup (88.7 mL)`.
 * The value must already be rounded (shownValue): this only writes it down.
 */
export function formatQuantity({ value, unit }: Quantity, companion: Companion = 'both'): string {
  const style = STYLES[unit]
  const number = numberOf({ value, unit })
  const name = style.plural && value > 1 ? style.plural : style.name
  const text = name === '' ? number : `${number} ${name}`
  if (companion === 'alone' || !style.beside) return text
  return `${text} (${formatBeside(convert(value, unit, style.beside), style)})`
}

/** A weight from the book in both measures, to the hundredth of a pound and of a kilogram. */
export function formatWeight(massKg: number, measureFirst: 'us' | 'metric' = 'us'): string {
  const us = formatQuantity({ value: convert(massKg, 'Kg', 'Lb'), unit: 'Lb' }, 'alone')
  const metric = formatQuantity({ value: massKg, unit: 'Kg' }, 'alone')
  return measureFirst === 'us' ? `${us} (${metric})` : `${metric} (${us})`
}

/** The number alone, as its unit is read: a clock time, a percentage, a kitchen fraction, or digits. */
function numberOf({ value, unit }: Quantity): string {
  if (unit === 'ClockMin') return clockWithDay(value)
  if (unit === 'Fraction') return formatNumber(value * 100)
  return (STYLES[unit].kitchenFractions && kitchenNumber(value)) || formatNumber(value, STYLES[unit].decimals)
}

function formatBeside(value: number, style: Style): string {
  const options =
    style.besideDecimals === undefined
      ? { maximumSignificantDigits: 3 }
      : { maximumFractionDigits: style.besideDecimals }
  return `${numberFormat({ ...options, signDisplay: 'negative' }).format(value)} ${STYLES[style.beside as Unit].name}`
}

function clockWithDay(clockMin: number): string {
  const clock = formatClock(clockMin)
  const days = Math.floor(Math.round(clockMin) / 1440)
  if (days === 1) return `${clock} next day`
  return days === 0 ? clock : `${clock}, ${days} days on`
}

/** A calculated value as text, with its range when it has one: `18 (13.2 to 24)`. */
export function formatReckoned(reckoned: Reckoned, companion: Companion = 'both'): string {
  const text = formatQuantity({ value: shownValue(reckoned), unit: reckoned.unit }, companion)
  if (reckoned.low === undefined || reckoned.high === undefined) return text
  const { unit, rounding } = reckoned
  const low = { value: shownValue({ value: reckoned.low, rounding }), unit }
  const high = { value: shownValue({ value: reckoned.high, rounding }), unit }
  if (low.value === high.value) return text
  return `${text}, between ${numberOf(low)} and ${formatQuantity(high, 'alone')}`
}
