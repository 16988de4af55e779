import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { createAuthor } from '../author.ts'
import { verifyChain } from '../chain.ts'
import type { StoredEntry, Visibility } from '../envelope.ts'
import type { Kind } from '../kinds/index.ts'
import { testKitchen } from '../testing/invented.ts'
import { createReaderView, type Reader } from './reader-view.ts'
import { createReadingIndex } from './reading-index.ts'
import { readsFrom, type Standing, VISIBILITIES } from './roles.ts'

const lotBody = (lotId: string, name = 'Lantern flint') => ({
  lotId,
  name,
  cornType: 'flint' as const,
  form: 'shelled' as const,
  massKg: 9,
  asTyped: '9 kg',
  treatedSeed: false,
})
const planBody = (batchId: string, lotId: string) => ({
  batchId,
  title: 'hulling',
  inputs: { corn: { lotId } },
  edition: 'test',
  codeVersion: '0',
  shown: {},
})

function kitchen(seed = 1) {
  const k = testKitchen(seed)
  return { ...k, keeper: k.author() }
}

/** What a person of that standing is given of these entries, page by page. */
async function given(
  entries: readonly StoredEntry[],
  standing: Standing,
  {
    personId = 'nobody',
    deviceId = 'none',
    pageSize = 100,
  }: { personId?: string; deviceId?: string; pageSize?: number } = {},
) {
  const index = createReadingIndex()
  for (const entry of entries) index.add(entry)
  const kitchenId = entries[0]?.envelope.kitchenId ?? ''
  const reader: Reader = { kitchenId, from: readsFrom(standing), personId, deviceId }
  const view = createReaderView(index, reader)
  view.catchUp()
  const byId = new Map(entries.map((entry) => [entry.envelope.id, entry]))
  const copied: StoredEntry[] = []
  for (;;) {
    const page = await view.page(copied.length, pageSize, async (id) => byId.get(id) ?? null)
    if (page.entries.length === 0) return { copied, view: view.view, count: view.readableCount }
    copied.push(...page.entries)
  }
}

const DEVICE = '00000000-0000-7000-8000-0000000000aa'
const idsOf = (entries: readonly StoredEntry[]) => entries.map(({ envelope }) => envelope.id)

