/** `npm start` ends here: opens the book on the embedded store and prints where. */
import { existsSync, mkdirSync } from 'node:fs'
import { enableCompileCache } from 'node:module'
import { homedir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { createWords } from '@crib/wording'
import type { BackupTold } from './backups.ts'

// The next start finds its modules stripped and compiled.
enableCompileCache()

const NODE_AT_LEAST = [24, 15] as const
const words = createWords()

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
if (major < NODE_AT_LEAST[0] || (major === NODE_AT_LEAST[0] && minor < NODE_AT_LEAST[1])) {
  console.error(words.say('terminal:node-too-old', { found: process.versions.node, needed: NODE_AT_LEAST.join('.') }))
  process.exit(1)
}

const { values } = parseArgs({
  options: {
    port: { type: 'string', default: '4747' },
    host: { type: 'string', default: '127.0.0.1' },
    // Behind a proxy that ends TLS: everybody signs in.
    hosted: { type: 'boolean', default: false },
    // One more link that makes whoever opens it a keeper.
    invite: { type: 'boolean', default: false },
    // A folder or stick the server copies the book to, by itself.
    'backup-to': { type: 'string' },
    'backup-every': { type: 'string', default: '24' },
    'backup-keep': { type: 'string', default: '14' },
    book: { type: 'string', default: process.env.KETTLE_BOOK ?? join(homedir(), '.kettle-and-crib', 'book.sqlite') },
  },
})

const port = Number(values.port)
if (!Number.isInteger(port) || port < 0 || port > 65_535) {
  console.error(words.say('terminal:bad-port', { given: values.port }))
  process.exit(2)
}

const everyHours = countOf(values['backup-every'])
const keepCount = countOf(values['backup-keep'])
const backupInto = values['backup-to'] === undefined ? null : resolve(values['backup-to'])

const isFile = !/^postgres(ql)?:\/\//.test(values.book)
if (isFile) mkdirSync(dirname(values.book), { recursive: true })
const isNew = isFile && !existsSync(values.book)
const webDist = fileURLToPath(new URL('../../web/dist', import.meta.url))
const { startServer } = await import('./start-server.ts')
const server = await startServer({
  port,
  host: values.host,
  bookFile: values.book,
  webDist,
  hosted: values.hosted,
  ...(backupInto !== null && { backup: { into: backupInto, everyHours, keepCount, told: tellBackup } }),
})

console.log(words.say('terminal:open-at', { url: server.url }))
console.log(
  words.say(isNew ? 'terminal:book-new' : 'terminal:book-old', {
    file: isFile ? values.book : withoutPassword(values.book),
  }),
)
if (backupInto !== null) {
  const plan = { folder: backupInto, hours: everyHours, keep: keepCount }
  console.log(words.say('terminal:backups-planned', plan))
}
console.log(words.say('terminal:demo-offer', { url: `${server.url}?look=demo` }))
if (server.reach !== 'home') {
  console.log(words.say('shell:people-open-to-network', { host: values.host }))
  if (values.invite || !(await server.hasPeople())) {
    const link = await server.inviteKeeper()
    const { qrText } = await import('./people/qr-text.ts')
    console.log(words.say('shell:people-first-invitation', { link }))
    console.log(qrText(link))
  }
}

for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => void server.close().then(() => process.exit(0)))
}

/** A whole number from 1 up; the program ends on anything else. */
function countOf(given: string): number {
  const count = Number(given)
  if (Number.isInteger(count) && count >= 1) return count
  console.error(words.say('terminal:bad-count', { given }))
  process.exit(2)
}

function tellBackup(outcome: BackupTold): void {
  if (outcome.kind === 'failed') {
    console.error(words.say('terminal:backup-failed', { folder: outcome.into, detail: outcome.detail }))
    return
  }
  const { folder, kitchens } = outcome.made
  const count = kitchens.reduce((sum, { entryCount }) => sum + entryCount, 0)
  console.log(words.say('terminal:backup-made', { count, folder }))
}

/** An address of PostgreSQL as it may be shown. */
function withoutPassword(address: string): string {
  const shown = new URL(address)
  shown.password = ''
  return shown.toString()
}
