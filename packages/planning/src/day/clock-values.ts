/** When each pot-load is ready and each load is out, as values to show. */
import type { Reckoned } from '@crib/science'
import { reckon, up } from '../shared/reckon.ts'
import type { Day } from './timeline.ts'

/** `potLoadReady:1`, `loadDone:1` and so on. [ClockMin] */
export function clockValues({ steps }: Day): readonly Reckoned[] {
  const ends = new Map<string, number>()
  for (const { potLoad, load, endMin } of steps) {
    const id = load !== undefined ? `loadDone:${load}` : potLoad !== undefined ? `potLoadReady:${potLoad}` : null
    if (id) ends.set(id, Math.max(endMin, ends.get(id) ?? 0))
  }
  return [...ends].map(([id, value]) =>
    reckon({ id, value, unit: 'ClockMin', rounding: up(1), basis: 'project-rule', inputs: {} }),
  )
}
