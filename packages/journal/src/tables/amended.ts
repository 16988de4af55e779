import { UNREAD } from '../fold/ledger.ts'

/**
 * The story itself and, where it is of corrections, the stories they change: that of the entry they name, through
 * corrections of corrections. `storyOfEntry` gives null for an entry that has not arrived.
 */
export function amendedStory(story: string, storyOfEntry: (entryId: string) => string | null): ReadonlySet<string> {
  const told = new Set<string>()
  for (let each: string | null = story; each !== null && each !== UNREAD && !told.has(each); ) {
    told.add(each)
    each = each.startsWith(AMENDING) ? storyOfEntry(each.slice(AMENDING.length)) : null
  }
  return told
}

/** How the name of a story of corrections begins; the id of the entry they name follows. */
export const AMENDING = 'entry:'
