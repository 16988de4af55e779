/**
 * What the house server says before a kitchen is chosen. It decides what stands on that page, so the page waits for it:
 * nothing moves under a finger afterwards. Null while it is waited for.
 */
import type { KitchenSummary } from '@crib/journal'
import { type ComponentType, useEffect, useState } from 'react'
import { useBook } from '../book/book.tsx'
import { HouseRefused } from '../book/exchange.ts'

export interface HouseAnswer {
  readonly kitchens: readonly KitchenSummary[]
  /** Where the house asks who is there. */
  readonly SignIn: ComponentType | null
}

/** A house that is silent: one's own book opens all the same. */
const SILENT: HouseAnswer = { kitchens: [], SignIn: null }
const WAIT_MS = 2000

export function useHouse(): HouseAnswer | null {
  const { kitchensOnServer } = useBook()
  const [house, setHouse] = useState<HouseAnswer | null>(null)

  useEffect(() => {
    let stale = false
    const answer = (given: HouseAnswer) => {
      clearTimeout(waited)
      if (!stale) setHouse(given)
    }
    const waited = setTimeout(() => answer(SILENT), WAIT_MS)
    kitchensOnServer().then(
      (kitchens) => answer({ kitchens, SignIn: null }),
      async (cause) => {
        const asksToSignIn = cause instanceof HouseRefused && cause.status === 401
        const page = asksToSignIn ? await import('../routes/people/sign-in.tsx').catch(() => null) : null
        answer({ kitchens: [], SignIn: page?.default ?? null })
      },
    )
    return () => {
      stale = true
      clearTimeout(waited)
    }
  }, [kitchensOnServer])

  return house
}
