/** One page for each kind of sheet: what it is for, the choices it has, and the sheet itself. */
import { LABEL_SHEETS, type LabelSheetId, type PaperDocument } from '@crib/paper'
import { foodLabel, type JarSize, plannedInputs } from '@crib/planning'
import { type ReactNode, useMemo, useState } from 'react'
import { useSearch } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags, CountField, Empty, FlagTag, NextAction, Passage, Sheet } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { batchSheetDocument, cannerCardDocument, sheetOfBatch, wallBoardDocument } from './documents.ts'
import { labelsDocument } from './label-sheets.ts'
import { blankLogDocument, runLogDocument } from './logs.ts'
import { lastBatch } from './paper-list.tsx'
import { PrintView } from './print-view.tsx'
import { SheetChoices } from './sheet-choices.tsx'
import { useDesk } from './use-desk.ts'

export function Page({
  title,
  lead,
  made,
  missing,
  children,
}: {
  readonly title: string
  readonly lead?: string
  readonly made: PaperDocument | null
  /** Said where the sheet cannot be made. */
  readonly missing: string
  readonly children?: ReactNode
}) {
  const { say } = useWords()
  return (
    <Sheet title={title} drawing="sheet" {...(lead !== undefined && { lead })}>
      {made ? (
        <PrintView document={made}>{children}</PrintView>
      ) : (
        <Passage>
          <Empty drawing="sheet" action={<NextAction href="/paper">{say('shell:print-back')}</NextAction>}>
            <p>{missing}</p>
          </Empty>
        </Passage>
      )}
    </Sheet>
  )
}

export function BatchSheetPage({ batchId }: { readonly batchId: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const sheet = useMemo(() => sheetOfBatch(desk, batchId), [desk, batchId])
  const made = useMemo(() => sheet && batchSheetDocument(desk, sheet), [desk, sheet])
  if (!desk.facts.batches[batchId]) return <NotHere />
  return (
    <Page
      title={say('shell:print-batch-sheet')}
      lead={desk.facts.batches[batchId].plan.title}
      made={made}
      missing={say('shell:print-batch-unread')}
    >
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function WallBoardPage({ batchId }: { readonly batchId: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const made = useMemo(() => {
    const sheet = sheetOfBatch(desk, batchId)
    return sheet && wallBoardDocument(desk, sheet)
  }, [desk, batchId])
  if (!desk.facts.batches[batchId]) return <NotHere />
  return (
    <Page
      title={say('shell:print-wall-board')}
      lead={say('shell:print-wall-board-lead')}
      made={made}
      missing={say('shell:print-no-loads')}
    >
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function CannerCardPage({ cannerId }: { readonly cannerId: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const canner = desk.facts.canners[cannerId]
  const batch = lastBatch(Object.values(desk.facts.batches))
  const inputs = batch && plannedInputs(batch)
  const [jarSize, setJarSize] = useState<JarSize>(inputs?.jarSize ?? 'quart')
  const alkali = inputs?.alkali ?? 'ash'
  const made = useMemo(
    () => (canner ? cannerCardDocument(desk, { canner, jarSize, alkali, loadCodes: [] }) : null),
    [desk, canner, jarSize, alkali],
  )
  if (!canner) return <NotHere />
  return (
    <Page
      title={say('shell:print-card-of', { name: canner.name })}
      made={made}
      missing={say('kettle:elevation-needed')}
    >
      <ChoiceTags
        legend={say('shell:plan-assume-jar')}
        options={(['half-pint', 'pint', 'quart'] as const).map((value) => ({
          value,
          label: say(`season:screen-jar-${value}`),
        }))}
        value={jarSize}
        onValue={setJarSize}
      />
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function BlankLogPage() {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const made = useMemo(() => blankLogDocument(desk), [desk])
  return (
    <Page title={say('shell:print-log-blank')} lead={say('shell:print-logs-margin')} made={made} missing="">
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function RunLogPage({ runId }: { readonly runId: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const run = desk.facts.runs[runId]
  const made = useMemo(() => (run ? runLogDocument(desk, run) : null), [desk, run])
  if (!run) return <NotHere />
  return (
    <Page title={say('shell:print-log-of', { code: run.begun.loadCode })} made={made} missing="">
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function LabelsPage() {
  const { facts } = useBook()
  const { say } = useWords()
  const words = useWords()
  const hand = useDesk()
  const { desk } = hand
  const held = Object.values(facts.foodLots).filter(({ remainingCount }) => remainingCount > 0)
  const load = new URLSearchParams(useSearch()).get('load')
  const [left, setLeft] = useState<readonly string[]>(() =>
    load === null ? [] : held.flatMap((lot) => (lot.loadCode === load ? [] : [lot.lotId])),
  )
  const [sheet, setSheet] = useState<LabelSheetId>('letter-2x5')
  const [skipCount, setSkip] = useState(0)
  const chosen = held.filter(({ lotId }) => !left.includes(lotId))
  const places = LABEL_SHEETS[sheet].columnCount * LABEL_SHEETS[sheet].rowCount
  const skip = Math.min(skipCount, places - 1)
  const made = useMemo(
    () => (chosen.length > 0 ? labelsDocument(desk, chosen, sheet, skip) : null),
    [desk, chosen, sheet, skip],
  )
  const choices = (
    <>
      <ChoiceTags
        legend={say('shell:print-label-sheet')}
        options={(Object.keys(LABEL_SHEETS) as LabelSheetId[]).map((value) => ({
          value,
          label: say(`shell:print-sheet-${value}`),
        }))}
        value={sheet}
        onValue={setSheet}
      />
      <CountField label={say('shell:print-labels-used')} value={skip} onValue={setSkip} max={places - 1} />
      <fieldset className="field" style={{ maxWidth: 'none' }}>
        <legend>{say('shell:print-labels-for')}</legend>
        <div className="tags">
          {held.map((lot) => (
            <FlagTag
              key={lot.lotId}
              label={say('shell:print-label-lot', {
                code: lot.loadCode,
                contents: words.sentence(foodLabel(lot, facts).contents),
                count: lot.remainingCount,
              })}
              value={!left.includes(lot.lotId)}
              onValue={(isChosen) => setLeft(isChosen ? left.filter((id) => id !== lot.lotId) : [...left, lot.lotId])}
            />
          ))}
        </div>
      </fieldset>
      <SheetChoices hand={hand} paper={false} />
    </>
  )
  const missing = chosen.length === 0 ? say('shell:print-no-labels') : say('pantry:boil-needs-elevation')
  return (
    <Page title={say('shell:print-labels')} made={made} missing={missing}>
      {choices}
    </Page>
  )
}
