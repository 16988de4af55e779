/** Everything a verb may touch outside the packages, handed in: a test hands in its own and captures what was written. */
import { randomBytes } from 'node:crypto'
import { homedir } from 'node:os'
import { text } from 'node:stream/consumers'

export interface Terminal {
  /** Writes one line, or several joined by newlines, to what a script would read. */
  readonly out: (lines: string) => void
  /** Writes to where a person is told of trouble. */
  readonly err: (lines: string) => void
  /** All of standard input. */
  readonly readInput: () => Promise<string>
  readonly env: { readonly [name: string]: string | undefined }
  readonly home: string
  /** IANA zone of the times typed and shown. */
  readonly zone: string
  /** Milliseconds since 1970 in UTC. */
  readonly now: () => number
  readonly randomBytes: (count: number) => Uint8Array
  /** Width in characters that long sentences are wrapped to. */
  readonly columns: number
}

const COLUMNS_AT_MOST = 110
const COLUMNS_WHEN_PIPED = 96

export function processTerminal(): Terminal {
  return {
    out: (lines) => process.stdout.write(`${lines}\n`),
    err: (lines) => process.stderr.write(`${lines}\n`),
    readInput: () => text(process.stdin),
    env: process.env,
    home: homedir(),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    now: Date.now,
    randomBytes: (count) => new Uint8Array(randomBytes(count)),
    columns: Math.min(process.stdout.columns ?? COLUMNS_WHEN_PIPED, COLUMNS_AT_MOST),
  }
}
