/** Invented books in the middle of something, handed to the house server as another device of the kitchen would. */
import { GUIDANCE_EDITION } from '@crib/guidance'
import type { BodyOf, Kind, StoredEntry } from '@crib/journal'
import { type BatchPlan, type BatchPlanInput, batchPlan, planRecord, standingFood } from '@crib/planning'
import type { Page } from 'playwright-core'
import type { House } from './harness.ts'
import { kitchenDay, kitchenYear } from './kitchen-day.ts'
import { tellingDevice, tellTheHouse } from './teller.ts'

const FT_M = 0.3048
const LB_KG = 0.45359237
const LIQUID_QT_L = 0.946352946

export interface ToldBook {
  readonly kitchenId: string
  readonly batchId: string
  readonly runId: string
  readonly cannerId: string
  readonly seedLotId: string
  readonly plotId: string
  readonly plantingId: string
  /** The ash of the batch. */
  readonly alkaliLotId: string
  readonly cornLotId: string
  /** The jars on the shelf. */
  readonly foodLotId: string
}

export interface Teller {
  readonly book: ToldBook
  /** Marked as invented on every page. */
  readonly demo: boolean
  newId(): string
  tell<K extends Kind>(kind: K, body: BodyOf<K>, minutesAgo?: number): void
}

export async function tellBook(house: House, demo: boolean, story: (teller: Teller) => void): Promise<ToldBook> {
  const { kitchenId, author, newId } = tellingDevice()
  const book = {
    kitchenId,
    batchId: newId(),
    runId: newId(),
    plotId: newId(),
    plantingId: newId(),
    cannerId: newId(),
    seedLotId: newId(),
    alkaliLotId: newId(),
    cornLotId: newId(),
    foodLotId: newId(),
  }
  const entries: StoredEntry[] = []
  story({
    book,
    demo,
    newId,
    tell: (kind, body, minutesAgo = 0) =>
      entries.push(author.write(kind, body, { happenedAt: { instant: Date.now() - minutesAgo * 60_000 } })),
  })
  await tellTheHouse(house, entries)
  return book
}

/** S2's kitchen: 9 lb Lantern flint, ash M-1 with its record, one pot, one canner, seed by eye; two days ago. */
export function ostreyPoint({ book, demo, newId, tell }: Teller, isDialTested = true): void {
  const { alkaliLotId, cornLotId: lotId } = book
  const [potId, seedId] = [1, 2].map(() => newId()) as [string, string]
  const twoDays = 2880
  tell('kitchen-opened', { kitchenId: book.kitchenId, name: 'Ostrey Point', demo }, twoDays)
  tell('kitchen-noted', { kitchenId: book.kitchenId, elevationM: 820 * FT_M, elevationKnownBy: 'map' }, twoDays)
  const flint = { cornType: 'flint', form: 'shelled', treatedSeed: false } as const
  tell('corn-lot-brought-in', { lotId, name: 'Lantern flint', ...flint, massKg: 9 * LB_KG, asTyped: '9 lb' }, twoDays)
  const year = kitchenYear()
  tell(
    'seed-put-by',
    { seedId, lotId, seasonYear: year, how: 'by-eye', plantingsCount: 2, places: ['a tin', 'a braid'] },
    twoDays,
  )
  const clean = { burntClean: true, cold: true, sifted: true, lidded: true, onlyCleanWood: true }
  tell('alkali-lot-recorded', { alkaliLotId, name: 'M-1', alkali: 'ash', woods: 'maple', ...clean }, twoDays)
  tell('alkali-lot-judged', { alkaliLotId, judged: 'works', cupsPerLiquidQt: 1, slipMin: 55 }, twoDays)
  tell('pot-recorded', { potId, name: 'the big pot', volumeL: 20 * LIQUID_QT_L, material: 'stainless' }, twoDays)
  const holds = { capacityPints: 9, capacityQuarts: 7, rim: 'gasket', electric: false } as const
  tell('canner-recorded', { cannerId: book.cannerId, name: 'yard canner', gauges: ['dial'], ...holds }, twoDays)
  if (!isDialTested) return
  const readings = [10, 11, 15].map((psi) => ({ truePsi: psi, readsPsi: psi }))
  const testedOn = kitchenDay(90)
  const test = { testedOn, tester: 'extension office', readings, marksEveryPsi: 1, restsAtPsi: 0 }
  tell('gauge-tested', { cannerId: book.cannerId, ...test }, twoDays)
}

