import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { lotBody, openTestHouse, PASSPHRASE, type TestHouse } from './testing.ts'
import { TRIES_OF_ADDRESS, TRIES_OF_NAME } from './try-limit.ts'

let house: TestHouse
beforeEach(async () => {
  house = await openTestHouse()
})
afterEach(() => house.remove())

const me = async (cookie: string) => (await house.ask('GET', '/api/people/me', { cookie })).body
const invite = (role: 'keeper' | 'helper' = 'helper', hours = 1) =>
  house.people.invitations.make({ kitchenId: house.kitchenId, role }, hours)
const join = (secret: string, name = 'Wren', passphrase = PASSPHRASE) =>
  house.ask('POST', '/api/people/join', { body: { secret, name, passphrase } })
const signIn = (name: string, passphrase: string, headers = {}) =>
  house.ask('POST', '/api/people/sign-in', { body: { name, passphrase }, headers })

describe('an invitation', () => {
  test('makes somebody a member, signed in, with a line in the book that names them and no secret', async () => {
    const { secret } = await invite()
    const answer = await join(secret)
    expect(answer.status).toBe(200)
    expect(answer.body.kitchens).toEqual([{ kitchenId: house.kitchenId, role: 'helper' }])
    expect((await me(house.cookieOf(answer))).person.name).toBe('Wren')
    const { entries } = await house.store.read({ kitchenId: house.kitchenId })
    expect(entries.at(-1)!.envelope).toMatchObject({ kind: 'person-joined', visibility: 'family' })
    expect(JSON.stringify(entries)).not.toContain(secret)
    expect(JSON.stringify(entries)).not.toContain('argon2')
    expect(await house.store.verify()).toMatchObject({ ok: true })
  })

  test('is good once: the second to bring it gets nothing, whoever is faster', async () => {
    const { secret } = await invite()
    const answers = await Promise.all([join(secret, 'Wren'), join(secret, 'Jay'), join(secret, 'Rook')])
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 404, 404])
    expect((await join(secret, 'Crow')).status).toBe(404)
    expect(await house.people.accounts.count()).toBe(1)
  })

  test('ends with its time, and when it is withdrawn; the two are not told apart from one that never was', async () => {
    const old = await invite('helper', 1)
    house.clock.nowMs += 3_600_001
    const withdrawn = await invite()
    const keeper = await house.joined('keeper', 'Ash')
    const end = `/api/people/invitations/${withdrawn.invitationId}/end?kitchen=${house.kitchenId}`
    expect((await house.ask('POST', end, { cookie: keeper.cookie })).status).toBe(200)
    const answers = [await join(old.secret), await join(withdrawn.secret), await join('never-was')]
    expect(answers.map(({ status }) => status)).toEqual([404, 404, 404])
    expect(new Set(answers.map(({ text }) => text)).size).toBe(1)
  })

  test('takes a passphrase of twelve characters and more, and a name nobody has', async () => {
    const { secret } = await invite()
    expect((await join(secret, 'Wren', 'eleven char')).status).toBe(400)
    expect((await join(secret, '  ')).status).toBe(400)
    expect((await join(secret, 'Wren')).status).toBe(200)
    const second = await invite()
    expect((await join(second.secret, ' WREN ')).status).toBe(409)
    expect((await join(second.secret, 'Wren of the marsh')).status).toBe(200)
  })

  test('brings somebody who has an account into a second kitchen as who they are', async () => {
    const { cookie, personId } = await house.joined('helper', 'Wren')
    const { secret } = await invite('keeper')
    const answer = await house.ask('POST', '/api/people/join', { body: { secret }, cookie })
    expect(answer.body.personId).toBe(personId)
    expect(await house.people.membership.standing(house.kitchenId, personId)).toBe('keeper')
  })

  test('of the house itself makes keeper of every kitchen, and cannot be asked for over the network', async () => {
    const { secret } = await house.people.invitations.make({ kitchenId: null, role: 'keeper' }, 24)
    const { body } = await join(secret, 'Ash')
    expect(body.kitchens).toEqual([{ kitchenId: house.kitchenId, role: 'keeper' }])
    const cookie = house.cookieOf(await signIn('Ash', PASSPHRASE))
    const asked = await house.ask('POST', '/api/people/invitations', { cookie, body: { role: 'keeper' } })
    expect(asked.status).toBe(403)
  })
})

