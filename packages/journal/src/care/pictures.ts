/** Pictures of a bundle once more as files, for people to look at; the lines themselves hold them. */
import { createHash } from 'node:crypto'
import type { StoredEntry } from '../envelope.ts'
import { readBody } from '../kinds/index.ts'

export interface Picture {
  /** Inside the bundle; named by the SHA-256 of its bytes. */
  readonly path: string
  readonly bytes: Uint8Array
  /** The entry as a sheet tells it: with the file's path in place of the bytes. */
  readonly told: StoredEntry
}

/** Null for an entry that is no picture, or whose picture was erased. */
export function pictureOf(entry: StoredEntry): Picture | null {
  const { envelope, body } = entry
  if (envelope.kind !== 'photo-taken' || body === null) return null
  const read = readBody(envelope.kind, envelope.kindVersion, body.value)
  if (!read.ok) return null
  const { image, ...rest } = read.body as { readonly image: string }
  const bytes = Buffer.from(image, 'base64')
  const path = `attachments/${createHash('sha256').update(bytes).digest('hex')}.jpg`
  return { path, bytes, told: { ...entry, body: { ...body, value: { ...rest, image: path } } } }
}
