/** Invented books of seed and field, handed to the house server as another device of the kitchen would. */
import { type FieldPlanInput, fieldPlan, fieldPlannedBody } from '@crib/planning'
import { KETTLEBROOK_FIELD } from '../../../packages/planning/testing/kettlebrook-field.ts'
import type { House } from './harness.ts'
import { kitchenDay, kitchenYear } from './kitchen-day.ts'
import { ostreyPoint, type ToldBook, tellBook } from './told-books.ts'

/** S1's seed in two tins, tested 46 of 50 and some of it given: 60 parent ears, 110 kernels in an ounce. */
export function seedInTins(house: House): Promise<ToldBook> {
  return tellBook(house, false, (teller) => {
    ostreyPoint(teller)
    const { book, tell } = teller
    const { seedLotId } = book
    tell('seed-lot-recorded', {
      seedLotId,
      name: 'Heron Foot flint',
      seasonYear: kitchenYear(),
      putByOn: kitchenDay(40),
      source: 'own',
      parentEarsCount: 60,
      kernelsCount: 1150,
      kernelsPerOz: 110,
      containers: [
        { container: 'tin', place: 'the loft' },
        { container: 'glass jar', place: 'the cellar' },
      ],
    })
    tell('germination-tested', { seedLotId, testedOn: kitchenDay(5), sproutedCount: 46, ofCount: 50 })
    tell('seed-given', { seedLotId, givenOn: kitchenDay(4), kernelsCount: 20, toWhom: 'a niece' })
  })
}

/** A plot sown in spring that silked, with other corn near by, its next plan, ears in the crib and off-types counted over years. */
export function fieldInSilk(house: House): Promise<ToldBook> {
  return tellBook(house, false, (teller) => {
    ostreyPoint(teller)
    const { book, newId, tell } = teller
    const { plotId, plantingId, seedLotId } = book
    const year = kitchenYear()
    const corn = { cornName: 'Heron Foot flint', seedLotId }
    const [neighbourId, earsId] = [1, 2].map(() => newId()) as [string, string]
    tell('seed-lot-recorded', {
      seedLotId,
      name: 'Heron Foot flint',
      seasonYear: year - 3,
      putByOn: `${year - 3}-10-20`,
      source: 'own',
      parentEarsCount: 60,
      kernelsCount: 2400,
      kernelsPerOz: 110,
      containers: [],
    })
    tell('germination-tested', { seedLotId, testedOn: `${year - 1}-04-02`, sproutedCount: 46, ofCount: 50 })
    for (const [ago, found] of [
      [2, 2],
      [1, 5],
      [0, 9],
    ] as const) {
      const countedOn = `${year - ago}-01-05`
      tell('off-types-counted', { seedLotId, countedOn, what: 'ears', offTypesCount: found, ofCount: 180 })
    }
    tell('plot-recorded', { plotId, name: 'behind the house', lengthM: 9, widthM: 7.2, rowsBearingDeg: 90 })
    tell('planting-recorded', {
      ...corn,
      plantingId,
      plotId,
      plantedOn: `${year - 1}-05-14`,
      pattern: 'rows',
      rowsCount: 8,
      rowSpacingM: 0.9,
      inRowSpacingM: 0.3,
      kernelsSownCount: 327,
    })
    const stand = { countedOn: `${year - 1}-06-10`, plantsCount: 262, ofKernelsCount: 327 }
    tell('stand-counted', { plantingId, ...stand })
    tell('tassel-seen', { plantingId, seenOn: `${year - 1}-07-16`, howMany: 'half' })
    tell('silk-seen', { plantingId, seenOn: `${year - 1}-07-19`, howMany: 'half' })
    tell('neighbour-corn-recorded', {
      plotId,
      neighbourId,
      name: 'over the road',
      seasonYear: year + 1,
      distanceM: 120,
      bearingDeg: 270,
      wouldShow: true,
    })
    const input: FieldPlanInput = {
      ...KETTLEBROOK_FIELD,
      foodLb: 20,
      pattern: 'hills',
      rowSpacingM: 1.0668,
      inRowSpacingM: 1.0668,
      withBeans: true,
    }
    tell('field-planned', fieldPlannedBody({ ...corn, seasonYear: year + 1, input, plan: fieldPlan(input) }, plotId))
    const ears = { cornType: 'flint', form: 'ears', treatedSeed: false, massKg: 18, asTyped: '18 kg' } as const
    tell('corn-lot-brought-in', { lotId: earsId, name: 'Heron Foot flint', ...ears })
  })
}