describe('a session', () => {
  test('lies in a cookie no script reads and no other site sends, and only its hash in the tables', async () => {
    const answer = await join((await invite()).secret)
    const cookie = answer.headers.get('set-cookie')!
    expect(cookie).toMatch(/; HttpOnly/)
    expect(cookie).toMatch(/; SameSite=Strict/)
    const token = house.cookieOf(answer).split('=')[1]!
    expect(Buffer.from(token, 'base64url')).toHaveLength(32)
    const rows = await house.tables.rows('select * from person_session')
    expect(JSON.stringify(rows)).not.toContain(token)
  })

  test('is Secure behind a proxy that speaks https', async () => {
    const hosted = await openTestHouse({ reach: 'hosted' })
    const { secret } = await hosted.people.invitations.make({ kitchenId: hosted.kitchenId, role: 'helper' }, 1)
    const answer = await hosted.ask('POST', '/api/people/join', {
      body: { secret, name: 'Wren', passphrase: PASSPHRASE },
      headers: { 'x-forwarded-proto': 'https' },
    })
    expect(answer.headers.get('set-cookie')).toMatch(/; Secure/)
    await hosted.remove()
  })

  test('ends when it is signed out, ended from another device, or after ninety days', async () => {
    const first = await house.joined('helper', 'Wren')
    const second = house.cookieOf(await signIn('Wren', PASSPHRASE))
    const { sessions } = (await house.ask('GET', '/api/people/sessions', { cookie: second })).body
    expect(sessions).toHaveLength(2)
    const other = sessions.find(({ here }: { here: boolean }) => !here)
    expect((await house.ask('POST', `/api/people/sessions/${other.sessionId}/end`, { cookie: second })).status).toBe(
      200,
    )
    expect((await house.ask('GET', '/api/kitchens', { cookie: first.cookie })).status).toBe(401)

    expect((await house.ask('GET', '/api/kitchens', { cookie: second })).status).toBe(200)
    await house.ask('POST', '/api/people/sign-out', { cookie: second })
    expect((await house.ask('GET', '/api/kitchens', { cookie: second })).status).toBe(401)

    const third = house.cookieOf(await signIn('Wren', PASSPHRASE))
    house.clock.nowMs += 90 * 86_400_000 + 1
    expect((await house.ask('GET', '/api/kitchens', { cookie: third })).status).toBe(401)
  })

  test('of one person cannot be ended by another', async () => {
    const wren = await house.joined('helper', 'Wren')
    const jay = await house.joined('keeper', 'Jay')
    const { sessions } = (await house.ask('GET', '/api/people/sessions', { cookie: wren.cookie })).body
    const path = `/api/people/sessions/${sessions[0].sessionId}/end`
    expect((await house.ask('POST', path, { cookie: jay.cookie })).status).toBe(404)
    expect((await house.ask('GET', '/api/kitchens', { cookie: wren.cookie })).status).toBe(200)
  })
})

describe('a passphrase', () => {
  test('wrong, and a name nobody has, are answered alike', async () => {
    await house.joined('helper', 'Wren')
    const wrong = await signIn('Wren', 'some other passphrase')
    const nobody = await signIn('Nobody', 'some other passphrase')
    expect([wrong.status, wrong.text]).toEqual([nobody.status, nobody.text])
    expect(wrong.status).toBe(401)
  })

  test('is worked on as long for a name nobody has', async () => {
    await house.joined('helper', 'Wren')
    const timeOf = async (name: string) => {
      const from = performance.now()
      await house.people.accounts.check(name, 'some other passphrase')
      return performance.now() - from
    }
    await timeOf('Nobody') // makes the hash that stands in
    const times = { Wren: [] as number[], Nobody: [] as number[] }
    for (let i = 0; i < 7; i += 1) {
      times.Wren.push(await timeOf('Wren'))
      times.Nobody.push(await timeOf('Nobody'))
    }
    const middle = (each: number[]) => each.sort((a, b) => a - b)[3]!
    // An answer without argon2id would be a hundred times faster.
    expect(middle(times.Nobody) / middle(times.Wren)).toBeGreaterThan(0.5)
    expect(middle(times.Nobody) / middle(times.Wren)).toBeLessThan(2)
  })

  test('is kept as argon2id with 19 MiB, two passes, one lane', async () => {
    await house.joined('helper', 'Wren')
    const [row] = await house.tables.rows<[string]>('select passphrase_hash from person_account')
    expect(row![0]).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/)
  })

  test('may be tried ten times for a name, then waits a quarter of an hour; the right one waits too', async () => {
    await house.joined('helper', 'Wren')
    for (let i = 0; i < TRIES_OF_NAME; i += 1) expect((await signIn('Wren', 'not it, not it')).status).toBe(401)
    expect((await signIn('wren ', PASSPHRASE)).status).toBe(429)
    // As for a name nobody has.
    for (let i = 0; i < TRIES_OF_NAME; i += 1) await signIn('Nobody', 'not it, not it')
    expect((await signIn('Nobody', PASSPHRASE)).status).toBe(429)
    house.clock.nowMs += 15 * 60_000 + 1
    expect((await signIn('Wren', PASSPHRASE)).status).toBe(200)
  })

  test('may be tried fifty times from one address, whatever the names', async () => {
    for (let i = 0; i < TRIES_OF_ADDRESS; i += 1) {
      expect(await house.people.tryLimit.mayTry(`name ${i}`, '192.0.2.7')).toBe(true)
    }
    expect(await house.people.tryLimit.mayTry('one more', '192.0.2.7')).toBe(false)
    expect(await house.people.tryLimit.mayTry('one more', '192.0.2.8')).toBe(true)
  })
})

