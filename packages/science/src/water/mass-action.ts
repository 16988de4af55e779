/** What the laws of mass action say before any charge is balanced: constants, a pH to begin from, how carbonate is shared. */
import { debyeHueckel } from './activity.ts'
import { type Equilibria, equilibriaAt } from './equilibria.ts'

/** Constants of one temperature, as K rather than log K; kept, since a curve asks for one temperature many times. */
export interface Constants {
  readonly equilibria: Equilibria
  readonly A: number
  readonly B: number
  readonly Kw: number
  readonly K1: number
  readonly K2: number
  readonly CaOH: number
  readonly CaCO3: number
  readonly CaHCO3: number
  readonly MgOH: number
  readonly MgCO3: number
  readonly MgHCO3: number
  readonly boric: number
  readonly acetic: number
}

const constantsByC = new Map<number, Constants>()

export function constantsAt(temperatureC: number): Constants {
  const known = constantsByC.get(temperatureC)
  if (known) return known
  const equilibria = equilibriaAt(temperatureC)
  const { A, B } = debyeHueckel(temperatureC)
  const constants: Constants = {
    equilibria,
    A,
    B,
    Kw: 10 ** equilibria.water,
    K1: 10 ** equilibria.carbonic1,
    K2: 10 ** equilibria.carbonic2,
    CaOH: 10 ** equilibria.CaOH,
    CaCO3: 10 ** equilibria.CaCO3,
    CaHCO3: 10 ** equilibria.CaHCO3,
    MgOH: 10 ** equilibria.MgOH,
    MgCO3: 10 ** equilibria.MgCO3,
    MgHCO3: 10 ** equilibria.MgHCO3,
    boric: 10 ** equilibria.boric,
    acetic: 10 ** equilibria.acetic,
  }
  if (constantsByC.size >= 256) constantsByC.clear()
  constantsByC.set(temperatureC, constants)
  return constants
}

/** A pH to begin from: the strong charge as hydroxide or acid, softened where carbonate or acetate takes it up. [ln a(H+)] */
export function firstGuess(
  strongCharge: number,
  carbon: number,
  acetate: number,
  { Kw, K1, K2, acetic }: Constants,
): number {
  const excess = strongCharge - 2 * carbon - acetate
  if (excess > 1e-7) return Math.log(Kw / excess)
  if (strongCharge - acetate > carbon) return Math.log(K2)
  if (strongCharge - acetate > 0) return Math.log(Math.sqrt(K1 * K2))
  if (strongCharge > 0) return Math.log(acetic)
  return strongCharge < -1e-7 ? Math.log(-strongCharge) : Math.log(Math.sqrt(Kw))
}

/**
 * Activity of carbonate that shares `CT` among its own forms and the pairs with calcium and magnesium.
 * The sum rises and bends down as the activity grows, so Newton from zero never passes the root.
 */
export function carbonateActivity(
  CT: number,
  carbonPer: number,
  CaT: number,
  CaAlone: number,
  CaWith: number,
  MgT: number,
  MgAlone: number,
  MgWith: number,
): number {
  if (CaT === 0 && MgT === 0) return CT / carbonPer
  let c = 0
  for (let step = 0; step < 100; step++) {
    const CaAll = CaAlone + CaWith * c
    const MgAll = MgAlone + MgWith * c
    const found = c * carbonPer + (CaT * CaWith * c) / CaAll + (MgT * MgWith * c) / MgAll
    const slope = carbonPer + (CaT * CaWith * CaAlone) / (CaAll * CaAll) + (MgT * MgWith * MgAlone) / (MgAll * MgAll)
    const next = c + (CT - found) / slope
    if (!(next > c * (1 + 1e-15))) return next
    c = next
  }
  return c
}
