/** Why: each card sets the picture by a tap, says what comes of it, and ends with what is published. */
import { type WhyCard, type WhyId, whyCards } from '@crib/planning'
import type { MadeUpRun } from '@crib/science'
import { memo, useMemo, useState } from 'react'
import { Reasons, SourceLine } from '../../parts-of-the-sheet/index.ts'
import { Say, useWords } from '../../words.tsx'

interface WhyProps {
  readonly run: MadeUpRun
  readonly onChange: (change: Partial<MadeUpRun>) => void
}

export const WhyCards = memo(function WhyCards({ run, onChange }: WhyProps) {
  const cards = useMemo(() => whyCards(run), [run])
  const { sentence } = useWords()
  const [open, setOpen] = useState<ReadonlySet<WhyId>>(new Set())
  const turn = (id: WhyId, isOpen: boolean) =>
    setOpen((now) => new Set(isOpen ? [...now, id] : [...now].filter((other) => other !== id)))
  return cards.map((card) => (
    <details key={card.id} className="fold" onToggle={(event) => turn(card.id, event.currentTarget.open)}>
      <summary>{sentence(card.title)}</summary>
      {/* A closed card need not follow the finger. */}
      {open.has(card.id) && (
        <div className="fold-body">
          <Card card={card} run={run} onChange={onChange} />
        </div>
      )}
    </details>
  ))
})

function Card({ card, run, onChange }: WhyProps & { readonly card: WhyCard }) {
  const { say } = useWords()
  const isSet = (change: Partial<MadeUpRun>) =>
    Object.entries(change).every(([name, value]) => {
      const now = run[name as keyof MadeUpRun] ?? 0
      return typeof value === 'number' && typeof now === 'number' ? Math.abs(value - now) < 0.01 : value === now
    })
  return (
    <>
      {card.variants.map(({ id, name, change, says }) => (
        <div key={id} className="why-line">
          <button
            type="button"
            className="plain-button"
            aria-pressed={isSet(change)}
            onClick={() => {
              onChange(change)
              document.getElementById('picture')?.scrollIntoView({ block: 'start' })
            }}
          >
            <Say sentence={name} />
            {isSet(change) && <span className="why-set"> {say('heat:why-is-set')}</span>}
          </button>
          <p>
            <Say sentence={says} />
          </p>
        </div>
      ))}
      <Reasons sentences={card.rule} title={say('heat:why-rule')} />
      <p>{say('heat:does-not-change-directions')}</p>
      {card.sourceKeys.map((key) => (
        <SourceLine key={key} sourceKey={key} />
      ))}
    </>
  )
}
