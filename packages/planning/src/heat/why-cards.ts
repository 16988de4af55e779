/**
 * Why a direction is what it is: each card sets the made-up jar, tells in a sentence what comes of it, and ends with the
 * published rule. It explains; every figure is beside the same jar as directed.
 */
import { coolDownRule, gaugeRule, headspaceRule, pressureRowFor, ruleFor, ventRule } from '@crib/guidance'
import {
  airLeftAfterVentFraction,
  airLeftTemperatureC,
  convert,
  jarPicture,
  LETHALITY_250F,
  lethalRate,
  type MadeUpRun,
  PURGE_MIN,
  type Sentence,
  standardPressureKPaAbs,
} from '@crib/science'
import { say } from '../shared/say.ts'

export type WhyId = 'vent' | 'dial' | 'weight' | 'gauge' | 'pack' | 'cooling'

export interface WhyVariant {
  readonly id: string
  readonly name: Sentence
  /** What it sets on the picture. */
  readonly change: Partial<MadeUpRun>
  readonly says: Sentence
}

export interface WhyCard {
  readonly id: WhyId
  readonly title: Sentence
  readonly variants: readonly WhyVariant[]
  /** What is published, last. */
  readonly rule: readonly Sentence[]
  readonly sourceKeys: readonly string[]
}

/** The six cards about a jar like `run`. A height no table covers says so in place of the rule. */
export function whyCards(run: MadeUpRun): readonly WhyCard[] {
  return [ventCard(run), dialCard(run), weightCard(run), gaugeCard(run), packCard(run), coolingCard(run)]
}

function ventCard(run: MadeUpRun): WhyCard {
  const rule = ventRule()
  const fullMin = rule.figure.value
  const variants = [0, 7, fullMin].map((ventMin): WhyVariant => {
    const beside = [PURGE_MIN.low, PURGE_MIN.mid, PURGE_MIN.high].map((purgeMin) => {
      const soon = holdC({ ...run, ventMin }, purgeMin)
      const full = holdC({ ...run, ventMin: fullMin }, purgeMin)
      return { cooler: full - soon, share: rate(soon) / rate(full) }
    })
    const cooler = beside.map((one) => one.cooler)
    const share = beside.map((one) => one.share)
    return {
      id: `vent-${ventMin}`,
      name: say('heat:why-minutes', { minutes: min(ventMin) }),
      change: { ventMin },
      says:
        ventMin >= fullMin
          ? say('heat:why-vent-full', { minutes: min(ventMin) })
          : say('heat:why-vent-short', {
              minutes: min(ventMin),
              full: min(fullMin),
              ...degreesApart('low', Math.min(...cooler)),
              ...degreesApart('high', Math.max(...cooler)),
              least: percent(Math.min(...share)),
              most: percent(Math.max(...share)),
            }),
    }
  })
  return {
    id: 'vent',
    title: say('heat:why-vent-title'),
    variants,
    rule: [rule.say, say('heat:vent-guess'), say('heat:vent-study')],
    sourceKeys: rule.sourceKeys,
  }
}

function dialCard(run: MadeUpRun): WhyCard {
  const outcome = pressureRowFor('dial', feet(run))
  const at = (psiGauge: number) => ({ ...run, gaugeKPa: kPa(psiGauge), gaugeReadsHighKPa: 0 })
  return {
    id: 'dial',
    title: say('heat:why-dial-title'),
    variants: [10, 11].map((psiGauge) => ({
      id: `dial-${psiGauge}`,
      name: say('heat:why-psi', { pressure: psi(psiGauge) }),
      change: { gaugeKPa: kPa(psiGauge), gaugeReadsHighKPa: 0 },
      says:
        psiGauge === 11
          ? say('heat:why-dial-eleven', { temperature: degrees(holdC(at(11))) })
          : say('heat:why-dial-ten', {
              temperature: degrees(holdC(at(10))),
              ...degreesApart('cooler', holdC(at(11)) - holdC(at(10))),
              share: percent(rate(holdC(at(10))) / rate(holdC(at(11)))),
            }),
    })),
    rule:
      outcome.kind === 'found'
        ? [
            say('heat:rule-dial', {
              pressure: psi(outcome.setPsi),
              from: ft(outcome.bandMinFt),
              to: ft(outcome.bandMaxFt),
            }),
          ]
        : [...outcome.why, ...outcome.askWhom],
    sourceKeys: outcome.sourceKeys,
  }
}

