/** JarHeatPage: the made-up jar as the picture was left. RunHeatPage: a run of the book as temperatures. Props: runId. */
import { madeUpRun } from '@crib/planning'
import type { MadeUpRun } from '@crib/science'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { loggedOf } from '../heat/logged-runs.ts'
import { useBand } from '../heat/use-band.ts'
import { jarHeatDocument, runHeatDocument } from './heat-papers.ts'
import { Page } from './pages.tsx'
import { SheetChoices } from './sheet-choices.tsx'
import { useDesk } from './use-desk.ts'

export function JarHeatPage() {
  const { facts } = useBook()
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const fresh = useMemo(() => madeUpRun(facts), [facts])
  const [run] = useHalfTyped<MadeUpRun>('heat:made-up', fresh)
  const { now, frames, failure } = useBand(run)
  const made = useMemo(() => {
    if (!now?.isWhole || now.of !== run) return null
    const cut = frames?.of === run ? frames.frames : null
    return jarHeatDocument(desk, run, { study: now.study, band: now.band, frames: cut })
  }, [desk, run, now, frames])
  return (
    <Page
      title={say('heat:paper-sheet')}
      lead={say('heat:paper-sheet-lead')}
      made={made}
      missing={failure === null ? say('heat:band-first') : say('heat:band-failed', { why: failure })}
    >
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function RunHeatPage({ runId }: { readonly runId: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const run = desk.facts.runs[runId]
  const logged = loggedOf(runId)
  const made = useMemo(() => (run ? runHeatDocument(desk, run, logged) : null), [desk, run, logged])
  if (!run) return <NotHere />
  return (
    <Page
      title={say('heat:paper-run-title', { code: run.begun.loadCode })}
      lead={say(logged ? 'heat:paper-run-lead-file' : 'heat:paper-run-lead-log')}
      made={made}
      missing=""
    >
      <SheetChoices hand={hand} />
    </Page>
  )
}
