/**
 * Reads a quantity as a person types it: `9 lb`, `1 1/2 gal`, `3 quarts`, `1 lb 4 oz`.
 * A bare quart, pint or cup is taken as liquid and marked as assumed, so that a screen can show it and change it.
 * Leaves out: limits of a field, and how a fault is worded (package wording).
 */
import { convert, type Measure, type Quantity, UNITS, type Unit } from './unit.ts'

export type LiquidOrDry = 'liquid' | 'dry'

export type QuantityFault =
  | 'empty'
  | 'no-number'
  | 'comma'
  | 'negative'
  | 'divided-by-zero'
  | 'no-unit'
  | 'unknown-unit'
  | 'wrong-measure'

export type ParsedQuantity =
  | {
      readonly ok: true
      readonly quantity: Quantity
      /** Set when a bare kitchen measure was typed: which of the two it was taken as. */
      readonly assumed?: LiquidOrDry
    }
  | {
      readonly ok: false
      readonly fault: QuantityFault
      /** The piece that could not be read, exactly as typed. */
      readonly typed: string
    }

export interface ParseQuantityOptions {
  /** What a bare quart or pint means in this kitchen; liquid unless said otherwise. */
  readonly vague?: LiquidOrDry
  /** Unit of a number typed alone; without it a number alone is a fault. */
  readonly bareNumberUnit?: Unit
  /** Elevations and temperatures may lie below zero. */
  readonly allowNegative?: boolean
}

interface UnitName {
  readonly unit: Unit
  readonly factor?: number
  /** Only for a bare kitchen measure. */
  readonly dry?: { readonly unit: Unit; readonly factor: number }
  readonly vague?: true
}

/** Spellings by measure; in a pressure field "lb" is the figure on a gauge, elsewhere it is a mass. */
const NAMES: Partial<Record<Measure, Record<string, UnitName>>> = {
  mass: {
    ...spell({ unit: 'Lb' }, 'lb', 'lbs', 'pound', 'pounds'),
    ...spell({ unit: 'Oz' }, 'oz', 'ounce', 'ounces'),
    ...spell({ unit: 'Kg' }, 'kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'),
    ...spell({ unit: 'G' }, 'g', 'gram', 'grams'),
  },
  volume: {
    ...spell({ unit: 'L' }, 'l', 'litre', 'litres', 'liter', 'liters'),
    ...spell({ unit: 'Ml' }, 'ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'),
    ...spell({ unit: 'LiquidGal' }, 'gal', 'gals', 'gallon', 'gallons', 'us gal', 'liquid gal', 'liquid gallons'),
    ...spell(
      { unit: 'LiquidQt', vague: true, dry: { unit: 'DryQt', factor: 1 } },
      ...['qt', 'qts', 'quart', 'quarts', 'quart jar', 'quart jars'],
    ),
    ...spell({ unit: 'LiquidQt' }, 'liquid qt', 'liquid qts', 'liquid quart', 'liquid quarts'),
    ...spell({ unit: 'DryQt' }, 'dry qt', 'dry qts', 'dry quart', 'dry quarts'),
    ...spell(
      { unit: 'LiquidPt', vague: true, dry: { unit: 'DryQt', factor: 0.5 } },
      ...['pt', 'pts', 'pint', 'pints', 'pint jar', 'pint jars'],
    ),
    ...spell({ unit: 'LiquidPt' }, 'liquid pt', 'liquid pts', 'liquid pint', 'liquid pints'),
    ...spell({ unit: 'DryQt', factor: 0.5 }, 'dry pt', 'dry pint', 'dry pints'),
    // A cup has no dry size of its own: a cup of ash and a cup of water fill the same cup.
    ...spell({ unit: 'Cup', vague: true }, 'c', 'cup', 'cups'),
    ...spell({ unit: 'Cup', factor: 1 / 8 }, 'fl oz', 'fluid ounce', 'fluid ounces'),
    ...spell({ unit: 'Tbsp' }, 'tbsp', 'tbsps', 'tablespoon', 'tablespoons'),
    ...spell({ unit: 'Tsp' }, 'tsp', 'tsps', 'teaspoon', 'teaspoons'),
    ...spell({ unit: 'Bu' }, 'bu', 'bushel', 'bushels'),
    ...spell({ unit: 'DryQt', factor: 8 }, 'peck', 'pecks'),
  },
  pressure: {
    ...spell({ unit: 'PsiGauge' }, 'psi', 'lb', 'lbs', 'pound', 'pounds'),
    ...spell({ unit: 'KPaGauge' }, 'kpa'),
  },
  length: {
    ...spell({ unit: 'Ft' }, 'ft', 'foot', 'feet'),
    ...spell({ unit: 'In' }, 'in', 'inch', 'inches'),
    ...spell({ unit: 'M' }, 'm', 'metre', 'metres', 'meter', 'meters'),
    ...spell({ unit: 'Cm' }, 'cm'),
    ...spell({ unit: 'Mm' }, 'mm'),
  },
  duration: {
    ...spell({ unit: 'S' }, 's', 'sec', 'second', 'seconds'),
    ...spell({ unit: 'Min' }, 'min', 'mins', 'minute', 'minutes'),
    ...spell({ unit: 'H' }, 'h', 'hr', 'hrs', 'hour', 'hours'),
    ...spell({ unit: 'Days' }, 'd', 'day', 'days'),
  },
  temperature: {
    ...spell({ unit: 'C' }, 'c', '°c'),
    ...spell({ unit: 'F' }, 'f', '°f'),
  },
  area: {
    ...spell({ unit: 'Ft2' }, 'sq ft', 'sqft', 'ft2', 'ft²', 'square foot', 'square feet'),
    ...spell({ unit: 'Acre' }, 'acre', 'acres', 'ac'),
    ...spell({ unit: 'Ha' }, 'ha', 'hectare', 'hectares'),
    ...spell({ unit: 'M2' }, 'm2', 'm²', 'sq m', 'square metre', 'square metres', 'square meter', 'square meters'),
  },
  yield: {
    ...spell({ unit: 'BuPerAcre' }, 'bu/acre', 'bu/ac'),
    ...spell({ unit: 'KgPerHa' }, 'kg/ha'),
  },
  count: spell({ unit: 'Count' }, 'kernels', 'kernel', 'jars', 'jar', 'ears', 'ear'),
}

