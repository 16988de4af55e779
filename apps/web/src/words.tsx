/**
 * The message catalogue with the keeper's own nouns, for every screen. The first screen carries the words of three parts
 * (shell, common, errors); the rest follows at once, and every other screen waits for it.
 */
import type { Sentence } from '@crib/science'
import { createWordsOf, type MessageFiles, type Nouns, PLAIN_NOUNS, type Words } from '@crib/wording'
import { createContext, type ReactNode, use, useContext, useMemo, useSyncExternalStore } from 'react'
import common from '../../../messages/en/common.json' with { type: 'json' }
import errors from '../../../messages/en/errors.json' with { type: 'json' }
import shell from '../../../messages/en/shell.json' with { type: 'json' }

let messages: MessageFiles = { shell, common, errors }
const listeners = new Set<() => void>()
let fetching: Promise<void> | null = null

function restOfWords(): Promise<void> {
  fetching ??= import('./rest-of-words.ts').then(({ ALL_WORDS }) => {
    messages = ALL_WORDS
    for (const listener of listeners) listener()
  })
  return fetching
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  void restOfWords().catch(() => undefined) // the screen that waits for them says what went wrong
  return () => listeners.delete(listener)
}

const WordsContext = createContext<Words>(createWordsOf(messages))

export function WordsProvider({ nouns, children }: { readonly nouns?: Partial<Nouns>; readonly children: ReactNode }) {
  const loaded = useSyncExternalStore(subscribe, () => messages)
  const words = useMemo(() => createWordsOf(loaded, { ...PLAIN_NOUNS, ...nouns }), [loaded, nouns])
  return <WordsContext value={words}>{children}</WordsContext>
}

/** Waits for the words of every part before it shows anything inside. */
export function WithAllWords({ children }: { readonly children: ReactNode }) {
  use(restOfWords())
  return children
}

/** `say(key, params)` for a key written in code; `sentence(s)` for one that came from a plan. */
export function useWords(): Words {
  return useContext(WordsContext)
}

/** One sentence as text. */
export function Say({ sentence }: { readonly sentence: Sentence }) {
  return useWords().sentence(sentence)
}
