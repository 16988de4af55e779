/** What S2 plans from (scenarios: invented): 9 lb of Lantern flint, own ash, one pot, quarts through one dial canner. */
import type { BatchPlanInput } from '../src/index.ts'

export const OSTREY_DAY: BatchPlanInput = {
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: ['the loft', 'the tin'] },
  cornName: 'Lantern flint',
  cornType: 'flint',
  alkali: 'ash',
  alkaliLot: { name: 'M-1', judged: 'works', cupsPerLiquidQt: 1, slipMin: 55 },
  pots: [{ name: 'the big pot', volumeLiquidQt: 20, material: 'stainless' }],
  washPattern: 'printed',
  waterRecord: {
    cornLiquidQt: 2,
    rows: [
      { stageKind: 'alkali-boil', timesCount: 1, waterLiquidGal: 2 },
      { stageKind: 'cold-rinse', timesCount: 4, waterLiquidGal: 2 },
      { stageKind: 're-boil', timesCount: 5, waterLiquidGal: 1.5 },
      { stageKind: 'final-cook', timesCount: 1, waterLiquidGal: 2 },
    ],
  },
  endings: [{ ending: 'jars', shareFraction: 1 }],
  fill: 'loose-to-headspace',
  jarSize: 'quart',
  canners: [{ name: 'dial canner', gauges: ['dial'], capacityPints: 9, capacityQuarts: 7 }],
  elevationFt: 820,
  elevationKnownBy: 'map',
  isStandingRead: true,
}
