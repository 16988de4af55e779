/** The one place where a request is let through or not: who asks, from which page, and whether the door is theirs. */
import { mayDo, type Standing } from '@crib/journal'
import { createWords } from '@crib/wording'
import type { Context, MiddlewareHandler } from 'hono'
import { deleteCookie, getCookie, setCookie } from 'hono/cookie'
import { HTTPException } from 'hono/http-exception'
import { doorOf } from './doors.ts'
import { nextStroke } from './even-time.ts'
import type { People } from './people.ts'
import type { Session } from './sessions.ts'

/** house: whoever sits at this machine, at home. stranger: nobody has signed in. */
export type Who =
  | { readonly kind: 'house' }
  | { readonly kind: 'stranger' }
  | { readonly kind: 'person'; readonly session: Session; readonly standing: Standing }

export interface GateEnv {
  Variables: { who: Who }
}

const COOKIE = 'crib-session'
const HOUSE: Who = { kind: 'house' }

/** `people` absent: at home, without anybody to ask. */
export function gate(people: People | undefined): MiddlewareHandler<GateEnv> {
  const words = createWords()
  return async (c, next) => {
    if (!people || people.reach === 'home') {
      c.set('who', HOUSE)
      return next()
    }
    const askedAtMs = performance.now()
    if (c.req.method !== 'GET' && c.req.method !== 'HEAD' && !isOwnPage(c)) {
      throw new HTTPException(403, { message: words.say('shell:people-foreign-page') })
    }
    const token = getCookie(c, COOKIE)
    const session = token === undefined ? null : await people.sessions.find(token)
    const door = doorOf(c.req.method, c.req.path)
    if (!session) {
      c.set('who', { kind: 'stranger' })
      if (door?.to === 'open') return next()
      throw new HTTPException(401, { message: words.say('shell:people-sign-in-first') })
    }
    const kitchenId = c.req.query('kitchen')
    const standing =
      door?.to === 'kitchen' && kitchenId !== undefined
        ? await people.membership.standing(kitchenId, session.personId)
        : 'outsider'
    c.set('who', { kind: 'person', session, standing })
    // An unknown address is answered as such by the routes; a known one asks for the act it stands for.
    const isTheirs = !door?.act || mayDo(standing, door.act)
    if (isTheirs) await next()
    if (standing !== 'keeper') await nextStroke(askedAtMs)
    if (!isTheirs) throw new HTTPException(403, { message: words.say('shell:people-not-yours') })
  }
}

/** Browsers name the page a request comes from; the cookie is sent to its own site alone, and this holds it twice. */
function isOwnPage(c: Context): boolean {
  const origin = c.req.header('origin')
  try {
    return origin !== undefined && new URL(origin).host === c.req.header('host')
  } catch {
    return false
  }
}

/** The person signed in; there is none at home. */
export function personOf(c: Context<GateEnv>): Session {
  const who = c.get('who')
  if (who.kind === 'person') return who.session
  throw new HTTPException(404, { message: createWords().say('shell:people-none-at-home') })
}

export function giveSession(
  c: Context<GateEnv>,
  people: People,
  { token, expiresAtMs }: { readonly token: string; readonly expiresAtMs: number },
): void {
  setCookie(c, COOKIE, token, {
    httpOnly: true,
    sameSite: 'Strict',
    secure: isHttps(c, people),
    path: '/',
    expires: new Date(expiresAtMs),
  })
}

export function dropSession(c: Context<GateEnv>): void {
  deleteCookie(c, COOKIE, { path: '/' })
}

function isHttps(c: Context, { reach }: People): boolean {
  if (reach === 'hosted') return c.req.header('x-forwarded-proto') === 'https'
  return new URL(c.req.url).protocol === 'https:'
}

/** Where the request comes from: the socket's other end, or what the proxy in front says it is. */
export function addressOf(c: Context, { reach }: People): string {
  if (reach === 'hosted') return c.req.header('x-forwarded-for')?.split(',').at(-1)?.trim() ?? 'unknown'
  const incoming = (c.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming
  return incoming?.socket?.remoteAddress ?? 'unknown'
}

/** The address the page was opened at, as passkeys know it. */
export function originOf(c: Context): string {
  return c.req.header('origin') ?? ''
}
