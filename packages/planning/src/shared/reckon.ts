/** Makes a Reckoned with the edition and code version of this build, so that no plan forgets them. */
import { GUIDANCE_EDITION } from '@crib/guidance'
import { type Basis, CODE_VERSION, type Json, type Reckoned, type Rounding, type Unit } from '@crib/science'

export interface Reckoning {
  readonly id: string
  readonly value: number
  readonly unit: Unit
  readonly rounding: Rounding
  readonly low?: number | undefined
  readonly high?: number | undefined
  readonly basis: Basis
  readonly sourceKeys?: readonly string[]
  readonly inputs?: { readonly [name: string]: Json }
}

export function reckon({ low, high, sourceKeys = [], inputs = {}, ...rest }: Reckoning): Reckoned {
  return {
    ...rest,
    ...(low !== undefined && { low }),
    ...(high !== undefined && { high }),
    sourceKeys,
    inputs,
    edition: GUIDANCE_EDITION,
    codeVersion: CODE_VERSION,
  }
}

/** Nearest multiple of a step, for values that are neither bought nor eaten. */
export function nearest(step: number): Rounding {
  return { mode: 'nearest', step }
}

/** Up to a multiple of a step: what is bought, shelled or kept as seed. */
export function up(step: number): Rounding {
  return { mode: 'up', step }
}

/** Down to a multiple of a step: what may be eaten. */
export function down(step: number): Rounding {
  return { mode: 'down', step }
}
