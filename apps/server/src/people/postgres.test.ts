/** The same people, with book and secrets in one PostgreSQL and two servers before it. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Cluster, POSTGRES_HERE, startCluster } from '../../../../packages/journal/src/testing/postgres.ts'
import { lotBody, openTestHouse, PASSPHRASE, type TestHouse } from './testing.ts'

describe.skipIf(!POSTGRES_HERE)('in PostgreSQL', () => {
  let cluster: Cluster
  let one: TestHouse
  let other: TestHouse
  beforeAll(async () => {
    cluster = await startCluster()
    const where = await cluster.url('people')
    one = await openTestHouse({ where })
    other = await openTestHouse({ where, kitchenId: one.kitchenId, founderId: one.founderId })
  }, 60_000)
  afterAll(async () => {
    await one?.remove()
    await other?.remove()
    await cluster?.stop()
  })

  test('who joins at one server is signed in at the other, and a role taken down there counts here at once', async () => {
    const wren = await one.joined('minder', 'Wren')
    const lotId = one.newId()
    await one.keep(one.keeper.write('corn-lot-brought-in', lotBody(lotId), { visibility: 'family' }))
    const read = async (house: TestHouse) =>
      (await house.ask('GET', `/api/entries?kitchen=${one.kitchenId}`, { cookie: wren.cookie })).body
    expect(JSON.stringify((await read(other)).entries)).toContain(lotId)
    // Both servers give the same copy, to the letter.
    expect(await read(other)).toEqual(await read(one))
    await other.people.membership.record(one.kitchenId, null, 'role-changed', {
      personId: wren.personId,
      role: 'reader',
    })
    expect(JSON.stringify((await read(one)).entries)).not.toContain(lotId)
    expect(await other.store.verify()).toMatchObject({ ok: true })
  })

  test('an invitation and the tries of a passphrase are counted over both', async () => {
    const { secret } = await one.people.invitations.make({ kitchenId: one.kitchenId, role: 'helper' }, 1)
    const body = (name: string) => ({ body: { secret, name, passphrase: PASSPHRASE } })
    const answers = await Promise.all([
      one.ask('POST', '/api/people/join', body('Jay')),
      other.ask('POST', '/api/people/join', body('Rook')),
    ])
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 404])
    for (let i = 0; i < 5; i += 1) {
      expect(await one.people.tryLimit.mayTry('jay', '192.0.2.1')).toBe(true)
      expect(await other.people.tryLimit.mayTry('jay', '192.0.2.2')).toBe(true)
    }
    expect(await one.people.tryLimit.mayTry('jay', '192.0.2.3')).toBe(false)
  })
})
