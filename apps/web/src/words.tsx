/** The message catalogue with the keeper's own nouns, for every screen. */
import type { Sentence } from '@crib/science'
import { createWords, type MessageKey, type Nouns, PLAIN_NOUNS, type SayParams, type Words } from '@crib/wording'
import { createContext, type ReactNode, useContext, useMemo } from 'react'

const WordsContext = createContext<Words>(createWords())

export function WordsProvider({ nouns, children }: { readonly nouns?: Partial<Nouns>; readonly children: ReactNode }) {
  const words = useMemo(() => createWords({ ...PLAIN_NOUNS, ...nouns }), [nouns])
  return <WordsContext value={words}>{children}</WordsContext>
}

/** `say(key, params)` for a key written in code; `sentence(s)` for one that came from a plan. */
export function useWords(): Words {
  return useContext(WordsContext)
}

/** One sentence as text. */
export function Say({ sentence }: { readonly sentence: Sentence }) {
  return useWords().sentence(sentence)
}

export type { MessageKey, SayParams }
