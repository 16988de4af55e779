/** Every door, tried by everybody, against every visibility. */
import { createAuthor, ROLES, type Standing, VISIBILITIES, verifyChain } from '@crib/journal'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { DOORS } from './doors.ts'
import { lotBody, openTestHouse, type TestHouse } from './testing.ts'

const STANDINGS = [...ROLES, 'outsider'] as const

let house: TestHouse
const cookies = {} as Record<Standing, string>
const personIds = {} as Record<Standing, string>

beforeAll(async () => {
  house = await openTestHouse()
  for (const standing of STANDINGS) {
    const person = await house.somebody(standing, `the ${standing}`)
    cookies[standing] = person.cookie
    personIds[standing] = person.personId
  }
})
afterAll(() => house?.remove())

test('the list holds every route of the API, and nothing else', () => {
  const routes = house.app.routes.filter(
    ({ method, path }) => ['GET', 'POST'].includes(method) && path.startsWith('/api/') && !path.includes('*'),
  )
  const listed = new Set(DOORS.map(({ method, path }) => `${method} ${path}`))
  const routed = new Set(routes.map(({ method, path }) => `${method} ${path.replace(/\/$/, '')}`))
  expect([...routed].filter((each) => !listed.has(each))).toEqual([])
  expect([...listed].filter((each) => !routed.has(each))).toEqual([])
  expect(listed.size).toBeGreaterThan(20)
})

/** Typed from docs/people.md: who passes the doors that ask for more than a session. */
const PASSES: Record<string, readonly Standing[]> = {
  'GET /api/entries': STANDINGS,
  'GET /api/care': ['keeper'],
  'GET /api/people/members': ['keeper', 'minder', 'helper'],
  'GET /api/people/invitations': ['keeper'],
  'POST /api/people/invitations': ['keeper'],
  'POST /api/people/invitations/:id/end': ['keeper'],
  'POST /api/people/members/:id/role': ['keeper'],
  'POST /api/people/members/:id/leave': ['keeper'],
}

const SIGNS_IN = ['/api/people/sign-in', '/api/people/passkey/enter']

describe.each(DOORS.map((door) => [`${door.method} ${door.path}`, door] as const))('%s', (named, door) => {
  const path = () => {
    const filled = door.path.replace(':id', door.path.includes('calculations') ? 'pressure-band' : house.newId())
    return door.to === 'kitchen' ? `${filled}?kitchen=${house.kitchenId}` : filled
  }
  const body = door.method === 'POST' ? { entries: [] } : undefined
  const ask = (cookie?: string) => house.ask(door.method, path(), { ...(body && { body }), ...(cookie && { cookie }) })

  // Signing out ends the session everybody else's test goes on with.
  const isEnding = door.path === '/api/people/sign-out'

  test('nobody passes without a session, unless it is an open door', async () => {
    const { status } = await ask()
    if (door.to === 'open') expect([200, 400, 404]).toContain(status)
    else expect(status).toBe(401)
  })

  test('a made-up session is none', async () => {
    const { status } = await ask('crib-session=bm90IGEgc2Vzc2lvbg')
    if (door.to === 'open') expect(status).not.toBe(403)
    else expect(status).toBe(401)
  })

  test.each(STANDINGS)('%s', async (standing) => {
    if (isEnding) return expect((await ask('crib-session=none')).status).toBe(401)
    const { status } = await ask(cookies[standing])
    const isShut = door.to === 'kitchen' && !PASSES[named]!.includes(standing)
    expect(status === 403).toBe(isShut)
    // These two answer 401 themselves: what was sent signs nobody in.
    if (!SIGNS_IN.includes(door.path)) expect(status).not.toBe(401)
    expect(status).toBeLessThan(500)
  })
})

describe.each(DOORS.filter(({ method }) => method === 'POST').map((door) => [door.path, door] as const))(
  'POST %s',
  (_, door) => {
    const ask = (origin: string) =>
      house.ask('POST', door.path, { body: { entries: [] }, cookie: cookies.keeper, headers: { origin } })
    test('another page cannot knock, with or without a session', async () => {
      for (const origin of ['https://elsewhere.example', 'null', `http://${'corn.example.elsewhere.example'}`]) {
        expect((await ask(origin)).status).toBe(403)
      }
      const path = door.path.replace(':id', 'x')
      const silent = await house.app.request(`http://corn.example${path}`, {
        method: 'POST',
        headers: { host: 'corn.example', cookie: cookies.keeper },
      })
      expect(silent.status).toBe(403)
    })
  },
)

