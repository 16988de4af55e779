/** Who may see what: each lot by itself, and on which conditions it goes out. Every change is an entry. Props: none. */
import { type Facts, shareOf, VISIBILITIES, type Visibility } from '@crib/journal'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags, Fold, MarginNote, Passage, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

interface Shared {
  /** What the entry names; the house stands for several. */
  readonly ids: readonly string[]
  readonly name: string
}

export function Shares() {
  const { facts, kitchenId } = useBook()
  const { say } = useWords()
  const lots = lotsOf(facts, say)
  const house = [...Object.keys(facts.canners), ...Object.keys(facts.pots)]
  const rows = [{ ids: [kitchenId ?? '', ...house], name: say('shell:people-the-house') }, ...lots]
  return (
    <Passage title={say('shell:people-shares')} margin={<MarginNote>{say('shell:people-shares-margin')}</MarginNote>}>
      {rows.map((row) => (
        <ShareRow key={row.ids[0]} {...row} />
      ))}
      {lots.length === 0 && <p>{say('shell:people-no-lots')}</p>}
    </Passage>
  )
}

function lotsOf(facts: Facts, say: ReturnType<typeof useWords>['say']): readonly Shared[] {
  return [
    ...Object.values(facts.cornLots).map(({ lotId, name }) => ({ ids: [lotId], name })),
    ...Object.values(facts.seed).map(({ seedId, seasonYear }) => ({
      ids: [seedId],
      name: say('shell:people-seed-of', { year: seasonYear }),
    })),
    ...Object.values(facts.batches).map(({ batchId, plan }) => ({
      ids: [batchId],
      name: say('shell:people-batch-of', { name: plan.title }),
    })),
    ...Object.values(facts.foodLots).map(({ lotId, loadCode }) => ({ ids: [lotId], name: loadCode })),
  ]
}

function ShareRow({ ids, name }: Shared) {
  const { facts } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const now = shareOf(facts, ids[0]!)
  const [visibility, setVisibility] = useState<Visibility>(now.visibility)
  const [conditions, setConditions] = useState(now.conditions ?? '')
  const words = { name, visibility: say(`shell:people-visibility-${now.visibility}`) }
  const title = now.conditions
    ? say('shell:people-share-now-conditions', { ...words, conditions: now.conditions })
    : say('shell:people-share-now', words)
  const unchanged = visibility === now.visibility && conditions.trim() === (now.conditions ?? '')
  const keep = async () => {
    const told = conditions.trim()
    for (const lotId of ids) {
      const kept = await record.keep('visibility-set', { lotId, visibility, ...(told && { conditions: told }) })
      if (!kept) return
    }
  }
  return (
    <Fold title={title}>
      <Form action={say('shell:write-down')} disabled={unchanged} onSubmit={() => void keep()}>
        <ChoiceTags
          legend={say('shell:people-share-of', { name })}
          options={VISIBILITIES.map((value) => ({
            value,
            label: say(`shell:people-visibility-${value}`),
            note: say(`shell:people-visibility-${value}-note`),
          }))}
          value={visibility}
          onValue={setVisibility}
        />
        <TextField
          label={say('shell:people-conditions')}
          hint={say('shell:people-conditions-hint')}
          value={conditions}
          onValue={setConditions}
        />
        <Asked record={record} />
      </Form>
    </Fold>
  )
}
