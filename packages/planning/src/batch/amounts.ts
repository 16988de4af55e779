/** Names of a plan's amounts in a keeper's words, and the order in which a sheet shows them. Leaves out the numbers. */
import type { Reckoned, Sentence } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import { say } from '../shared/say.ts'
import type { JarSize } from './input.ts'
import type { BatchPlan } from './plan.ts'

const NAMES = {
  seedPutByLb: 'season:screen-amount-seed',
  shelledLb: 'season:screen-amount-shelled',
  shellingH: 'season:screen-amount-shelling',
  cornToShellLb: 'season:screen-amount-to-shell',
  cleanCornLb: 'season:screen-amount-clean',
  dryCornLiquidQt: 'season:screen-amount-dry',
  ashCups: 'season:screen-amount-ash',
  ashLiquidQt: 'season:screen-amount-ash',
  calciumHydroxideG: 'season:screen-amount-calcium-hydroxide',
  sodiumHydroxideOz: 'season:screen-amount-sodium-hydroxide',
  sodiumHydroxideG: 'season:screen-amount-sodium-hydroxide',
  bakingSodaTbsp: 'season:screen-amount-baking-soda',
  alkaliBoilMin: 'season:screen-amount-alkali-boil',
  cornPerPotLoadLiquidQt: 'season:screen-amount-per-pot-load',
  startingVolumeLiquidQt: 'season:screen-amount-starting-volume',
  potLoads: 'season:screen-amount-pot-loads',
  waterPerPotLoadLiquidGal: 'season:screen-amount-water-per-pot-load',
  waterLiquidGal: 'season:screen-amount-water',
  waterL: 'season:screen-amount-water',
  hominyLiquidQt: 'season:screen-amount-hominy',
  swollenInPotLiquidQt: 'season:screen-amount-swollen',
  tonightHominyLiquidQt: 'season:screen-amount-tonight',
  freezerHominyLiquidQt: 'season:screen-amount-freezer',
  freezerBags: 'season:screen-amount-freezer-bags',
  freezerLb: 'season:screen-amount-freezer-weight',
  driedHominyLiquidQt: 'season:screen-amount-to-dry',
  trays: 'season:screen-amount-trays',
  driedLb: 'season:screen-amount-dried',
  flourHominyLiquidQt: 'season:screen-amount-for-flour',
  flourLb: 'season:screen-amount-flour',
  roastedHominyLiquidQt: 'season:screen-amount-to-roast',
  roastedLb: 'season:screen-amount-roasted',
  jars: 'season:screen-amount-jars',
  jarsToSetOut: 'season:screen-amount-jars-to-set-out',
  jarsLooseAsPrinted: 'season:screen-amount-jars-printed',
  lids: 'season:screen-amount-lids',
  lidsToSetOut: 'season:screen-amount-lids-to-set-out',
  saltTsp: 'season:screen-amount-salt',
  saltTbsp: 'season:screen-amount-salt',
  saltCups: 'season:screen-amount-salt-cups',
  rounds: 'season:screen-amount-rounds',
  loads: 'season:screen-amount-loads',
  dialPsi: 'season:screen-amount-dial',
  weightLb: 'season:screen-amount-weight',
  processMin: 'season:screen-amount-process',
  ventMin: 'season:screen-amount-vent',
  ventAndProcessMin: 'season:screen-amount-vent-and-process',
  doorToDoorMin: 'season:screen-amount-door-to-door',
  startClockMin: 'season:screen-amount-begin',
  finishClockMin: 'season:screen-amount-done',
  hominyWaitsMin: 'season:screen-amount-waits',
  hullDayMin: 'season:screen-amount-hull-day',
  canDayMin: 'season:screen-amount-can-day',
  jarsEach: 'season:screen-amount-jars-each',
  loadRecords: 'season:screen-amount-load-records',
} as const satisfies Record<string, MessageKey>

export type AmountId = keyof typeof NAMES

const JAR_NAMES = {
  'half-pint': 'season:screen-jar-half-pint',
  pint: 'season:screen-jar-pint',
  quart: 'season:screen-jar-quart',
} as const satisfies Record<JarSize, MessageKey>

/** What a class sets out and may expect: without seed, which is nobody's but the keeper's, and without jars. */
export function classAmounts(plan: BatchPlan): readonly Reckoned[] {
  const { toSetOut, toExpect } = sheetAmounts(plan)
  return [...toSetOut, ...toExpect].filter(({ id }) => id !== 'seedPutByLb')
}

/** A jar size in words, for more than one jar. */
export function jarName(jarSize: JarSize): Sentence {
  return say(JAR_NAMES[jarSize])
}

/** What an amount is called; null for one without a name, such as the jars of a single load. */
export function amountName(id: string): Sentence | null {
  return Object.hasOwn(NAMES, id) ? say(NAMES[id as AmountId]) : null
}

/** What goes into the pot, seed aside; the shelling first, where there is any. */
const TO_SET_OUT = [
  'shelledLb',
  'shellingH',
  'cornToShellLb',
  'cleanCornLb',
  'dryCornLiquidQt',
  'ashCups',
  'calciumHydroxideG',
  'sodiumHydroxideOz',
  'bakingSodaTbsp',
  'potLoads',
  'waterLiquidGal',
] as const satisfies readonly AmountId[]

/** What comes out of it, in the order to offer it: jars last. */
const TO_EXPECT = [
  'hominyLiquidQt',
  'tonightHominyLiquidQt',
  'freezerBags',
  'trays',
  'driedLb',
  'flourLb',
  'roastedLb',
] as const satisfies readonly AmountId[]

const FOR_JARS = [
  'jars',
  'jarsToSetOut',
  'lidsToSetOut',
  'saltTbsp',
  'saltCups',
  'loads',
] as const satisfies readonly AmountId[]

export interface SheetAmounts {
  readonly toSetOut: readonly Reckoned[]
  readonly toExpect: readonly Reckoned[]
  readonly forJars: readonly Reckoned[]
}

/** A plan's headline amounts in the order of a sheet. The rest stays behind them. */
export function sheetAmounts({ values }: Pick<BatchPlan, 'values'>): SheetAmounts {
  const find = (id: string) => values.find((value) => value.id === id)
  const isHeadline = ({ id, value }: Reckoned) =>
    // Clean corn beside corn to shell, and cups beside spoons once they fill one.
    id === 'cleanCornLb' ? find('cornToShellLb') !== undefined : id !== 'saltCups' || value >= 1
  const pick = (ids: readonly string[]) => ids.flatMap((id) => find(id) ?? []).filter(isHeadline)
  return { toSetOut: pick(TO_SET_OUT), toExpect: pick(TO_EXPECT), forJars: pick(FOR_JARS) }
}
