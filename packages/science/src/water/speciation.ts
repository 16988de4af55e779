/**
 * What is in a kettle liquor: aqueous species of Na, K, Ca, Mg, carbonate, borate, acetate and chloride, 0 to 100 °C.
 * pH follows from charge balance. Leaves out: solids (solids.ts), silicate, phosphate, organic acids of the hull.
 */
import { requireInRange } from '../errors.ts'
import { DAVIES, emptyActivities, ION_CHARGES, type Ion } from './activity.ts'
import { carbonateActivity, constantsAt, firstGuess } from './mass-action.ts'
import type { Mixture, Speciation, SpeciationOptions, SpeciationOutcome } from './mixture.ts'

/** No total above this is taken. [mol/kg] */
export const TOTAL_LIMIT_MOL_PER_KG = 5
/** Above it no answer is given. [mol/kg] */
export const IONIC_STRENGTH_LIMIT_MOL_PER_KG = 1
const CHARGE_ERROR_LIMIT = 1e-10
const PASSES_LIMIT = 60
const EVALUATIONS_LIMIT = 250
const LN10 = Math.LN10
const LOWEST_LN_H = -16.5 * LN10
const HIGHEST_LN_H = 1 * LN10

/**
 * Aqueous species, pH and saturation of a mixture. [mol/kg, pH, log10]
 *
 * NaOH 0.01 mol/kg at 25 °C has pH 11.950; the ideal 12.00 is wrong by 0.05. Newton on the charge balance inside a
 * bracket that only shrinks, halved whenever Newton leaves it or stops gaining; every loop is bounded, and an answer
 * whose charges do not balance to 1e-10 of the sum of |z| c is not given.
 *
 * @param mixture totals. [mol/kg] Valid: each 0 to 5.
 * @param temperatureC [°C] Valid: 0 to 100.
 * @throws {ValidRangeError} outside those ranges.
 * @source plummer-busenberg-1982; davies-1962
 */
