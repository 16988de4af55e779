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
  let drawnCount = 0

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
      randomBytes: (count) =>
        Uint8Array.from({ length: count }, () => {
          drawnCount += 1
          return (drawnCount * 151) % 256
        }),
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
