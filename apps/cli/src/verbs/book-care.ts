/** `crib book backup`, `restore`, `bundle`, `move` and `room`: the book taken care of. */
import { resolve } from 'node:path'
import type { EntryFault, JournalStore } from '@crib/journal'
import { type BundleFault, backupDue, backupsIn, backupTo, moveKitchen, restore, writeBundle } from '@crib/journal/care'
import { ENGLISH, type MessageKey, type Words } from '@crib/wording'
import type { Command } from 'commander'
import { type BookFlags, chooseKitchen, openBookAt, withStore } from '../book.ts'
import { showInstant } from '../clock-times.ts'
import { badInput, EXIT } from '../exit-codes.ts'
import { type Door, printJson, verb, withBook } from '../verb.ts'

export function addBookCare(parent: Command, door: Door): void {
  addBackup(parent, door)
  addRestore(parent, door)
  addBundle(parent, door)
  addMove(parent, door)
  addRoom(parent, door)
}

function addBackup(parent: Command, door: Door): void {
  const { terminal, words } = door
  type Flags = BookFlags & { readonly keep?: string; readonly every?: string }
  withBook(verb(parent, door, 'backup <folder>', 'terminal:about-book-backup'), door)
    .option('--keep <count>', words.say('terminal:flag-keep'))
    .option('--every <hours>', words.say('terminal:flag-every'))
    .action((folder: string, flags: Flags) =>
      withStore(flags, terminal, async (store) => {
        const into = resolve(folder)
        if (flags.every !== undefined) {
          const newest = (await backupsIn(into))[0]
          const lastMadeAtMs = newest?.madeAtMs ?? null
          const { due, nextAtMs } = backupDue({ everyHours: countOf(flags.every), lastMadeAtMs, nowMs: terminal.now() })
          if (!due) {
            if (flags.json) return printJson(door, { kind: 'not-due', nextAt: new Date(nextAtMs).toISOString() })
            return terminal.out(words.say('terminal:backup-not-due', { at: showInstant(nextAtMs, terminal.zone) }))
          }
        }
        const made = await backupTo({
          store,
          into,
          nowMs: terminal.now(),
          ...(flags.keep !== undefined && { keepCount: countOf(flags.keep) }),
        })
        if (flags.json) return printJson(door, { kind: 'backup-made', ...made })
        const count = made.kitchens.reduce((sum, { entryCount }) => sum + entryCount, 0)
        terminal.out(words.say('terminal:backup-made', { count, folder: made.folder }))
      }),
    )
}

function countOf(given: string): number {
  const count = Number(given)
  if (!Number.isInteger(count) || count < 1) throw badInput('terminal:bad-count', { given })
  return count
}

function addRestore(parent: Command, door: Door): void {
  const { terminal, words, end } = door
  withBook(verb(parent, door, 'restore <folder>', 'terminal:about-book-restore'), door).action(
    (folder: string, flags: BookFlags) =>
      withStore(
        flags,
        terminal,
        async (store) => {
          const restored = await restore(store, resolve(folder)).catch((error) => {
            throw error instanceof RangeError ? badInput('terminal:no-backup-there', { folder }) : error
          })
          if (!restored.whole) end(EXIT.trouble)
          if (flags.json) return printJson(door, { kind: 'restored', ...restored })
          for (const { acceptedCount, alreadyCount, faults } of Object.values(restored.kitchens)) {
            const counts = { accepted: acceptedCount, already: alreadyCount, refused: faults.length }
            terminal.out(words.say('terminal:imported', counts))
            for (const fault of faults) terminal.out(faultText(fault, words))
          }
        },
        { mayBegin: true },
      ),
  )
}

function addBundle(parent: Command, door: Door): void {
  const { terminal, words } = door
  withBook(verb(parent, door, 'bundle <folder>', 'terminal:about-book-bundle'), door).action(
    (folder: string, flags: BookFlags) =>
      withStore(flags, terminal, async (store, file) => {
        const kitchenId = await chooseKitchen(store, flags.kitchen)
        if (kitchenId === null) throw badInput('terminal:no-kitchen-yet', { file })
        const into = resolve(folder)
        const made = await writeBundle({ store, kitchenId, into, nowMs: terminal.now() })
        if (flags.json) return printJson(door, { kind: 'bundle-made', ...made })
        terminal.out(words.say('terminal:bundle-made', { count: made.manifest.entryCount, folder: made.folder }))
      }),
  )
}

function addMove(parent: Command, door: Door): void {
  const { terminal, words, end } = door
  withBook(verb(parent, door, 'move <book>', 'terminal:about-book-move'), door).action(
    (where: string, flags: BookFlags) =>
      withStore(flags, terminal, async (from) => {
        const to = await openBookAt(where)
        try {
          const reports = []
          for (const kitchenId of await kitchensMeant(from, flags)) reports.push(await moveKitchen(from, to, kitchenId))
          const whole = reports.every(({ same, refused }) => same && refused.length === 0)
          if (!whole) end(EXIT.trouble)
          if (flags.json) return printJson(door, { kind: 'moved', whole, kitchens: reports })
          for (const { kitchenId, movedCount, alreadyCount, refused } of reports) {
            terminal.out(words.say('terminal:moved', { kitchen: kitchenId, moved: movedCount, already: alreadyCount }))
            for (const fault of refused) terminal.out(faultText({ ...fault, where: fault.entryId }, words))
          }
          terminal.out(words.say(whole ? 'terminal:moved-whole' : 'terminal:moved-not-whole'))
        } finally {
          await to.close()
        }
      }),
  )
}

async function kitchensMeant(store: JournalStore, flags: BookFlags): Promise<readonly string[]> {
  if (flags.kitchen === undefined) return (await store.kitchens()).map(({ kitchenId }) => kitchenId)
  const kitchenId = await chooseKitchen(store, flags.kitchen)
  return kitchenId === null ? [] : [kitchenId]
}

function addRoom(parent: Command, door: Door): void {
  const { terminal, words } = door
  withBook(verb(parent, door, 'room', 'terminal:about-book-room'), door).action((flags: BookFlags) =>
    withStore(flags, terminal, async (store) => {
      const { entryCount, bytes } = await store.storageUse()
      if (flags.json) return printJson(door, { kind: 'room', entryCount, bytes })
      terminal.out(words.say('terminal:book-room', { count: entryCount, megabytes: (bytes / 1e6).toFixed(1) }))
    }),
  )
}

/** Why a line was not taken, in words; a reason this version has no sentence for is shown as it is. */
function faultText(
  fault: Pick<BundleFault, 'code' | 'where' | 'detail'> | (EntryFault & { where: string }),
  words: Words,
) {
  const own = `line-${fault.code}`
  const key = (own in ENGLISH.errors ? `errors:${own}` : 'errors:line-other') as MessageKey
  return words.say(key, { where: fault.where, detail: fault.detail })
}
