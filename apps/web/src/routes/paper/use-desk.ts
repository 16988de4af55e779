/** What every printed sheet is made from: the book, its words, the paper in the tray. */
import type { Visibility } from '@crib/journal'
import type { PaperSize } from '@crib/paper'
import { isStandingRead, seasonYearOf } from '@crib/planning'
import { useMemo, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'
import { useWords } from '../../words.tsx'
import type { Desk } from './documents.ts'

const PAPER_KEY = 'paper-in-the-tray'
const LARGE_KEY = 'paper-large-print'

function remembered(key: string): string | null {
  try {
    return localStorage.getItem(key)
  } catch {
    return null
  }
}

function remember(key: string, value: string): void {
  try {
    localStorage.setItem(key, value)
  } catch {
    // Asked again next time.
  }
}

export interface DeskInHand {
  readonly desk: Desk
  readonly setPaper: (paper: PaperSize) => void
  readonly setLargePrint: (isLargePrint: boolean) => void
  readonly setAudience: (audience: Visibility) => void
}

/** Whose eyes a sheet is for is chosen anew each time: the keeper's, until told otherwise. */
export function useDesk(): DeskInHand {
  const { facts } = useBook()
  const words = useWords()
  const [paper, setPaper] = useState<PaperSize>(() => (remembered(PAPER_KEY) === 'a4' ? 'a4' : 'letter'))
  const [isLargePrint, setLargePrint] = useState(() => remembered(LARGE_KEY) === 'yes')
  const [audience, setAudience] = useState<Visibility>('keeper')
  const desk = useMemo<Desk>(() => {
    const today = localDay()
    const seasonYear = seasonYearOf(facts, today)
    return {
      facts,
      words,
      paper,
      isLargePrint,
      audience,
      today,
      isStandingRead: (alkali) => isStandingRead(facts, alkali, seasonYear),
    }
  }, [facts, words, paper, isLargePrint, audience])
  return {
    desk,
    setAudience,
    setPaper: (next) => {
      setPaper(next)
      remember(PAPER_KEY, next)
    },
    setLargePrint: (next) => {
      setLargePrint(next)
      remember(LARGE_KEY, next ? 'yes' : 'no')
    },
  }
}
