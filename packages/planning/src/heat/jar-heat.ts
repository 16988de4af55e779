/** What a paper of a made-up jar is drawn from: its curves and band, the jar cut open at two moments, and the vent's rule. */
import {
  type CurveBand,
  createCurveBand,
  JAR_SIZES,
  type JarFrames,
  type JarPicture,
  type JarStudy,
  jarFrames,
  jarPicture,
  type MadeUpRun,
  type Reckoned,
  studyJar,
} from '@crib/science'
import { type JarStudyValues, jarAt, studyValues } from './jar-values.ts'
import { type WhyCard, whyCards } from './why-cards.ts'

/** A section from the axis outward and from the bottom up. */
export interface CutJar {
  readonly moment: 'atPressureMin' | 'heatOffMin'
  readonly atMin: number
  /** Edges, rising. [m] */
  readonly ringsM: readonly number[]
  readonly levelsM: readonly number[]
  /** Ring i, level j at i × levels + j. [°C] */
  readonly cellsC: readonly number[]
  /** As `jarAt`. [°C] */
  readonly values: readonly Reckoned[]
}

export interface JarHeat {
  readonly run: MadeUpRun
  readonly picture: JarPicture
  /** A reading a minute. */
  readonly band: CurveBand
  readonly values: JarStudyValues
  readonly samplesCount: number
  readonly cuts: readonly CutJar[]
  readonly why: WhyCard
}

/** Worked out beforehand where a page has already done so. */
export interface WorkedJar {
  readonly study: JarStudy
  readonly band: CurveBand
  /** Of a solid pack. */
  readonly frames: JarFrames | null
}

const SAMPLES_COUNT = 10_000
const GLASS_M = 0.003
/** A reading a minute out of one each half. */
const EVERY = 2

/**
 * @param samplesCount Valid: 64 to 1 000 000.
 * @throws {ValidRangeError} for a run or a count out of range.
 */
export function workJar(run: MadeUpRun, samplesCount = SAMPLES_COUNT): WorkedJar {
  const counted = createCurveBand(Math.ceil(jarPicture(run).coldSpotC.length / EVERY), EVERY)
  const study = studyJar(run, samplesCount, counted.add)
  return { study, band: counted.band(), frames: run.pack === 'packed solid' ? jarFrames(run) : null }
}

/** @throws {ValidRangeError} for a run out of range. */
export function jarHeat(run: MadeUpRun, { study, band, frames }: WorkedJar = workJar(run)): JarHeat {
  const picture = jarPicture(run)
  const cut = (moment: CutJar['moment']): CutJar => {
    const atMin = picture.moments[moment]
    const values = jarAt(run, picture, atMin)
    return { moment, atMin, values, ...(frames ? solidSection(frames, atMin) : looseSection(run, values)) }
  }
  const [vent] = whyCards(run).filter(({ id }) => id === 'vent') as [WhyCard]
  return {
    run,
    picture,
    band,
    values: studyValues(run, study),
    samplesCount: study.endOfHoldC.samplesCount,
    cuts: [cut('atPressureMin'), cut('heatOffMin')],
    why: vent,
  }
}

function solidSection({ framesC, timesMin, rFacesM, zFacesM }: JarFrames, atMin: number) {
  const frame = framesC[Math.min(timesMin.length - 1, Math.round(atMin))]!
  return { ringsM: rFacesM, levelsM: zFacesM, cellsC: Array.from(frame) }
}

/** Liquid of one temperature inside its glass. */
function looseSection({ jar }: MadeUpRun, values: readonly Reckoned[]) {
  const { radiusM, halfHeightM } = JAR_SIZES[jar]
  const of = (id: string) => values.find((value) => value.id === id)!.value
  return {
    ringsM: [0, radiusM, radiusM + GLASS_M],
    levelsM: [0, 2 * halfHeightM],
    cellsC: [of('liquidC'), of('wallC')],
  }
}