/** S2: 9 lb into quart jars filled loosely to headspace, by the keeper's own record of ash lot M-1. */
const S2: BatchPlanInput = {
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: ['a tin', 'a braid'] },
  cornName: 'Lantern flint',
  cornType: 'flint',
  alkali: 'ash',
  alkaliLot: { name: 'M-1', judged: 'works', cupsPerLiquidQt: 1, slipMin: 55 },
  pots: [{ name: 'the big pot', volumeLiquidQt: 20, material: 'stainless' }],
  endings: [{ ending: 'jars', shareFraction: 1 }],
  fill: 'loose-to-headspace',
  jarSize: 'quart',
  canners: [{ name: 'yard canner', gauges: ['dial'], capacityPints: 9, capacityQuarts: 7 }],
  elevationFt: 820,
  elevationKnownBy: 'map',
  isStandingRead: true,
}

function planned({ book, newId, tell }: Teller): BatchPlan {
  const plan = batchPlan(S2)
  if (plan.kind === 'refused') throw new Error(`S2 should be plannable, and is refused as ${plan.refused}`)
  const read = { seasonYear: kitchenYear(), edition: GUIDANCE_EDITION, food: standingFood('ash') }
  tell('standing-read', { readingId: newId(), ...read }, 130)
  tell('batch-planned', { batchId: book.batchId, title: 'Lantern flint', ...planRecord(plan) }, 120)
  return plan
}

/** The alkali boil is on since 90 minutes; a quarter of the kernels slipped. */
export function duringABatch(house: House, demo = false): Promise<ToldBook> {
  return tellBook(house, demo, (teller) => {
    ostreyPoint(teller)
    const plan = planned(teller)
    const { book, tell } = teller
    const pot = { batchId: book.batchId, potLoad: 1 }
    for (const stage of plan.kettle.stages) {
      // What comes before the alkali is done.
      if (stage.kind === 'alkali-boil') break
      tell('stage-noted', { ...pot, stageId: stage.id, what: 'done' }, 95)
    }
    tell('cook-noted', { ...pot, seen: { type: 'boil' } }, 90)
    tell('cook-noted', { ...pot, seen: { type: 'darkening' } }, 60)
    tell('cook-noted', { ...pot, seen: { type: 'rubbed', slippedCount: 5, ofCount: 20 } }, 20)
  })
}

/** One canner at pressure since ten minutes, after a dip that was regained. */
export function runningCanner(house: House, demo = false): Promise<ToldBook> {
  return tellBook(house, demo, (teller) => {
    ostreyPoint(teller)
    planned(teller)
    const { book, tell } = teller
    const { runId } = book
    tell(
      'run-begun',
      {
        runId,
        batchId: book.batchId,
        cannerId: book.cannerId,
        cannerName: 'yard canner',
        loadCode: 'YC-1',
        jarSize: 'quart',
        jarCount: 6,
        gauge: 'dial',
        requiredReadingPsi: 11,
        ventMin: 10,
        processMin: 70,
        edition: GUIDANCE_EDITION,
        cardShown: { holdAtPsi: 11 },
      },
      60,
    )
    const saw = (type: 'canner-loaded' | 'lid-seated' | 'steam-steady' | 'vent-closed' | 'at-pressure', ago: number) =>
      tell('run-event', { runId, event: { type } }, ago)
    saw('canner-loaded', 58)
    saw('lid-seated', 55)
    saw('steam-steady', 45)
    saw('vent-closed', 35)
    saw('at-pressure', 28)
    tell('run-event', { runId, event: { type: 'dipped', psi: 10 } }, 14)
    tell('run-event', { runId, event: { type: 'regained' } }, 10)
  })
}

