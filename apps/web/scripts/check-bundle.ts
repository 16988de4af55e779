/**
 * Measures what the first screen costs, compressed, and proves that nothing of Node came along. Run after the build.
 * The first screen is the entry, everything it imports at once, and the route file of the year with the same.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'

export const FIRST_SCREEN_LIMIT_BYTES = 170 * 1000

const DIST = join(import.meta.dirname, '../dist')
const FIRST_SCREENS = ['index.html', 'src/routes/home.tsx']

interface Chunk {
  readonly file: string
  readonly imports?: readonly string[]
}

export interface BundleReport {
  readonly firstScreenBytes: number
  readonly firstScreenFiles: readonly string[]
  /** Scripts that mention a `node:` module. */
  readonly withNode: readonly string[]
}

export function checkBundle(dist = DIST): BundleReport {
  const manifest: Record<string, Chunk> = JSON.parse(readFileSync(join(dist, '.vite/manifest.json'), 'utf8'))
  const files = new Set<string>()
  const follow = (key: string): void => {
    const chunk = manifest[key]
    if (!chunk) throw new Error(`the build has no ${key}`)
    if (files.has(chunk.file)) return
    files.add(chunk.file)
    chunk.imports?.forEach(follow)
  }
  FIRST_SCREENS.forEach(follow)
  const scripts = [...files].filter((file) => file.endsWith('.js'))
  const all = readdirSync(join(dist, 'assets')).filter((file) => file.endsWith('.js'))
  return {
    firstScreenBytes: scripts.reduce((sum, file) => sum + gzipSync(readFileSync(join(dist, file))).length, 0),
    firstScreenFiles: scripts,
    withNode: all.filter((file) => /["'`]node:[a-z]/.test(readFileSync(join(dist, 'assets', file), 'utf8'))),
  }
}

if (import.meta.main) {
  const { firstScreenBytes, firstScreenFiles, withNode } = checkBundle()
  const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`
  console.log(
    `first screen: ${kB(firstScreenBytes)} of compressed script in ${firstScreenFiles.length} files, limit ${kB(FIRST_SCREEN_LIMIT_BYTES)}`,
  )
  for (const file of withNode) console.error(`${file} mentions a node: module`)
  process.exit(firstScreenBytes <= FIRST_SCREEN_LIMIT_BYTES && withNode.length === 0 ? 0 : 1)
}
