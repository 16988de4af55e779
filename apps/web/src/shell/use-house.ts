/**
 * What the house server says before a kitchen is chosen. It decides what stands on that page, so the page waits for it:
 * nothing moves under a finger afterwards. Null while it is waited for.
 */
import type { KitchenSummary } from '@crib/journal'
import { useEffect, useState } from 'react'
import { useBook } from '../book/book.tsx'
import { HouseRefused } from '../book/exchange.ts'

export interface HouseAnswer {
  readonly kitchens: readonly KitchenSummary[]
  readonly asksToSignIn: boolean
}

/** A house that is silent: one's own book opens all the same. */
const SILENT: HouseAnswer = { kitchens: [], asksToSignIn: false }
const WAIT_MS = 2000

/** `prepareSignIn` is waited for before the answer that asks for it. */
export function useHouse(prepareSignIn: () => Promise<unknown>): HouseAnswer | null {
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
      (kitchens) => answer({ kitchens, asksToSignIn: false }),
      async (cause) => {
        const asksToSignIn = cause instanceof HouseRefused && cause.status === 401
        // A page that does not come is told of where it is shown.
        if (asksToSignIn) await prepareSignIn().catch(() => null)
        answer({ kitchens: [], asksToSignIn })
      },
    )
    return () => {
      stale = true
      clearTimeout(waited)
    }
  }, [kitchensOnServer, prepareSignIn])

  return house
}
