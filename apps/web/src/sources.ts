/** The cited works by key, read from the one bibliography; fetched only when somebody asks what stands behind a number. */
import { readBib, type Source } from './bibliography.ts'

let sources: Promise<Record<string, Source>> | null = null

export function sourcesByKey(): Promise<Record<string, Source>> {
  sources ??= import('../../../packages/science/sources.bib?raw').then(({ default: bib }) => readBib(bib))
  return sources
}

export type { Source }
