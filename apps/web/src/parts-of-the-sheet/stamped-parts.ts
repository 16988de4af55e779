/** Takes a worded value apart for stamping: package wording alone decides how a value reads. */
import { type Reckoned, shownValue, UNITS } from '@crib/science'
import { formatQuantity } from '@crib/wording'

export interface StampedParts {
  readonly number: string
  readonly unit: string
  readonly beside: string
}

/** Only these may swap places with their metric companion; a gauge is read in the figures printed on it. */
const MAY_SWAP = new Set(['mass', 'volume', 'length', 'temperature'])

/** A value as number, unit and companion, taken apart from the one place that words values. */
export function stampedParts(reckoned: Reckoned, measureFirst: 'us' | 'metric' | 'its-own' = 'us'): StampedParts {
  const quantity = { value: shownValue(reckoned), unit: reckoned.unit }
  const alone = formatQuantity(quantity, 'alone')
  const beside = formatQuantity(quantity, 'both')
    .slice(alone.length)
    .replace(/^ \(|\)$/g, '')
  const isMetric = /^(Kg|G|L|Ml|M|Mm|Cm|C)$/.test(reckoned.unit)
  const swap =
    measureFirst !== 'its-own' &&
    beside !== '' &&
    MAY_SWAP.has(UNITS[reckoned.unit].measure) &&
    isMetric !== (measureFirst === 'metric')
  const [first, second] = swap ? [beside, alone] : [alone, beside]
  const number = /^[-−]?[\d.,:/ ]*\d/.exec(first)?.[0] ?? first
  return { number, unit: first.slice(number.length).trim(), beside: second }
}
