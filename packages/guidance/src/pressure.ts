/**
 * The pressure a published table prints for a gauge and an elevation.
 * Leaves out: margins for a doubtful elevation and gauge errors (planning), and any pressure worked out from physics.
 */
import { convert, type Sentence } from '@crib/science'
import dialJson from '../data/pressure-bands-dial.json' with { type: 'json' }
import weightJson from '../data/pressure-bands-weight.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Standing } from '../schema/envelope.ts'
import { type PressureBands, pressureBandsSchema } from '../schema/process-tables.ts'
import { askWhom } from './ask-whom.ts'
import { loadTable, tableSourceKeys } from './load.ts'
import { sentence } from './sentence.ts'

export type GaugeKind = 'dial' | 'weight'

export interface FoundPressure {
  readonly kind: 'found'
  readonly gauge: GaugeKind
  /** What the dial must show, or what is stamped on the weight. */
  readonly setPsi: number
  readonly unit: 'PsiGauge' | 'LbWeight'
  /** The same in kPa, to the whole kPa, for display only. */
  readonly kPaShown: number
  /** Lower edge of the band: not in it, except 0 ft. */
  readonly bandMinFt: number
  /** Upper edge of the band, in it. */
  readonly bandMaxFt: number
  /** The band as the page prints it. */
  readonly bandPrinted: string
  readonly tableId: string
  readonly standing: Standing
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

export interface OffTablePressure {
  readonly kind: 'off-table'
  readonly gauge: GaugeKind
  readonly elevationFt: number
  readonly tableMinFt: number
  readonly tableMaxFt: number
  readonly why: readonly Sentence[]
  readonly askWhom: readonly Sentence[]
  readonly forInformation?: Sentence
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

export type PressureOutcome = FoundPressure | OffTablePressure

export const DIAL_BANDS = loadTable(pressureBandsSchema, dialJson)
export const WEIGHT_BANDS = loadTable(pressureBandsSchema, weightJson)

/** Lowest and highest elevation the bands cover. [ft]  @source usda-aib-539-1994 */
export const PRESSURE_TABLE_MIN_FT = DIAL_BANDS.tableMinFt
export const PRESSURE_TABLE_MAX_FT = DIAL_BANDS.tableMaxFt

/**
 * The printed pressure for an elevation. [psi on a dial, lb on a weight]
 *
 * Bands are half-open on unrounded feet: 2000.0 is the lower band, 2000.4 the next. No rounding, clamping or
 * interpolating: below 0 or above 8000 ft the answer is `off-table`.
 *
 * @param elevationFt any finite elevation. [ft]
 * @throws {RangeError} when the elevation is not a finite number.
 * @source usda-aib-539-1994 guide 4; pnw-421
 */
export function pressureRowFor(gauge: GaugeKind, elevationFt: number): PressureOutcome {
  return pressureRowIn(gauge === 'dial' ? DIAL_BANDS : WEIGHT_BANDS, gauge, elevationFt)
}

/** The same lookup in a table handed in; see pressureRowFor. */
export function pressureRowIn(table: PressureBands, gauge: GaugeKind, elevationFt: number): PressureOutcome {
  if (!Number.isFinite(elevationFt)) {
    throw new RangeError(`elevationFt is ${elevationFt} ft; ${table.source} needs a number of feet`)
  }
  const sourceKeys = tableSourceKeys(table)
  const index = elevationFt < table.tableMinFt ? -1 : table.rows.findIndex((row) => elevationFt <= row.upToFt)
  const row = table.rows[index]
  if (!row) {
    const { tableMinFt, tableMaxFt } = table
    const above = elevationFt > tableMaxFt
    return {
      kind: 'off-table',
      gauge,
      elevationFt,
      tableMinFt,
      tableMaxFt,
      why: [
        sentence(above ? 'guidance:elevation-above-table' : 'guidance:elevation-below-table', {
          // One decimal, so that 8000.4 ft does not read as "8,000 ft is above 8,000 ft".
          elevation: { value: Number(elevationFt.toFixed(1)), unit: 'Ft' },
          lowest: { value: tableMinFt, unit: 'Ft' },
          highest: { value: tableMaxFt, unit: 'Ft' },
        }),
      ],
      askWhom: askWhom(),
      ...(above && { forInformation: sentence('guidance:top-weight-for-information') }),
      sourceKeys,
      edition: GUIDANCE_EDITION,
    }
  }
  return {
    kind: 'found',
    gauge,
    setPsi: row.setPsi,
    unit: gauge === 'dial' ? 'PsiGauge' : 'LbWeight',
    kPaShown: Math.round(convert(row.setPsi, 'PsiGauge', 'KPaGauge')),
    bandMinFt: index === 0 ? table.tableMinFt : table.rows[index - 1]!.upToFt,
    bandMaxFt: row.upToFt,
    bandPrinted: row.printed,
    tableId: table.id,
    standing: table.standing,
    sourceKeys,
    edition: GUIDANCE_EDITION,
  }
}