export function speciate(
  mixture: Mixture,
  temperatureC: number,
  { activityModel = DAVIES, nearPH }: SpeciationOptions = {},
): SpeciationOutcome {
  const Na = total('sodium', mixture.sodium)
  const K = total('potassium', mixture.potassium)
  const CaT = total('calcium', mixture.calcium)
  const MgT = total('magnesium', mixture.magnesium)
  const CT = total('carbon', mixture.carbon)
  const BT = total('boron', mixture.boron)
  const acT = total('acetate', mixture.acetate)
  const Cl = total('chloride', mixture.chloride)
  const constants = constantsAt(temperatureC)
  const { Kw, K1, K2 } = constants

  const g = emptyActivities()
  // Activities of Ca2+, Mg2+ and CO3 2-, and concentrations, at the pH last looked at.
  let H = 0
  let OH = 0
  let CO3 = 0
  let HCO3 = 0
  let CO2 = 0
  let aCa = 0
  let aMg = 0
  let aCO3 = 0
  let CaOH = 0
  let CaHCO3 = 0
  let CaCO3 = 0
  let MgOH = 0
  let MgHCO3 = 0
  let MgCO3 = 0
  let BOH4 = 0
  let Ac = 0
  let sumOfCharges = 0
  let evaluationsCount = 0

  /** Charge left over at ln a(H+); rises with it. */
  const chargeAt = (lnH: number): number => {
    evaluationsCount += 1
    const aH = Math.exp(lnH)
    const aOH = Kw / aH
    H = aH / g.H
    OH = aOH / g.OH
    // Each is an amount for one unit of the activity of Ca2+, Mg2+ or CO3 2-.
    const CaFree = 1 / g.Ca
    const CaOHPer = (constants.CaOH * aOH) / g.CaOH
    const CaHCO3Per = (constants.CaHCO3 * aH) / (K2 * g.CaHCO3)
    const MgFree = 1 / g.Mg
    const MgOHPer = (constants.MgOH * aOH) / g.MgOH
    const MgHCO3Per = (constants.MgHCO3 * aH) / (K2 * g.MgHCO3)
    const CaWith = constants.CaCO3 + CaHCO3Per
    const MgWith = constants.MgCO3 + MgHCO3Per
    const HCO3Per = aH / (K2 * g.HCO3)
    const CO2Per = (aH * aH) / (K1 * K2)
    const carbonPer = 1 / g.CO3 + HCO3Per + CO2Per
    aCO3 = CT === 0 ? 0 : carbonateActivity(CT, carbonPer, CaT, CaFree + CaOHPer, CaWith, MgT, MgFree + MgOHPer, MgWith)
    aCa = CaT / (CaFree + CaOHPer + CaWith * aCO3)
    aMg = MgT / (MgFree + MgOHPer + MgWith * aCO3)
    CO3 = aCO3 / g.CO3
    HCO3 = aCO3 * HCO3Per
    CO2 = aCO3 * CO2Per
    CaOH = aCa * CaOHPer
    CaHCO3 = aCa * CaHCO3Per * aCO3
    CaCO3 = aCa * constants.CaCO3 * aCO3
    MgOH = aMg * MgOHPer
    MgHCO3 = aMg * MgHCO3Per * aCO3
    MgCO3 = aMg * constants.MgCO3 * aCO3
    const boric = constants.boric / (aH * g.BOH4)
    BOH4 = (BT * boric) / (1 + boric)
    const acetic = constants.acetic / (aH * g.acetate)
    Ac = (acT * acetic) / (1 + acetic)
    const plus = H + Na + K + 2 * (aCa * CaFree) + CaOH + CaHCO3 + 2 * (aMg * MgFree) + MgOH + MgHCO3
    const minus = OH + HCO3 + 2 * CO3 + BOH4 + Ac + Cl
    sumOfCharges = plus + minus
    return plus - minus
  }

  /** Slope of the charge against ln a(H+), without the pull of the pairs: good enough to step by. */
  const slope = (): number => {
    const bicarbonates = HCO3 + CO2
    const carbon = CO3 + bicarbonates
    const protons = HCO3 + 2 * CO2
    const carbonBuffer = carbon > 0 ? HCO3 + 4 * CO2 - (protons * protons) / carbon : 0
    const boronBuffer = BT > 0 ? (BOH4 * (BT - BOH4)) / BT : 0
    const acetateBuffer = acT > 0 ? (Ac * (acT - Ac)) / acT : 0
    const CaFree = aCa / g.Ca
    const MgFree = aMg / g.Mg
    const calciumBuffer = CaOH > 0 ? (CaOH * CaFree) / (CaOH + CaFree) : 0
    const magnesiumBuffer = MgOH > 0 ? (MgOH * MgFree) / (MgOH + MgFree) : 0
    return H + OH + carbonBuffer + boronBuffer + acetateBuffer + calciumBuffer + magnesiumBuffer
  }

  let lnH = nearPH === undefined ? firstGuess(Na + K + 2 * (CaT + MgT) - Cl, CT, acT, constants) : -nearPH * LN10

  /** Root of the charge balance at the present activity coefficients. */
  const balance = (): 'found' | 'no-root-between-pH-limits' | 'not-converged' => {
    let low = LOWEST_LN_H
    let high = HIGHEST_LN_H
    let before = Number.POSITIVE_INFINITY
    for (let step = 0; step < EVALUATIONS_LIMIT; step++) {
      const charge = chargeAt(lnH)
      if (Math.abs(charge) <= 1e-15 * sumOfCharges) return 'found'
      if (charge < 0) low = lnH
      else high = lnH
      if (high - low < 2e-15 * Math.abs(lnH)) {
        return low === LOWEST_LN_H || high === HIGHEST_LN_H ? 'no-root-between-pH-limits' : 'found'
      }
      const newton = lnH - Math.max(-4, Math.min(4, charge / slope()))
      const isGaining = Math.abs(charge) < 0.5 * before || step < 3
      before = Math.abs(charge)
      const next = isGaining && newton > low && newton < high ? newton : (low + high) / 2
      if (next === lnH) return 'found'
      lnH = next
    }
    return 'not-converged'
  }

  const strength = () =>
    0.5 *
    (H +
      OH +
      Na +
      K +
      Cl +
      HCO3 +
      4 * CO3 +
      4 * (aCa / g.Ca) +
      CaOH +
      CaHCO3 +
      4 * (aMg / g.Mg) +
      MgOH +
      MgHCO3 +
      BOH4 +
      Ac)

  // The strength that the species have, less the one their coefficients were taken at, has one root: secant, bracketed.
  const upperStrength = 2 * (Na + K + Cl + 4 * (CaT + MgT + CT) + BT + acT) + 1e-6
  let low = 0
  let high = upperStrength
  let I = Math.min(upperStrength, Na + K + 3 * (CaT + MgT) + 1e-7)
  let lastI = Number.NaN
  let lastGap = Number.NaN
  let passesCount = 0
  let isSettled = false
  while (!isSettled && passesCount < PASSES_LIMIT) {
    passesCount += 1
    activityModel.fill(g, Math.min(I, 2 * IONIC_STRENGTH_LIMIT_MOL_PER_KG), constants.A, constants.B)
    const found = balance()
    if (found !== 'found') return { kind: 'not-solved', why: found, ionicStrengthMolPerKg: I }
    const gap = strength() - I
    isSettled = Math.abs(gap) <= 1e-11 * I + 1e-18
    if (isSettled) break
    if (gap > 0) low = I
    else high = I
    const secant = I - (gap * (I - lastI)) / (gap - lastGap)
    const plain = I + gap
    lastI = I
    lastGap = gap
    I = secant > low && secant < high ? secant : plain > low && plain < high ? plain : (low + high) / 2
  }
  if (I > IONIC_STRENGTH_LIMIT_MOL_PER_KG) return { kind: 'not-solved', why: 'too-strong', ionicStrengthMolPerKg: I }
  if (!isSettled) return { kind: 'not-solved', why: 'not-converged', ionicStrengthMolPerKg: I }
  const chargeErrorFraction = Math.abs(chargeAt(lnH)) / sumOfCharges
  if (!(chargeErrorFraction <= CHARGE_ERROR_LIMIT)) {
    return { kind: 'not-solved', why: 'charge-balance', ionicStrengthMolPerKg: I }
  }
  const { equilibria } = constants
  const logOH = Math.log10(OH * g.OH)
  return {
    kind: 'solved',
    pH: -lnH / LN10,
    temperatureC,
    ionicStrengthMolPerKg: I,
    molPerKg: {
      H,
      OH,
      Na,
      K,
      Cl,
      Ca: aCa / g.Ca,
      Mg: aMg / g.Mg,
      HCO3,
      CO3,
      CO2,
      CaOH,
      CaHCO3,
      CaCO3,
      MgOH,
      MgHCO3,
      MgCO3,
      BOH4,
      BOH3: BT - BOH4,
      acetate: Ac,
      aceticAcid: acT - Ac,
    },
    saturation: {
      calcite: CaT > 0 && CT > 0 && equilibria.calcite !== null ? Math.log10(aCa * aCO3) - equilibria.calcite : null,
      portlandite: CaT > 0 ? Math.log10(aCa) + 2 * logOH - equilibria.portlandite : null,
      brucite: MgT > 0 ? Math.log10(aMg) + 2 * logOH - equilibria.brucite : null,
    },
    pCO2Atm: CO2 / 10 ** equilibria.henryCO2,
    chargeErrorFraction,
    passesCount,
    evaluationsCount,
    isBeyondModel: I > activityModel.goodToMolPerKg,
  }
}

function total(name: string, value = 0): number {
  requireInRange(name, value, { min: 0, max: TOTAL_LIMIT_MOL_PER_KG, unit: 'mol/kg', source: 'project-rule' })
  return value
}

/** Sum of |z| c, as the charge error is told against. [eq/kg] */
export function summedCharges(molPerKg: Speciation['molPerKg']): number {
  return Object.entries(ION_CHARGES).reduce((sum, [ion, z]) => sum + Math.abs(z) * molPerKg[ion as Ion], 0)
}
