/**
 * The day being planned: what the keeper has said so far, kept on this device until the day begins.
 * `useDraft()` gives { draft, say(change), change(assumption), forget }. Nothing here is a fact: facts are in the book.
 */
import type {
  AlkaliLot,
  BatchPlanInput,
  DayCounts,
  Ending,
  Fill,
  HullingAlkali,
  JarSize,
  Stage,
  WashPattern,
} from '@crib/planning'
import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'

/** Taken for granted unless changed here. */
export interface Assumed {
  readonly alkali?: HullingAlkali
  readonly alkaliLotId?: string
  readonly cupsPerLiquidQt?: AlkaliLot['cupsPerLiquidQt']
  readonly waterToCornRatio?: number
  readonly washPattern?: WashPattern
  /** Null: by the pattern, whatever list the kitchen remembers. */
  readonly stages?: readonly Stage[] | null
  readonly hominyPerDryVolume?: NonNullable<BatchPlanInput['hominyPerDryVolume']>
  readonly hull?: NonNullable<BatchPlanInput['hull']>
  readonly fill?: Fill
  readonly jarSize?: JarSize
  readonly wantsSalt?: boolean
  readonly spareLidFraction?: number
  readonly sortedOutDryFraction?: number
  readonly sortedOutWetFraction?: number
  readonly potNames?: readonly string[]
  readonly cannerIds?: readonly string[]
}

export interface Draft {
  readonly lotId: string | null
  readonly amountText: string
  readonly jarsWanted: number | null
  /** How many parts of the batch go to each end; none for an end not wanted. */
  readonly parts: Partial<Record<Ending, number>>
  /** YYYY-MM-DD */
  readonly date: string
  readonly clockFrom: 'start' | 'finish'
  readonly clock: string
  readonly peopleCount: number
  readonly counts: DayCounts
  /** One: the keeper's own. */
  readonly householdsCount: number
  readonly dayCount: 1 | 2
  readonly assumed: Assumed
}

interface DraftDoor {
  readonly draft: Draft
  readonly told: (change: Partial<Draft>) => void
  readonly assume: (change: Assumed) => void
  readonly forget: () => void
}

const DraftContext = createContext<DraftDoor | null>(null)

const freshDraft = (): Draft => ({
  lotId: null,
  amountText: '',
  jarsWanted: null,
  parts: {},
  date: localDay(),
  clockFrom: 'start',
  clock: '07:30',
  peopleCount: 1,
  counts: 'whole',
  householdsCount: 1,
  dayCount: 1,
  assumed: {},
})

/** A shelf of this device for a plan not yet begun; a browser without one simply forgets it. */
const shelf = {
  read: (key: string): Draft | null => {
    try {
      const kept = localStorage.getItem(key)
      return kept === null ? null : { ...freshDraft(), ...JSON.parse(kept) }
    } catch {
      return null
    }
  },
  put: (key: string, draft: Draft | null) => {
    try {
      if (draft === null) localStorage.removeItem(key)
      else localStorage.setItem(key, JSON.stringify(draft))
    } catch {
      // Nothing is lost but the convenience.
    }
  },
}

export function DraftProvider({ children }: { readonly children: ReactNode }) {
  const { kitchenId } = useBook()
  const key = `day-being-planned:${kitchenId}`
  const [draft, setDraft] = useState<Draft>(() => {
    const kept = shelf.read(key)
    // A plan of a day gone by is planned anew from today.
    const isPast = kept !== null && kept.date < localDay()
    return { ...(kept ?? freshDraft()), ...(isPast && { date: localDay() }) }
  })
  const told = useCallback(
    (change: Partial<Draft>) =>
      setDraft((before) => {
        const next = { ...before, ...change }
        shelf.put(key, next)
        return next
      }),
    [key],
  )
  const door = useMemo<DraftDoor>(
    () => ({
      draft,
      told,
      assume: (change) => told({ assumed: { ...draft.assumed, ...change } }),
      forget: () => {
        shelf.put(key, null)
        setDraft(freshDraft())
      },
    }),
    [draft, told, key],
  )
  return <DraftContext value={door}>{children}</DraftContext>
}

export function useDraft(): DraftDoor {
  const door = useContext(DraftContext)
  if (!door) throw new Error('useDraft is used outside a day being planned')
  return door
}
