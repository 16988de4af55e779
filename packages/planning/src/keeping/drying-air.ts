/** The air about a tray as a table: typed or pasted rows of hours or clock times, warmth and humidity, read cell by cell. */
import { type AirSpell, convert, type Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { percentFraction } from './typed-moisture.ts'

export type DryingAir =
  | { readonly kind: 'empty' }
  | { readonly kind: 'air'; readonly spells: readonly AirSpell[] }
  /** Each names its row, its column and what stands there. */
  | { readonly kind: 'faults'; readonly faults: readonly Sentence[] }

/** Where the two models of drying were both measured. */
const WARMTH_C = { min: 30, max: 60 } as const
const HUMIDITY = { min: 0.1, max: 0.83 } as const
const HOURS = { min: 0.1, max: 1000 } as const
const MOST_ROWS = 1000
const DAY_MIN = 1440
/** Enough to mend a table by; the rest follows from the same mistake. */
const MOST_FAULTS = 8

/**
 * Rows of "hours, warmth, humidity" or "clock, warmth, humidity", parted by commas, semicolons or tabs; a first row
 * without a number is a heading. With clock times a row lasts until the next one, the last until the first comes round.
 *
 * @param scale of the warmth, which is asked and never guessed.
 * @source ordonez-2012 for 30 to 60 °C; misra-brooker-1980 for 10 to 83 % humidity
 */
export function readDryingAir(text: string, scale: 'F' | 'C'): DryingAir {
  const mark = ['\t', ';', ','].find((one) => text.includes(one)) ?? ','
  const lines = text.split(/\r?\n/).flatMap((line, index) => {
    const cells = line.split(mark).map((cell) => cell.trim())
    return line.trim() === '' ? [] : [{ row: index + 1, line: line.trim(), cells }]
  })
  const rows = lines.filter(({ line }, index) => index > 0 || /\d/.test(line))
  if (rows.length === 0) return { kind: 'empty' }
  if (rows.length > MOST_ROWS)
    return { kind: 'faults', faults: [say('keeping:air-rows', { given: rows.length, most: MOST_ROWS })] }
  const faults: Sentence[] = []
  const clocks = rows.map(({ cells }) => clockMin(cells[0] ?? ''))
  const isByClock = clocks[0] !== null
  const spells = rows.flatMap(({ row, line, cells }, index) => {
    if (cells.length !== 3) {
      faults.push(say('keeping:air-columns', { row, text: line, given: cells.length }))
      return []
    }
    const [first, warmth, humidity] = cells as [string, string, string]
    const hours = isByClock ? hoursBetween(clocks, index) : numberIn(first)
    if (hours === null) faults.push(say(isByClock ? 'keeping:air-clock' : 'keeping:air-hours', { row, text: first }))
    else if (!isWithin(hours, HOURS)) faults.push(say('keeping:air-hours-range', { row, text: first, ...HOURS }))
    const degrees = numberIn(warmth.replace(/\s*°?\s*[CF]$/i, ''))
    const told = /([CF])$/i.exec(warmth)?.[1]?.toUpperCase()
    if (degrees === null || (told !== undefined && told !== scale))
      faults.push(say('keeping:air-warmth', { row, text: warmth, scale: `°${scale}` }))
    const temperatureC = degrees === null ? Number.NaN : convert(degrees, scale, 'C')
    if (degrees !== null && !isWithin(temperatureC, WARMTH_C)) {
      const [min, max] = [WARMTH_C.min, WARMTH_C.max].map((value) => ({ value, unit: 'C' }) as const)
      faults.push(say('keeping:air-warmth-range', { row, text: warmth, min: min!, max: max! }))
    }
    const humidityFraction = percentFraction(humidity)
    if (humidityFraction === null) faults.push(say('keeping:air-humidity', { row, text: humidity }))
    else if (!isWithin(humidityFraction, HUMIDITY)) {
      const percents = { min: HUMIDITY.min * 100, max: HUMIDITY.max * 100 }
      faults.push(say('keeping:air-humidity-range', { row, text: humidity, ...percents }))
    }
    return [{ hours: hours ?? Number.NaN, temperatureC, humidityFraction: humidityFraction ?? Number.NaN }]
  })
  if (faults.length === 0) return { kind: 'air', spells }
  const more = faults.length - MOST_FAULTS
  return {
    kind: 'faults',
    faults: more > 0 ? [...faults.slice(0, MOST_FAULTS), say('keeping:air-more', { count: more })] : faults,
  }
}

function numberIn(text: string): number | null {
  return /^-?\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : null
}

/** "8:00" and "20:30" as minutes after midnight. */
function clockMin(text: string): number | null {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text)
  const hours = Number(match?.[1])
  const minutes = Number(match?.[2])
  return hours < 24 && minutes < 60 ? hours * 60 + minutes : null
}

/** Until the clock of the next row; null where either is no clock, or it does not go forward. [h] */
function hoursBetween(clocks: readonly (number | null)[], index: number): number | null {
  const from = clocks[index] ?? null
  const begin = clocks[0] ?? null
  const isLast = index === clocks.length - 1
  const to = isLast && begin !== null ? begin + DAY_MIN : (clocks[index + 1] ?? null)
  return from === null || to === null || to <= from ? null : (to - from) / 60
}

function isWithin(value: number, { min, max }: { readonly min: number; readonly max: number }): boolean {
  return value >= min - 1e-9 && value <= max + 1e-9
}
