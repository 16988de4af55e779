/**
 * A kitchen's book in a plain folder, for a stick or a drawer: docs/bundle.md says what is in it. Written beside its
 * final name and moved there once every file is on disk, so that a folder that has the name is whole.
 */
import { createHash } from 'node:crypto'
import { createReadStream, existsSync } from 'node:fs'
import { mkdir, open, readFile, rename, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { KnownHead } from '../chain.ts'
import type { JournalStore } from '../store.ts'
import { bodyColumns, csvHeader, csvRow } from './csv.ts'
import { pagesOf } from './pages.ts'
import { type Picture, pictureOf } from './pictures.ts'

export const BUNDLE_FORMAT = 'kettle-and-crib-bundle'
export const BUNDLE_VERSION = 1

export interface BundleFile {
  readonly path: string
  readonly bytes: number
  readonly sha256: string
}

export interface BundleManifest {
  readonly format: typeof BUNDLE_FORMAT
  readonly formatVersion: number
  readonly kitchenId: string
  /** Empty where the kitchen has none. */
  readonly kitchenName: string
  readonly writtenAt: string
  readonly entryCount: number
  /** How each chain ended, so that a cut-off end is seen. */
  readonly heads: readonly KnownHead[]
  readonly files: readonly BundleFile[]
}

export interface BundleSetup {
  readonly store: JournalStore
  readonly kitchenId: string
  /** Where the bundle's own folder is made. */
  readonly into: string
  readonly nowMs: number
}

/** @throws {RangeError} when the store has no such kitchen. */
export async function writeBundle(
  setup: BundleSetup,
): Promise<{ readonly folder: string; readonly manifest: BundleManifest }> {
  const { store, kitchenId, into, nowMs } = setup
  const writtenAt = new Date(nowMs).toISOString()
  const survey = await surveyOf(store, kitchenId)
  if (survey.entryCount === 0) throw new RangeError(`this book has no kitchen ${kitchenId}`)
  const folder = await freeName(join(into, `${slug(survey.kitchenName) || kitchenId}-${writtenAt.slice(0, 10)}`))
  const making = `${folder}.making`
  await rm(making, { recursive: true, force: true })
  for (const each of ['attachments', 'csv']) await mkdir(join(making, each), { recursive: true })

  const files: BundleFile[] = []
  const lines = await writer(making, 'entries.jsonl')
  const sheets = new Map<string, Writer>()
  const heads = new Map<string, KnownHead>()
  let entryCount = 0
  for await (const page of pagesOf(store, kitchenId)) {
    for (const entry of page) {
      const { kind, deviceId, deviceSeq } = entry.envelope
      lines.add(`${JSON.stringify(entry)}\n`)
      const picture = pictureOf(entry)
      if (picture) files.push(await writePicture(making, picture))
      let sheet = sheets.get(kind)
      const columns = survey.columns.get(kind) ?? []
      if (!sheet) {
        sheet = await writer(making, `csv/${kind}.csv`)
        sheet.add(csvHeader(columns))
        sheets.set(kind, sheet)
      }
      sheet.add(csvRow(picture ? picture.told : entry, columns))
      heads.set(deviceId, { kitchenId, deviceId, deviceSeq, hash: entry.hash })
      entryCount += 1
    }
    for (const each of [lines, ...sheets.values()]) await each.flush()
  }
  for (const each of [lines, ...sheets.values()]) files.push(await each.end())
  const { kitchenName } = survey
  const manifest: BundleManifest = {
    format: BUNDLE_FORMAT,
    formatVersion: BUNDLE_VERSION,
    kitchenId,
    kitchenName,
    writtenAt,
    entryCount,
    heads: [...heads.values()],
    files,
  }
  const last = await writer(making, 'manifest.json')
  last.add(`${JSON.stringify(manifest, null, 2)}\n`)
  await last.end()
  await rename(making, folder)
  await syncFolder(into)
  return { folder, manifest }
}

/** One reading ahead of the writing: the kitchen's name, and which columns each kind's sheet will have. */
async function surveyOf(store: JournalStore, kitchenId: string) {
  const columns = new Map<string, Set<string>>()
  let kitchenName = ''
  let entryCount = 0
  for await (const page of pagesOf(store, kitchenId)) {
    for (const { envelope, body } of page) {
      entryCount += 1
      if (!body) continue
      const known = columns.get(envelope.kind) ?? new Set()
      columns.set(envelope.kind, known)
      for (const column of bodyColumns(body.value).keys()) known.add(column)
      if (envelope.kind === 'kitchen-opened') kitchenName = String((body.value as { name?: unknown }).name ?? '')
    }
  }
  return { kitchenName, entryCount, columns: new Map([...columns].map(([kind, names]) => [kind, [...names].sort()])) }
}

interface Writer {
  add(text: string): void
  flush(): Promise<void>
  end(): Promise<BundleFile>
}

async function writer(folder: string, path: string): Promise<Writer> {
  const file = await open(join(folder, path), 'w')
  const hash = createHash('sha256')
  let waiting: string[] = []
  let bytes = 0
  const flush = async (): Promise<void> => {
    const data = Buffer.from(waiting.join(''), 'utf8')
    waiting = []
    hash.update(data)
    bytes += data.length
    await file.writeFile(data)
  }
  return {
    add: (text) => {
      waiting.push(text)
    },
    flush,
    end: async () => {
      await flush()
      await file.sync()
      await file.close()
      return { path, bytes, sha256: hash.digest('hex') }
    },
  }
}

async function writePicture(making: string, { path, bytes }: Picture): Promise<BundleFile> {
  const file = await open(join(making, path), 'w')
  await file.writeFile(bytes)
  await file.sync()
  await file.close()
  return { path, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') }
}

export async function sha256OfFile(path: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer)
  return hash.digest('hex')
}

/** Null when there is none, or it is no manifest of ours. */
export async function readManifest(folder: string): Promise<BundleManifest | null> {
  try {
    const read = JSON.parse(await readFile(join(folder, 'manifest.json'), 'utf8')) as BundleManifest
    return read.format === BUNDLE_FORMAT && Array.isArray(read.files) && Array.isArray(read.heads) ? read : null
  } catch {
    return null
  }
}

/** Letters and digits of any script stay; everything a stick's file system may refuse becomes a dash. */
function slug(name: string): string {
  const plain = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
  return plain.replace(/^-+|-+$/g, '').slice(0, 40)
}

async function freeName(wanted: string): Promise<string> {
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? wanted : `${wanted}-${count}`
    if (!existsSync(name)) return name
  }
}

/** The new name itself must be on disk too. Some systems do not let a folder be synced; they write it through anyway. */
async function syncFolder(path: string): Promise<void> {
  try {
    const folder = await open(path, 'r')
    await folder.sync()
    await folder.close()
  } catch {
    // nothing to do
  }
}
