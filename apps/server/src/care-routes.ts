/** How the book is kept, for its house screen: where it lies, how much room it takes, when the last backup was made. */
import type { ServerStore } from '@crib/journal/open'
import { Hono } from 'hono'
import type { Backups } from './backups.ts'
import type { GateEnv } from './people/gate.ts'
import type { Reach } from './people/people.ts'

export interface CareParts {
  readonly store: Pick<ServerStore, 'where' | 'storageUse'>
  readonly reach: Reach
  /** Null when the server makes none. */
  readonly backups: { readonly everyHours: number; readonly lastMadeAtMs: Backups['lastMadeAtMs'] } | null
}

/** As JSON. What is null is not said to whoever asks. */
export interface CareSaid {
  /** The file, or the address without its password; said at this machine alone. */
  readonly where: string | null
  /** Of all kitchens together; not said by a server that several households share. */
  readonly bytes: number | null
  readonly backups: { readonly everyHours: number; readonly lastMadeAt: string | null } | null
}

export function careRoutes({ store, reach, backups }: CareParts): Hono<GateEnv> {
  const routes = new Hono<GateEnv>()
  routes.get('/', async (c) => {
    const lastMadeAtMs = (await backups?.lastMadeAtMs()) ?? null
    const said: CareSaid = {
      where: c.get('who').kind === 'house' ? store.where : null,
      bytes: reach === 'hosted' ? null : (await store.storageUse()).bytes,
      backups: backups && {
        everyHours: backups.everyHours,
        lastMadeAt: lastMadeAtMs === null ? null : new Date(lastMadeAtMs).toISOString(),
      },
    }
    return c.json(said)
  })
  return routes
}
