/** The card of one canner: one number to hold, readable across the kitchen; why; minutes once the standing was read. */
import { lidWaitRule } from '@crib/guidance'
import {
  type CannerCard,
  cardOfCanner,
  type GaugeCard,
  isStandingRead,
  type JarSize,
  plannedInputs,
  seasonYearOf,
} from '@crib/planning'
import { formatReckoned } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { localDay } from '../../local-day.ts'
import {
  BigNumber,
  ButtonRow,
  Caution,
  ChoiceTags,
  Fold,
  MarginNote,
  NextAction,
  NumberRow,
  Passage,
  Reasons,
  Refusal,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { lastBatch } from '../paper/paper-list.tsx'
import { GaugeTag } from './gauge-tag.tsx'
import './card.css'

export function CardSheet({ cannerId }: { readonly cannerId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const canner = facts.canners[cannerId]
  const batch = lastBatch(Object.values(facts.batches))
  const inputs = batch && plannedInputs(batch)
  const [jarSize, setJarSize] = useState<JarSize>(inputs?.jarSize ?? 'quart')
  if (!canner) return <NotHere />
  const today = localDay()
  const alkali = inputs?.alkali ?? 'ash'
  const isRead = isStandingRead(facts, alkali, seasonYearOf(facts, today))
  const card = cardOfCanner(canner, facts.kitchen, { today, jarSize, alkali, isHotPack: true, isStandingRead: isRead })
  return (
    <Sheet title={canner.name} drawing="canner" lead={say('shell:card-lead')}>
      {card === null ? (
        <Passage>
          <p>{say('kettle:elevation-needed')}</p>
          <NextAction href="/house">{say('shell:plan-to-house')}</NextAction>
        </Passage>
      ) : card.kind === 'refused' ? (
        <Passage>
          <Refusal
            title={say('shell:card-no-number')}
            why={[...card.why, ...card.forInformation]}
            askWhom={card.askWhom}
          />
        </Passage>
      ) : (
        <Card card={card} jarSize={jarSize} onJarSize={setJarSize} />
      )}
      {card?.kind === 'card' && canner.gauges.includes('dial') && (
        <Passage title={say('shell:card-tag')} margin={<MarginNote>{say('shell:card-tag-margin')}</MarginNote>}>
          <GaugeTag canner={canner} route={card.routes.find(({ gauge }) => gauge === 'dial')} />
        </Passage>
      )}
      <Passage>
        <ButtonRow>
          <SideAction href={`/paper/canner-card/${cannerId}`}>{say('shell:card-print')}</SideAction>
          <SideAction href="/canner">{say('shell:card-back')}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}

function Card({
  card,
  jarSize,
  onJarSize,
}: {
  readonly card: CannerCard
  readonly jarSize: JarSize
  readonly onJarSize: (jarSize: JarSize) => void
}) {
  const { say } = useWords()
  const [first, ...others] = card.routes
  return (
    <>
      {first?.holdAt ? (
        <Route route={first} card={card} />
      ) : (
        <Passage>
          <Refusal
            title={say('shell:card-no-number')}
            why={[...card.reasons, ...card.routes.flatMap(({ reasons }) => reasons)]}
          />
        </Passage>
      )}
      <Passage title={say('shell:card-times')} margin={<MarginNote>{say('shell:card-times-margin')}</MarginNote>}>
        <NumberRow>
          <BigNumber label={say('shell:card-vent')} reckoned={card.vent} />
          {card.minutes && <BigNumber label={say('shell:card-minutes')} reckoned={card.minutes} />}
          <BigNumber label={say('shell:card-lid-wait')} reckoned={lidWaitRule().figure} />
        </NumberRow>
        {!card.minutes && (
          <>
            <Reasons sentences={card.withheld} />
            <ButtonRow>
              <SideAction href="/plan/standing">{say('shell:plan-standing-title')}</SideAction>
            </ButtonRow>
          </>
        )}
        <ChoiceTags
          legend={say('shell:card-for-jars')}
          options={(['half-pint', 'pint', 'quart'] as const).map((value) => ({
            value,
            label: say(`season:screen-jar-${value}`),
          }))}
          value={jarSize}
          onValue={onJarSize}
        />
        <Reasons sentences={card.standing} title={say('shell:plan-standing-now')} />
      </Passage>
      {first?.holdAt && (
        <Passage title={say('shell:card-why')}>
          <Reasons sentences={[...first.reasons, ...card.reasons]} />
          {card.cautions.map((sentence) => (
            <Caution key={sentence.key} sentence={sentence} />
          ))}
        </Passage>
      )}
      {first?.holdAt && others.length > 0 && (
        <Passage title={say('shell:card-other-gauge')}>
          {others.map((route) => (
            <Fold key={route.gauge} title={say(`shell:gauge-${route.gauge}`)}>
              {route.holdAt ? (
                <BigNumber label={say(`shell:card-hold-${route.gauge}`)} reckoned={route.holdAt} />
              ) : null}
              <Reasons sentences={route.reasons} />
            </Fold>
          ))}
        </Passage>
      )}
    </>
  )
}

function Route({ route, card }: { readonly route: GaugeCard; readonly card: CannerCard }) {
  const { say } = useWords()
  const { holdAt, required, table } = route
  if (!holdAt) return null
  const isDial = route.gauge === 'dial'
  return (
    <Passage>
      <BigNumber
        size="huge"
        label={say(`shell:card-hold-${route.gauge}`)}
        reckoned={holdAt}
        note={
          isDial && required
            ? say('shell:card-dip', { required: formatReckoned(required, 'alone') })
            : say('shell:card-dip-weight')
        }
      />
      <p className="card-table">
        {say('shell:card-table', { elevation: formatReckoned(card.elevation), table: formatReckoned(table) })}
      </p>
    </Passage>
  )
}