describe('a role', () => {
  const read = async (cookie: string) =>
    (await house.ask('GET', `/api/entries?kitchen=${house.kitchenId}`, { cookie })).body

  test('taken down counts at the very next request', async () => {
    const keeper = await house.joined('keeper', 'Ash')
    const wren = await house.joined('keeper', 'Wren')
    const lotId = house.newId()
    await house.keep(house.keeper.write('corn-lot-brought-in', lotBody(lotId)))
    expect(JSON.stringify(await read(wren.cookie))).toContain(lotId)
    const change = (role: string) =>
      house.ask('POST', `/api/people/members/${wren.personId}/role?kitchen=${house.kitchenId}`, {
        cookie: keeper.cookie,
        body: { role },
      })
    expect((await change('reader')).status).toBe(200)
    expect(JSON.stringify(await read(wren.cookie))).not.toContain(lotId)
    expect((await change('reader')).status).toBe(200)
    const invite = await house.ask('POST', `/api/people/invitations?kitchen=${house.kitchenId}`, {
      cookie: wren.cookie,
      body: { role: 'keeper' },
    })
    expect(invite.status).toBe(403)
  })

  test('changed by a line that came by exchange counts at once too', async () => {
    const wren = await house.joined('minder', 'Wren')
    const before = await house.ask('GET', `/api/people/members?kitchen=${house.kitchenId}`, { cookie: wren.cookie })
    expect(before.status).toBe(200)
    await house.keep(house.keeper.write('role-changed', { personId: wren.personId, role: 'reader' }))
    const after = await house.ask('GET', `/api/people/members?kitchen=${house.kitchenId}`, { cookie: wren.cookie })
    expect(after.status).toBe(403)
  })

  test('of the last keeper cannot be given away', async () => {
    const { personId, cookie } = await house.joined('keeper', 'Ash')
    const leave = (id: string) =>
      house.ask('POST', `/api/people/members/${id}/leave?kitchen=${house.kitchenId}`, { cookie })
    expect((await leave(house.founderId)).status).toBe(200)
    expect((await leave(personId)).status).toBe(409)
    expect((await leave(house.newId())).status).toBe(404)
  })

  test('changes the copy’s id, so that no cursor of the old one is taken for one of the new', async () => {
    const wren = await house.joined('minder', 'Wren')
    for (const visibility of ['family', 'community'] as const) {
      await house.keep(house.keeper.write('corn-lot-brought-in', lotBody(house.newId()), { visibility }))
    }
    const first = await read(wren.cookie)
    await house.people.membership.record(house.kitchenId, null, 'role-changed', {
      personId: wren.personId,
      role: 'reader',
    })
    const { body } = await house.ask(
      'GET',
      `/api/entries?kitchen=${house.kitchenId}&after=${first.next}&view=${first.view}`,
      { cookie: wren.cookie },
    )
    expect(body.view).not.toBe(first.view)
    expect(body.entries[0].envelope.deviceSeq).toBe(1)
  })
})

describe('at home', () => {
  test('nobody signs in, and whoever sits here may do everything', async () => {
    const home = await openTestHouse({ reach: 'home' })
    expect((await home.ask('GET', '/api/people/me')).body).toMatchObject({ asks: false, person: null, kitchens: [] })
    expect((await home.ask('GET', `/api/entries?kitchen=${home.kitchenId}`)).body.entries).toHaveLength(1)
    const invited = await home.ask('POST', `/api/people/invitations?kitchen=${home.kitchenId}`, {
      body: { role: 'helper' },
    })
    expect(invited.status).toBe(200)
    expect((await home.ask('GET', '/api/people/sessions')).status).toBe(404)
    const { entries } = await home.store.read({ kitchenId: home.kitchenId })
    expect(entries.at(-1)!.envelope).toMatchObject({ kind: 'person-invited', personId: home.founderId })
    await home.remove()
  })
})
