/**
 * Whether lines follow each other unbroken, one chain for each kitchen and device. Leaves out: whether a body makes
 * sense (kinds/). A chain cut off at its end looks whole unless the end it should have is handed in (`heads`).
 */

import type { StoredEntry } from './envelope.ts'
import { type ChainHead, malformedField, NO_PREVIOUS_HASH, sha256Hex } from './envelope.ts'
import { canonicalJson } from './json.ts'

export type EntryFaultCode =
  | 'malformed'
  | 'altered-envelope'
  | 'altered-body'
  | 'body-missing'
  | 'missing-before'
  | 'missing-after'
  | 'broken-link'
  | 'fork'
  | 'altered-copy'
  | 'too-large'
  | 'file-damaged'
  /** Its bringer may not write such a line here. */
  | 'not-allowed'

export interface EntryFault {
  readonly code: EntryFaultCode
  /** The entry at fault, or the one that shows the fault. Empty when it is too malformed to have one. */
  readonly entryId: string
  readonly deviceId?: string
  readonly deviceSeq?: number
  /** What the code leaves open: the field, the missing numbers, the other entry. */
  readonly detail: string
}

export type ChainReport =
  | { readonly ok: true; readonly checkedCount: number; readonly erasedCount: number }
  | {
      readonly ok: false
      readonly checkedCount: number
      readonly erasedCount: number
      readonly faults: readonly EntryFault[]
    }

/** A chain's last line as somebody else knows it, so that a cut-off end is seen. */
export interface KnownHead extends Pick<ChainHead, 'deviceSeq' | 'hash'> {
  readonly kitchenId: string
  readonly deviceId: string
}

/** SHA-256 of a text's UTF-8 bytes, in hex. Stores on a server hand in the system's own, which is ten times faster. */
export type Sha256Hex = (text: string) => string

/** A fault of one entry by itself, looking at no other; null when it is whole. */
export function entryFault(entry: unknown, sha256: Sha256Hex = sha256Hex): EntryFault | null {
  return examineEntry(entry, sha256).fault
}

/** What `entryFault` finds, with the canonical text of the body that it had to make for it; null once erased. */
export function examineEntry(
  entry: unknown,
  sha256: Sha256Hex,
): { readonly fault: EntryFault | null; readonly bodyText: string | null } {
  const field = malformedField(entry)
  if (field !== null) return { fault: { code: 'malformed', entryId: idOf(entry), detail: field }, bodyText: null }
  const whole = entry as StoredEntry
  const { envelope, hash, body } = whole
  const envelopeText = canonicalOrNull(envelope)
  if (envelopeText === null || sha256(envelopeText) !== hash)
    return { fault: faultOf(whole, 'altered-envelope', 'hash'), bodyText: null }
  if (body === null) return { fault: null, bodyText: null }
  const bodyText = canonicalOrNull(body.value)
  const holds = bodyText !== null && sha256(body.salt + bodyText) === envelope.bodyHash
  return { fault: holds ? null : faultOf(whole, 'altered-body', 'bodyHash'), bodyText }
}

/** Every fault found in `entries`, whatever their order; entries of several devices and kitchens may be mixed. */
export function verifyChain(entries: readonly unknown[], heads: readonly KnownHead[] = []): ChainReport {
  const faults: EntryFault[] = []
  const chains = new Map<string, StoredEntry[]>()
  let erasedCount = 0
  for (const entry of entries) {
    const fault = entryFault(entry)
    if (fault) faults.push(fault)
    if (fault?.code === 'malformed') continue
    const whole = entry as StoredEntry
    if (whole.body === null) erasedCount += 1
    const key = chainKey(whole.envelope)
    const chain = chains.get(key)
    if (chain) chain.push(whole)
    else chains.set(key, [whole])
  }
  for (const chain of chains.values()) faults.push(...linkFaults(chain))
  for (const head of heads) faults.push(...headFaults(chains.get(chainKey(head)) ?? [], head))
  const counts = { checkedCount: entries.length, erasedCount }
  return faults.length === 0 ? { ok: true, ...counts } : { ok: false, ...counts, faults }
}

/** Places where a device's clock went back: a later line written at an earlier time. Asked about, never corrected. */
export function clockSteps(entries: readonly StoredEntry[], toleranceMs = 2000): readonly ClockStep[] {
  const sorted = [...entries].sort((a, b) => compareChain(a.envelope, b.envelope))
  const steps: ClockStep[] = []
  for (let i = 1; i < sorted.length; i += 1) {
    const before = sorted[i - 1]!.envelope
    const after = sorted[i]!.envelope
    if (chainKey(before) !== chainKey(after)) continue
    const backMs = Date.parse(before.writtenAt) - Date.parse(after.writtenAt)
    if (backMs > toleranceMs) steps.push({ entryId: after.id, deviceId: after.deviceId, backMs })
  }
  return steps
}

