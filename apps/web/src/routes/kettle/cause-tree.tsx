/**
 * CauseTree: why nothing slips, one cause a line: opened, it says what to look at now and what to do if so. What the book
 * already shows of this pot stands first and open. Props: at, lot, rangeLowMin.
 */
import type { AlkaliLotFact } from '@crib/journal'
import { dayOfInstant, whyNoSlip } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { SourceLine } from '../../parts-of-the-sheet/index.ts'
import { Say, useWords } from '../../words.tsx'
import type { PotAt } from './pot-at.ts'

export function CauseTree({
  at,
  lot,
  rangeLowMin,
}: {
  readonly at: PotAt
  readonly lot: AlkaliLotFact
  readonly rangeLowMin: number
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const { plan, walk, nowMs, zone } = at
  const causes = whyNoSlip({ facts, plan, walk, lot, nowMs, today: dayOfInstant(nowMs, zone) }, rangeLowMin)
  return (
    <section className="passage-body" aria-label={say('kettle:why-title')}>
      <h3>{say('kettle:why-title')}</h3>
      <div>
        {causes.map(({ id, cause, check, action, isShownByBook, sourceKeys }) => (
          <details className="line" key={id} open={isShownByBook}>
            <summary>
              <span>
                {isShownByBook && <strong>{say('kettle:why-shown')} </strong>}
                <Say sentence={cause} />
              </span>
            </summary>
            <div className="line-body">
              <p>
                <strong>{say('kettle:why-look')}</strong> <Say sentence={check} />
              </p>
              <p>
                <strong>{say('kettle:why-then')}</strong> <Say sentence={action} />
              </p>
              {sourceKeys.length === 0 ? (
                <p className="source-line">{say('common:basis-common-practice')}</p>
              ) : (
                sourceKeys.map((key) => <SourceLine key={key} sourceKey={key} />)
              )}
            </div>
          </details>
        ))}
      </div>
    </section>
  )
}
