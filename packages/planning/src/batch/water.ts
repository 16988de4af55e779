/** Water by stage and pot-load. Leaves out canner water, liquid in the jars, topping up and washing up. */
import type { Reckoned } from '@crib/science'
import { convert } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import type { WaterRecord } from './input.ts'
import type { PotLoad } from './pots.ts'
import type { Stage } from './stages.ts'

export interface StageWater {
  readonly stageKind: Stage['kind']
  readonly timesCount: number
  /** Each time, for a full pot-load. [US gal] */
  readonly eachLiquidGal: number
}

export interface WaterPlan {
  readonly stages: readonly StageWater[]
  /** For the largest pot-load. [US gal] */
  readonly waterPerPotLoadLiquidGal: Reckoned
  readonly waterLiquidGal: Reckoned
  readonly waterL: Reckoned
}

/**
 * Water for the whole batch. [US gal, L]
 * An own record replaces the whole account and scales with the dry corn in the pot; otherwise the stages' own ratios.
 */
export function waterPlan(stages: readonly Stage[], potLoads: readonly PotLoad[], record?: WaterRecord): WaterPlan {
  const perCornQt = record
    ? record.rows.map(({ stageKind, timesCount, waterLiquidGal }) => ({
        stageKind,
        timesCount,
        liquidGalPerQt: waterLiquidGal / record.cornLiquidQt,
      }))
    : stages
        .filter((stage) => stage.waterToCornRatio > 0)
        .map(({ kind, timesCount, waterToCornRatio }) => ({
          stageKind: kind,
          timesCount,
          liquidGalPerQt: convert(waterToCornRatio, 'LiquidQt', 'LiquidGal'),
        }))
  const galPerQt = perCornQt.reduce((sum, row) => sum + row.timesCount * row.liquidGalPerQt, 0)
  const largestQt = Math.max(...potLoads.map((load) => load.cornLiquidQt))
  const cornQt = potLoads.reduce((sum, load) => sum + load.cornLiquidQt, 0)
  const basis = record ? ('own-record' as const) : ('common-practice' as const)
  const inputs = { dryCornLiquidQt: cornQt, waterLiquidGalPerLiquidQt: galPerQt }
  const total = galPerQt * cornQt
  return {
    stages: perCornQt.map(({ stageKind, timesCount, liquidGalPerQt }) => ({
      stageKind,
      timesCount,
      eachLiquidGal: liquidGalPerQt * largestQt,
    })),
    waterPerPotLoadLiquidGal: reckon({
      id: 'waterPerPotLoadLiquidGal',
      value: galPerQt * largestQt,
      unit: 'LiquidGal',
      rounding: nearest(0.1),
      basis,
      inputs: { ...inputs, cornPerPotLoadLiquidQt: largestQt },
    }),
    waterLiquidGal: reckon({
      id: 'waterLiquidGal',
      value: total,
      unit: 'LiquidGal',
      rounding: nearest(0.1),
      basis,
      inputs,
    }),
    waterL: reckon({
      id: 'waterL',
      value: convert(total, 'LiquidGal', 'L'),
      unit: 'L',
      rounding: nearest(1),
      basis,
      inputs,
    }),
  }
}
