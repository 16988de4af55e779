/**
 * Activity coefficients of ions, behind one interface: rival models are rival objects.
 * Leaves out: ion pairs (solve.ts) and liquors above an ionic strength of 1.
 */
const ZERO_C_IN_K = 273.15

/** The charged species a kettle holds, in the order every model lists them. */
export type Ion =
  | 'H'
  | 'OH'
  | 'Na'
  | 'K'
  | 'Ca'
  | 'Mg'
  | 'HCO3'
  | 'CO3'
  | 'CaOH'
  | 'CaHCO3'
  | 'MgOH'
  | 'MgHCO3'
  | 'BOH4'
  | 'acetate'
  | 'Cl'

export const ION_CHARGES: Readonly<Record<Ion, number>> = {
  H: 1,
  OH: -1,
  Na: 1,
  K: 1,
  Ca: 2,
  Mg: 2,
  HCO3: -1,
  CO3: -2,
  CaOH: 1,
  CaHCO3: 1,
  MgOH: 1,
  MgHCO3: 1,
  BOH4: -1,
  acetate: -1,
  Cl: -1,
}

const IONS = Object.keys(ION_CHARGES) as readonly Ion[]

/** Activity coefficients by ion. [1] */
export type IonActivities = Record<Ion, number>

export interface ActivityModel {
  readonly name: string
  readonly sourceKey: string
  /** Ionic strength up to which the model is worth using. [mol/kg] */
  readonly goodToMolPerKg: number
  /** Writes the coefficients at an ionic strength into `into`. `A` as in `debyeHueckelA`. */
  readonly fill: (into: IonActivities, ionicStrengthMolPerKg: number, A: number, B: number) => void
}

/** An object to be filled by a model. */
export function emptyActivities(): IonActivities {
  return Object.fromEntries(IONS.map((ion) => [ion, 1])) as IonActivities
}

/** Density of air-free water at 1 atm, 0 to 100 °C. [kg/L]  Kell's fraction of polynomials. */
function waterDensityKgPerL(t: number): number {
  const above =
    999.83952 +
    16.945176 * t -
    7.9870401e-3 * t ** 2 -
    46.170461e-6 * t ** 3 +
    105.56302e-9 * t ** 4 -
    280.54253e-12 * t ** 5
  return above / (1 + 16.87985e-3 * t) / 1000
}

/** Dielectric constant of water, 0 to 100 °C. [1]  Malmberg and Maryott 1956. */
function dielectricConstant(t: number): number {
  return 87.74 - 0.40008 * t + 9.398e-4 * t ** 2 - 1.41e-6 * t ** 3
}

/**
 * A and B of the Debye-Hückel law. [A: (kg/mol)^1/2; B: (kg/mol)^1/2 per Å]
 *
 * A: 0.492 at 0 °C, 0.511 at 25 °C, 0.596 at 100 °C.
 *
 * @param temperatureC [°C] Valid: 0 to 100, checked by the caller.
 * @source malmberg-maryott-1956; kell-1975
 */
export function debyeHueckel(temperatureC: number): { readonly A: number; readonly B: number } {
  const epsT = dielectricConstant(temperatureC) * (temperatureC + ZERO_C_IN_K)
  const rootDensity = Math.sqrt(waterDensityKgPerL(temperatureC))
  return { A: 1.82483e6 * rootDensity * epsT ** -1.5, B: 50.2916 * rootDensity * epsT ** -0.5 }
}

/** Davies with 0.3 at every temperature: good to 0.1 to 0.3 mol/kg, and climbs too fast above 0.5.  @source davies-1962 */
export const DAVIES: ActivityModel = {
  name: 'Davies',
  sourceKey: 'davies-1962',
  goodToMolPerKg: 0.5,
  fill: (into, I, A) => {
    const root = Math.sqrt(I)
    const single = 10 ** (-A * (root / (1 + root) - 0.3 * I))
    const double = single ** 4
    for (let i = 0; i < IONS.length; i++) {
      const ion = IONS[i]!
      into[ion] = Math.abs(ION_CHARGES[ion]) === 2 ? double : single
    }
  },
}

/** Ion size [Å] and slope of the Truesdell-Jones form, as phreeqc.dat has them; Davies where it has none. */
const ION_SIZES: Partial<Record<Ion, readonly [number, number]>> = {
  H: [9, 0],
  OH: [3.5, 0],
  Na: [4, 0.075],
  K: [3.5, 0.015],
  Ca: [5, 0.165],
  Mg: [5.5, 0.2],
  HCO3: [5.4, 0],
  CO3: [5.4, 0],
  CaHCO3: [6, 0],
  Cl: [3.5, 0.015],
}

/**
 * Extended Debye-Hückel with ion sizes (Truesdell and Jones 1974): sizes are published for most ions of a kettle, not
 * for all; those without one take Davies.  @source truesdell-jones-1974
 */
export const TRUESDELL_JONES: ActivityModel = {
  name: 'Truesdell-Jones',
  sourceKey: 'truesdell-jones-1974',
  goodToMolPerKg: 1,
  fill: (into, I, A, B) => {
    DAVIES.fill(into, I, A, B)
    const root = Math.sqrt(I)
    for (let i = 0; i < IONS.length; i++) {
      const ion = IONS[i]!
      const size = ION_SIZES[ion]
      if (!size) continue
      const z2 = ION_CHARGES[ion] ** 2
      into[ion] = 10 ** ((-A * z2 * root) / (1 + B * size[0] * root) + size[1] * I)
    }
  },
}
