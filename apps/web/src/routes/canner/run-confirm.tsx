/** The number its keeper settles on, never below the table's, whose jars they are, and the run begun: now, or typed in afterwards. */
import type { CannerFact } from '@crib/journal'
import {
  type CannerCard,
  confirmHold,
  type GaugeCard,
  type JarSize,
  publishedRunRules,
  runBegunBody,
} from '@crib/planning'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { useState } from 'react'
import { useLocation } from 'wouter'
import { useBook } from '../../book/book.tsx'
import { deviceZone } from '../../book/keeper.ts'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  Caution,
  ChoiceTags,
  FieldError,
  Fold,
  MarginNote,
  NextAction,
  NumberRow,
  Passage,
  Reasons,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { Say, useWords } from '../../words.tsx'
import { type TypedLine, TypedLog } from './typed-log.tsx'
import { WhoseJars } from './whose-jars.tsx'

export function Confirm({
  card,
  canner,
  jarSize,
  jarCount,
  today,
  batchId,
}: {
  readonly card: CannerCard
  readonly canner: CannerFact
  readonly jarSize: JarSize
  readonly jarCount: number
  /** YYYY-MM-DD */
  readonly today: string
  readonly batchId?: string
}) {
  const { facts, newId, write } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [, go] = useLocation()
  const [gauge, setGauge] = useState(card.routes[0]?.gauge ?? 'dial')
  const [typed, setTyped] = useState('')
  const [when, setWhen] = useState<'now' | 'afterwards'>('now')
  const [households, setHouseholds, forgetHouseholds] = useHalfTyped<readonly string[]>(`whose:${canner.cannerId}`, [])
  const [busy, setBusy] = useState(false)
  const route = card.routes.find((each) => each.gauge === gauge) ?? card.routes[0]
  if (!route) return null
  const chosenPsi = typed.trim() === '' ? (route.holdAt?.value ?? Number.NaN) : Number(typed)
  const held = confirmHold(route, chosenPsi)
  const zone = deviceZone()
  const pressure = { value: held.ok ? chosenPsi : 0, unit: route.table.unit }
  const setup = {
    gauge: route.gauge,
    requiredReadingPsi: held.ok ? held.requiredReadingPsi : 1,
    processMin: card.minutes?.value ?? 1,
    rules: publishedRunRules(),
  }

  const begin = async (lines: readonly TypedLine[]) => {
    if (!held.ok || busy) return
    setBusy(true)
    const runId = newId()
    const atMs = lines.length === 0 ? Date.now() : Math.min(...lines.map((line) => line.atMs))
    const kept = await record.keep(
      'run-begun',
      runBegunBody(facts, {
        runId,
        ...(batchId !== undefined && { batchId }),
        canner,
        jarSize,
        jarCount,
        card,
        route,
        requiredReadingPsi: held.requiredReadingPsi,
        atMs,
        zone,
        households,
      }),
      { happenedAt: { instant: atMs, zone } },
    )
    if (kept) {
      for (const { atMs: instant, event } of lines) {
        await write('run-event', { runId, event }, { happenedAt: { instant, zone } })
      }
      forgetHouseholds()
      go(`/run/${runId}`)
    }
    setBusy(false)
  }
  return (
    <>
      <Passage
        title={say('canner:run-screen-number-title')}
        margin={<MarginNote>{say('canner:run-screen-table', { table: formatReckoned(route.table) })}</MarginNote>}
      >
        {card.routes.length > 1 && (
          <ChoiceTags
            legend={say('canner:run-screen-gauge')}
            options={card.routes.map(({ gauge: value }) => ({ value, label: say(`shell:gauge-${value}`) }))}
            value={gauge}
            onValue={(value) => {
              setGauge(value)
              setTyped('')
            }}
          />
        )}
        <Route route={route} card={card} />
        <Fold title={say('canner:run-screen-other')} open={!route.usable}>
          <TextField
            label={say(gauge === 'dial' ? 'canner:run-screen-other-psi' : 'canner:run-screen-other-lb')}
            hint={say('canner:run-screen-other-hint')}
            value={typed}
            onValue={setTyped}
          />
        </Fold>
        {!held.ok && typed.trim() !== '' && (
          <div role="alert">
            {held.why.map((sentence) => (
              <FieldError key={sentence.key}>
                <Say sentence={sentence} />
              </FieldError>
            ))}
          </div>
        )}
        {held.ok && <Reasons sentences={held.notes} />}
        <Reasons sentences={card.standing} />
      </Passage>
      <Passage>
        <WhoseJars value={households} onValue={setHouseholds} />
        <ChoiceTags
          legend={say('canner:run-screen-when')}
          options={(['now', 'afterwards'] as const).map((value) => ({
            value,
            label: say(`canner:run-screen-${value}`),
          }))}
          value={when}
          onValue={setWhen}
        />
        {when === 'now' && (
          <NextAction disabled={!held.ok || busy} onClick={() => void begin([])}>
            {say(gauge === 'dial' ? 'canner:run-screen-confirm-dial' : 'canner:run-screen-confirm-weight', {
              pressure: held.ok ? formatQuantity(pressure, 'alone') : formatReckoned(route.table, 'alone'),
            })}
          </NextAction>
        )}
        {when === 'afterwards' && held.ok && (
          <TypedLog name={canner.cannerId} held={{ setup, pressure }} zone={zone} today={today} onKeep={begin} />
        )}
        <Asked record={record} />
      </Passage>
    </>
  )
}

function Route({ route, card }: { readonly route: GaugeCard; readonly card: CannerCard }) {
  const { say } = useWords()
  return (
    <>
      {route.holdAt && (
        <BigNumber
          label={say(route.gauge === 'dial' ? 'canner:run-screen-hold' : 'canner:run-screen-use-weight')}
          reckoned={route.holdAt}
        />
      )}
      <Reasons sentences={[...route.reasons, ...card.reasons]} />
      <NumberRow>
        <BigNumber label={say('canner:run-screen-vent')} reckoned={card.vent} size="small" />
        {card.minutes && <BigNumber label={say('canner:run-screen-minutes')} reckoned={card.minutes} size="small" />}
      </NumberRow>
      {card.cautions.slice(0, 2).map((sentence) => (
        <Caution key={sentence.key} sentence={sentence} />
      ))}
    </>
  )
}
