/**
 * Another book over HTTP, compressed both ways: what we send is gzip by our own hand, what comes is unpacked by fetch.
 * Runs in browsers and in Node. Leaves out: who may ask (the server's business).
 */
import type { StoredEntry } from './envelope.ts'
import type { AppendOutcome, KitchenSummary, ReadPage } from './store.ts'
import type { RemoteBook } from './sync.ts'

export interface HttpBook extends RemoteBook {
  kitchens(): Promise<readonly KitchenSummary[]>
}

export interface HttpBookOptions {
  /** How long one answer may take; 60 s unless said otherwise. [ms] */
  readonly patienceMs?: number
  /** Entries in one answer; the server may give fewer. */
  readonly pullLimit?: number
  readonly headers?: Readonly<Record<string, string>>
  readonly fetch?: typeof fetch
}

/** An answer that is none: away, cut off, or not what was asked for. */
export class ExchangeBroken extends Error {
  /** The HTTP status; 0 when the answer never came whole. */
  readonly status: number

  constructor(address: string, status: number, detail: string) {
    super(`${address}: ${status === 0 ? detail : `answered ${status}`}`)
    this.name = 'ExchangeBroken'
    this.status = status
  }
}

/** Below this a page is sent as it is: packing would cost more than it saves. [characters] */
const WORTH_PACKING = 1000

/** @param base Address before `/api`, for example `http://localhost:4321`; empty for the page's own. */
export function httpBook(base: string, options: HttpBookOptions = {}): HttpBook {
  const { patienceMs = 60_000, pullLimit = 1000, headers = {}, fetch: send = fetch } = options

  async function ask<T>(path: string, init: RequestInit = {}): Promise<T> {
    const address = `${base}${path}`
    try {
      const given = { ...headers, ...(init.headers as Record<string, string>) }
      const response = await send(address, { ...init, headers: given, signal: AbortSignal.timeout(patienceMs) })
      if (!response.ok) throw new ExchangeBroken(address, response.status, '')
      return (await response.json()) as T
    } catch (cause) {
      if (cause instanceof ExchangeBroken) throw cause
      throw new ExchangeBroken(address, 0, cause instanceof Error ? cause.message : String(cause))
    }
  }

  return {
    async push(entries: readonly StoredEntry[]): Promise<AppendOutcome> {
      const text = JSON.stringify({ entries })
      const packed = text.length >= WORTH_PACKING
      return await ask('/api/entries', {
        method: 'POST',
        body: packed ? await gzip(text) : text,
        headers: { 'content-type': 'application/json', ...(packed && { 'content-encoding': 'gzip' }) },
      })
    },
    pull: ({ kitchenId, after }): Promise<ReadPage> =>
      ask(`/api/entries?kitchen=${encodeURIComponent(kitchenId)}&after=${after}&limit=${pullLimit}`),
    kitchens: async () => (await ask<{ kitchens: readonly KitchenSummary[] }>('/api/kitchens')).kitchens,
  }
}

async function gzip(text: string): Promise<ArrayBuffer> {
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'))
  return await new Response(packed).arrayBuffer()
}

/**
 * The text of a request as the server reads it, unpacked where it came packed.
 *
 * @throws {RangeError} once it is longer than `mostBytes` when unpacked, however little was sent.
 */
export async function requestText(request: Request, mostBytes: number): Promise<string> {
  if (!request.body) return ''
  const packed = request.headers.get('content-encoding')
  if (packed !== null && packed !== 'gzip' && packed !== 'identity') throw new RangeError(`cannot unpack ${packed}`)
  const body = request.body as ReadableStream<Uint8Array<ArrayBuffer>>
  const bytes = packed === 'gzip' ? body.pipeThrough(new DecompressionStream('gzip')) : body
  const parts: Uint8Array<ArrayBuffer>[] = []
  let length = 0
  const reader = bytes.getReader()
  for (;;) {
    const { done, value } = await reader.read()
    if (done) return await new Blob(parts).text()
    length += value.length
    if (length > mostBytes) {
      await reader.cancel()
      throw new RangeError(`longer than ${mostBytes} bytes`)
    }
    parts.push(value)
  }
}
