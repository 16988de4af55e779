/** What this kitchen does by habit and every screen asks for: which measure stands first, what a bare quart means. */
import type { LiquidOrDry } from '@crib/science'
import { createContext, type ReactNode, useContext, useMemo } from 'react'
import { useBook } from './book/book.tsx'

export interface Preferences {
  readonly measureFirst: 'us' | 'metric'
  readonly vagueQuart: LiquidOrDry
  rememberVagueQuart(meaning: LiquidOrDry): void
}

const PreferencesContext = createContext<Preferences>({
  measureFirst: 'us',
  vagueQuart: 'liquid',
  rememberVagueQuart: () => undefined,
})

export function PreferencesProvider({ children }: { readonly children: ReactNode }) {
  const { facts, kitchenId, write } = useBook()
  const measureFirst = facts.kitchen?.measureFirst ?? 'us'
  const vagueQuart = facts.kitchen?.vagueQuart ?? 'liquid'
  const preferences = useMemo<Preferences>(
    () => ({
      measureFirst,
      vagueQuart,
      rememberVagueQuart: (meaning) => {
        if (kitchenId) void write('kitchen-noted', { kitchenId, vagueQuart: meaning })
      },
    }),
    [measureFirst, vagueQuart, kitchenId, write],
  )
  return <PreferencesContext value={preferences}>{children}</PreferencesContext>
}

export function usePreferences(): Preferences {
  return useContext(PreferencesContext)
}
