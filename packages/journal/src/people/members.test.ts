import { describe, expect, test } from 'vitest'
import type { StoredEntry } from '../envelope.ts'
import { foldFacts } from '../fold/fold.ts'
import { placeEntry } from '../fold/ledger.ts'
import { testKitchen } from '../testing/invented.ts'
import { membersOf } from './members.ts'
import { ACTS, actOfKind, mayDo, mayRead, ROLES } from './roles.ts'
import { mayNameOrigin, originOnLabel, shareOf } from './shares.ts'

const rolesOf = (entries: readonly StoredEntry[]) =>
  Object.fromEntries([...membersOf(entries.map((entry) => placeEntry(entry).line))].map(([id, { role }]) => [id, role]))

test('[J90] whoever opened the kitchen keeps it; others come, change and go by entries', () => {
  const { author, kitchenId, personId, newId } = testKitchen()
  const keeper = author()
  const ada = newId()
  const invitationId = newId()
  const entries = [keeper.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false })]
  expect(rolesOf(entries)).toEqual({ [personId]: 'keeper' })
  entries.push(
    keeper.write('person-invited', { invitationId, role: 'helper', expiresAt: '2026-11-09T13:00:00.000Z' }),
    keeper.write('person-joined', { personId: ada, name: 'Wren', role: 'helper', invitationId }),
  )
  expect(rolesOf(entries)).toEqual({ [personId]: 'keeper', [ada]: 'helper' })
  entries.push(keeper.write('role-changed', { personId: ada, role: 'minder' }))
  expect(rolesOf(entries)[ada]).toBe('minder')
  const left = keeper.write('person-left', { personId: ada })
  entries.push(left)
  expect(rolesOf(entries)[ada]).toBeNull()
  entries.push(keeper.write('entry-withdrawn', { withdrawsId: left.envelope.id, reason: 'not so' }))
  expect(rolesOf(entries)[ada]).toBeNull()
})

test('[J90] a second opening, and a role for somebody who never joined, give nothing', () => {
  const { author, kitchenId, personId, newId } = testKitchen()
  const stranger = newId()
  const entries = [
    author().write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false }),
    author({ personId: stranger }).write(
      'kitchen-opened',
      { kitchenId, name: 'Mine now', demo: false },
      { happenedAt: { instant: '2020-01-01T00:00:00.000Z' } },
    ),
    author().write('role-changed', { personId: stranger, role: 'keeper' }),
  ]
  expect(rolesOf(entries)).toEqual({ [personId]: 'keeper' })
})

describe('the table of who may do what', () => {
  // docs/people.md, typed from it.
  const TABLE = {
    keeper: 'reckon print read see-people work amend-own house amend share people care',
    minder: 'reckon print read see-people work amend-own house amend',
    helper: 'reckon print read see-people work amend-own',
    reader: 'reckon print read',
    outsider: 'reckon print read',
  } as const
  test.each([...ROLES, 'outsider'] as const)('[J90] a %s may do what the page says', (standing) => {
    expect(ACTS.filter((act) => mayDo(standing, act)).join(' ')).toBe(TABLE[standing])
  })
  test('[J91] nobody but a keeper reads what is the keeper’s', () => {
    expect([...ROLES, 'outsider' as const].filter((standing) => mayRead(standing, 'keeper'))).toEqual(['keeper'])
  })
  test('[J90] a kind nobody knows has no act', () => {
    expect(actOfKind('moon-phase-noted')).toBeNull()
    expect(actOfKind('constructor')).toBeNull()
    expect(actOfKind('role-changed')).toBe('people')
  })
})

test('[J91] facts tell how far a lot is opened and on which conditions; paper names it from community on', () => {
  const { author, newId } = testKitchen()
  const keeper = author()
  const lotId = newId()
  const lot = keeper.write('corn-lot-brought-in', {
    lotId,
    name: 'Lantern flint',
    cornType: 'flint',
    form: 'shelled',
    asTyped: '',
    treatedSeed: false,
  })
  expect(shareOf(foldFacts([lot]), lotId)).toEqual({ visibility: 'keeper', set: false })
  expect(mayNameOrigin(foldFacts([lot]), lotId)).toBe(false)
  const family = keeper.write('visibility-set', { lotId, visibility: 'family' })
  expect(mayNameOrigin(foldFacts([lot, family]), lotId)).toBe(false)
  const set = keeper.write('visibility-set', { lotId, visibility: 'community', conditions: 'Ask before planting.' })
  const facts = foldFacts([set, lot, family])
  expect(shareOf(facts, lotId)).toEqual({ visibility: 'community', conditions: 'Ask before planting.', set: true })
  expect(mayNameOrigin(facts, lotId)).toBe(true)
})

describe('what a label may say of where the food is from', () => {
  const book = (householdName?: string) => {
    const { author, newId } = testKitchen()
    const keeper = author()
    const flint = newId()
    const flour = newId()
    const batchId = newId()
    const jarsId = newId()
    const lot = (lotId: string, name: string) =>
      keeper.write('corn-lot-brought-in', {
        lotId,
        name,
        cornType: 'flint',
        form: 'shelled',
        massKg: 5,
        asTyped: '',
        treatedSeed: false,
      })
    const plan = (lotIds: readonly string[]) =>
      keeper.write('batch-planned', {
        batchId,
        title: 'hulling',
        inputs: {},
        edition: 'test',
        codeVersion: '0',
        shown: {},
        corn: lotIds.map((lotId) => ({ lotId, massKg: 1 })),
      })
    const jars = keeper.write('food-put-up', {
      lotId: jarsId,
      batchId,
      loadCode: 'A-1',
      form: 'jar',
      count: 7,
      ...(householdName && { householdName }),
    })
    const open = (lotId: string, visibility: 'family' | 'community', conditions?: string) =>
      keeper.write('visibility-set', { lotId, visibility, ...(conditions && { conditions }) })
    const origin = (...more: StoredEntry[]) => {
      const facts = foldFacts([lot(flint, 'Lantern flint'), lot(flour, 'Marsh flour'), jars, ...more])
      return originOnLabel(facts.foodLots[jarsId]!, facts)
    }
    return { flint, flour, jarsId, plan, open, origin }
  }

  test('[J94] nothing by itself; the corn once its lot is opened to the family', () => {
    const { flint, plan, open, origin } = book()
    expect(origin(plan([flint]))).toEqual({ conditions: [] })
    expect(origin(plan([flint]), open(flint, 'family'))).toEqual({ corn: 'Lantern flint', conditions: [] })
  })

  test('[J94] a jar that goes to another household names it from the community on', () => {
    const { flint, plan, open, origin } = book('Heron household')
    expect(origin(plan([flint]), open(flint, 'family'))).toEqual({ conditions: [] })
    expect(origin(plan([flint]), open(flint, 'community'))).toEqual({ corn: 'Lantern flint', conditions: [] })
  })

  test('[J94] two lots of which one is hidden are not named at all; conditions of the food go along', () => {
    const { flint, flour, jarsId, plan, open, origin } = book()
    const both = plan([flint, flour])
    expect(origin(both, open(flint, 'community'), open(jarsId, 'family', 'Not to be sold.'))).toEqual({
      conditions: ['Not to be sold.'],
    })
    expect(origin(both, open(flint, 'community'), open(flour, 'family'))).toEqual({
      corn: 'Lantern flint',
      conditions: [],
    })
  })
})