test('the keeper is told of room and backups, not where on the machine the book lies', async () => {
  const { body } = await house.ask('GET', `/api/care?kitchen=${house.kitchenId}`, { cookie: cookies.keeper })
  expect(body).toMatchObject({ where: null, backups: { everyHours: 24, lastMadeAt: '2026-11-14T09:00:00.000Z' } })
  expect(body.bytes).toBeGreaterThan(0)
})

test('a server that several households share tells none of them how much the others wrote', async () => {
  const shared = await openTestHouse({ reach: 'hosted' })
  const { cookie } = await shared.joined('keeper', 'Ash')
  const { body } = await shared.ask('GET', `/api/care?kitchen=${shared.kitchenId}`, { cookie })
  expect(body).toMatchObject({ where: null, bytes: null, backups: { everyHours: 24 } })
  await shared.remove()
})

describe('what is read', () => {
  const readable: Record<Standing, readonly string[]> = {
    keeper: ['keeper', 'family', 'community', 'open'],
    minder: ['family', 'community', 'open'],
    helper: ['family', 'community', 'open'],
    reader: ['community', 'open'],
    outsider: ['open'],
  }
  const lots = {} as Record<string, string>
  beforeAll(async () => {
    for (const visibility of VISIBILITIES) {
      for (const said of ['line', 'set']) {
        const lotId = house.newId()
        lots[`${visibility} by ${said}`] = lotId
        await house.keep(
          house.keeper.write('corn-lot-brought-in', lotBody(lotId), said === 'line' ? { visibility } : {}),
          ...(said === 'set'
            ? [house.keeper.write('visibility-set', { lotId, visibility, conditions: 'Not to be sold.' })]
            : []),
        )
      }
    }
  })

  test.each(STANDINGS)('%s: exactly the lots that are theirs, on a chain that verifies', async (standing) => {
    const { body } = await house.ask('GET', `/api/entries?kitchen=${house.kitchenId}`, { cookie: cookies[standing] })
    const seen = new Set(JSON.stringify(body).match(/[0-9a-f-]{36}/g))
    for (const [name, lotId] of Object.entries(lots)) {
      expect([name, seen.has(lotId)]).toEqual([name, readable[standing].includes(name.split(' ')[0]!)])
    }
    if (standing !== 'keeper') {
      expect(verifyChain(body.entries)).toMatchObject({ ok: true })
      expect(JSON.stringify(body)).not.toContain(house.keeper.head()!.hash)
    }
    // Conditions go where the lot goes.
    const conditions = JSON.stringify(body).split('Not to be sold.').length - 1
    expect(conditions).toBe(readable[standing].length)
  })

  test.each(STANDINGS)('%s: the kitchens listed, and how much of each, fit what is read', async (standing) => {
    const { body } = await house.ask('GET', '/api/kitchens', { cookie: cookies[standing] })
    const { entries } = (
      await house.ask('GET', `/api/entries?kitchen=${house.kitchenId}&limit=1000`, { cookie: cookies[standing] })
    ).body
    if (standing === 'outsider') return expect(body.kitchens).toEqual([])
    expect(body.kitchens).toMatchObject([
      { kitchenId: house.kitchenId, role: standing, whole: standing === 'keeper', entryCount: entries.length },
    ])
  })

  test('a kitchen that is not there and one with nothing open give an outsider the same', async () => {
    const other = await openTestHouse()
    await other.joined('reader', 'somebody else')
    const { personId } = (await other.people.accounts.make(
      { personId: other.newId(), name: 'passer-by', mayOpen: false },
      null,
    ))!
    const cookie = `crib-session=${(await other.people.sessions.open(personId, 'test')).token}`
    const there = await other.ask('GET', `/api/entries?kitchen=${other.kitchenId}`, { cookie })
    const notThere = await other.ask('GET', `/api/entries?kitchen=${other.newId()}`, { cookie })
    expect([there.status, there.body.entries, there.body.next]).toEqual([200, [], 0])
    expect([notThere.status, notThere.body.entries, notThere.body.next]).toEqual([200, [], 0])
    for (const path of ['/api/people/members', '/api/people/invitations']) {
      const one = await other.ask('GET', `${path}?kitchen=${other.kitchenId}`, { cookie })
      const two = await other.ask('GET', `${path}?kitchen=${other.newId()}`, { cookie })
      expect([one.status, one.text]).toEqual([two.status, two.text])
    }
    await other.remove()
  })
})