/** The two bands of a weight meet here. [ft] */
const WEIGHT_EDGE_FT = 1000

function weightCard(run: MadeUpRun): WhyCard {
  const below = pressureRowFor('weight', WEIGHT_EDGE_FT)
  const above = pressureRowFor('weight', WEIGHT_EDGE_FT + 1)
  if (below.kind !== 'found' || above.kind !== 'found') throw new RangeError('the bands of a weight cover 1,000 ft')
  const at = (heightFt: number, lb: number): Partial<MadeUpRun> => ({
    elevationM: convert(heightFt, 'Ft', 'M'),
    gaugeKPa: kPa(lb),
    gaugeReadsHighKPa: 0,
  })
  const holds = (heightFt: number, lb: number) => holdC({ ...run, ...at(heightFt, lb) })
  const sea = holds(0, below.setPsi)
  const variant = (heightFt: number, lb: number): WhyVariant => ({
    id: `weight-${heightFt}-${lb}`,
    name: say('heat:why-weight-at', { weight: weight(lb), height: ft(heightFt) }),
    change: at(heightFt, lb),
    says:
      heightFt === 0
        ? say('heat:why-weight-sea', { weight: weight(lb), temperature: degrees(sea) })
        : say(holds(heightFt, lb) < sea ? 'heat:why-weight-cooler' : 'heat:why-weight-warmer', {
            weight: weight(lb),
            height: ft(heightFt),
            temperature: degrees(holds(heightFt, lb)),
            ...degreesApart('apart', Math.abs(sea - holds(heightFt, lb))),
            share: percent(rate(holds(heightFt, lb)) / rate(sea)),
          }),
  })
  return {
    id: 'weight',
    title: say('heat:why-weight-title'),
    variants: [
      variant(0, below.setPsi),
      variant(WEIGHT_EDGE_FT, below.setPsi),
      variant(2 * WEIGHT_EDGE_FT, below.setPsi),
      variant(2 * WEIGHT_EDGE_FT, above.setPsi),
    ],
    rule: [
      say('heat:rule-weight', {
        low: weight(below.setPsi),
        edge: ft(WEIGHT_EDGE_FT),
        high: weight(above.setPsi),
      }),
    ],
    sourceKeys: below.sourceKeys,
  }
}

function gaugeCard(run: MadeUpRun): WhyCard {
  const tested = { restsAtPsi: 0, lastTestedDaysAgo: 0, marksEveryPsi: 1 }
  const trueRun = { ...run, gaugeReadsHighKPa: 0 }
  return {
    id: 'gauge',
    title: say('heat:why-gauge-title'),
    variants: [0, 1].map((errorPsi) => {
      const change = { gaugeReadsHighKPa: kPa(errorPsi) }
      const heldC = holdC({ ...trueRun, ...change })
      return {
        id: `gauge-${errorPsi}`,
        name: errorPsi === 0 ? say('heat:why-gauge-true') : say('heat:why-gauge-high', { error: psi(errorPsi) }),
        change,
        says:
          errorPsi === 0
            ? say('heat:why-gauge-true-says', { pressure: psi(shownPsi(run)), temperature: degrees(heldC) })
            : say('heat:why-gauge-high-says', {
                pressure: psi(shownPsi(run)),
                real: psi(shownPsi(run) - errorPsi),
                ...degreesApart('cooler', holdC(trueRun) - heldC),
                share: percent(rate(heldC) / rate(holdC(trueRun))),
              }),
      }
    }),
    rule: [say('cautions:pressure-gauge'), ...gaugeRule({ ...tested, errorPsi: 1 }).why],
    sourceKeys: gaugeRule({ ...tested, errorPsi: 1 }).sourceKeys,
  }
}

