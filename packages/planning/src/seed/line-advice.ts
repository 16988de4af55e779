/** Am I losing the line: what the parents count as, what that costs, and what would help. Never a verdict. */
import {
  alleleMissedFraction,
  type CalcResult,
  ceilCount,
  clopperPearson1934,
  effectiveEarsCount,
  effectiveSizeOfEars,
  effectiveSizeOverYears,
  inbreedingFraction,
  individualsToKeepAllelesCount,
  type OffTypeCount,
  type Reckoned,
  type Sentence,
  offTypeTrend as trendOf,
  yieldLostFraction,
} from '@crib/science'
import { nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { refusedFor } from './germination.ts'
import { PLANTS_BETTER_COUNT, PLANTS_FLOOR_COUNT } from './seed-reserve.ts'

/** What seed savers ask for, said kindly: a smaller equal share from more ears. */
export function earsAdvice(parentEarsCount: number): readonly Sentence[] {
  if (parentEarsCount >= PLANTS_BETTER_COUNT) return []
  const params = { ears: parentEarsCount, floor: PLANTS_FLOOR_COUNT, better: PLANTS_BETTER_COUNT }
  return [say(parentEarsCount < PLANTS_FLOOR_COUNT ? 'seed:more-ears' : 'seed:more-ears-better', params)]
}

export interface EffectiveSizeInput {
  /** Plants that stand and shed pollen. */
  readonly plantsCount: number
  /** Ears that give seed in equal shares, one a plant. */
  readonly earsCount?: number
  /** Unequal shares: so many ears of so many kernels. Goes before `earsCount`. */
  readonly shares?: readonly { readonly earsCount: number; readonly kernelsEach: number }[]
  /** Effective sizes of earlier generations, where known. */
  readonly earlier?: readonly { readonly effectiveCount: number }[]
  /** Generations to look ahead.  Default 10. */
  readonly generationsCount?: number
  /** Effective number wanted.  Default 100. */
  readonly wantedEffectiveCount?: number
  /** Kernels the next seed lot should hold, for the equal share. */
  readonly kernelsWantedCount?: number
}

/**
 * Effective number of parents, inbreeding ahead, what it costs, and how many ears in what equal share would do. [plants]
 *
 * 200 plants and 50 ears count as 133; F after ten such generations 0.037.
 *
 * @source crow-kimura-1970, good-hallauer-1977
 */
export function effectiveSize(input: EffectiveSizeInput): CalcResult {
  const {
    plantsCount,
    shares = [],
    earlier = [],
    generationsCount = 10,
    wantedEffectiveCount = PLANTS_FLOOR_COUNT,
  } = input
  const given = shares.filter(({ earsCount, kernelsEach }) => earsCount > 0 && kernelsEach > 0)
  const earsCount = given.length > 0 ? given.reduce((sum, one) => sum + one.earsCount, 0) : input.earsCount
  if (earsCount === undefined || earsCount === 0) return refusedFor({ code: 'no-ears', why: say('seed:no-ears') })
  if (earsCount > plantsCount) {
    const why = say('seed:more-ears-than-plants', { ears: earsCount, plants: plantsCount })
    return refusedFor({ code: 'more-ears-than-plants', why })
  }
  const effectiveEars = given.length > 0 ? effectiveEarsCount(given) : earsCount
  const effective = effectiveSizeOfEars(plantsCount, effectiveEars)
  const even = effectiveSizeOfEars(plantsCount, earsCount)
  const ahead = Array.from({ length: generationsCount }, () => effective)
  const before = earlier.map(({ effectiveCount }) => effectiveCount)
  const inbreeding = inbreedingFraction(ahead)
  const most = effectiveSizeOfEars(plantsCount, plantsCount)
  const earsForWanted =
    wantedEffectiveCount < most
      ? Math.min(plantsCount, ceilCount(plantsCount / ((4 * plantsCount - 2) / wantedEffectiveCount - 2)))
      : null

  const inputs = { ...input } as unknown as Reckoned['inputs']
  const crow = { basis: 'computed', sourceKeys: ['crow-kimura-1970'], inputs } as const
  const plants = (id: string, value: number): Reckoned =>
    reckon({ id, value, unit: 'Count', rounding: nearest(1), ...crow })
  const fraction = (id: string, value: number, step: number): Reckoned =>
    reckon({ id, value, unit: 'Fraction', rounding: nearest(step), ...crow })
  return {
    ok: true,
    values: [
      plants('effectiveEarsCount', effectiveEars),
      plants('effectiveCount', effective),
      fraction('inbreedingPerGeneration', 1 / (2 * effective), 0.0001),
      fraction('inbreedingAhead', inbreeding, 0.001),
      reckon({
        id: 'yieldLost',
        value: yieldLostFraction(inbreeding),
        unit: 'Fraction',
        rounding: nearest(0.01),
        basis: 'computed',
        sourceKeys: ['good-hallauer-1977'],
        inputs,
      }),
      ...(before.length > 0 ? [plants('overYearsCount', effectiveSizeOverYears([...before, effective]))] : []),
      ...(earsForWanted === null
        ? []
        : [reckon({ id: 'earsForWantedCount', value: earsForWanted, unit: 'Count', rounding: up(1), ...crow })]),
      ...(earsForWanted === null || input.kernelsWantedCount === undefined
        ? []
        : [
            reckon({
              id: 'equalShareKernels',
              value: input.kernelsWantedCount / earsForWanted,
              unit: 'Count',
              rounding: up(1),
              basis: 'project-rule',
              inputs,
            }),
          ]),
    ],
    reasons: [
      say('seed:counts-as', { ears: earsCount, plants: plantsCount, effective: Math.round(effective) }),
      ...(even - effective >= 1
        ? [say('seed:even-shares-would', { effective: Math.round(effective), even: Math.round(even) })]
        : []),
      ...(before.length > 0 ? [say('seed:thin-years-weigh')] : []),
      say('seed:two-lots'),
      say('seed:inbreeding-is-average'),
    ],
    warnings: [
      ...earsAdvice(earsCount),
      ...(earsForWanted === null
        ? [
            say('seed:more-plants-for-wanted', {
              wanted: wantedEffectiveCount,
              plants: plantsCount,
              most: Math.floor(most),
            }),
          ]
        : []),
    ],
  }
}

export interface AlleleLossInput {
  /** Share of gametes that carry the rare allele. [fraction] */
  readonly alleleFraction: number
  /** Parents, or the effective number. */
  readonly plantsCount: number
  /** Default 0.95. */
  readonly confidenceFraction?: number
  /** For the published sample size.  Defaults 10 and 2. */
  readonly lociCount?: number
  readonly allelesPerLocusCount?: number
}

/**
 * Chance that a rare allele is in none of the parents, and parents that would hold it. [fraction, plants]
 *
 * At 5 % in 30 plants: 0.0461.
 *
 * @source crossa-1989, crossa-1993
 */
export function alleleLoss(input: AlleleLossInput): CalcResult {
  const { alleleFraction, plantsCount, confidenceFraction = 0.95, lociCount = 10, allelesPerLocusCount = 2 } = input
  const inputs = { ...input } as unknown as Reckoned['inputs']
  const missed = alleleMissedFraction(alleleFraction, plantsCount)
  const published = individualsToKeepAllelesCount({
    alleleFraction,
    lociCount,
    allelesPerLocusCount,
    confidenceFraction,
  })
  const enough = Math.log(1 - confidenceFraction) / (2 * Math.log(1 - alleleFraction))
  const common = { basis: 'computed', inputs } as const
  return {
    ok: true,
    values: [
      reckon({
        id: 'missedFraction',
        value: missed,
        unit: 'Fraction',
        rounding: nearest(0.0001),
        sourceKeys: ['crossa-1989'],
        ...common,
      }),
      reckon({
        id: 'plantsToKeepCount',
        value: enough,
        unit: 'Count',
        rounding: up(1),
        sourceKeys: ['crossa-1989'],
        ...common,
      }),
      reckon({
        id: 'individualsPublishedCount',
        value: published,
        unit: 'Count',
        rounding: nearest(1),
        sourceKeys: ['crossa-1993'],
        ...common,
      }),
    ],
    reasons: [
      say('seed:allele-missed', {
        allele: { value: alleleFraction, unit: 'Fraction' },
        plants: plantsCount,
        missed: { value: Number(missed.toPrecision(2)), unit: 'Fraction' },
      }),
      say('seed:two-ways-of-counting'),
    ],
    warnings: earsAdvice(plantsCount),
  }
}

export interface OffTypeInput {
  readonly counts: readonly OffTypeCount[]
}

/** Whether off-types grow more or fewer, with how sure that is. [ratio of odds a year]  @source firth-1993 */
export function offTypeTrend({ counts }: OffTypeInput): CalcResult {
  for (const { year, offTypesCount, ofCount } of counts) {
    if (ofCount === 0)
      return refusedFor({ code: 'nothing-looked-at', why: say('seed:nothing-looked-at', { year: String(year) }) })
    if (offTypesCount > ofCount) {
      const why = say('seed:more-off-types', { year: String(year), off: offTypesCount, of: ofCount })
      return refusedFor({ code: 'more-off-types-than-looked-at', why })
    }
  }
  const years = new Set(counts.map(({ year }) => year))
  if (years.size < 2) return refusedFor({ code: 'one-year', why: say('seed:one-year') })
  const trend = trendOf(counts)
  const inputs = { counts } as unknown as Reckoned['inputs']
  const firth = { basis: 'computed', sourceKeys: ['firth-1993'], inputs } as const
  const line = (id: string, value: number): Reckoned =>
    reckon({ id, value, unit: 'Fraction', rounding: nearest(0.0001), ...firth })
  const shares = [...years].sort().map((year) => {
    const ofYear = counts.filter((one) => one.year === year)
    const foundCount = ofYear.reduce((sum, one) => sum + one.offTypesCount, 0)
    const ofCount = ofYear.reduce((sum, one) => sum + one.ofCount, 0)
    return reckon({
      id: `shareFraction:${year}`,
      value: foundCount / ofCount,
      ...clopperPearson1934({ foundCount, ofCount }),
      unit: 'Fraction',
      rounding: nearest(0.0001),
      basis: 'computed',
      sourceKeys: ['clopper-pearson-1934'],
      inputs,
    })
  })
  const isMore = trend.low > 1
  const isFewer = trend.high < 1
  const gaps = { factor: trend.oddsRatioPerYear.toFixed(2), low: trend.low.toFixed(2), high: trend.high.toFixed(2) }
  return {
    ok: true,
    values: [
      ...shares,
      reckon({
        id: 'oddsRatioPerYear',
        value: trend.oddsRatioPerYear,
        low: trend.low,
        high: trend.high,
        unit: 'Count',
        rounding: nearest(0.01),
        ...firth,
      }),
      line('firstYearFraction', trend.firstYearFraction),
      line('lastYearFraction', trend.lastYearFraction),
    ],
    reasons: [
      say(isMore ? 'seed:off-types-more' : isFewer ? 'seed:off-types-fewer' : 'seed:off-types-not-told', gaps),
      say('seed:off-types-unseen'),
    ],
    warnings: isMore ? [say('seed:off-types-do')] : [],
  }
}
