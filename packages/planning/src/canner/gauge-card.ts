/** One gauge's part of a canner card: the table's number, and what this dial or this weight must show for it. */
import { type FoundPressure, type GaugeKind, type GaugeVerdict, habitLine, pressureRowFor } from '@crib/guidance'
import { convert, type Quantity, type Reckoned, type Sentence } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { type ElevationKnownBy, setPressureFor } from '../shared/set-pressure.ts'
import { type Dial, type DialReading, dialReading, TEST_EVERY_DAYS } from './dial.ts'

export interface GaugeCard {
  readonly gauge: GaugeKind
  readonly verdict: GaugeVerdict | 'no-such-weight'
  readonly usable: boolean
  /** The table's number for the elevation as typed: small type. [psi or lb] */
  readonly table: Reckoned
  /** The table's number with the margin: what must truly press. [psi or lb] */
  readonly set: Reckoned
  /** The set number for show. [kPa] */
  readonly setKPa: Reckoned
  readonly tableKPa: Reckoned
  /** The one number to hold: a face mark, or the figure on the weight. Only when usable. */
  readonly holdAt?: Reckoned
  /** A dial reading below this is a dip. Only when usable. [psi or lb] */
  readonly required?: Reckoned
  /** Only for a dial that is corrected. [psi] */
  readonly error?: Reckoned
  readonly trueAtHold?: Reckoned
  /** Of a dial tested: days until the next test is due. */
  readonly nextTestDue?: Reckoned
  readonly reasons: readonly Sentence[]
}

export interface Place {
  readonly siteName?: string
  readonly elevationFt: number
  readonly elevationKnownBy: ElevationKnownBy
}

interface SetAndTable {
  readonly table: FoundPressure
  readonly set: FoundPressure
}

/** @throws {RangeError} off the table; cannerCard asks the table first. */
function rowsFor(gauge: GaugeKind, { elevationFt, elevationKnownBy }: Place): SetAndTable {
  const table = pressureRowFor(gauge, elevationFt)
  const set = setPressureFor(gauge, elevationFt, elevationKnownBy)
  if (table.kind !== 'found' || set.kind !== 'found')
    throw new RangeError(`${elevationFt} ft is off the ${gauge} table`)
  return { table, set }
}

export function dialCard(dial: Dial, place: Place): GaugeCard {
  const rows = rowsFor('dial', place)
  const reading = dialReading(dial, rows.set.setPsi)
  const inputs = { setPsi: rows.set.setPsi, ...dialInputs(dial) }
  const value = (id: string, psi: number, step: number, basis: 'computed' | 'project-rule' = 'computed') =>
    reckon({ id, value: psi, unit: 'PsiGauge', rounding: nearest(step), basis, sourceKeys: reading.sourceKeys, inputs })
  return {
    gauge: 'dial',
    verdict: reading.verdict,
    usable: reading.usable,
    ...tableValues(rows, place),
    ...(reading.usable && {
      holdAt: value('holdAtPsi', reading.holdAtPsi!, 0.01, 'project-rule'),
      required: {
        ...value('requiredReadingPsi', reading.requiredReadingPsi!, 0.01),
        rounding: { mode: 'up', step: 0.01 },
      },
      error: value('errorPsi', reading.errorPsi!, 0.01),
      trueAtHold: value('trueAtHoldPsi', reading.trueAtHoldPsi!, 0.01),
    }),
    ...(dial.test && { nextTestDue: nextTest(dial.test.testedDaysAgo, reading.sourceKeys) }),
    reasons: [...nearLine(rows, place), ...reading.why, ...dialReasons(reading, rows.set.setPsi)],
  }
}

function dialInputs({ marksEveryPsi, restsAtPsi, test }: Dial) {
  return { marksEveryPsi, restsAtPsi, test: test ? test.readings.map((point) => ({ ...point })) : null }
}

function dialReasons(
  { usable, errorPsi = 0, requiredReadingPsi, holdAtPsi, trueAtHoldPsi }: DialReading,
  setPsi: number,
) {
  if (!usable) return [say('canner:dial-number-for-a-true-one', { pressure: psi(setPsi) })]
  const reasons: Sentence[] = []
  if (errorPsi !== 0) {
    reasons.push(
      say('canner:dial-corrected', {
        pressure: psi(setPsi),
        required: psi(requiredReadingPsi!),
        hold: psi(holdAtPsi!),
        truth: psi(trueAtHoldPsi!),
      }),
    )
  } else if (holdAtPsi !== setPsi) {
    reasons.push(say('canner:dial-next-mark', { pressure: psi(setPsi), hold: psi(holdAtPsi!) }))
  }
  if (errorPsi < 0)
    reasons.push(say('canner:dial-low-may-hold-more', { pressure: psi(setPsi), truth: psi(setPsi - errorPsi) }))
  reasons.push(
    setPsi > 11 ? say('canner:dial-not-eleven', { pressure: psi(setPsi) }) : habitLine('dial-near-sea-level').say,
  )
  return reasons
}

