/** Keys of sources.bib, for tests and scripts. */
import { readFileSync } from 'node:fs'

export const SOURCES_BIB = new URL('../sources.bib', import.meta.url)

export interface BibEntry {
  readonly key: string
  /** The entry's `note`, which says whether the figure was seen or is from memory. */
  readonly note: string | null
  readonly text: string
}

export function parseBib(text: string): readonly BibEntry[] {
  return text.split(/^(?=@)/m).flatMap((entry) => {
    const key = /^@[a-z]+\{\s*([^,\s]+)\s*,/i.exec(entry)?.[1]
    if (key === undefined) return []
    return [{ key, note: /\bnote\s*=\s*[{"](.+)[}"]\s*,?\s*$/m.exec(entry)?.[1] ?? null, text: entry.trimEnd() }]
  })
}

export function readBib(): readonly BibEntry[] {
  return parseBib(readFileSync(SOURCES_BIB, 'utf8'))
}
