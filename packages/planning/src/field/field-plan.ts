/**
 * From the food and the seed wanted back to plants, kernels to sow, ground and the shape of the block. The plan stands
 * on own numbers where there are any. Leaves out: soil, water, and how the harvest is split (season).
 */
import {
  type Block,
  ceilCount,
  convert,
  type Reckoned,
  ROWS_FLOOR_COUNT,
  type Sentence,
  type Spacing,
  seedReserveCount,
  squarestBlock,
} from '@crib/science'
import { nearest, type Reckoning, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface FieldPlanInput extends Spacing {
  /** Clean shelled corn wanted to eat. [lb] */
  readonly foodLb: number
  /** Kernels to keep back from this harvest. */
  readonly reserveKernelsCount: number
  /** Least plants for the line, whatever the food. */
  readonly plantsForLineCount: number
  /** Weight of a thousand dry kernels. [g] */
  readonly gPerThousand: number
  readonly kernelsPerEar: number
  /** Good ears to a plant, mean. */
  readonly earsPerPlant: number
  /** Of the harvest, to birds, mould, tails and handling. [fraction] */
  readonly lossFraction: number
  /** [fraction] */
  readonly germinationFraction: number
  /** Of sprouts that stand to harvest, own record. [fraction] */
  readonly survivalFraction: number
  readonly pattern: 'rows' | 'hills'
  /** Left to stand in each hill. */
  readonly plantsPerHillCount?: number
  /** Default 4. */
  readonly atLeastRows?: number
  /** Default 0.95. */
  readonly confidenceFraction?: number
  readonly withBeans?: boolean
  readonly withSquash?: boolean
}

export interface FieldPlan {
  readonly block: Block
  readonly plantsCount: number
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

/** Three kernels a hill was the standard of early textbooks; seeds to a mound with beans and squash by Cornell. */
const PLANTS_PER_HILL = 3
const BEANS_PER_HILL = { few: 4, many: 8 } as const
const SQUASH_PER_HILL = 8
/** Hand-hoed open-pollinated flour corn gave 22 to 76.  mtpleasant-burt-2010 [bu/acre] */
const MET_BU_PER_ACRE = { low: 22, high: 76 } as const

/** More plants or kernels than these are planned in parts: the count at a confidence reaches no farther. */
const MOST_PLANTS_COUNT = 20_000
const MOST_KERNELS_COUNT = 80_000

/** What a field plan would come to, or why it is not made in one piece. */
export function fieldPlanTooLarge(input: FieldPlanInput): Sentence | null {
  const { plantsCount, standFraction } = plantsOf(input)
  const kernels = ceilCount(plantsCount / standFraction)
  if (plantsCount <= MOST_PLANTS_COUNT && kernels <= MOST_KERNELS_COUNT) return null
  return say('field:plan-too-large', { plants: plantsCount, kernels, most: MOST_PLANTS_COUNT })
}

/** @throws {ValidRangeError} when the plan is too large to be made in one piece (fieldPlanTooLarge). */
export function fieldPlan(input: FieldPlanInput): FieldPlan {
  const { gPerThousand, pattern, plantsPerHillCount = PLANTS_PER_HILL, confidenceFraction = 0.95 } = input
  const { kgPerPlant, plantsForFood, plantsCount, standFraction } = plantsOf(input)
  const onAverage = ceilCount(plantsCount / standFraction)
  const atConfidence = seedReserveCount({
    plantsNeededCount: plantsCount,
    viabilityFraction: standFraction,
    confidenceFraction,
  })

  const isHills = pattern === 'hills'
  const placesWanted = isHills ? ceilCount(plantsCount / plantsPerHillCount) : plantsCount
  const block = squarestBlock(placesWanted, input, input.atLeastRows ?? ROWS_FLOOR_COUNT)
  const rowsM = block.rowsCount * block.lengthM
  const expectedKg = plantsCount * kgPerPlant
  const buPerAcre = convert((expectedKg / block.areaM2) * 10_000, 'KgPerHa', 'BuPerAcre')

  const value = (one: Omit<Reckoning, 'basis'> & { readonly basis?: Reckoning['basis'] }): Reckoned =>
    reckon({ basis: 'project-rule', ...one })
  return {
    block,
    plantsCount,
    values: [
      value({ id: 'plants', value: plantsCount, unit: 'Count', rounding: up(1) }),
      value({ id: 'plantsForFood', value: plantsForFood, unit: 'Count', rounding: up(1) }),
      value({ id: 'kernelsOnAverage', value: onAverage, unit: 'Count', rounding: up(1) }),
      value({
        id: 'kernelsToSow',
        value: atConfidence,
        unit: 'Count',
        rounding: up(1),
        basis: 'computed',
        sourceKeys: ['clopper-pearson-1934'],
      }),
      value({ id: 'kernelsToSowOz', value: ounces(atConfidence, gPerThousand), unit: 'Oz', rounding: up(0.1) }),
      value({ id: isHills ? 'rowsOfHills' : 'rows', value: block.rowsCount, unit: 'Count', rounding: up(1) }),
      value({ id: isHills ? 'hillsInRow' : 'plantsInRow', value: block.perRowCount, unit: 'Count', rounding: up(1) }),
      ...(isHills
        ? [
            value({ id: 'hills', value: block.placesCount, unit: 'Count', rounding: up(1) }),
            value({
              id: 'kernelsInHill',
              value: ceilCount(atConfidence / block.placesCount),
              unit: 'Count',
              rounding: up(1),
            }),
          ]
        : [
            value({ id: 'rowLengthFt', value: convert(block.lengthM, 'M', 'Ft'), unit: 'Ft', rounding: up(0.5) }),
            value({ id: 'rowFeetFt', value: convert(rowsM, 'M', 'Ft'), unit: 'Ft', rounding: up(1) }),
            value({
              id: 'kernelSpacingIn',
              value: convert(rowsM / atConfidence, 'M', 'In'),
              unit: 'In',
              rounding: nearest(0.25),
            }),
          ]),
      value({ id: 'lengthFt', value: convert(block.lengthM, 'M', 'Ft'), unit: 'Ft', rounding: up(0.5) }),
      value({ id: 'widthFt', value: convert(block.widthM, 'M', 'Ft'), unit: 'Ft', rounding: up(0.5) }),
      value({ id: 'areaFt2', value: convert(block.areaM2, 'M2', 'Ft2'), unit: 'Ft2', rounding: up(1) }),
      value({ id: 'areaAcre', value: convert(block.areaM2, 'M2', 'Acre'), unit: 'Acre', rounding: nearest(0.001) }),
      value({
        id: 'harvestLb',
        value: convert(expectedKg, 'Kg', 'Lb'),
        unit: 'Lb',
        rounding: { mode: 'down', step: 0.1 },
      }),
      value({ id: 'harvestBuPerAcre', value: buPerAcre, unit: 'BuPerAcre', rounding: nearest(1) }),
      ...(isHills && input.withBeans
        ? [
            value({
              id: 'beanSeeds',
              value: block.placesCount * BEANS_PER_HILL.few,
              low: block.placesCount * BEANS_PER_HILL.few,
              high: block.placesCount * BEANS_PER_HILL.many,
              unit: 'Count',
              rounding: up(1),
              basis: 'published',
              sourceKeys: ['cornell-three-sisters'],
            }),
          ]
        : []),
      ...(isHills && input.withSquash
        ? [
            value({
              id: 'squashSeeds',
              value: block.placesCount * SQUASH_PER_HILL,
              unit: 'Count',
              rounding: up(1),
              basis: 'published',
              sourceKeys: ['cornell-three-sisters'],
            }),
          ]
        : []),
    ],
    reasons: [
      say('field:seed-comes-first', { reserve: input.reserveKernelsCount }),
      plantsForFood >= input.plantsForLineCount
        ? say('field:plants-by-food', { plants: plantsForFood })
        : say('field:plants-by-line', { plants: input.plantsForLineCount, food: plantsForFood }),
      say(isHills ? 'field:block-of-hills' : 'field:block-of-rows', {
        rows: block.rowsCount,
        each: block.perRowCount,
        length: { value: Number(convert(block.lengthM, 'M', 'Ft').toFixed(1)), unit: 'Ft' },
        width: { value: Number(convert(block.widthM, 'M', 'Ft').toFixed(1)), unit: 'Ft' },
      }),
      ...(isHills && (input.withBeans || input.withSquash) ? [say('field:sisters-order')] : []),
    ],
    warnings: [
      ...(plantsCount < 100 ? [say('field:few-plants', { plants: plantsCount })] : []),
      ...(block.rowsCount < ROWS_FLOOR_COUNT ? [say('field:few-rows', { rows: block.rowsCount })] : []),
      ...(buPerAcre > MET_BU_PER_ACRE.high
        ? [say('field:yield-hopeful', { yield: Math.round(buPerAcre), ...MET_BU_PER_ACRE })]
        : []),
      ...(!isHills && (input.withBeans || input.withSquash) ? [say('field:sisters-want-hills')] : []),
    ],
  }
}

function plantsOf(input: FieldPlanInput) {
  const { gPerThousand } = input
  const kgPerPlant = (input.earsPerPlant * input.kernelsPerEar * gPerThousand * (1 - input.lossFraction)) / 1e6
  const reserveKg = (input.reserveKernelsCount * gPerThousand) / 1e6
  const plantsForFood = ceilCount((convert(input.foodLb, 'Lb', 'Kg') + reserveKg) / kgPerPlant)
  const plantsCount = Math.max(plantsForFood, input.plantsForLineCount, 1)
  return { kgPerPlant, plantsForFood, plantsCount, standFraction: input.germinationFraction * input.survivalFraction }
}

function ounces(kernels: number, gPerThousand: number): number {
  return convert((kernels * gPerThousand) / 1000, 'G', 'Oz')
}
