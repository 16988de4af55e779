/**
 * How the corn lots of the book stand in their store, from the tests and notes told of them: spells of moisture and warmth
 * put end to end, and what is to be said today. Leaves out: ears, whose storage no table covers.
 */
import type { CornLotFact, Facts } from '@crib/journal'
import { type Sentence, type StorageSpell, ValidRangeError } from '@crib/science'
import { say } from '../shared/say.ts'
import { type CornStorage, cornStorage } from './corn-storage.ts'

export interface LotStorage {
  readonly lotId: string
  readonly name: string
  /** Null where something must be told first, or the corn lies off the tables; `asks` says which. */
  readonly storage: CornStorage | null
  readonly asks: readonly Sentence[]
}

const MS_PER_DAY = 86_400_000

/** Shelled lots with corn left, in order of their making. `today` is YYYY-MM-DD. */
export function lotStorages({ cornLots }: Pick<Facts, 'cornLots'>, today: string): readonly LotStorage[] {
  return Object.values(cornLots)
    .filter(({ balance }) => balance === null || balance.leftKg > 0)
    .map((lot) => lotStorage(lot, today))
}

function lotStorage(lot: CornLotFact, today: string): LotStorage {
  const { lotId, name } = lot
  const asking = (...asks: readonly Sentence[]): LotStorage => ({ lotId, name, storage: null, asks })
  if ((lot.balance?.leftAs ?? lot.form) === 'ears') return asking(say('keeping:ears-in-store'))
  const spells = storageSpells(lot, today)
  const last = spells.at(-1)
  if (!last) {
    const isTested = lot.moistureTests.some(({ wetFraction }) => wetFraction !== undefined)
    return asking(
      ...(isTested ? [] : [say('keeping:asks-moisture', { name })]),
      ...(lot.storeNotes.length > 0 ? [] : [say('keeping:asks-warmth', { name })]),
    )
  }
  try {
    const { days: _, ...now } = last
    return { lotId, name, storage: cornStorage({ history: spells, now }), asks: [] }
  } catch (error) {
    if (!(error instanceof ValidRangeError)) throw error
    return asking(say('keeping:off-storage-tables', { name }))
  }
}

/**
 * A lot's life in store as spells: from each day something changed to the next, up to today. Moisture is that of the last
 * test before the spell, or of the first test where none was before. Empty without a moisture and a warmth.
 */
export function storageSpells(
  { moistureTests, storeNotes }: Pick<CornLotFact, 'moistureTests' | 'storeNotes'>,
  today: string,
): readonly StorageSpell[] {
  const tests = moistureTests.flatMap(({ testedOn, wetFraction }) =>
    wetFraction !== undefined && testedOn <= today ? [{ onDay: testedOn, wetFraction }] : [],
  )
  const notes = storeNotes.filter(({ notedOn }) => notedOn <= today)
  const firstTest = tests[0]
  const firstNote = notes[0]
  if (!firstTest || !firstNote) return []
  const changes = [...tests.map(({ onDay }) => onDay), ...notes.map(({ notedOn }) => notedOn)]
  const days = [...new Set(changes.filter((each) => each >= firstNote.notedOn))].sort()
  return days.map((from, index) => {
    const { wetFraction } = tests.findLast(({ onDay }) => onDay <= from) ?? firstTest
    const { temperatureC } = notes.findLast(({ notedOn }) => notedOn <= from) ?? firstNote
    return { days: daysBetween(from, days[index + 1] ?? today), temperatureC, wetFraction }
  })
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / MS_PER_DAY)
}
