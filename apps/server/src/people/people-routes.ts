/** Signing in and out, joining by invitation, and who belongs to a kitchen. The gate has asked who may pass. */
import { ROLES, type Role } from '@crib/journal'
import { createWords } from '@crib/wording'
import type { AuthenticationResponseJSON, RegistrationResponseJSON } from '@simplewebauthn/server'
import { type Context, Hono } from 'hono'
import { HTTPException } from 'hono/http-exception'
import * as v from 'valibot'
import { parse } from '../parse.ts'
import { addressOf, dropSession, type GateEnv, giveSession, originOf, personOf } from './gate.ts'
import { JOIN_FAULT_STATUS, join } from './join.ts'
import type { People } from './people.ts'
import { nameKey } from './secrets.ts'

const PASSPHRASE_LEAST = 12
/** Long enough for any sentence; argon2 takes as long for each. */
const PASSPHRASE_MOST = 256
const INVITATION_HOURS_MOST = 24 * 14

const name = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(100))
const secret = v.pipe(v.string(), v.maxLength(100))
const passphrase = v.pipe(v.string(), v.minLength(PASSPHRASE_LEAST), v.maxLength(PASSPHRASE_MOST))
const anyPassphrase = v.pipe(v.string(), v.maxLength(PASSPHRASE_MOST))
const role = v.picklist(ROLES)
const answer = v.object({ challengeId: v.string(), response: v.looseObject({ id: v.string() }) })