/** The smallest weight at hand that is no lighter than the table's. */
export function weightCard(weightsLb: readonly number[], place: Place): GaugeCard {
  const rows = rowsFor('weight', place)
  const { setPsi, sourceKeys } = rows.set
  const heavyEnough = weightsLb.filter((lb) => lb >= setPsi).sort((a, b) => a - b)
  const chosenLb = heavyEnough[0]
  const inputs = { setLb: setPsi, weightsLb: [...weightsLb] }
  const value = (id: string, lb: number) =>
    reckon({ id, value: lb, unit: 'LbWeight', rounding: nearest(1), basis: 'published', sourceKeys, inputs })
  return {
    gauge: 'weight',
    verdict: chosenLb === undefined ? 'no-such-weight' : 'use',
    usable: chosenLb !== undefined,
    ...tableValues(rows, place),
    ...(chosenLb !== undefined && { holdAt: value('holdAtLb', chosenLb), required: value('requiredLb', chosenLb) }),
    reasons: [
      ...nearLine(rows, place),
      ...(chosenLb === undefined ? [say('canner:no-such-weight', { weight: lb(setPsi) })] : []),
      ...(chosenLb !== undefined && chosenLb > setPsi
        ? [say('canner:heavier-weight', { weight: lb(chosenLb), asked: lb(setPsi) })]
        : []),
    ],
  }
}

function tableValues({ table, set }: SetAndTable, { elevationFt, elevationKnownBy }: Place) {
  const isDial = table.gauge === 'dial'
  const value = (id: string, row: FoundPressure) =>
    reckon({
      id,
      value: row.setPsi,
      unit: row.unit,
      rounding: nearest(1),
      basis: 'published',
      sourceKeys: row.sourceKeys,
      inputs: { elevationFt, elevationKnownBy, bandPrinted: row.bandPrinted, tableId: row.tableId },
    })
  const kPa = (id: string, row: FoundPressure) => ({
    ...value(id, row),
    value: convert(row.setPsi, row.unit, 'KPaGauge'),
    unit: 'KPaGauge' as const,
    basis: 'computed' as const,
  })
  return {
    table: value(isDial ? 'dialTablePsi' : 'weightTableLb', table),
    set: value(isDial ? 'dialCardPsi' : 'weightCardLb', set),
    tableKPa: kPa(isDial ? 'dialTableKPa' : 'weightTableKPa', table),
    setKPa: kPa(isDial ? 'dialCardKPa' : 'weightCardKPa', set),
  }
}

/** Why the card's number is the higher one. */
function nearLine({ table, set }: SetAndTable, { elevationFt, siteName }: Place): Sentence[] {
  if (table.setPsi === set.setPsi) return []
  const under: Quantity = { value: Math.max(1, Math.round(table.bandMaxFt - elevationFt)), unit: 'Ft' }
  return [
    say(siteName === undefined ? 'canner:near-line' : 'canner:near-line-at', {
      ...(siteName !== undefined && { site: siteName }),
      under,
      line: { value: table.bandMaxFt, unit: 'Ft' },
      card: { value: set.setPsi, unit: set.unit },
      table: { value: table.setPsi, unit: table.unit },
    }),
  ]
}

function nextTest(testedDaysAgo: number, sourceKeys: readonly string[]): Reckoned {
  return reckon({
    id: 'nextTestDueDays',
    value: Math.max(0, TEST_EVERY_DAYS - testedDaysAgo),
    unit: 'Days',
    rounding: { mode: 'down', step: 1 },
    basis: 'published',
    sourceKeys,
    inputs: { testedDaysAgo },
  })
}

/** When the dial is tested next, and what is written on its tag. */
export function nextTestSentence({ value, unit }: Reckoned): Sentence {
  return say('canner:next-test-due', { days: { value, unit } })
}

function psi(value: number): Quantity {
  return { value: Number(value.toFixed(2)), unit: 'PsiGauge' }
}

function lb(value: number): Quantity {
  return { value, unit: 'LbWeight' }
}
