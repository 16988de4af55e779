/**
 * What `npm start` and `npm test` share: install and build only when something changed, then hand over to an npm script,
 * so that the Node pinned in node_modules/.bin leads PATH. Plain Node 20 syntax, imports nothing that must be installed.
 */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)))
const INSTALL_STAMP = join(ROOT, 'node_modules', '.installed-from')
export const WEB_DIST = join(ROOT, 'apps/web/dist')
const BUILD_STAMP = join(WEB_DIST, '.built-from')

/** Everything the web build reads. */
const WEB_INPUTS = ['apps/web', 'packages', 'messages', 'package-lock.json']
const NOT_INPUTS = new Set(['node_modules', 'dist', 'e2e', 'testing', 'scripts'])

export function ensureInstalled() {
  const wanted = hashOf([join(ROOT, 'package-lock.json')])
  if (readStamp(INSTALL_STAMP) === wanted) return
  console.log('Installing what is missing (first time, or the lock file changed)...')
  run('npm', ['ci', '--include=dev', '--include=optional', '--no-audit', '--no-fund', '--loglevel=error'])
  writeFileSync(INSTALL_STAMP, wanted)
}

export function ensureWebBuilt() {
  const wanted = hashOf(WEB_INPUTS.flatMap((path) => filesBelow(join(ROOT, path))))
  if (readStamp(BUILD_STAMP) === wanted) return
  console.log('Building the screens...')
  run('npm', ['run', '--silent', 'build:web'])
  writeFileSync(BUILD_STAMP, wanted)
}

/** Runs a command in the project's folder and stops with its exit code when it fails. */
export function run(command, args, env = {}) {
  const done = spawnSync(command, args, {
    cwd: ROOT,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  })
  if (done.status !== 0) process.exit(done.status ?? 1)
}

function readStamp(file) {
  return existsSync(file) ? readFileSync(file, 'utf8') : null
}

function hashOf(files) {
  const hash = createHash('sha256')
  for (const file of files) hash.update(file.slice(ROOT.length)).update('\0').update(readFileSync(file))
  return hash.digest('hex')
}

function filesBelow(path) {
  if (statSync(path).isFile()) return [path]
  return readdirSync(path, { withFileTypes: true })
    .filter((entry) => !NOT_INPUTS.has(entry.name) && !entry.name.includes('.test.'))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => (entry.isDirectory() ? filesBelow(join(path, entry.name)) : [join(path, entry.name)]))
}

export function makeFolder(path) {
  mkdirSync(join(ROOT, path), { recursive: true })
  return join(ROOT, path)
}
