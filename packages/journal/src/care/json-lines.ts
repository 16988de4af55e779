/** Lines of a file, cut at line feeds alone: a note may hold U+2028, which some readers take for the end of a line. */
import { createReadStream } from 'node:fs'

const LINE_FEED = 10

/** A line longer than `mostBytes` comes as null, without being held in memory. */
export async function* linesOfFile(file: string, mostBytes: number): AsyncGenerator<string | null> {
  let parts: Buffer[] = []
  let length = 0
  const whole = (): string | null => {
    const line = length > mostBytes ? null : Buffer.concat(parts).toString('utf8')
    parts = []
    length = 0
    return line
  }
  const hold = (part: Buffer): void => {
    length += part.length
    if (length <= mostBytes) parts.push(part)
    else parts = []
  }
  for await (const chunk of createReadStream(file) as AsyncIterable<Buffer>) {
    let from = 0
    for (let end = chunk.indexOf(LINE_FEED); end >= 0; end = chunk.indexOf(LINE_FEED, from)) {
      hold(chunk.subarray(from, end))
      yield whole()
      from = end + 1
    }
    if (from < chunk.length) hold(chunk.subarray(from))
  }
  if (length > 0) yield whole()
}
