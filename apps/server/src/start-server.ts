import { createServer } from 'node:net'
import { networkInterfaces } from 'node:os'
import type { ServerStore } from '@crib/journal/open'
import { openSecretTables, secretsBeside } from '@crib/journal/secrets'
import { openSqliteStore } from '@crib/journal/sqlite'
import { serve } from '@hono/node-server'
import { createApp } from './app.ts'
import { type BackupPlan, type BackupTold, createBackups } from './backups.ts'
import { createPeople, type Reach } from './people/people.ts'

export interface ServerOptions {
  /** 0 picks any free port. */
  readonly port: number
  readonly host?: string
  /** A file, or an address of PostgreSQL. */
  readonly bookFile: string
  readonly webDist?: string
  /** Behind a proxy that ends TLS: everybody signs in, whatever the address. */
  readonly hosted?: boolean
  /** Backups the server makes by itself; none when left out. */
  readonly backup?: BackupPlan & { readonly told: (outcome: BackupTold) => void }
}

export interface RunningServer {
  readonly url: string
  /** home: nobody signs in. */
  readonly reach: Reach
  /** True while somebody could sign in. */
  hasPeople(): Promise<boolean>
  /** A link that makes whoever opens it keeper of every kitchen here; for whoever sits at the machine. */
  inviteKeeper(): Promise<string>
  close(): Promise<void>
}

const LOOPBACK = '127.0.0.1'
const LOOPBACK_NAMES = ['localhost', '127.0.0.1', '[::1]']
const PORTS_TRIED = 20

/** Opens the book and answers on the first free port from `port` on. */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { port, host = LOOPBACK, bookFile, webDist, hosted = false, backup } = options
  const freePort = await firstFreePort(port, host)
  const [store, tables] = await Promise.all([openBookStore(bookFile), openSecretTables(secretsBeside(bookFile))])
  const reach: Reach = hosted ? 'hosted' : host === LOOPBACK ? 'home' : 'network'
  const people = createPeople({ reach, store, tables })
  const backups = backup && createBackups({ store, ...backup })
  const app = createApp({
    store,
    people,
    care: {
      store,
      reach,
      backups: backups ? { everyHours: backup.everyHours, lastMadeAtMs: backups.lastMadeAtMs } : null,
    },
    ...(webDist && { webDist }),
    hostNames: reach === 'home' ? LOOPBACK_NAMES : [],
  })
  return new Promise((resolve) => {
    const server = serve({ fetch: app.fetch, port: freePort, hostname: host }, (address) => {
      const url = `http://${nameOf(host)}:${address.port}/`
      if (reach === 'home') people.address = `http://${nameOf('0.0.0.0')}:${address.port}/`
      else if (reach === 'network') people.address = url
      void backups?.look()
      resolve({
        url,
        reach,
        hasPeople: async () => (await people.accounts.count()) > 0,
        inviteKeeper: async () => {
          const { secret } = await people.invitations.make({ kitchenId: null, role: 'keeper' }, KEEPER_HOURS)
          // Behind the hash: browsers never send it, so no log has it.
          return `${url}join#${secret}`
        },
        close: async () => {
          await new Promise((closed) => server.close(closed))
          await backups?.stop()
          await store.close()
          await tables.close()
        },
      })
    })
  })
}

/** How long the first invitation is good. [h] */
const KEEPER_HOURS = 24

const isAddress = (where: string): boolean => /^postgres(ql)?:\/\//.test(where)

async function openBookStore(where: string): Promise<ServerStore> {
  // A book in a file starts without the PostgreSQL driver.
  if (!isAddress(where)) return openSqliteStore(where)
  const { openStore } = await import('@crib/journal/open')
  return openStore(where)
}

/** Under which name another device reaches this one. */
function nameOf(host: string): string {
  if (host === LOOPBACK) return 'localhost'
  if (host !== '0.0.0.0' && host !== '::') return host.includes(':') ? `[${host}]` : host
  const own = Object.values(networkInterfaces()).flatMap((each) => each ?? [])
  return own.find(({ family, internal }) => family === 'IPv4' && !internal)?.address ?? 'localhost'
}

async function firstFreePort(port: number, host: string): Promise<number> {
  if (port === 0) return 0
  for (let tried = port; tried < port + PORTS_TRIED; tried += 1) {
    if (await isFree(tried, host)) return tried
  }
  throw new RangeError(`ports ${port} to ${port + PORTS_TRIED - 1} are all taken; name another with --port`)
}

function isFree(port: number, host: string): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = createServer()
    probe.once('error', () => resolve(false))
    probe.listen(port, host, () => probe.close(() => resolve(true)))
  })
}
