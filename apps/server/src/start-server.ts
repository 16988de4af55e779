import { createServer } from 'node:net'
import { openSqliteStore } from '@crib/journal/sqlite'
import { serve } from '@hono/node-server'
import { createApp } from './app.ts'

export interface ServerOptions {
  /** 0 picks any free port. */
  readonly port: number
  readonly host?: string
  readonly bookFile: string
  readonly webDist?: string
}

export interface RunningServer {
  readonly url: string
  close(): Promise<void>
}

const LOOPBACK = '127.0.0.1'
const LOOPBACK_NAMES = ['localhost', '127.0.0.1', '[::1]']
const PORTS_TRIED = 20

/** Opens the book and answers on the first free port from `port` on. */
export async function startServer({ port, host = LOOPBACK, bookFile, webDist }: ServerOptions): Promise<RunningServer> {
  const freePort = await firstFreePort(port, host)
  const store = await openSqliteStore(bookFile)
  const app = createApp({ store, ...(webDist && { webDist }), hostNames: host === LOOPBACK ? LOOPBACK_NAMES : [] })
  return new Promise((resolve) => {
    const server = serve({ fetch: app.fetch, port: freePort, hostname: host }, (address) => {
      resolve({
        url: `http://${host === LOOPBACK ? 'localhost' : host}:${address.port}/`,
        close: async () => {
          await new Promise((closed) => server.close(closed))
          await store.close()
        },
      })
    })
  })
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