describe('what is written', () => {
  const push = (standing: Standing, entries: readonly unknown[]) =>
    house.ask('POST', '/api/entries', { cookie: cookies[standing], body: { entries } })
  const outcomes = async (standing: Standing, entries: readonly unknown[]) =>
    (await push(standing, entries)).body.results.map(({ outcome }: { outcome: string }) => outcome)

  test.each([
    ['keeper', 'accepted', 'accepted', 'accepted', 'accepted'],
    ['minder', 'accepted', 'accepted', 'refused', 'refused'],
    ['helper', 'accepted', 'refused', 'refused', 'refused'],
    ['reader', 'refused', 'refused', 'refused', 'refused'],
    ['outsider', 'refused', 'refused', 'refused', 'refused'],
  ] as const)('%s: work %s, house %s, sharing %s, people %s', async (standing, ...expected) => {
    const own = () => house.author(personIds[standing])
    const lines = [
      own().write('corn-lot-brought-in', lotBody(house.newId())),
      own().write('pot-recorded', { potId: house.newId(), name: 'pot', volumeL: 19, material: 'stainless' }),
      own().write('visibility-set', { lotId: house.newId(), visibility: 'open' }),
      own().write('role-changed', { personId: personIds.outsider, role: 'keeper' }),
    ]
    expect(await outcomes(standing, lines)).toEqual(expected)
    if (standing === 'keeper') {
      await house.people.membership.record(house.kitchenId, null, 'person-left', { personId: personIds.outsider })
    }
  })

  test('nobody but a keeper brings another’s lines, or goes on another’s chain', async () => {
    const others = house.author(house.founderId).write('corn-lot-brought-in', lotBody(house.newId()))
    expect(await outcomes('helper', [others])).toEqual(['refused'])
    const [first] = (await house.store.read({ kitchenId: house.kitchenId })).entries
    const { deviceId } = first!.envelope
    const onChain = house.author(personIds.helper, deviceId).write('corn-lot-brought-in', lotBody(house.newId()))
    const { results } = (await push('helper', [onChain])).body
    // Not a word on how long that chain is.
    expect(results).toMatchObject([{ outcome: 'refused', faults: [{ code: 'not-allowed' }] }])
    expect(results[0].faults[0].detail).toBe('not yours to write here')
  })

  test('a helper takes back their own line, a minder one they can read, and neither a hidden one', async () => {
    const hidden = house.keeper.write('corn-lot-brought-in', lotBody(house.newId()))
    const shown = house.keeper.write('corn-lot-brought-in', lotBody(house.newId()), { visibility: 'family' })
    await house.keep(hidden, shown)
    const helper = house.author(personIds.helper)
    const own = helper.write('corn-lot-brought-in', lotBody(house.newId()))
    const takeBack = (author: typeof helper, withdrawsId: string) =>
      author.write('entry-withdrawn', { withdrawsId, reason: 'typed twice' })
    expect(await outcomes('helper', [own, takeBack(helper, own.envelope.id)])).toEqual(['accepted', 'accepted'])
    for (const [standing, target, expected] of [
      ['helper', shown, 'refused'],
      ['helper', hidden, 'refused'],
      ['minder', shown, 'accepted'],
      ['minder', hidden, 'refused'],
    ] as const) {
      const line = takeBack(house.author(personIds[standing]), target.envelope.id)
      expect([standing, await outcomes(standing, [line])]).toEqual([standing, [expected]])
    }
  })

  test('nobody makes themselves keeper by opening a kitchen again, or by taking back their own leaving', async () => {
    const helper = house.author(personIds.helper)
    const opening = helper.write(
      'kitchen-opened',
      { kitchenId: house.kitchenId, name: 'Mine', demo: false },
      { happenedAt: { instant: '2001-01-01T00:00:00.000Z' } },
    )
    expect(await outcomes('helper', [opening])).toEqual(['refused'])
    expect(await house.people.membership.standing(house.kitchenId, personIds.helper)).toBe('helper')
  })

  test('a new kitchen is opened only by whoever was let', async () => {
    const kitchenId = house.newId()
    const random = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }
    const write = (personId: string) =>
      createAuthor({
        kitchenId,
        deviceId: house.newId(),
        personId,
        head: null,
        clock: house.clock,
        random,
        zone: 'UTC',
      }).write('kitchen-opened', { kitchenId, name: 'Second', demo: false })
    expect(await outcomes('keeper', [write(personIds.keeper)])).toEqual(['refused'])
    await house.people.accounts.letOpen(personIds.keeper)
    expect(await outcomes('keeper', [write(personIds.keeper)])).toEqual(['accepted'])
    expect(await house.people.membership.standing(kitchenId, personIds.keeper)).toBe('keeper')
    expect(await outcomes('helper', [write(personIds.helper)])).toEqual(['refused'])
  })
})
