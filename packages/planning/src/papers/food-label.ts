/** What a label of finished food says, from the book: how it is kept, until when by printed advice, on what conditions. */
import { type Facts, type FoodLotFact, originOnLabel, recordAddress } from '@crib/journal'
import type { Reckoned, Sentence } from '@crib/science'
import { shelfLot } from '../pantry/shelf.ts'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface FoodLabel {
  readonly form: FoodLotFact['form']
  readonly code: string
  /** By the calendar where it was done; of jars the day they were canned, not the day their seals were looked at. YYYY-MM-DD */
  readonly putUpOn: string
  /** Names the corn only where the eyes it is for may know it. */
  readonly contents: Sentence
  readonly household?: string
  /** Of one pack, `Kg`; only of packs that were weighed. */
  readonly each?: Reckoned
  /** How to keep it and how to use it. */
  readonly keep: Sentence
  /** By printed advice: eat it from this day on, before others. YYYY-MM-DD; absent where none is printed. */
  readonly useFirstBy?: string
  /** The latest day the advice names. YYYY-MM-DD */
  readonly bestUntil?: string
  /** Otherwise than directed: the label points to the log. */
  readonly departed: boolean
  readonly conditions: readonly string[]
  /** For the code to scan. */
  readonly record: string
}

/** The label of each jar or pack of a lot: they are alike. */
export function foodLabel(lot: FoodLotFact, facts: Facts): FoodLabel {
  const { form, loadCode, householdName, massKg, count, departures = [] } = lot
  const { putUpOn, useFirstBy, bestUntil } = shelfLot(lot, facts)
  const { corn, conditions } = originOnLabel(lot, facts)
  return {
    form,
    code: loadCode,
    putUpOn,
    contents: corn === undefined ? say('pantry:hominy') : say('pantry:hominy-of', { name: corn }),
    ...(householdName !== undefined && { household: householdName }),
    ...(massKg !== undefined && count > 0 && { each: eachOf(massKg, count) }),
    keep: say(`pantry:label-${form}`),
    ...(useFirstBy !== null && { useFirstBy }),
    ...(bestUntil !== null && { bestUntil }),
    departed: departures.length > 0,
    conditions,
    record: recordAddress('lot', lot.lotId),
  }
}

function eachOf(massKg: number, count: number): Reckoned {
  return reckon({
    id: 'eachPack',
    value: massKg / count,
    unit: 'Kg',
    rounding: nearest(0.01),
    basis: 'own-record',
    inputs: { massKg, count },
  })
}