describe('how far a line is opened', () => {
  const standings: readonly [Standing, readonly Visibility[]][] = [
    ['keeper', ['keeper', 'family', 'community', 'open']],
    ['minder', ['family', 'community', 'open']],
    ['helper', ['family', 'community', 'open']],
    ['reader', ['community', 'open']],
    ['outsider', ['open']],
  ]
  test.each(standings)('[J91] a %s reads lots that are %j', async (standing, readable) => {
    for (const said of ['by the line', 'by a setting'] as const) {
      for (const visibility of VISIBILITIES) {
        const { keeper, newId } = kitchen()
        const lotId = newId()
        const entries =
          said === 'by the line'
            ? [keeper.write('corn-lot-brought-in', lotBody(lotId), { visibility })]
            : [
                keeper.write('corn-lot-brought-in', lotBody(lotId)),
                keeper.write('visibility-set', { lotId, visibility, conditions: 'not for sale' }),
              ]
        const { copied } = await given(entries, standing)
        expect(idsOf(copied)).toEqual(readable.includes(visibility) ? idsOf(entries) : [])
      }
    }
  })

  test('[J91] a batch is not opened further than the lot it names, whatever is set for the batch', async () => {
    const { keeper, newId } = kitchen()
    const lotId = newId()
    const batchId = newId()
    const hidden = [
      keeper.write('corn-lot-brought-in', lotBody(lotId)),
      keeper.write('batch-planned', planBody(batchId, lotId)),
      keeper.write('stage-noted', { batchId, potLoad: 1, stageId: 'hull', what: 'begun' }),
      keeper.write('visibility-set', { lotId: batchId, visibility: 'open' }),
    ]
    expect((await given(hidden, 'outsider')).copied).toEqual([])
    const opened = [...hidden, keeper.write('visibility-set', { lotId, visibility: 'open' })]
    expect(new Set(idsOf((await given(opened, 'outsider')).copied))).toEqual(new Set(idsOf(opened)))
  })

  test('[J91] a lot nobody has told yet closes whoever names it; once told and open, it follows', async () => {
    const { keeper, newId } = kitchen()
    const lotId = newId()
    const batchId = newId()
    const plan = keeper.write('batch-planned', planBody(batchId, lotId), { visibility: 'open' })
    expect((await given([plan], 'outsider')).copied).toEqual([])
    const lot = keeper.write('corn-lot-brought-in', lotBody(lotId), { visibility: 'open' })
    expect(new Set(idsOf((await given([plan, lot], 'outsider')).copied))).toEqual(new Set(idsOf([plan, lot])))
  })

  test('[J91] seed out of a hidden lot stays hidden, and jars of a hidden batch may be opened', async () => {
    const { keeper, newId } = kitchen()
    const lotId = newId()
    const seedId = newId()
    const jarsId = newId()
    const batchId = newId()
    keeper.write('kitchen-noted', { kitchenId: newId() })
    const entries = [
      keeper.write('corn-lot-brought-in', lotBody(lotId)),
      keeper.write(
        'seed-put-by',
        { seedId, lotId, seasonYear: 2026, how: 'by-eye', plantingsCount: 2, places: ['tin'] },
        { visibility: 'open' },
      ),
      keeper.write('batch-planned', planBody(batchId, lotId)),
      keeper.write(
        'food-put-up',
        { lotId: jarsId, batchId, loadCode: 'A-1', form: 'jar', count: 7 },
        { visibility: 'open' },
      ),
    ]
    const { copied } = await given(entries, 'outsider')
    expect(idsOf(copied)).toEqual([entries[3]!.envelope.id])
    expect(JSON.stringify(copied)).not.toContain(lotId)
    expect(JSON.stringify(copied)).not.toContain('Lantern')
  })

  test('[J91] a correction is opened as far as what it corrects, however open it says it is', async () => {
    const { keeper, newId } = kitchen()
    const lotId = newId()
    const lot = keeper.write('corn-lot-brought-in', lotBody(lotId))
    const amended = keeper.write(
      'entry-corrected',
      { correctsId: lot.envelope.id, body: lotBody(lotId, 'Marsh flint'), reason: 'misread the tag' },
      { visibility: 'open' },
    )
    expect((await given([lot, amended], 'outsider')).copied).toEqual([])
    expect((await given([amended, lot], 'outsider')).copied).toEqual([])
    const set = keeper.write('visibility-set', { lotId, visibility: 'open' })
    expect(new Set(idsOf((await given([lot, amended, set], 'outsider')).copied))).toEqual(
      new Set(idsOf([lot, amended, set])),
    )
  })

  test('[J91] an erased line is opened as far as its envelope says', async () => {
    const { keeper, newId } = kitchen()
    const open = keeper.write('corn-lot-brought-in', lotBody(newId()), { visibility: 'open' })
    const closed = keeper.write('corn-lot-brought-in', lotBody(newId()))
    const { copied } = await given(
      [
        { ...open, body: null },
        { ...closed, body: null },
      ],
      'outsider',
    )
    expect(idsOf(copied)).toEqual([open.envelope.id])
  })
})