export interface ClockStep {
  readonly entryId: string
  readonly deviceId: string
  /** How far the clock went back. [ms] */
  readonly backMs: number
}

/** Order of lines within a chain, chains one after another. */
export function compareChain(a: StoredEntry['envelope'], b: StoredEntry['envelope']): number {
  return compareText(a.kitchenId, b.kitchenId) || compareText(a.deviceId, b.deviceId) || a.deviceSeq - b.deviceSeq
}

export function chainKey({ kitchenId, deviceId }: { readonly kitchenId: string; readonly deviceId: string }): string {
  return `${kitchenId} ${deviceId}`
}

export function faultOf({ envelope }: StoredEntry, code: EntryFaultCode, detail: string): EntryFault {
  return { code, entryId: envelope.id, deviceId: envelope.deviceId, deviceSeq: envelope.deviceSeq, detail }
}

/** The numbers missing between two lines, in words: `4` or `4 to 9`. */
export function missingNumbers(lastSeq: number, nextSeq: number): string {
  return lastSeq + 1 === nextSeq - 1 ? `${lastSeq + 1}` : `${lastSeq + 1} to ${nextSeq - 1}`
}

function linkFaults(chain: readonly StoredEntry[]): EntryFault[] {
  const sorted = [...chain].sort((a, b) => a.envelope.deviceSeq - b.envelope.deviceSeq || compareText(a.hash, b.hash))
  const check = linkCheck()
  return sorted.flatMap((entry) => check(entry) ?? [])
}

/** Looks at the lines of one chain in order, one after another, and says where one does not follow. */
function linkCheck(): (entry: StoredEntry) => EntryFault | null {
  let last: StoredEntry | null = null
  let ends = new Set([NO_PREVIOUS_HASH]) // both sides of a fork may be continued
  return (entry) => {
    const { deviceSeq, prevHash } = entry.envelope
    const lastSeq = last?.envelope.deviceSeq ?? 0
    if (last && deviceSeq === lastSeq) {
      const fork = ends.has(entry.hash) ? null : faultOf(entry, 'fork', last.envelope.id)
      ends.add(entry.hash)
      return fork
    }
    const follows = ends.has(prevHash)
    last = entry
    ends = new Set([entry.hash])
    if (deviceSeq > lastSeq + 1) return faultOf(entry, 'missing-before', missingNumbers(lastSeq, deviceSeq))
    return follows ? null : faultOf(entry, 'broken-link', `${lastSeq}`)
  }
}

/**
 * Verifies a book of any length in little memory: entries are handed in chain after chain, each in order of its numbers
 * (`compareChain`). `hasErasure` tells an erased body from one that went missing.
 */
export function createVerifier(sha256: Sha256Hex = sha256Hex) {
  const faults: EntryFault[] = []
  let checkedCount = 0
  let erasedCount = 0
  let chain = ''
  let check = linkCheck()
  return {
    add(entry: StoredEntry, hasErasure: boolean): void {
      checkedCount += 1
      const fault = entryFault(entry, sha256)
      if (fault) faults.push(fault)
      if (entry.body === null && hasErasure) erasedCount += 1
      if (entry.body === null && !hasErasure) faults.push(faultOf(entry, 'body-missing', 'no erasure told'))
      const key = chainKey(entry.envelope)
      if (key !== chain) {
        chain = key
        check = linkCheck()
      }
      const broken = fault?.code === 'malformed' ? null : check(entry)
      if (broken) faults.push(broken)
    },
    /** Damage below the entries, in the engine's own words. */
    damaged(detail: string): void {
      faults.push({ code: 'file-damaged', entryId: '', detail })
    },
    report(): ChainReport {
      const counts = { checkedCount, erasedCount }
      return faults.length === 0 ? { ok: true, ...counts } : { ok: false, ...counts, faults }
    },
  }
}

function headFaults(chain: readonly StoredEntry[], head: KnownHead): EntryFault[] {
  const found = chain.find(({ envelope }) => envelope.deviceSeq === head.deviceSeq)
  if (found?.hash === head.hash) return []
  if (found) return [faultOf(found, 'fork', head.hash)]
  const lastSeq = chain.reduce((max, { envelope }) => Math.max(max, envelope.deviceSeq), 0)
  const detail = missingNumbers(lastSeq, head.deviceSeq + 1)
  return [{ code: 'missing-after', entryId: '', deviceId: head.deviceId, deviceSeq: lastSeq, detail }]
}

/** Null for a value with no canonical form: it cannot be what was hashed. */
function canonicalOrNull(value: unknown): string | null {
  try {
    return canonicalJson(value)
  } catch {
    return null
  }
}

function idOf(entry: unknown): string {
  const id = (entry as { envelope?: { id?: unknown } } | null)?.envelope?.id
  return typeof id === 'string' ? id.slice(0, 64) : ''
}

export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
