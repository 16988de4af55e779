import type { CornLotFact } from '@crib/journal'
import { fToC, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { lotStorages, storageSpells } from './lot-storage.ts'

const words = createWords()
const tested = (testedOn: string, wetFraction: number) => ({ testedOn, wetFraction })
const lies = (notedOn: string, temperatureF: number) => ({ notedOn, temperatureC: fToC(temperatureF) })

const lot = (more: object): CornLotFact =>
  ({
    lotId: 'l',
    name: 'Lantern flint',
    form: 'shelled',
    balance: null,
    moistureTests: [],
    storeNotes: [],
    ...more,
  }) as never
const of = (more: object, today = '2027-01-20') => lotStorages({ cornLots: { l: lot(more) } }, today)[0]!

test('spells run from each change to the next, with the moisture last tested before', () => {
  const spells = storageSpells(
    lot({
      moistureTests: [tested('2026-11-05', 0.18), tested('2026-11-21', 0.16)],
      storeNotes: [lies('2026-11-01', 60), lies('2026-12-01', 50)],
    }),
    '2027-01-20',
  )
  expect(spells.map(({ days, wetFraction }) => [days, wetFraction])).toEqual([
    [4, 0.18],
    [16, 0.18],
    [10, 0.16],
    [50, 0.16],
  ])
})

// 18 % and 60 °F from 1 to 21 November: 20 of the printed 50 days. Then 16 %: 10 of 120 at 60 °F, 50 of 230 at 50 °F.
test('the share used adds up over the book’s own history', () => {
  const { storage, asks } = of({
    moistureTests: [tested('2026-11-05', 0.18), tested('2026-11-21', 0.16)],
    storeNotes: [lies('2026-11-01', 60), lies('2026-12-01', 50)],
  })
  expect(asks).toEqual([])
  const used = storage!.values.find(({ id }) => id === 'usedFraction')!
  // 0.4 + 0.08333 + 0.21739; machine-shelled, since nobody told otherwise.
  expect(shownValue(used)).toBe(0.7)
})

test('what is not told is asked for, ears are not reckoned, and corn off the tables is owned up to', () => {
  expect(of({}).asks.map((each) => words.sentence(each))).toEqual([
    'Test the moisture of Lantern flint, and its storage time can be told.',
    'Tell how warm Lantern flint lies, and its storage time can be told.',
  ])
  expect(words.sentence(of({ form: 'ears' }).asks[0]!)).toContain('on the cob')
  const wet = of({ moistureTests: [tested('2026-11-05', 0.33)], storeNotes: [lies('2026-11-01', 60)] })
  expect(wet.storage).toBeNull()
  expect(words.sentence(wet.asks[0]!)).toContain('outside the tables')
})

test('tests and notes of days to come do not count yet', () => {
  const later = { moistureTests: [tested('2027-02-01', 0.13)], storeNotes: [lies('2026-11-01', 60)] }
  expect(of(later).storage).toBeNull()
})
