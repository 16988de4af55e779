/** Pages of papers made from the whole book: a class sheet, a year, the two sheets of a recall. */
import { useMemo } from 'react'
import { useHalfTyped } from '../../half-typed.ts'
import { TextField } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { classSheetDocument } from './documents.ts'
import { Page } from './pages.tsx'
import { callListDocument, originOfAddress, recallNoticeDocument } from './recall-papers.ts'
import { AudienceChoice, SheetChoices } from './sheet-choices.tsx'
import { useDesk } from './use-desk.ts'
import { yearSheetDocument } from './year-paper.ts'

export function ClassSheetPage({ batchId }: { readonly batchId: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const made = useMemo(() => classSheetDocument(desk, batchId), [desk, batchId])
  if (!desk.facts.batches[batchId]) return <NotHere />
  return (
    <Page
      title={say('shell:print-class-sheet')}
      lead={say('shell:print-class-sheet-lead')}
      made={made}
      missing={say('shell:print-batch-unread')}
    >
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function YearPage({ year }: { readonly year: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const made = useMemo(() => yearSheetDocument(desk, Number(year)), [desk, year])
  if (!/^\d{4}$/.test(year)) return <NotHere />
  return (
    <Page title={say('shell:print-year', { year })} lead={say('shell:print-year-lead')} made={made} missing="">
      <AudienceChoice hand={hand} hidesName={false} />
      <SheetChoices hand={hand} />
    </Page>
  )
}

interface OfRecall {
  readonly by: string
  readonly id: string
}

export function RecallNoticePage({ by, id }: OfRecall) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const [contact, setContact] = useHalfTyped('recall-contact', '')
  const origin = useMemo(() => originOfAddress(by, id), [by, id])
  const made = useMemo(() => origin && recallNoticeDocument(desk, origin, contact.trim()), [desk, origin, contact])
  if (!origin) return <NotHere />
  return (
    <Page
      title={say('shell:print-recall-notice')}
      lead={say('shell:print-recall-notice-lead')}
      made={made}
      missing={say('pantry:recall-nothing')}
    >
      <TextField
        label={say('shell:print-recall-contact')}
        hint={say('shell:print-recall-contact-hint')}
        value={contact}
        onValue={setContact}
      />
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function CallListPage({ by, id }: OfRecall) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const origin = useMemo(() => originOfAddress(by, id), [by, id])
  const made = useMemo(() => origin && callListDocument(desk, origin), [desk, origin])
  if (!origin) return <NotHere />
  return (
    <Page
      title={say('shell:print-call-list')}
      lead={say('shell:print-call-list-lead')}
      made={made}
      missing={say('pantry:recall-nothing')}
    >
      <SheetChoices hand={hand} />
    </Page>
  )
}