/** A load run to its end, its jars and some freezer packs on the shelf, some of them eaten. */
export function stockedPantry(house: House): Promise<ToldBook> {
  return tellBook(house, false, (teller) => {
    ostreyPoint(teller)
    planned(teller)
    const { book, newId, tell } = teller
    const { runId, batchId } = book
    const loadCode = 'YC-1'
    tell(
      'run-begun',
      {
        runId,
        batchId,
        cannerId: book.cannerId,
        cannerName: 'yard canner',
        loadCode,
        households: ['the ford'],
        jarSize: 'quart',
        jarCount: 6,
        gauge: 'dial',
        requiredReadingPsi: 11,
        ventMin: 10,
        processMin: 70,
        edition: GUIDANCE_EDITION,
        cardShown: { holdAtPsi: 11 },
      },
      1300,
    )
    const log = [
      ...[['canner-loaded', 1298] as const, ['lid-seated', 1295] as const, ['steam-steady', 1280] as const],
      // Seven minutes: a departure that travels with every jar.
      ...[['vent-closed', 1273] as const, ['at-pressure', 1265] as const, ['heat-off', 1190] as const],
      ...[['zero', 1140] as const, ['weight-off', 1140] as const, ['lid-off', 1129] as const],
      ['jars-out', 1125] as const,
    ]
    for (const [type, minutesAgo] of log) tell('run-event', { runId, event: { type } }, minutesAgo)
    tell('run-event', { runId, event: { type: 'seal-seen', sealedCount: 5, unsealedCount: 1 } }, 300)
    const [fridge, freezer] = [1, 2].map(() => newId()) as [string, string]
    const jars = book.foodLotId
    const departures = ['Vented 7 min; 10 min of steady steam is published. Air was left in.']
    const load = { batchId, runId, loadCode, jarSize: 'quart', departures } as const
    tell(
      'food-put-up',
      { ...load, lotId: jars, form: 'jar', count: 5, place: 'cellar', householdName: 'the ford' },
      290,
    )
    tell('food-put-up', { ...load, lotId: fridge, form: 'fridge', count: 1 }, 290)
    tell('food-put-up', { lotId: freezer, batchId, loadCode: 'K-1', form: 'freezer', count: 4, massKg: 2 }, 280)
    tell('lot-used', { lotId: jars, count: 1, how: 'eaten' }, 20)
    tell('lot-used', { lotId: book.cornLotId, massKg: 6 * LB_KG, how: 'used-in-batch', batchId }, 1400)
  })
}

/** The batch's ash tried four times over a year, a cup of it weighed; the first pot slipped, and two rinses are told. */
export function testedAlkali(house: House): Promise<ToldBook> {
  return tellBook(house, false, (teller) => {
    ostreyPoint(teller)
    const plan = planned(teller)
    const { book, tell } = teller
    const { alkaliLotId, batchId } = book
    const sample = { way: 'vinegar', sampleMl: 50, acidityGPer100Ml: 5, syringeStepMl: 0.1 } as const
    const steep = { steepedG: 100, steepWaterL: 1 }
    const month = 43_200
    const tried = (found: BodyOf<'alkali-lot-tested'>['found'], months: number) =>
      tell('alkali-lot-tested', { alkaliLotId, found, gPerCup: 100 }, months * month)
    tried({ ...sample, ...steep, coldMl: 4.8, boiledMl: 5.41 }, 11)
    tried({ way: 'strip', stripPH: 12.5, liquorC: 20, ...steep }, 8)
    tried({ ...sample, ...steep, coldMl: 3.1, boiledMl: 4.6 }, 4)
    tried({ way: 'trial-cup', lotG: 25, slippedCount: 12, ofCount: 20, boiledMin: 60 }, 3)
    const pot = { batchId, potLoad: 1 }
    const boil = plan.kettle.stages.find(({ kind }) => kind === 'alkali-boil')
    tell('stage-noted', { ...pot, stageId: boil?.id ?? 'alkali-boil', what: 'begun', waterL: 7.6 }, 200)
    tell('cook-noted', { ...pot, seen: { type: 'alkali-added', alkaliLotId, cups: 2 } }, 199)
    tell('cook-noted', { ...pot, seen: { type: 'boil' } }, 190)
    tell('cook-noted', { ...pot, seen: { type: 'rubbed', slippedCount: 19, ofCount: 20 } }, 130)
    tell('stage-noted', { ...pot, stageId: boil?.id ?? 'alkali-boil', what: 'done' }, 128)
    for (const [rinse, ago] of [
      ['cold-rinse-1', 120],
      ['cold-rinse-2', 110],
    ] as const) {
      tell('stage-noted', { ...pot, stageId: rinse, what: 'done', waterL: 7.5 }, ago)
    }
    tell('cook-noted', { ...pot, seen: { type: 'rinse-tested', way: 'stood', stripPH: 9.5 } }, 60)
  })
}

/** The same kitchen with a dial that nobody ever tested, and no weight: no number can be given for it. */
export function untestedDial(house: House): Promise<ToldBook> {
  return tellBook(house, false, (teller) => ostreyPoint(teller, false))
}

/** Goes on with a book the house server holds, as a second device does. */
export async function joinBook(page: Page, house: House, { kitchenId }: Pick<ToldBook, 'kitchenId'>): Promise<void> {
  await page.goto(house.url)
  await page.getByRole('button', { name: `ending in ${kitchenId.slice(-4)}` }).click()
  await page.getByRole('heading', { level: 1, name: 'The year' }).waitFor()
  // The kitchen's name stands at the head once its lines have come from the house.
  await page.getByText('Ostrey Point').first().waitFor()
}
