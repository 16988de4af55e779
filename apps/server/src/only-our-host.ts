import { createWords } from '@crib/wording'
import type { MiddlewareHandler } from 'hono'
import { HTTPException } from 'hono/http-exception'

/**
 * Refuses requests whose Host (or Origin) names another machine: on loopback there is nothing to sign into, so a foreign
 * page that points its own name at 127.0.0.1 must not read the book.
 */
export function onlyOurHost(hostNames: readonly string[]): MiddlewareHandler {
  const allowed = new Set(hostNames)
  const isOurs = (address: string): boolean => {
    try {
      return allowed.has(new URL(address).hostname)
    } catch {
      return false
    }
  }
  return async (c, next) => {
    const origin = c.req.header('origin')
    const host = c.req.header('host') ?? ''
    if (allowed.size > 0 && !(isOurs(`http://${host}`) && (!origin || isOurs(origin)))) {
      throw new HTTPException(403, { message: createWords().say('common:foreign-host', { host }) })
    }
    await next()
  }
}
