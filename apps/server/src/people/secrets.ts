/** Making and checking secrets. A secret itself is never kept: only a hash of it. */
import { createHash, randomBytes } from 'node:crypto'

/** 32 random bytes, as they go into a link or a cookie. */
export function newSecret(): string {
  return randomBytes(32).toString('base64url')
}

/** Of a secret with 256 random bits a plain hash is enough: there is nothing to guess. */
export function hashOfSecret(secret: string): string {
  return createHash('sha256').update(secret).digest('hex')
}

/** 19 MiB, two passes, one lane: the first row of the OWASP password storage sheet (from memory, not re-read). */
const ARGON2ID = { algorithm: 2, memoryCost: 19_456, timeCost: 2, parallelism: 1, outputLen: 32 } as const

/** Loaded at first use: nobody needs it at home. */
const argon2 = () => import('@node-rs/argon2')

export async function hashOfPassphrase(passphrase: string): Promise<string> {
  const { hash } = await argon2()
  return hash(passphrase.normalize('NFKC'), ARGON2ID)
}

let nobody: Promise<string> | null = null

/** Takes as long for a name nobody has (`kept` null) as for a wrong passphrase. */
export async function isPassphrase(kept: string | null, passphrase: string): Promise<boolean> {
  nobody ??= hashOfPassphrase(newSecret())
  const { verify } = await argon2()
  const fits = await verify(kept ?? (await nobody), passphrase.normalize('NFKC'))
  return kept !== null && fits
}

/** One person for all ways of typing a name: case and spaces do not count. */
export function nameKey(name: string): string {
  return name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase()
}
