/** How many faults a suite provokes: few by default, FAULT_RUNS=50 in CI, FAULT_RUNS=1000 on demand. */
import { execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { repeatingRandom } from './invented.ts'

export const FAULT_RUNS = Number(process.env.FAULT_RUNS ?? 4)

/** Faults in one book before the next one is begun: looking through a book after each costs as much as it is long. */
export const FAULTS_A_BOOK = 50

/** For one fault of a suite: a second each is plenty, whatever else the machine is doing. [ms] */
export const FAULTS_TIMEOUT_MS = 60_000 + FAULT_RUNS * 5000

/** A number from 0 to 1 that repeats for a seed; print the seed where a test fails. */
export function repeatingFractions(seed: number): () => number {
  const random = repeatingRandom(seed)
  return () => {
    const [a, b, c] = random.bytes(3) as unknown as [number, number, number]
    return (a * 65_536 + b * 256 + c) / 16_777_216
  }
}

export const KITCHEN = '0190a000-0000-7000-8000-000000000001'
export const DEVICE = '0190a000-0000-7000-8000-000000000002'
export const CHILD = fileURLToPath(new URL('./appending.child.ts', import.meta.url))

/**
 * A program of its own that appends until it is killed, `afterMs` after its first acknowledgement. The ids it printed
 * before that; a line cut short by the kill was acknowledged to nobody.
 */
export async function appendUntilKilled(where: string, afterMs: number, deviceId = DEVICE): Promise<string[]> {
  const child = spawn(process.execPath, [CHILD, where, KITCHEN, deviceId], {
    stdio: ['ignore', 'pipe', 'inherit'],
    // A thousand of them find their modules stripped and compiled.
    env: { NODE_COMPILE_CACHE: join(tmpdir(), 'node-compile-cache'), ...process.env },
  })
  let printed = ''
  child.stdout.on('data', (chunk) => {
    if (printed === '') setTimeout(() => child.kill('SIGKILL'), afterMs)
    printed += chunk
  })
  const [, signal] = await once(child, 'close')
  if (signal !== 'SIGKILL') throw new Error('the appending program ended by itself')
  return printed.split('\n').slice(0, -1)
}

/** A file system of that many bytes, to be filled; null where this user may not make one. */
export function smallDisk(bytes: number): { readonly folder: string; gone(): void } | null {
  const folder = mkdtempSync(join(tmpdir(), 'book-small-'))
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${bytes}`, 'tmpfs', folder], { stdio: 'pipe' })
  } catch {
    rmSync(folder, { recursive: true, force: true })
    return null
  }
  return {
    folder,
    gone: () => {
      execFileSync('umount', ['-l', folder])
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

export function has(program: string): boolean {
  try {
    execFileSync(program, ['-V'], { stdio: 'pipe' })
    return true
  } catch {
    return process.env.REQUIRE_ALL === '1'
  }
}
