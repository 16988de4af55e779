import { getCompileCacheDir } from 'node:module'
import { dirname } from 'node:path'

/** The environment of a thread: it finds its modules stripped and compiled where the program that starts it does. */
export function threadEnv(): NodeJS.ProcessEnv {
  const folder = getCompileCacheDir()
  return folder === undefined ? process.env : { ...process.env, NODE_COMPILE_CACHE: dirname(folder) }
}
