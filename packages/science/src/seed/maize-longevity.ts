/**
 * What the viability equation is fed for maize, each number with its source and where it holds. Data, so that a later
 * edition is a new block and not a change of code.
 */
export const MAIZE_LONGEVITY = {
  /** Moisture terms. @source hong-1996 */
  KE: 8.579,
  CW: 4.91,
  /** Temperature terms, one pair for all species. @source dickie-1990 */
  CH: 0.0329,
  CQ: 0.000478,
  /** Years of 365.25 days. */
  daysPerYear: 365.25,
} as const

/**
 * A later set for maize, fitted to lots kept tight at 0 to 50 °C and 2 to 25 % moisture; its moisture terms carry the
 * standard errors printed with them. Everywhere in our ranges it gives a longer life than the set above.
 * @source ellis-hong-2007
 */
export const MAIZE_LONGEVITY_2007 = {
  KE: 9.993,
  CW: 5.993,
  CH: 0.0322,
  CQ: 0.000454,
  standardErrorKE: 0.456,
  standardErrorCW: 0.392,
} as const

/**
 * How far one lot of maize may age from the equation's rate: 9 lots in 10 within this factor either way. Project rule, from
 * two things that are published: lots do not age alike (tang-1999, tang-2000), and maize kept 48 years cold fell by 2.2 to
 * 2.4 times the probits the equation foretells (guzzon-2021).
 */
export const LOT_AGEING_FACTOR = 2.5

/** Equilibrium humidity below which drying further buys no more life: 12 species, 10.6 %. @source ellis-hong-roberts-1989 */
export const FLOOR_RELATIVE_HUMIDITY = 0.106

/** Above it mould decides and not the equation. Project rule. [fraction, wet basis] */
export const MOISTURE_CEILING_WET_FRACTION = 0.18
