/** The made-up run the studies of heat are tested on: a pint in free brine at sea level. Invented. */
import type { MadeUpRun } from '../src/index.ts'

export const MADE_UP_RUN: MadeUpRun = {
  jar: 'pint',
  pack: 'free brine',
  elevationM: 0,
  gaugeKPa: 75.84,
  gaugeReadsHighKPa: 0,
  ventMin: 10,
  holdMin: 60,
  fillC: 82,
  coolDownMin: 35,
}
