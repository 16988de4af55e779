/** A terminal for tests: captures what is written, knows one day and one home, and makes the same ids every time. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { runCrib } from '../src/run.ts'
import type { Terminal } from '../src/terminal.ts'

export interface Said {
  readonly exitCode: number
  readonly out: string
  readonly err: string
}

export interface TestingTerminal {
  /** Everything of this test lies in here. */
  readonly folder: string
  /** A test moves on to another book by naming it here. */
  bookFile: string
  /** The hand of the clock, in UTC; a test moves it by hand. */
  now: number
  crib(...args: readonly string[]): Promise<Said>
  cribWithInput(input: string, ...args: readonly string[]): Promise<Said>
  remove(): void
}

export function createTestingTerminal(now: string): TestingTerminal {
  const folder = mkdtempSync(join(tmpdir(), 'crib-terminal-'))
  const random = createRandom(1)

  async function run(testing: TestingTerminal, input: string, args: readonly string[]): Promise<Said> {
    const out: string[] = []
    const err: string[] = []
    const terminal: Terminal = {
      out: (lines) => void out.push(lines),
      err: (lines) => void err.push(lines),
      readInput: async () => input,
      env: { KETTLE_BOOK: testing.bookFile },
      home: folder,
      zone: 'UTC',
      now: () => testing.now,
      randomBytes: (count) => Uint8Array.from({ length: count }, () => Math.floor(random() * 256)),
      columns: 100,
    }
    const exitCode = await runCrib(args, terminal)
    return { exitCode, out: out.join('\n'), err: err.join('\n') }
  }

  const testing: TestingTerminal = {
    folder,
    bookFile: join(folder, 'book.sqlite'),
    now: Date.parse(now),
    crib: (...args) => run(testing, '', args),
    cribWithInput: (input, ...args) => run(testing, input, args),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
  return testing
}

/** Numbers from 0 to 1, the same for the same seed (mulberry32): ids of one test never meet, those of two runs agree. */
function createRandom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
