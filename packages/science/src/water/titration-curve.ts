/** pH along a titration: a sample, a titrant added in steps. Volumes add up; mol/kg is taken as mol/L. */
import { requireInRange } from '../errors.ts'
import type { Mixture } from './mixture.ts'
import { withCO2Lost } from './solids.ts'
import { speciate } from './speciation.ts'

export interface TitrationSetup {
  readonly sample: Mixture
  readonly sampleMl: number
  readonly titrant: Mixture
  /** Boiled after each addition until no CO2 is left but what carbonate holds. */
  readonly isBoiled?: boolean
  readonly temperatureC: number
}

export interface TitrationPoint {
  readonly addedMl: number
  /** Null where the mixture is too strong for the model. */
  readonly pH: number | null
}

/** What is in the flask after an addition. [mol/L]  @source none: mass balance */
export function titratedMixture({ sample, sampleMl, titrant, isBoiled }: TitrationSetup, addedMl: number): Mixture {
  const volumeMl = sampleMl + addedMl
  const mixed = Object.fromEntries(
    [...new Set([...Object.keys(sample), ...Object.keys(titrant)])].map((name) => {
      const part = name as keyof Mixture
      return [part, ((sample[part] ?? 0) * sampleMl + (titrant[part] ?? 0) * addedMl) / volumeMl]
    }),
  )
  return isBoiled ? withCO2Lost(mixed, 1) : mixed
}

/**
 * pH after each addition. [pH]
 *
 * @param addedMl volumes of titrant, each from the beginning. [mL] Valid: 0 to 1e6.
 * @throws {ValidRangeError} outside that range or those of `speciate`.
 * @source plummer-busenberg-1982; davies-1962
 */
export function titrationCurve(setup: TitrationSetup, addedMl: readonly number[]): readonly TitrationPoint[] {
  requireInRange('sampleMl', setup.sampleMl, { min: 0.01, max: 1e6, unit: 'mL', source: 'project-rule' })
  let nearPH: number | undefined
  return addedMl.map((added) => {
    requireInRange('addedMl', added, { min: 0, max: 1e6, unit: 'mL', source: 'project-rule' })
    const outcome = speciate(titratedMixture(setup, added), setup.temperatureC, {
      ...(nearPH !== undefined && { nearPH }),
    })
    if (outcome.kind !== 'solved') return { addedMl: added, pH: null }
    nearPH = outcome.pH
    return { addedMl: added, pH: outcome.pH }
  })
}
