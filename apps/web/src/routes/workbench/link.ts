/** Inputs as the end of an address: base64url of their JSON after `#with=`, so that a result can be passed on and worked out again. */
import { isTyped, type Typed } from './typed.ts'

const START = '#with='

export function toHash(inputs: Typed): string {
  const bytes = new TextEncoder().encode(JSON.stringify(inputs))
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')
  return START + btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}

/** Null when the address carries no inputs; `unreadable` when it was cut or changed on the way. */
export function fromHash(hash: string): Typed | 'unreadable' | null {
  if (!hash.startsWith(START)) return null
  try {
    const binary = atob(hash.slice(START.length).replaceAll('-', '+').replaceAll('_', '/'))
    const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0))
    const inputs: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
    return isTyped(inputs) ? inputs : 'unreadable'
  } catch {
    return 'unreadable'
  }
}
