import { headspaceRule } from '@crib/guidance'
import type { Calc, CalcResult, Reckoned, Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import type { ElevationKnownBy } from '../shared/set-pressure.ts'
import { conditionsOf, ELEVATION, JAR_FIELDS, type JarInput, KNOWN_BY, TRUE_DIAL } from './calc-fields.ts'
import { type CannerCard, type CardRefusal, cannerCard } from './card.ts'

interface SiteInput {
  readonly site?: string
  readonly elevation: number
  readonly knownBy: ElevationKnownBy
}

interface CannerCardInput extends JarInput {
  readonly sites: readonly SiteInput[]
}

const kPa = (label: string) => ({ label, unit: 'KPaGauge' }) as const

export const cannerCardCalc: Calc<CannerCardInput> = {
  id: 'canner-card',
  title: 'What the canner card says',
  question: 'Which pressure does each place need, on a dial and with a weight, and for how many minutes?',
  inputs: {
    sites: {
      kind: 'table',
      label: 'Places',
      columns: {
        site: { kind: 'text', label: 'Name', maxLength: 40, optional: true },
        elevation: ELEVATION,
        knownBy: KNOWN_BY,
      },
      maxRows: 50,
    },
    ...JAR_FIELDS,
  },
  outputs: {
    elevationFt: { label: 'Elevation', unit: 'Ft' },
    dialTablePsi: { label: 'Table, dial, as typed', unit: 'PsiGauge' },
    dialTableKPa: kPa('Table, dial, as typed'),
    dialCardPsi: { label: 'Card, dial', unit: 'PsiGauge' },
    dialCardKPa: kPa('Card, dial'),
    weightTableLb: { label: 'Table, weight, as typed', unit: 'LbWeight' },
    weightTableKPa: kPa('Table, weight, as typed'),
    weightCardLb: { label: 'Card, weight', unit: 'LbWeight' },
    weightCardKPa: kPa('Card, weight'),
    ventMin: { label: 'Vent, steady steam', unit: 'Min' },
    processMin: { label: 'Minutes at pressure', unit: 'Min' },
  },
  sourceKeys: ['usda-aib-539-1994', 'pnw-421'],
  example: {
    sites: [
      { site: 'Vellum Ridge', elevation: '612 m', knownBy: 'map' },
      { site: 'the lake cabin', elevation: '298 m', knownBy: 'map' },
    ],
    jar: 'pint',
    alkali: 'ash',
    standingRead: true,
  },
  run: (input) => {
    const conditions = conditionsOf(input, headspaceRule().figure.value)
    const names = distinctNames(input.sites)
    const outcomes = input.sites.map(({ elevation, knownBy }, index) => ({
      name: names[index]!,
      outcome: cannerCard({
        siteName: names[index]!,
        elevationFt: elevation,
        elevationKnownBy: knownBy,
        dial: TRUE_DIAL,
        weightsLb: [5, 10, 15],
        conditions,
      }),
    }))
    const cards = outcomes.flatMap(({ name, outcome }) => (outcome.kind === 'card' ? [{ name, card: outcome }] : []))
    const refusals = outcomes.flatMap(({ outcome }) => (outcome.kind === 'refused' ? [outcome] : []))
    const first = cards[0]?.card
    return first ? reckoned(cards, first, refusals) : refused(refusals)
  },
}

function reckoned(
  cards: readonly { readonly name: string; readonly card: CannerCard }[],
  first: CannerCard,
  refusals: readonly CardRefusal[],
): CalcResult {
  return {
    ok: true,
    values: [
      ...cards.flatMap(({ name, card }) => siteValues(name, card)),
      first.vent,
      ...(first.minutes ? [first.minutes] : []),
    ],
    reasons: distinct([
      ...cards.flatMap(({ card }) => card.routes.flatMap(({ reasons }) => reasons.filter(isNearLine))),
      ...first.reasons,
      say('canner:taken-as-true'),
    ]),
    warnings: distinct([...first.withheld, ...first.standing, ...refusals.flatMap(refusalSentences)]),
  }
}

/** Other reasons belong to one gauge's own card. */
function isNearLine({ key }: Sentence): boolean {
  return key === 'canner:near-line-at'
}

function siteValues(name: string, { elevation, routes }: CannerCard): Reckoned[] {
  // Dial before weight, whichever the card puts first.
  const inTableOrder = [...routes].sort((a, b) => (a.gauge < b.gauge ? -1 : 1))
  const values = inTableOrder.flatMap(({ table, tableKPa, set, setKPa }) => [table, tableKPa, set, setKPa])
  return [elevation, ...values].map((value) => ({ ...value, id: `${name}:${value.id}` }))
}

function refused(refusals: readonly CardRefusal[]): CalcResult {
  const why = distinct(refusals.flatMap(({ why, forInformation }) => [...why, ...forInformation]))
  return { ok: false, refused: refusals[0]?.refused ?? 'no-place', why, askWhom: refusals[0]?.askWhom ?? [] }
}

function refusalSentences({ why, askWhom, forInformation }: CardRefusal): readonly Sentence[] {
  return [...why, ...askWhom, ...forInformation]
}

function distinct(sentences: readonly Sentence[]): Sentence[] {
  const byText = new Map(sentences.map((sentence) => [JSON.stringify(sentence), sentence]))
  return [...byText.values()]
}

/** A place without a name goes by its feet; a name given twice gets a number, since results are found by name. */
function distinctNames(sites: readonly SiteInput[]): string[] {
  const used = new Map<string, number>()
  return sites.map(({ site, elevation }) => {
    const name = (site ?? `${Math.round(elevation)} ft`).replaceAll(':', ' ').trim()
    const times = (used.get(name) ?? 0) + 1
    used.set(name, times)
    return times === 1 ? name : `${name} (${times})`
  })
}
