/** What is read off the picture of a made-up jar, as values with their band, sources and inputs. */
import type { JarInput, JarPicture, JarQuality, JarStudy, MadeUpRun, Reckoned } from '@crib/science'
import { nearest, type Reckoning, reckon } from '../shared/reckon.ts'

const SOURCES = ['carslaw-jaeger-1959', 'iapws-r7-97', 'autoclave-handbook-air-table', 'food-diffusivity-table']
const STUDY_SOURCES = [...SOURCES, 'bigelow-1920', 'crc-kinetics-table-10-10', 'joe-kuo-2008']

/** Temperatures at one moment of the run. [°C]  The moment is taken to the nearest reading. */
export function jarAt(run: MadeUpRun, picture: JarPicture, atMin: number): readonly Reckoned[] {
  const { cannerC, wallC, liquidC, coldSpotC, stepS } = picture
  const i = Math.min(coldSpotC.length - 1, Math.max(0, Math.round((atMin * 60) / stepS)))
  const value = (id: string, curve: Float64Array | null) =>
    curve ? [computed({ id, value: curve[i]!, unit: 'C', rounding: nearest(0.1) }, run, SOURCES)] : []
  return [
    ...value('cannerC', cannerC),
    ...value('wallC', wallC),
    ...value('liquidC', liquidC),
    ...value('coldSpotC', coldSpotC),
  ]
}

export interface JarSwing {
  readonly input: JarInput
  /** At the middle of every input, low and high where this one alone swings. [min] */
  readonly reckoned: Reckoned
}

export interface JarStudyValues {
  readonly endOfHoldC: Reckoned
  /** Of the made-up jar, heating and cooling. [min at 250 °F] */
  readonly lethalityMin: Reckoned
  readonly coolingShareFraction: Reckoned
  /** Widest first. */
  readonly swings: readonly JarSwing[]
}

/** The study of a made-up jar, to be shown. */
export function studyValues(run: MadeUpRun, study: JarStudy): JarStudyValues {
  const { endOfHoldC, lethalityMin, coolingShareFraction, swings } = study
  const value = (reckoning: Omit<Reckoning, 'basis'>) => computed(reckoning, run, STUDY_SOURCES)
  const tenth = nearest(0.1)
  return {
    endOfHoldC: value({
      id: 'endOfHoldC',
      value: endOfHoldC.mid,
      low: endOfHoldC.low,
      high: endOfHoldC.high,
      unit: 'C',
      rounding: tenth,
    }),
    lethalityMin: value({
      id: 'lethalityMin',
      value: lethalityMin.mid,
      low: lethalityMin.low,
      high: lethalityMin.high,
      unit: 'Min',
      rounding: tenth,
    }),
    coolingShareFraction: value({
      id: 'coolingShareFraction',
      value: coolingShareFraction,
      unit: 'Fraction',
      rounding: nearest(0.01),
    }),
    swings: swings.map(({ input, atLow, atHigh }) => ({
      input,
      reckoned: value({
        id: input,
        value: lethalityMin.mid,
        low: Math.min(atLow, atHigh, lethalityMin.mid),
        high: Math.max(atLow, atHigh, lethalityMin.mid),
        unit: 'Min',
        rounding: tenth,
      }),
    })),
  }
}

/** What a made-up run does to the food, to be shown. */
export function qualityValues(
  run: MadeUpRun,
  { cookedMin, thiamineKeptFraction }: JarQuality,
): { readonly cookedMin: Reckoned; readonly thiamineKeptFraction: Reckoned } {
  const value = (reckoning: Omit<Reckoning, 'basis'>) => computed({ ...reckoning }, run, reckoning.sourceKeys ?? [])
  const range = ({ mid, low, high }: JarQuality['cookedMin']) => ({ value: mid, low, high })
  return {
    cookedMin: value({
      id: 'cookedMin',
      ...range(cookedMin),
      unit: 'Min',
      rounding: nearest(1),
      sourceKeys: ['lee-2017-texture'],
    }),
    thiamineKeptFraction: value({
      id: 'thiamineKeptFraction',
      ...range(thiamineKeptFraction),
      unit: 'Fraction',
      rounding: nearest(0.01),
      sourceKeys: ['crc-kinetics-table-10-10', 'ramaswamy-1990'],
    }),
  }
}

function computed(reckoning: Omit<Reckoning, 'basis'>, run: MadeUpRun, sourceKeys: readonly string[]): Reckoned {
  const { gaugeKPa, gaugeReadsHighKPa, ...rest } = run
  const inputs = { ...rest, gaugeKPaGauge: gaugeKPa, readsHighKPaGauge: gaugeReadsHighKPa }
  return reckon({ ...reckoning, basis: 'computed', sourceKeys, inputs })
}