function packCard(run: MadeUpRun): WhyCard {
  const endC = (pack: MadeUpRun['pack']) => {
    const { coldSpotC, moments, stepS } = jarPicture({ ...run, pack })
    return coldSpotC[Math.round((moments.heatOffMin * 60) / stepS)]!
  }
  const loose = endC('free brine')
  const solid = endC('packed solid')
  return {
    id: 'pack',
    title: say('heat:why-pack-title'),
    variants: [
      {
        id: 'pack-loose',
        name: say('heat:why-pack-loose'),
        change: { pack: 'free brine' },
        says: say('heat:why-pack-loose-says', { temperature: degrees(loose) }),
      },
      {
        id: 'pack-tight',
        name: say('heat:why-pack-tight'),
        change: { pack: 'packed solid' },
        says: say('heat:why-pack-tight-says', {
          temperature: degrees(solid),
          ...degreesApart('cooler', loose - solid),
          share: percent(rate(solid) / rate(loose)),
        }),
      },
    ],
    rule: [say('guidance:needs-loose-fill'), say('guidance:needs-clear-liquid'), headspaceRule().say],
    sourceKeys: ruleFor('fill', 'loose-to-headspace').sourceKeys,
  }
}

const FORCED_MIN = 5

function coolingCard(run: MadeUpRun): WhyCard {
  const rule = coolDownRule(run.jar === 'quart' ? 'heavy-quart' : 'heavy-pint')
  const ownMin = rule.figure.value
  const worth = (coolDownMin: number) => {
    const { rateFraction } = jarPicture({ ...run, coolDownMin })
    return rateFraction.reduce((sum, one) => sum + one, 0)
  }
  return {
    id: 'cooling',
    title: say('heat:why-cooling-title'),
    variants: [
      {
        id: 'cooling-by-itself',
        name: say('heat:why-minutes', { minutes: min(ownMin) }),
        change: { coolDownMin: ownMin },
        says: say('heat:why-cooling-itself', { minutes: min(ownMin) }),
      },
      {
        id: 'cooling-forced',
        name: say('heat:why-minutes', { minutes: min(FORCED_MIN) }),
        change: { coolDownMin: FORCED_MIN },
        says: say('heat:why-cooling-forced', {
          minutes: min(FORCED_MIN),
          share: percent(worth(FORCED_MIN) / worth(ownMin)),
        }),
      },
    ],
    rule: [say('cautions:cool-by-itself')],
    sourceKeys: rule.sourceKeys,
  }
}

/** Around the jars while the process runs. [°C] */
function holdC(run: MadeUpRun, purgeMin: number = PURGE_MIN.mid): number {
  return airLeftTemperatureC({
    pressureKPaGauge: run.gaugeKPa - run.gaugeReadsHighKPa,
    atmosphereKPaAbs: standardPressureKPaAbs(run.elevationM),
    airLeftFraction: airLeftAfterVentFraction(run.ventMin, purgeMin),
  })
}

const rate = (temperatureC: number) => lethalRate(temperatureC, LETHALITY_250F)
const feet = ({ elevationM }: MadeUpRun) => Number(convert(elevationM, 'M', 'Ft').toFixed(1))
const kPa = (psiGauge: number) => convert(psiGauge, 'PsiGauge', 'KPaGauge')
const shownPsi = ({ gaugeKPa }: MadeUpRun) => Number(convert(gaugeKPa, 'KPaGauge', 'PsiGauge').toFixed(1))
const psi = (value: number) => ({ value: Number(value.toFixed(1)), unit: 'PsiGauge' }) as const
const weight = (value: number) => ({ value, unit: 'LbWeight' }) as const
const ft = (value: number) => ({ value, unit: 'Ft' }) as const
const min = (value: number) => ({ value, unit: 'Min' }) as const
const degrees = (valueC: number) => ({ value: Number(valueC.toFixed(1)), unit: 'C' }) as const
const percent = (share: number) => ({ value: Number(share.toFixed(2)), unit: 'Fraction' }) as const
/** A difference in both scales, to a tenth. */
const degreesApart = (name: string, deltaC: number) => ({
  [`${name}F`]: Number((1.8 * deltaC).toFixed(1)),
  [`${name}C`]: Number(deltaC.toFixed(1)),
})