function spell(name: UnitName, ...spellings: string[]): Record<string, UnitName> {
  return Object.fromEntries(spellings.map((spelling) => [spelling, name]))
}

const GLYPH_FRACTIONS: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/** One number, then the words up to the next number. Longest spelling first: `1 1/2`, `1/2`, `1.5`, `.5`, `1`. */
const PIECE = /([-−]?(?:\d+\s+\d+\/\d+|\d+\/\d+|\d+\.\d+|\.\d+|\d+))\s*([^\d]*)/gy

/**
 * A typed quantity in the first unit typed. [that unit]
 *
 * `1 lb 4 oz` is 1.25 lb; `3 quarts` is 3 liquid qt, assumed liquid; `1 1/2 gal` is 1.5 US gal. Decimal commas are
 * refused, since 1,500 and 1,5 cannot be told apart.
 *
 * @param measures what the field asks for; several when a weight or a volume will do. Earlier ones win a shared spelling.
 * Valid: any finite number; below zero only with `allowNegative`. Limits belong to the field, not to reading.
 * Errors: returned, never thrown, with the piece as it was typed.
 */
export function parseQuantity(
  text: string,
  measures: Measure | readonly Measure[],
  options: ParseQuantityOptions = {},
): ParsedQuantity {
  const plain = text.replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (glyph) => ` ${GLYPH_FRACTIONS[glyph]}`).trim()
  if (plain === '') return { ok: false, fault: 'empty', typed: text }
  if (/\d,\d/.test(plain)) return { ok: false, fault: 'comma', typed: plain }

  const wanted: readonly Measure[] = typeof measures === 'string' ? [measures] : measures
  let total: Quantity | null = null
  let assumed: LiquidOrDry | undefined
  let end = 0
  for (const match of plain.matchAll(PIECE)) {
    end = match.index + match[0].length
    const [, numberText = '', unitText = ''] = match
    const value = readNumber(numberText)
    if (!Number.isFinite(value)) return { ok: false, fault: 'divided-by-zero', typed: numberText }
    if (value < 0 && !options.allowNegative) return { ok: false, fault: 'negative', typed: numberText }
    const named = readUnit(unitText, wanted, options)
    if (typeof named === 'string') return { ok: false, fault: named, typed: unitText.trim() || plain }
    if (named.assumed) assumed = named.assumed
    const amount = value * named.factor
    if (total !== null && UNITS[total.unit].measure !== UNITS[named.unit].measure) {
      return { ok: false, fault: 'wrong-measure', typed: unitText.trim() }
    }
    total =
      total === null
        ? { value: amount, unit: named.unit }
        : { value: total.value + convert(amount, named.unit, total.unit), unit: total.unit }
  }
  if (total === null || end !== plain.length) return { ok: false, fault: 'no-number', typed: plain.slice(end) }
  return { ok: true, quantity: total, ...(assumed && { assumed }) }
}

function readNumber(text: string): number {
  const sign = /^[-−]/.test(text) ? -1 : 1
  const parts = text.replace(/^[-−]/, '').trim().split(/\s+/)
  const sum = parts.reduce((total, part) => {
    const [over = '', under] = part.split('/')
    return total + (under === undefined ? Number(over) : Number(over) / Number(under))
  }, 0)
  return sign * sum
}

function readUnit(
  text: string,
  measures: readonly Measure[],
  { vague = 'liquid', bareNumberUnit }: ParseQuantityOptions,
): { unit: Unit; factor: number; assumed?: LiquidOrDry } | QuantityFault {
  const spelling = text
    .toLowerCase()
    .replaceAll('.', '')
    .replace(/\b(of|and|us)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  if (spelling === '') return bareNumberUnit ? { unit: bareNumberUnit, factor: 1 } : 'no-unit'
  for (const measure of measures) {
    const name = NAMES[measure]?.[spelling]
    if (!name) continue
    if (!name.vague) return { unit: name.unit, factor: name.factor ?? 1 }
    return vague === 'dry' && name.dry
      ? { ...name.dry, assumed: 'dry' }
      : { unit: name.unit, factor: 1, assumed: 'liquid' }
  }
  const elsewhere = Object.values(NAMES).some((names) => spelling in names)
  return elsewhere ? 'wrong-measure' : 'unknown-unit'
}
