/**
 * The printed pressure for a place, with the margin an elevation from a map or a phone needs.
 * Leaves out: gauge errors and which mark to hold (canner/), which may only raise it.
 */
import { type GaugeKind, type PressureOutcome, pressureRowFor } from '@crib/guidance'
import { convert, type Reckoned } from '@crib/science'
import { nearest, reckon } from './reckon.ts'

/** A map's or a phone's elevation is good to about 15 m (50 ft).  common practice, no source */
export const ELEVATION_MARGIN_M = 15

export type ElevationKnownBy = 'map' | 'phone' | 'survey'

/** The table's row for the elevation, raised by the margin unless it was surveyed. [psi or lb] */
export function setPressureFor(gauge: GaugeKind, elevationFt: number, knownBy: ElevationKnownBy): PressureOutcome {
  const typed = pressureRowFor(gauge, elevationFt)
  if (knownBy === 'survey' || typed.kind === 'off-table') return typed
  return pressureRowFor(gauge, elevationFt + convert(ELEVATION_MARGIN_M, 'M', 'Ft'))
}

/** A found row as a value to show. */
export function pressureValue(id: string, found: PressureOutcome & { kind: 'found' }, elevationFt: number): Reckoned {
  return reckon({
    id,
    value: found.setPsi,
    unit: found.unit,
    rounding: nearest(1),
    basis: 'published',
    sourceKeys: found.sourceKeys,
    inputs: { elevationFt, bandPrinted: found.bandPrinted, tableId: found.tableId },
  })
}
