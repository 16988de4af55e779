/** DaysSheet: degree-days of a planting from temperatures pasted or read from a file. Props: plantingId. */
import { type DegreeDayOutcome, dayNumber, degreeDayPlan, halfSeenOn, readPasted, totalOnDay } from '@crib/planning'
import { convert, type MaturityGroup } from '@crib/science'
import { useDeferredValue, useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ChoiceTags,
  CountField,
  FlagTag,
  NumberRow,
  Passage,
  Reasons,
  Refusal,
  Sheet,
  TextField,
  TextFileField,
} from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { DaysPicture } from './days-picture.tsx'

interface Typed {
  readonly pasted: string
  readonly scale: 'F' | 'C'
  readonly group: MaturityGroup
  readonly isOwn: boolean
  readonly ownSilkF: number
  readonly ownRipeF: number
}

const FRESH: Typed = { pasted: '', scale: 'F', group: 'early', isOwn: false, ownSilkF: 0, ownRipeF: 0 }
const GROUPS = ['early', 'middle', 'late'] as const
/** Two years of lines, as the degree-day calculation takes them. [characters] */
const MOST_TEXT = 60_000

export default function DaysSheet({ plantingId }: { readonly plantingId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [typed, setTyped] = useHalfTyped<Typed>(`degree-days:${plantingId}`, FRESH)
  const planting = facts.plantings[plantingId]
  const plantedOn = planting?.plantedOn ?? ''
  const later = useDeferredValue(typed)
  const outcome = useMemo(() => outcomeOf(later, plantedOn), [later, plantedOn])
  if (!planting) return <NotHere />
  const change = (part: Partial<Typed>) => setTyped({ ...typed, ...part })
  const silkOn = halfSeenOn(planting.silks)
  return (
    <Sheet
      title={say('field:screen-days')}
      drawing="field"
      lead={say('field:screen-sown-on', { corn: planting.cornName, day: dayText(plantedOn) })}
    >
      <Passage>
        <p>{say('field:screen-days-lead')}</p>
        <TextField
          label={say('field:screen-days-pasted')}
          hint="2026-05-14, 72, 48"
          value={typed.pasted}
          onValue={(pasted) => change({ pasted })}
          lines={6}
          maxLength={MOST_TEXT}
        />
        <TextFileField
          label={say('field:screen-days-file')}
          mostCharacters={MOST_TEXT}
          onText={(pasted) => change({ pasted })}
        />
        <ChoiceTags
          legend={say('field:screen-days-scale')}
          options={[
            { value: 'F', label: '°F' },
            { value: 'C', label: '°C' },
          ]}
          value={typed.scale}
          onValue={(scale) => change({ scale })}
        />
        <ChoiceTags
          legend={say('field:screen-days-group')}
          options={GROUPS.map((value) => ({ value, label: say(`field:screen-group-${value}`) }))}
          value={typed.group}
          onValue={(group) => change({ group })}
        />
        <FlagTag label={say('field:screen-days-own')} value={typed.isOwn} onValue={(isOwn) => change({ isOwn })} />
        {typed.isOwn && (
          <>
            <CountField
              label={say('field:screen-days-own-silk')}
              hint={say('field:screen-none-counted')}
              value={typed.ownSilkF}
              onValue={(ownSilkF) => change({ ownSilkF })}
              max={6000}
            />
            <CountField
              label={say('field:screen-days-own-ripe')}
              hint={say('field:screen-none-counted')}
              value={typed.ownRipeF}
              onValue={(ownRipeF) => change({ ownRipeF })}
              max={6000}
            />
          </>
        )}
      </Passage>
      {typed.pasted.trim() !== '' && (
        <Passage>
          <div aria-live="polite" className="passage-body" id="days">
            <Days outcome={outcome} silkOn={silkOn} />
          </div>
        </Passage>
      )}
    </Sheet>
  )
}

function outcomeOf(typed: Typed, plantedOn: string): DegreeDayOutcome {
  const { pasted, scale, group, isOwn, ownSilkF, ownRipeF } = typed
  const read = readPasted(pasted, scale)
  if (!read.ok) return { kind: 'refused', refused: 'readings-not-read', why: read.why }
  const toC = (degreeDaysF: number) => convert(degreeDaysF, 'DegreeDaysF', 'DegreeDaysC')
  return degreeDayPlan({
    days: read.days,
    missingDays: read.missingDays,
    plantedDay: dayNumber(plantedOn) ?? 0,
    group,
    ...(isOwn && ownSilkF > 0 && { ownToSilkC: toC(ownSilkF) }),
    ...(isOwn && ownRipeF > 0 && { ownToRipeC: toC(ownRipeF) }),
  })
}

const STAMPED = [
  ['degreeDaysSoFar', 'field:screen-days-so-far'],
  ['degreeDaysLately', 'field:screen-days-lately'],
  ['degreeDaysToSilk', 'field:screen-days-to-silk'],
  ['degreeDaysToRipe', 'field:screen-days-to-ripe'],
  ['daysToSilk', 'field:screen-days-from-sowing-silk'],
  ['daysToRipe', 'field:screen-days-from-sowing-ripe'],
] as const

function Days({ outcome, silkOn }: { readonly outcome: DegreeDayOutcome; readonly silkOn: string | null }) {
  const { say } = useWords()
  if (outcome.kind === 'refused') return <Refusal title={say('field:screen-days')} why={outcome.why} />
  const own = silkOn === null ? null : totalOnDay(outcome, { id: 'ownToSilk', isoDay: silkOn })
  return (
    <>
      <NumberRow>
        {STAMPED.map(([id, key]) => {
          const reckoned = outcome.values.find((one) => one.id === id)
          return reckoned && <BigNumber key={id} label={say(key)} reckoned={reckoned} size="small" />
        })}
        {own && <BigNumber label={say('field:screen-days-seen-silk')} reckoned={own} size="small" />}
      </NumberRow>
      <DaysPicture plan={outcome} />
      <Reasons sentences={[...outcome.reasons, ...outcome.warnings]} />
    </>
  )
}