export function peopleRoutes(people: People): Hono<GateEnv> {
  const words = createWords()
  const routes = new Hono<GateEnv>()
  const refuse = (status: 400 | 401 | 403 | 404 | 409 | 429, key: Parameters<typeof words.say>[0]): never => {
    throw new HTTPException(status, { message: words.say(key) })
  }
  const kitchenOf = (c: Context) => c.req.query('kitchen') ?? refuse(400, 'shell:people-which-kitchen')
  const actorOf = (c: Context<GateEnv>) => {
    const who = c.get('who')
    return who.kind === 'person' ? who.session.personId : null
  }
  const signIn = async (c: Context<GateEnv>, personId: string) =>
    giveSession(c, people, await people.sessions.open(personId, c.req.header('user-agent') ?? ''))
  const bodyOf = <S extends v.GenericSchema>(c: Context, schema: S) =>
    c.req.json().then(
      (given) => parse(schema, given),
      () => parse(schema, null),
    )

  routes.get('/me', async (c) => {
    const who = c.get('who')
    if (who.kind === 'house') return c.json({ asks: false, address: people.address, person: null, kitchens: [] })
    if (who.kind === 'stranger') return c.json({ asks: true, person: null, kitchens: [] })
    const { personId, name, mayOpen } = who.session
    const seats = await people.membership.seats(personId)
    const standings = await Promise.all(seats.map((kitchenId) => people.membership.standing(kitchenId, personId)))
    const kitchens = seats.flatMap((kitchenId, i) =>
      standings[i] === 'outsider' ? [] : [{ kitchenId, role: standings[i] }],
    )
    return c.json({ asks: true, address: people.address, person: { personId, name, mayOpen }, kitchens })
  })

  routes.post('/join/look', async (c) => {
    const asked = await bodyOf(c, v.object({ secret }))
    const invitation = await people.invitations.look(asked.secret)
    if (!invitation) return refuse(404, 'shell:people-invitation-gone')
    return c.json({ role: invitation.role, whole: invitation.kitchenId === null })
  })

  routes.post('/join/passkey', async (c) => {
    const asked = await bodyOf(c, v.object({ secret, name }))
    if (!(await people.invitations.look(asked.secret))) return refuse(404, 'shell:people-invitation-gone')
    const personId = people.newId()
    const { challengeId, options } = await people.passkeys.askNew({ personId, name: asked.name }, originOf(c))
    return c.json({ personId, challengeId, options })
  })

  routes.post('/join', async (c) => {
    const who = c.get('who')
    const { passkey, ...asked } = await bodyOf(
      c,
      v.object({
        secret,
        name: v.optional(name),
        passphrase: v.optional(passphrase),
        passkey: v.optional(v.object({ personId: v.string(), ...answer.entries })),
      }),
    )
    const joined = await join(people, {
      ...asked,
      ...(passkey && {
        passkey: {
          personId: passkey.personId,
          origin: originOf(c),
          answer: {
            challengeId: passkey.challengeId,
            response: passkey.response as unknown as RegistrationResponseJSON,
          },
        },
      }),
      session: who.kind === 'person' ? who.session : null,
    })
    if (!joined.ok) return refuse(JOIN_FAULT_STATUS[joined.why], `shell:people-${joined.why}`)
    if (who.kind !== 'person') await signIn(c, joined.personId)
    return c.json({ personId: joined.personId, kitchens: joined.kitchens })
  })

  routes.post('/sign-in', async (c) => {
    const asked = await bodyOf(c, v.object({ name, passphrase: anyPassphrase }))
    const key = nameKey(asked.name)
    if (!(await people.tryLimit.mayTry(key, addressOf(c, people)))) return refuse(429, 'shell:people-too-many-tries')
    const account = await people.accounts.check(asked.name, asked.passphrase)
    if (!account) return refuse(401, 'shell:people-name-or-passphrase')
    await people.tryLimit.forget(key)
    await signIn(c, account.personId)
    return c.json({ personId: account.personId, name: account.name })
  })

  routes.post('/sign-out', async (c) => {
    const { personId, sessionId } = personOf(c)
    await people.sessions.revoke(personId, sessionId)
    dropSession(c)
    return c.json({ ok: true })
  })

  routes.get('/sessions', async (c) => {
    const { personId, sessionId } = personOf(c)
    const sessions = await people.sessions.list(personId)
    return c.json({ sessions: sessions.map((each) => ({ ...each, here: each.sessionId === sessionId })) })
  })
  routes.post('/sessions/:id/end', async (c) => {
    const ended = await people.sessions.revoke(personOf(c).personId, c.req.param('id'))
    return ended ? c.json({ ok: true }) : refuse(404, 'shell:people-no-such-session')
  })

  routes.post('/passkey/new', async (c) => c.json(await people.passkeys.askNew(personOf(c), originOf(c))))
  routes.post('/passkey/keep', async (c) => {
    const { challengeId, response } = await bodyOf(c, answer)
    const given = { challengeId, response: response as unknown as RegistrationResponseJSON }
    const kept = await people.passkeys.keep(personOf(c), originOf(c), given)
    return kept ? c.json({ ok: true }) : refuse(400, 'shell:people-passkey-not-taken')
  })
  routes.post('/passkey/ask', async (c) => c.json(await people.passkeys.ask(originOf(c))))
  routes.post('/passkey/enter', async (c) => {
    const { challengeId, response } = await bodyOf(c, answer)
    if (!(await people.tryLimit.mayTry(`passkey ${response.id}`, addressOf(c, people)))) {
      return refuse(429, 'shell:people-too-many-tries')
    }
    const given = { challengeId, response: response as unknown as AuthenticationResponseJSON }
    const personId = await people.passkeys.enter(originOf(c), given)
    const account = personId === null ? null : await people.accounts.find(personId)
    if (!account) return refuse(401, 'shell:people-passkey-not-taken')
    await signIn(c, account.personId)
    return c.json(account)
  })

  routes.get('/members', async (c) => {
    const members = [...(await people.membership.members(kitchenOf(c))).values()]
    // Whoever opened the kitchen did so before the book knew names; their account may know it.
    const named = members
      .filter(({ role }) => role !== null)
      .map(async (member) => ({
        ...member,
        name: member.name || ((await people.accounts.find(member.personId))?.name ?? ''),
      }))
    return c.json({ members: await Promise.all(named) })
  })
  routes.post('/members/:id/role', async (c) => {
    const asked = await bodyOf(c, v.object({ role }))
    await changeOf(c, asked.role)
    return c.json({ ok: true })
  })
  routes.post('/members/:id/leave', async (c) => {
    await changeOf(c, null)
    return c.json({ ok: true })
  })

  /** The last keeper stays one: a kitchen nobody keeps could never be opened to anybody again. */
  async function changeOf(c: Context<GateEnv, '/members/:id/role'>, to: Role | null): Promise<void> {
    const kitchenId = kitchenOf(c)
    const personId = c.req.param('id')
    const members = await people.membership.members(kitchenId)
    const member = members.get(personId)
    if (!member || member.role === null) return refuse(404, 'shell:people-no-such-member')
    const keepers = [...members.values()].filter((each) => each.role === 'keeper' && each.personId !== personId)
    if (member.role === 'keeper' && to !== 'keeper' && keepers.length === 0)
      return refuse(409, 'shell:people-last-keeper')
    if (to === null) await people.membership.record(kitchenId, actorOf(c), 'person-left', { personId })
    else await people.membership.record(kitchenId, actorOf(c), 'role-changed', { personId, role: to })
  }

  routes.get('/invitations', async (c) => {
    const open = await people.invitations.list(kitchenOf(c))
    return c.json({
      invitations: open.map(({ invitationId, role, expiresAtMs }) => ({
        invitationId,
        role,
        expiresAt: new Date(expiresAtMs).toISOString(),
      })),
    })
  })
  routes.post('/invitations', async (c) => {
    const kitchenId = kitchenOf(c)
    const hours = v.pipe(v.number(), v.minValue(1), v.maxValue(INVITATION_HOURS_MOST))
    const asked = await bodyOf(c, v.object({ role, hours: v.optional(hours, 48) }))
    if ((await people.membership.members(kitchenId)).size === 0) return refuse(404, 'shell:people-which-kitchen')
    const { invitationId, secret, expiresAtMs } = await people.invitations.make(
      { kitchenId, role: asked.role },
      asked.hours,
    )
    const expiresAt = new Date(expiresAtMs).toISOString()
    await people.membership.record(kitchenId, actorOf(c), 'person-invited', {
      invitationId,
      role: asked.role,
      expiresAt,
    })
    return c.json({ invitationId, secret, role: asked.role, expiresAt })
  })
  routes.post('/invitations/:id/end', async (c) => {
    const ended = await people.invitations.revoke(kitchenOf(c), c.req.param('id'))
    return ended ? c.json({ ok: true }) : refuse(404, 'shell:people-invitation-gone')
  })

  return routes
}
