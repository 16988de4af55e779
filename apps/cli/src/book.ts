/**
 * The book as the verbs use it: opened at one place, read into facts, written as this terminal's own device.
 * Leaves out: what an entry means (package journal).
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import {
  type BodyOf,
  createId,
  createRecorder,
  type Facts,
  foldFacts,
  type JournalStore,
  type Kind,
  NO_FACTS,
  type StoredEntry,
} from '@crib/journal'
import type { ServerStore } from '@crib/journal/open'
import { defaultBookFile, openSqliteStore } from '@crib/journal/sqlite'
import { createWords, PLAIN_NOUNS, type Words } from '@crib/wording'
import { badInput } from './exit-codes.ts'
import type { Terminal } from './terminal.ts'

export interface BookFlags {
  readonly book?: string
  readonly kitchen?: string
  readonly json?: true
}

export interface OpenBook {
  readonly file: string
  readonly store: JournalStore
  /** Null in a book where nothing is written yet. */
  readonly kitchenId: string | null
  /** Entries of this kitchen, in the order this store received them. */
  readonly entries: readonly StoredEntry[]
  readonly facts: Facts
  /** With the keeper's own nouns. */
  readonly words: Words
  newId(): string
  /** Resolves when the entry is on disk. `atMs` is when it happened, now when left out. */
  record<K extends Kind>(kind: K, body: BodyOf<K>, atMs?: number): Promise<StoredEntry>
}

interface Device {
  readonly deviceId: string
  readonly personId: string
}

const PAGE = 1000

/** The file the book is in: named, else KETTLE_BOOK, else the one in the home folder. */
export function bookFile({ book }: BookFlags, { env, home }: Terminal): string {
  return book ?? defaultBookFile(env, home)
}

/**
 * Opens the store, hands it on, and closes it whatever happens.
 *
 * @throws {BadInput} when there is no such book and `mayBegin` does not allow a new one: reading never leaves a file behind.
 */
export async function withStore<Result>(
  flags: BookFlags,
  terminal: Terminal,
  use: (store: ServerStore, file: string) => Promise<Result>,
  { mayBegin = false } = {},
): Promise<Result> {
  const file = bookFile(flags, terminal)
  if (!isAddress(file) && !mayBegin && !existsSync(file)) throw badInput('terminal:no-book-yet', { file })
  const store = await openBookAt(file)
  try {
    return await use(store, file)
  } finally {
    await store.close()
  }
}

const isAddress = (where: string): boolean => /^postgres(ql)?:\/\//.test(where)

/** Opens the book in a file, making its folder, or at an address; the driver for addresses is loaded only then. */
export async function openBookAt(where: string): Promise<ServerStore> {
  if (isAddress(where)) return (await import('@crib/journal/open')).openStore(where)
  mkdirSync(dirname(where), { recursive: true })
  return await openSqliteStore(where)
}

/**
 * Opens one kitchen's book, folded into facts, and closes it whatever happens.
 *
 * @throws {BadInput} when the book holds several kitchens and none is named, or none of that name.
 */
export function withOpenBook<Result>(
  flags: BookFlags,
  terminal: Terminal,
  use: (book: OpenBook) => Promise<Result>,
  options: { readonly mayBegin?: boolean } = {},
): Promise<Result> {
  const useStore = async (store: JournalStore, file: string) => {
    const kitchenId = await chooseKitchen(store, flags.kitchen)
    const entries = kitchenId === null ? [] : await readAll(store, kitchenId)
    const facts = foldFacts(entries)
    const writing = writingTo(file, store, kitchenId, terminal)
    return use({ file, store, kitchenId, entries, facts, words: wordsOf(facts), ...writing })
  }
  return withStore(flags, terminal, useStore, options)
}

/** The facts of the book, or none where there is no book yet: enough to plan from what is typed. */
export function withFacts<Result>(
  flags: BookFlags,
  terminal: Terminal,
  use: (book: Pick<OpenBook, 'facts' | 'words'>) => Promise<Result>,
): Promise<Result> {
  const where = bookFile(flags, terminal)
  if (isAddress(where) || existsSync(where)) return withOpenBook(flags, terminal, use)
  if (flags.book !== undefined) throw badInput('terminal:no-book-yet', { file: flags.book })
  return use({ facts: NO_FACTS, words: createWords() })
}

export async function readAll(store: JournalStore, kitchenId: string): Promise<StoredEntry[]> {
  const entries: StoredEntry[] = []
  for (let after = 0; ; ) {
    const page = await store.read({ kitchenId, after, limit: PAGE })
    entries.push(...page.entries)
    if (page.entries.length === 0 || page.next === after) return entries
    after = page.next
  }
}

/** Which kitchen of the book is meant: the only one, or the one named by its name or id. */
export async function chooseKitchen(store: JournalStore, asked: string | undefined): Promise<string | null> {
  const kitchens = await store.kitchens()
  if (asked === undefined && kitchens.length <= 1) return kitchens[0]?.kitchenId ?? null
  const named = await Promise.all(
    kitchens.map(async ({ kitchenId }) => {
      const name = foldFacts(await readAll(store, kitchenId)).kitchen?.name ?? ''
      return { kitchenId, name }
    }),
  )
  const names = named.map(({ name, kitchenId }) => name || kitchenId).join(', ')
  if (asked === undefined) throw badInput('terminal:which-kitchen', { names })
  const found = named.find(({ name, kitchenId }) => name === asked || kitchenId === asked)
  if (!found) throw badInput('terminal:no-such-kitchen', { given: asked, names })
  return found.kitchenId
}

function writingTo(file: string, store: JournalStore, kitchenId: string | null, terminal: Terminal) {
  const clock = { now: terminal.now }
  const random = { bytes: terminal.randomBytes }
  const newId = () => createId(clock, random)
  const openedId = kitchenId ?? newId()

  async function record<K extends Kind>(kind: K, body: BodyOf<K>, atMs?: number): Promise<StoredEntry> {
    if (kitchenId === null && kind !== 'kitchen-opened') throw badInput('terminal:no-kitchen-yet', { file })
    const opened = kind === 'kitchen-opened' ? (body as BodyOf<'kitchen-opened'>).kitchenId : openedId
    const recorder = createRecorder({
      store,
      kitchenId: opened,
      ...readDevice(file, newId, terminal.home),
      clock,
      random,
      zone: terminal.zone,
    })
    return recorder.record(kind, body, atMs === undefined ? {} : { happenedAt: { instant: atMs } })
  }
  return { newId, record }
}

/** This terminal's own device beside the book, so that two installations never continue one chain. */
function readDevice(file: string, newId: () => string, home: string): Device {
  const deviceFile = isAddress(file) ? join(home, '.kettle-and-crib', 'device.json') : `${file}.device.json`
  if (existsSync(deviceFile)) return JSON.parse(readFileSync(deviceFile, 'utf8')) as Device
  mkdirSync(dirname(deviceFile), { recursive: true })
  const device: Device = { deviceId: newId(), personId: newId() }
  writeFileSync(deviceFile, `${JSON.stringify(device, null, 2)}\n`, { mode: 0o600, flag: 'wx' })
  return device
}

function wordsOf({ kitchen }: Facts): Words {
  const own = Object.fromEntries(Object.entries(kitchen?.nouns ?? {}).filter(([, noun]) => noun !== undefined))
  return createWords({ ...PLAIN_NOUNS, ...own })
}
