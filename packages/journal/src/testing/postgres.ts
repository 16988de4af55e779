/** A PostgreSQL of the test's own: a temporary cluster on a socket, ended with the test. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import {
  chmodSync,
  chownSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir, userInfo } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'

/** Folder with initdb and postgres; Debian keeps them under their version. Null where there is none. */
export function postgresBin(): string | null {
  const places = ['/usr/lib/postgresql', '/usr/local/opt', '/opt/homebrew/opt']
  const found = places
    .filter((place) => existsSync(place))
    .flatMap((place) => readdirSync(place).map((version) => join(place, version, 'bin')))
    .filter((bin) => existsSync(join(bin, 'initdb')))
  return found.sort().at(-1) ?? null
}

export interface Cluster {
  /** A book of its own for each name: tables in a schema called so. */
  url(name: string): Promise<string>
  /** As a superuser would send it. */
  query(sql: string): Promise<readonly Record<string, unknown>[]>
  /** Kills the server's whole process group at once, as a power cut would. */
  kill(): Promise<void>
  start(): Promise<void>
  /** Overwrites the middle of a table's file, while the server is down. */
  damage(path: string): void
  stop(): Promise<void>
}

/** initdb and postgres refuse root: run as the user Debian made for them. */
function asWhom(): { uid?: number; gid?: number } {
  if (userInfo().uid !== 0) return {}
  const idOf = (flag: string) => Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8' }))
  return { uid: idOf('-u'), gid: idOf('-g') }
}

export async function startCluster(settings: readonly string[] = [], within = tmpdir()): Promise<Cluster> {
  const bin = postgresBin()
  if (!bin) throw new Error('no PostgreSQL here')
  const who = asWhom()
  const folder = mkdtempSync(join(within, 'book-pg-'))
  chmodSync(folder, 0o700)
  if (who.uid !== undefined) chownSync(folder, who.uid, who.gid!)
  const data = join(folder, 'data')
  const options = ['-D', data, '-U', 'postgres', '--auth=trust', '--encoding=UTF8', '--no-locale', '--no-sync']
  execFileSync(join(bin, 'initdb'), options, { ...who, cwd: folder, stdio: 'pipe' })
  const address = (options = '') =>
    `postgres://postgres@localhost/postgres?host=${encodeURIComponent(folder)}${options}`
  let server: ChildProcess | null = null

  async function start(): Promise<void> {
    const flags = [
      `unix_socket_directories=${folder}`,
      'listen_addresses=',
      'fsync=on',
      'shared_buffers=64MB',
      ...settings,
    ]
    server = spawn(join(bin!, 'postgres'), ['-D', data, ...flags.flatMap((flag) => ['-c', flag])], {
      ...who,
      cwd: folder,
      detached: true,
      stdio: ['ignore', 'ignore', 'ignore'],
    })
    for (const until = Date.now() + 60_000; ; ) {
      try {
        await query('select 1')
        return
      } catch (cause) {
        if (Date.now() > until || server.exitCode !== null) throw cause
        await new Promise((resolve) => setTimeout(resolve, 20))
      }
    }
  }

  async function query(sql: string) {
    const client = new pg.Client(address())
    client.on('error', () => {})
    await client.connect()
    try {
      return (await client.query(sql)).rows as Record<string, unknown>[]
    } finally {
      await client.end().catch(() => {})
    }
  }

  async function end(signal: 'SIGKILL' | 'SIGINT'): Promise<void> {
    const running = server
    server = null
    if (!running || running.exitCode !== null) return
    const closed = once(running, 'exit')
    if (signal === 'SIGKILL') {
      // Each backend leads a group of its own: end them all, the postmaster among them, as a power cut does.
      const pid = running.pid!
      const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim().split(/\s+/).filter(Boolean)
      for (const each of [pid, ...children.map(Number)]) endOne(each)
      while (children.some((each) => existsSync(`/proc/${each}`)))
        await new Promise((resolve) => setTimeout(resolve, 5))
    } else running.kill(signal)
    await closed
  }

  function endOne(pid: number): void {
    try {
      process.kill(pid, 'SIGKILL')
    } catch {
      // gone by itself
    }
  }

  await start()
  return {
    url: async (name) => {
      await query(`create schema if not exists ${name}`)
      return address(`&options=${encodeURIComponent(`-c search_path=${name}`)}`)
    },
    query,
    kill: () => end('SIGKILL'),
    start,
    damage: (path) => {
      const file = join(data, path)
      const bytes = readFileSync(file)
      bytes.fill(0xa5, 0, 4096)
      writeFileSync(file, bytes)
    },
    stop: async () => {
      await end('SIGINT')
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/**
 * What a suite does where PostgreSQL is absent: its tests are skipped and counted as NOT RUN; with REQUIRE_ALL=1 they
 * run and fail.
 */
export const POSTGRES_HERE = postgresBin() !== null || process.env.REQUIRE_ALL === '1'