describe('a reader’s copy', () => {
  /** A kitchen with a shared lot, and with or without a life of hidden things around it. */
  function book(withHidden: boolean, hiddenSeed = 7) {
    // The same people, ids and times for what is shared; hidden lines come from a generator of their own.
    const shared = kitchen(3)
    const other = testKitchen(hiddenSeed)
    const entries: StoredEntry[] = []
    let head = shared.author({ deviceId: DEVICE })
    const write = <K extends Kind>(...args: Parameters<typeof head.write<K>>) => {
      const entry = head.write(...args)
      entries.push(entry)
      return entry
    }
    const hide = () => {
      if (!withHidden) return
      // The same device chain goes on: numbers and links of later lines change with it.
      const { personId, clock, random } = other
      const between = createAuthor({
        kitchenId: shared.kitchenId,
        deviceId: DEVICE,
        personId,
        clock,
        random,
        zone: 'America/Toronto',
        head: head.head(),
      })
      const lotId = other.newId()
      entries.push(between.write('corn-lot-brought-in', lotBody(lotId, 'Hidden flour')))
      entries.push(
        between.write('seed-put-by', {
          seedId: other.newId(),
          lotId,
          seasonYear: 2026,
          how: 'by-eye',
          plantingsCount: 2,
          places: ['attic'],
        }),
      )
      entries.push(between.write('visibility-set', { lotId, visibility: 'keeper' }))
      head = shared.author({ deviceId: DEVICE, head: between.head() })
    }
    hide()
    const lotId = shared.newId()
    const jarsId = shared.newId()
    write('corn-lot-brought-in', lotBody(lotId))
    hide()
    write('visibility-set', { lotId, visibility: 'community', conditions: 'Not to be sold.' })
    write('food-put-up', { lotId: jarsId, loadCode: 'A-1', form: 'jar', count: 7 }, { visibility: 'open' })
    hide()
    return entries
  }
  test.each(['minder', 'helper', 'reader', 'outsider'] as const)(
    '[J92] is, for a %s, the same to the last letter with and without hidden lots',
    async (standing) => {
      const without = await given(book(false), standing)
      const withHidden = await given(book(true), standing)
      expect(without.copied.length).toBe(standing === 'outsider' ? 1 : 3)
      expect(JSON.stringify(withHidden)).toBe(JSON.stringify(without))
    },
  )

  test('[J92] is a chain any store takes; a changed letter in it is found', async () => {
    const { copied } = await given(book(true), 'reader', { pageSize: 1 })
    expect(verifyChain(copied)).toMatchObject({ ok: true, checkedCount: 3 })
    const altered = copied.map((entry, i) => (i === 1 ? { ...entry, body: { ...entry.body!, value: {} } } : entry))
    expect(verifyChain(altered).ok).toBe(false)
  })

  test('[J92] holds what the reader wrote, and leaves out what the reader’s device has', async () => {
    const { keeper, author, newId } = kitchen()
    const personId = newId()
    const phone = newId()
    const laptop = newId()
    const onPhone = author({ deviceId: phone, personId }).write('corn-lot-brought-in', lotBody(newId()))
    const onLaptop = author({ deviceId: laptop, personId }).write('corn-lot-brought-in', lotBody(newId()))
    const entries = [keeper.write('corn-lot-brought-in', lotBody(newId())), onPhone, onLaptop]
    const { copied, count } = await given(entries, 'helper', { personId, deviceId: phone })
    expect(idsOf(copied)).toEqual([onLaptop.envelope.id])
    expect(count).toBe(2)
  })

  test('[J93] grows when a lot is opened, and begins anew without it when it is closed', async () => {
    const { keeper, newId, kitchenId } = kitchen()
    const lotId = newId()
    const stays = newId()
    const kept = [
      keeper.write('corn-lot-brought-in', lotBody(lotId)),
      keeper.write('corn-lot-brought-in', lotBody(stays), { visibility: 'open' }),
    ]
    const index = createReadingIndex()
    const byId = new Map<string, StoredEntry>()
    const add = (entry: StoredEntry) => {
      byId.set(entry.envelope.id, entry)
      index.add(entry)
    }
    for (const entry of kept) add(entry)
    const view = createReaderView(index, { kitchenId, from: readsFrom('reader'), personId: '', deviceId: '' })
    const read = (after: number) => view.page(after, 100, async (id) => byId.get(id) ?? null)
    view.catchUp()
    const first = view.view
    expect(idsOf((await read(0)).entries)).toEqual([kept[1]!.envelope.id])

    const opening = keeper.write('visibility-set', { lotId, visibility: 'community' })
    add(opening)
    view.catchUp()
    expect(view.view).toBe(first)
    const grown = await read(1)
    expect(new Set(idsOf(grown.entries))).toEqual(new Set(idsOf([kept[0]!, opening])))
    expect(grown.next).toBe(3)

    add(keeper.write('visibility-set', { lotId, visibility: 'keeper' }))
    view.catchUp()
    expect(view.view).not.toBe(first)
    const anew = await read(0)
    expect(idsOf(anew.entries)).toEqual([kept[1]!.envelope.id])
    expect(verifyChain(anew.entries).ok).toBe(true)
  })

  test('[J93] settings coming in any number and order end where the last of them says', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.constantFrom(...VISIBILITIES), { maxLength: 12 }), async (sets) => {
        const { keeper, newId } = kitchen()
        const lotId = newId()
        const batchId = newId()
        const entries = [
          keeper.write('batch-planned', planBody(batchId, lotId), { visibility: 'open' }),
          keeper.write('corn-lot-brought-in', lotBody(lotId)),
          ...sets.map((visibility) => keeper.write('visibility-set', { lotId, visibility })),
        ]
        const last = sets.at(-1) ?? 'keeper'
        const { copied } = await given(entries, 'outsider')
        expect(copied.length).toBe(last === 'open' ? entries.length : 0)
      }),
      { numRuns: 60 },
    )
  })
})
