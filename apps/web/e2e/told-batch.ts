/** Scenario S2's batch (invented), planned and told to the house server as another device of the kitchen would. */
import type { BodyOf, Kind, StoredEntry } from '@crib/journal'
import { batchPlan, batchPlannedBody } from '@crib/planning'
import type { House } from './harness.ts'
import { tellingDevice, tellTheHouse } from './teller.ts'

const FT_M = 0.3048
const LB_KG = 0.45359237
const LIQUID_QT_L = 0.946352946

export interface PlannedBook {
  readonly kitchenId: string
  readonly batchId: string
}

/**
 * Nine pounds of Lantern flint for the freezer, three pot-loads; ash from `ash`, with the record of M-1. `titrated`: M-1 was
 * titrated when it was new (0.90 eq/kg), and a cup of it weighed.
 */
export async function tellPlannedBatch(
  house: House,
  atMs: number,
  ash: 'M-1' | 'M-0' = 'M-1',
  titrated = false,
): Promise<PlannedBook> {
  const { kitchenId, author, newId } = tellingDevice(() => atMs)
  const batchId = newId()
  const lotId = newId()
  const alkaliLotId = newId()
  const oldAshId = newId()
  const entries: StoredEntry[] = []
  const tell = <K extends Kind>(kind: K, body: BodyOf<K>) => entries.push(author.write(kind, body))
  tell('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false })
  tell('kitchen-noted', { kitchenId, elevationM: 820 * FT_M, elevationKnownBy: 'map' })
  tell('corn-lot-brought-in', {
    lotId,
    name: 'Lantern flint',
    cornType: 'flint',
    form: 'shelled',
    treatedSeed: false,
    massKg: 9 * LB_KG,
    asTyped: '9 lb',
  } as const)
  const clean = { burntClean: true, cold: true, sifted: true, onlyCleanWood: true }
  tell('alkali-lot-recorded', { alkaliLotId, name: 'M-1', alkali: 'ash', ...clean, lidded: true })
  tell('alkali-lot-judged', { alkaliLotId, judged: 'works', cupsPerLiquidQt: 1, slipMin: 55 })
  if (titrated) {
    const sample = { way: 'vinegar', sampleMl: 50, coldMl: 4.8, boiledMl: 5.41, acidityGPer100Ml: 5 } as const
    const found = { ...sample, syringeStepMl: 0.1, steepedG: 100, steepWaterL: 1 }
    tell('alkali-lot-tested', { alkaliLotId, found, gPerCup: 100 })
  }
  const gatheredOn = new Date(atMs - 425 * 86_400_000).toISOString().slice(0, 10) // fourteen months in an open pail
  tell('alkali-lot-recorded', {
    alkaliLotId: oldAshId,
    name: 'M-0',
    alkali: 'ash',
    ...clean,
    lidded: false,
    gatheredOn,
  } as const)
  tell('pot-recorded', { potId: newId(), name: 'the big pot', volumeL: 20 * LIQUID_QT_L, material: 'stainless' })
  const plan = batchPlan({
    from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
    seed: { how: 'by-eye', plantingsCount: 2, places: [] },
    cornName: 'Lantern flint',
    cornType: 'flint',
    alkali: 'ash',
    alkaliLot: { name: 'M-1', judged: 'works', cupsPerLiquidQt: 1, slipMin: 55 },
    pots: [{ name: 'the big pot', volumeLiquidQt: 20, material: 'stainless' }],
    endings: [{ ending: 'freezer', shareFraction: 1 }],
    canners: [],
    isStandingRead: false,
  })
  if (plan.kind !== 'planned') throw new Error('the plan was refused')
  const beside = { cornLotId: lotId, alkaliLotId: ash === 'M-1' ? alkaliLotId : oldAshId }
  tell('batch-planned', batchPlannedBody({ batchId, title: 'Lantern flint, 9 lb', plan, beside }))
  await tellTheHouse(house, entries)
  return { kitchenId, batchId }
}
