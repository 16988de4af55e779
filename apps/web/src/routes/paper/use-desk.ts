/** What every printed sheet is made from: the book, its words, the paper in the tray. */
import type { PaperSize } from '@crib/paper'
import { isStandingRead, seasonYearOf } from '@crib/planning'
import { useMemo, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'
import { useWords } from '../../words.tsx'
import type { Desk } from './documents.ts'

const PAPER_KEY = 'paper-in-the-tray'

function rememberedPaper(): PaperSize {
  try {
    return localStorage.getItem(PAPER_KEY) === 'a4' ? 'a4' : 'letter'
  } catch {
    return 'letter'
  }
}

export function useDesk(): { readonly desk: Desk; readonly setPaper: (paper: PaperSize) => void } {
  const { facts } = useBook()
  const words = useWords()
  const [paper, setPaper] = useState(rememberedPaper)
  const desk = useMemo<Desk>(() => {
    const today = localDay()
    const seasonYear = seasonYearOf(facts, today)
    return { facts, words, paper, today, isStandingRead: (alkali) => isStandingRead(facts, alkali, seasonYear) }
  }, [facts, words, paper])
  return {
    desk,
    setPaper: (next) => {
      setPaper(next)
      try {
        localStorage.setItem(PAPER_KEY, next)
      } catch {
        // Asked again next time.
      }
    },
  }
}
