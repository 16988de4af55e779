/** The screens as they are now, built once for a whole run: a build of its own, so that no other one changes them under a test. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const ROOT = join(import.meta.dirname, '../../..')

/** Names their folder to every process of the run. */
const FOLDER = 'KETTLE_BUILT_SCREENS'

/** Folder of the screens; built now where nobody has yet, and gone with the process that built it. */
export function builtScreens(): string {
  const built = process.env[FOLDER]
  if (built !== undefined) return built
  const folder = mkdtempSync(join(tmpdir(), 'kettle-screens-'))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  const vite = join(ROOT, 'node_modules/vite/bin/vite.js')
  execFileSync(
    process.execPath,
    [vite, 'build', 'apps/web', '--outDir', folder, '--emptyOutDir', '--logLevel', 'error'],
    {
      cwd: ROOT,
      // The test runner's own NODE_ENV would build the screens for development.
      env: { ...process.env, NODE_ENV: 'production' },
    },
  )
  process.env[FOLDER] = folder
  return folder
}

/** Called by the test runner before its first browser test. */
export default function setup(): void {
  builtScreens()
}
