/** Sentences from keys, in one language, with the keeper's own nouns. The only user of the message library. */
import type { Quantity, Sentence } from '@crib/science'
import { createInstance } from 'i18next'
import { ENGLISH, type MessageKey } from './messages.ts'
import { formatNumber, formatQuantity } from './units.ts'

/** Common nouns a keeper may rename once, everywhere. */
export interface Nouns {
  readonly hull: string
  readonly hulls: string
  readonly jar: string
  readonly jars: string
  /** The corn's own name where a sentence speaks of "the corn". */
  readonly corn: string
}

export const PLAIN_NOUNS: Nouns = { hull: 'hull', hulls: 'hulls', jar: 'jar', jars: 'jars', corn: 'corn' }

export interface SayParams {
  readonly [name: string]: string | number | Quantity
}

export interface Words {
  say(key: MessageKey, params?: SayParams): string
  /** A sentence that came through JSON; throws on a key no message file has. */
  sentence(sentence: Sentence): string
}

export function createWords(nouns: Nouns = PLAIN_NOUNS): Words {
  return createWordsOf(ENGLISH, nouns)
}

/** Message files by part, for a door that does not carry all of them at once. */
export interface MessageFiles {
  readonly [part: string]: { readonly [key: string]: string }
}

/** The words of some parts; a key of another part throws as a missing one does. */
export function createWordsOf(messages: MessageFiles, nouns: Nouns = PLAIN_NOUNS): Words {
  const library = createInstance({
    lng: 'en',
    resources: { en: messages },
    ns: Object.keys(messages),
    initAsync: false,
    interpolation: { escapeValue: false, defaultVariables: { ...nouns } },
    missingInterpolationHandler: (text, found) => {
      throw new RangeError(`no value for "${found[1]?.trim()}" in "${text}"`)
    },
  })
  library.init()

  const sentence = ({ key, params = {} }: Sentence): string => {
    if (!library.exists(key, { count: 1 })) throw new RangeError(`no message "${key}"`)
    const gaps = Object.fromEntries(Object.entries(params).map(([name, value]) => [name, gapText(name, value)]))
    return library.t(key, { ...nouns, ...gaps })
  }
  return { sentence, say: (key, params) => sentence({ key, ...(params && { params }) }) }
}

/** `count` stays a number, since it chooses the plural. */
function gapText(name: string, value: string | number | Quantity): string | number {
  if (typeof value === 'string') return value
  if (typeof value === 'number') return name === 'count' ? value : formatNumber(value)
  return formatQuantity(value)
}
