/** A bundle into a store: every line by itself, refused with its reason while the rest lands. */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { type EntryFaultCode, type KnownHead, missingNumbers } from '../chain.ts'
import type { StoredEntry } from '../envelope.ts'
import type { JournalStore } from '../store.ts'
import { BUNDLE_VERSION, type BundleManifest, readManifest, sha256OfFile } from './bundle.ts'
import { linesOfFile } from './json-lines.ts'

export type BundleFaultCode =
  | EntryFaultCode
  /** A line that is no JSON, or longer than any entry can be. */
  | 'not-json'
  /** An entry of another kitchen than the bundle says it is of. */
  | 'foreign-kitchen'
  /** A file that is not what the manifest says, or is not there. Its lines are still tried one by one. */
  | 'file-altered'
  /** No manifest, or none that can be read. The lines are tried; a cut-off end cannot be seen. */
  | 'no-manifest'
  /** Written by a newer version: its lines are tried, what else it holds may be passed over. */
  | 'newer-bundle'

export interface BundleFault {
  readonly code: BundleFaultCode
  /** The file and line, for example `entries.jsonl:17`. */
  readonly where: string
  readonly entryId: string
  readonly detail: string
}

export interface TakenIn {
  readonly acceptedCount: number
  /** Here before. */
  readonly alreadyCount: number
  /** Everything refused or missing, one by one. Empty: the bundle was whole. */
  readonly faults: readonly BundleFault[]
}

export interface TakeInSetup {
  readonly store: JournalStore
  readonly folder: string
}

const LINES_AT_ONCE = 1000
/** Above the longest entry a store keeps, whatever its script. */
const MOST_LINE_BYTES = 2_000_000

/** @throws {RangeError} when the folder holds no `entries.jsonl`. */
export async function takeIn({ store, folder }: TakeInSetup): Promise<TakenIn> {
  const file = join(folder, 'entries.jsonl')
  if (!existsSync(file)) throw new RangeError(`${folder} is no bundle: it has no entries.jsonl`)
  const manifest = await readManifest(folder)
  const faults: BundleFault[] = await manifestFaults(folder, manifest)
  const add = (code: BundleFaultCode, where: string, detail: string, entryId = '') =>
    faults.push({ code, where, entryId, detail })
  let acceptedCount = 0
  let alreadyCount = 0
  let waiting: { entry: StoredEntry; where: string }[] = []

  async function keep(): Promise<void> {
    const { results } = await store.append(waiting.map(({ entry }) => entry))
    for (const [i, { outcome, id, faults: why = [] }] of results.entries()) {
      if (outcome === 'accepted') acceptedCount += 1
      if (outcome === 'already') alreadyCount += 1
      for (const { code, detail } of why) add(code, waiting[i]!.where, detail, id)
    }
    waiting = []
  }

  let number = 0
  for await (const line of linesOfFile(file, MOST_LINE_BYTES)) {
    number += 1
    const where = `entries.jsonl:${number}`
    if (line === null) add('too-large', where, `over ${MOST_LINE_BYTES} bytes`)
    if (line === null || line.trim() === '') continue
    const entry = parsed(line)
    const kitchenId = (entry as StoredEntry | undefined)?.envelope?.kitchenId
    if (entry === undefined) add('not-json', where, line.slice(0, 80))
    else if (manifest && kitchenId !== undefined && kitchenId !== manifest.kitchenId)
      add(
        'foreign-kitchen',
        where,
        String(kitchenId).slice(0, 80),
        String((entry as StoredEntry).envelope.id).slice(0, 64),
      )
    else waiting.push({ entry: entry as StoredEntry, where })
    if (waiting.length >= LINES_AT_ONCE) await keep()
  }
  await keep()
  for (const head of manifest?.heads ?? []) {
    const fault = await headFault(store, head)
    if (fault) faults.push(fault)
  }
  return { acceptedCount, alreadyCount, faults }
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return undefined
  }
}

async function manifestFaults(folder: string, manifest: BundleManifest | null): Promise<BundleFault[]> {
  const where = 'manifest.json'
  if (!manifest) return [{ code: 'no-manifest', where, entryId: '', detail: folder }]
  const faults: BundleFault[] = []
  if (manifest.formatVersion > BUNDLE_VERSION) {
    const detail = `${manifest.formatVersion} of ${BUNDLE_VERSION}`
    faults.push({ code: 'newer-bundle', where, entryId: '', detail })
  }
  for (const { path, sha256 } of manifest.files) {
    const here = join(folder, path)
    const inside = !path.split('/').includes('..')
    if (inside && existsSync(here) && (await sha256OfFile(here)) === sha256) continue
    faults.push({
      code: 'file-altered',
      where: path,
      entryId: '',
      detail: inside && existsSync(here) ? 'sha256' : 'not there',
    })
  }
  return faults
}

/** The chain must now reach as far as the bundle's did. */
async function headFault(store: JournalStore, head: KnownHead): Promise<BundleFault | null> {
  const here = await store.head(head.kitchenId, head.deviceId)
  const lastSeq = here?.deviceSeq ?? 0
  if (lastSeq >= head.deviceSeq) return null
  const detail = `${head.deviceId} ${missingNumbers(lastSeq, head.deviceSeq + 1)}`
  return { code: 'missing-after', where: 'manifest.json', entryId: '', detail }
}
