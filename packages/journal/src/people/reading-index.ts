/**
 * How far each line of a kitchen is opened, kept as lines arrive one by one, with every change of it in order.
 *
 * A line is opened as far as its lot was last set to, else as far as the line itself says. It is never opened further
 * than any lot or seed its story names: a batch does not tell where its corn is from, unless that lot may be seen too.
 * A name nobody has told yet closes the story until it is known. Whoever may read (reader-view.ts) is left out here.
 */
import type { StoredEntry, Visibility } from '../envelope.ts'
import { placeEntry } from '../fold/ledger.ts'
import { splitStory } from '../fold/story-facts.ts'
import { type Width, widthOf } from './roles.ts'

export interface IndexedLine {
  readonly id: string
  readonly personId: string
  readonly deviceId: string
  readonly story: string
  /** As the envelope says. */
  readonly own: Width
  /** As it stands now. */
  width: Width
}

export interface WidthChange {
  readonly line: IndexedLine
  readonly width: Width
}

export interface ReadingIndex {
  add(entry: StoredEntry): void
  /** Every line when it came, and again each time it was opened or closed. Only grows. */
  readonly changes: readonly WidthChange[]
  readonly lineCount: number
  /** Who wrote this device's first line here. */
  personOfDevice(deviceId: string): string | undefined
  /** Who wrote the line. */
  personOfLine(entryId: string): string | undefined
  /** How far the line is opened now. */
  widthOfLine(entryId: string): Width | undefined
}

interface Story {
  readonly lines: IndexedLine[]
  /** Ids its lines name, other than its own. */
  readonly names: Set<string>
  /** What its first line says. */
  readonly opening: Width
}

/** Their origin is what a hidden lot hides. Of anything else only the id is told, which says nothing. */
const ORIGINS = ['lot', 'seed', 'seed-lot']
const KEEPER: Width = 0
const ANYONE: Width = 3
const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g
const TYPES_WITHOUT_NAMES = ['people', 'kitchen', 'share']

export function createReadingIndex(): ReadingIndex {
  const stories = new Map<string, Story>()
  /** Stories told of a thing, by its id: a lot may be both brought in and put up. */
  const storiesOf = new Map<string, Set<string>>()
  const namedBy = new Map<string, Set<string>>()
  const sets = new Map<string, Width>()
  const byId = new Map<string, IndexedLine>()
  const devices = new Map<string, string>()
  const changes: WidthChange[] = []

  const least = (widths: Iterable<Width>): Width => {
    let width: Width = ANYONE
    for (const each of widths) if (each < width) width = each
    return width
  }

  /** How far a named thing lets those who name it be opened. */
  function widthOfName(id: string, seen: ReadonlySet<string>): Width {
    if (seen.has(id)) return ANYONE
    const told = storiesOf.get(id)
    if (!told) return KEEPER
    const origins = [...told].filter((story) => ORIGINS.includes(splitStory(story).type))
    if (origins.length === 0) return ANYONE
    return widthOfThing(id, seen)
  }

  function widthOfThing(id: string, seen: ReadonlySet<string>): Width {
    const inside = new Set([...seen, id])
    return least(
      [...(storiesOf.get(id) ?? [])].flatMap((name) => {
        const story = stories.get(name)!
        return [sets.get(id) ?? story.opening, capOf(story, inside)]
      }),
    )
  }

  function capOf(story: Story, seen: ReadonlySet<string>): Width {
    return least([...story.names].map((name) => widthOfName(name, seen)))
  }

  function widthNow(line: IndexedLine, within: ReadonlySet<string> = new Set()): Width {
    const { type, id } = splitStory(line.story)
    if (type === 'people') return line.own
    if (type === 'share') return storiesOf.has(id) ? widthOfThing(id, new Set()) : KEEPER
    const cap = capOf(stories.get(line.story)!, new Set([id]))
    if (type !== 'entry') return least([sets.get(id) ?? line.own, cap])
    const target = byId.get(id)
    if (!target || within.has(line.id)) return KEEPER
    return least([widthNow(target, new Set([...within, line.id])), cap])
  }

  /** Stories whose lines may be opened otherwise once this one is. */
  function touch(name: string, touched: Set<string>): void {
    if (touched.has(name)) return
    touched.add(name)
    const { type, id } = splitStory(name)
    if (type !== 'entry' && type !== 'people' && type !== 'unread') {
      touch(`share:${id}`, touched)
      for (const other of namedBy.get(id) ?? []) touch(other, touched)
      for (const other of storiesOf.get(id) ?? []) touch(other, touched)
    }
    for (const line of stories.get(name)?.lines ?? []) {
      if (stories.has(`entry:${line.id}`)) touch(`entry:${line.id}`, touched)
    }
  }

  function lookAgain(touched: ReadonlySet<string>, except: IndexedLine): void {
    for (const name of touched) {
      for (const line of stories.get(name)?.lines ?? []) {
        if (line === except) continue
        const width = widthNow(line)
        if (width === line.width) continue
        line.width = width
        changes.push({ line, width })
      }
    }
  }

  return {
    changes,
    get lineCount() {
      return byId.size
    },
    personOfDevice: (deviceId) => devices.get(deviceId),
    personOfLine: (entryId) => byId.get(entryId)?.personId,
    widthOfLine: (entryId) => byId.get(entryId)?.width,
    add(entry) {
      const { id, personId, deviceId, visibility } = entry.envelope
      if (byId.has(id)) return
      const { entity } = placeEntry(entry)
      // What this version cannot read stands alone: the names in it close it, and nothing else.
      const name = entity === 'unread' ? `unread:${id}` : entity
      const thing = splitStory(name)
      const own = widthOf(visibility)
      const line: IndexedLine = { id, personId, deviceId, story: name, own, width: KEEPER }
      byId.set(id, line)
      if (!devices.has(deviceId)) devices.set(deviceId, personId)

      const story = stories.get(name) ?? { lines: [], names: new Set<string>(), opening: own }
      const isNew = !stories.has(name)
      stories.set(name, story)
      story.lines.push(line)
      let changesOthers = false
      if (isNew && !['people', 'share', 'entry', 'unread'].includes(thing.type)) {
        changesOthers = namedBy.has(thing.id) || stories.has(`share:${thing.id}`)
        listed(storiesOf, thing.id).add(name)
      }
      if (stories.has(`entry:${id}`)) changesOthers = true
      if (thing.type === 'share') {
        const set = widthOf((entry.body!.value as { visibility: Visibility }).visibility)
        changesOthers = sets.get(thing.id) !== set
        sets.set(thing.id, set)
      } else if (entry.body && !TYPES_WITHOUT_NAMES.includes(thing.type)) {
        for (const [named] of JSON.stringify(entry.body.value).matchAll(UUID)) {
          if (named === thing.id || story.names.has(named)) continue
          story.names.add(named)
          listed(namedBy, named).add(name)
          changesOthers ||= !isNew
        }
      }
      line.width = widthNow(line)
      if (changesOthers) {
        const touched = new Set<string>()
        touch(name, touched)
        lookAgain(touched, line)
      }
      changes.push({ line, width: line.width })
    },
  }
}

function listed(map: Map<string, Set<string>>, key: string): Set<string> {
  const found = map.get(key) ?? new Set<string>()
  map.set(key, found)
  return found
}
