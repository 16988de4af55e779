/** Reads a logger's file off the page, a piece at a time. */
import { type LoggerMapping, type TracedLogger, type TraceRole, traceLogger } from '@crib/planning'

export interface LoggerTask {
  readonly file: Blob
  readonly mapping: LoggerMapping
  readonly roles: readonly TraceRole[]
}

export type LoggerAnswer =
  | { readonly kind: 'progress'; readonly shareFraction: number }
  | { readonly kind: 'traced'; readonly traced: TracedLogger }
  | { readonly kind: 'failed'; readonly message: string }

const tell = (answer: LoggerAnswer) => self.postMessage(answer)
/** Bytes between two words of progress. */
const TOLD_EVERY = 1_000_000

async function* piecesOf(file: Blob): AsyncGenerator<string> {
  const reader = file.stream().getReader()
  const decoder = new TextDecoder()
  let readBytes = 0
  let toldBytes = 0
  for (let { done, value } = await reader.read(); !done; { done, value } = await reader.read()) {
    yield decoder.decode(value, { stream: true })
    readBytes += value?.byteLength ?? 0
    if (readBytes - toldBytes < TOLD_EVERY) continue
    toldBytes = readBytes
    tell({ kind: 'progress', shareFraction: readBytes / file.size })
  }
  yield decoder.decode()
}

self.addEventListener('message', ({ data: { file, mapping, roles } }: MessageEvent<LoggerTask>) => {
  traceLogger(piecesOf(file), mapping, roles).then(
    (traced) => tell({ kind: 'traced', traced }),
    (error: unknown) => tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) }),
  )
})
