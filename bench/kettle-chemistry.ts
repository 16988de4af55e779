/** How long do a speciation, a titration curve, a wash for the water at hand and a refit of slip times take? */
import {
  KERNEL_DIFFUSIVITY_M2_PER_S,
  KERNEL_RADIUS_M,
  learnSlip,
  leastAlkaliPlan,
  type RinseQuestion,
  type SlipPot,
  speciate,
  titrationCurve,
} from '@crib/science'
import type { BenchQuestion } from './question.ts'
import { medianCallMs } from './question.ts'

const SPECIATION_LIMIT_MS = 0.05
const CURVE_LIMIT_MS = 20
const WASH_LIMIT_MS = 300
const SLIP_LIMIT_MS = 500

/** A mixed ash liquor; each call another one, so that nothing is kept from the last. */
const LIQUORS_COUNT = 100
const liquors = Array.from({ length: LIQUORS_COUNT }, (_, index) => ({
  potassium: 0.03 + index * 0.001,
  calcium: 0.001 + index * 0.00002,
  magnesium: 0.0001,
  carbon: 0.01 + index * 0.0001,
}))
const lye = { sample: { potassium: 0.09, carbon: 0.01 }, sampleMl: 50, titrant: { acetate: 0.8326 }, temperatureC: 25 }
const volumesMl = Array.from({ length: 200 }, (_, index) => index * 0.05)
const { cold, boil } = KERNEL_DIFFUSIVITY_M2_PER_S
const wash: RinseQuestion = {
  kernels: { radiusM: KERNEL_RADIUS_M, kernelWaterL: 1.6, clingingL: 0.5 },
  waterL: 60,
  timeMin: 600,
  leastBathL: 3.3,
  kinds: {
    rinse: { minutes: 5, mostCount: 8, diffusivityM2PerS: cold.middle },
    boil: { minutes: 5, mostCount: 8, diffusivityM2PerS: boil.middle },
    stand: { minutes: 45, mostCount: 8, diffusivityM2PerS: cold.middle },
  },
}

/** 500 pots over 40 corn lots and 40 ash lots, four rub tests each, half of them seen to darken. */
const slipPots: readonly SlipPot[] = Array.from({ length: 500 }, (_, index) => {
  const corn = index % 40
  const ash = (index * 7) % 40
  const slipMin = 77 * Math.exp(0.3 * Math.sin(corn) + 0.3 * Math.cos(ash * 1.7) + 0.15 * Math.sin(index * 2.3))
  const share = (t: number) => 1 / (1 + (slipMin / t) ** 5 / 9)
  return {
    cornLotId: `corn ${corn}`,
    alkaliLotId: `ash ${ash}`,
    usualMin: 77,
    rubs: [0.5, 0.7, 0.9, 1.1].map((part) => {
      const boiledMin = part * slipMin
      return { boiledMin, slippedCount: Math.round(20 * share(boiledMin)), ofCount: 20 }
    }),
    ...(index % 2 === 0 && { darkenedMin: slipMin * (0.3 + 0.1 * Math.sin(index)) }),
  }
})

export const kettleChemistry: BenchQuestion = {
  asks: 'How long do a speciation, a titration curve, a wash plan and a refit of slip times take?',
  answer: async () => [
    {
      what: 'speciation of one mixed liquor, median',
      value:
        medianCallMs(() => {
          for (const liquor of liquors) speciate(liquor, 25)
        }) / LIQUORS_COUNT,
      unit: 'ms',
      limit: SPECIATION_LIMIT_MS,
      reference: {
        what: 'the same liquor through JSON and back',
        value:
          medianCallMs(() => {
            for (const liquor of liquors) JSON.parse(JSON.stringify(liquor))
          }) / LIQUORS_COUNT,
      },
    },
    {
      what: 'titration curve of 200 points, median',
      value: medianCallMs(() => titrationCurve(lye, volumesMl)),
      unit: 'ms',
      limit: CURVE_LIMIT_MS,
      reference: {
        what: 'the same volumes through JSON and back',
        value: medianCallMs(() => JSON.parse(JSON.stringify(volumesMl))),
      },
    },
    {
      what: 'wash of up to eight baths for the water at hand, median',
      value: medianCallMs(() => leastAlkaliPlan(wash), { warmUpCount: 2, samplesCount: 15 }),
      unit: 'ms',
      limit: WASH_LIMIT_MS,
      reference: {
        what: 'the same question through JSON and back',
        value: medianCallMs(() => JSON.parse(JSON.stringify(wash))),
      },
    },
    {
      what: 'slip model refitted to 500 pots, median',
      value: medianCallMs(() => learnSlip(slipPots), { warmUpCount: 1, samplesCount: 5 }),
      unit: 'ms',
      limit: SLIP_LIMIT_MS,
      reference: {
        what: 'the same pots through JSON and back',
        value: medianCallMs(() => JSON.parse(JSON.stringify(slipPots))),
      },
    },
  ],
}
