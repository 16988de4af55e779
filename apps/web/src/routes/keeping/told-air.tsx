/**
 * ToldAir: hours of kernels in air that is told, alike all along or as a day's table. What is typed stays on this device.
 * Props: name (of the tray, for what is kept), massKg, startWetFraction, endWetFraction.
 */
import { dryingPlan, readDryingAir } from '@crib/planning'
import { type AirSpell, type Sentence, ValidRangeError } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  Caution,
  ChoiceTags,
  FieldError,
  NumberRow,
  QuantityField,
  Reasons,
  TextField,
  TextFileField,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { useWritten } from './written.tsx'

/** Two weeks by the minute are more than any table has. [characters] */
const MOST_TEXT = 60_000
const WARMTH = { min: 30, max: 60, unit: 'C', source: 'Ordóñez 2012' } as const
/** One air all along is a table of one row. */
const A_DAY_H = '24'

interface Tray {
  readonly massKg: number
  readonly startWetFraction: number
  readonly endWetFraction: number
}

export function ToldAir({ name, ...tray }: Tray & { readonly name: string }) {
  const { say, sentence } = useWords()
  const [as, setAs] = useHalfTyped<'one' | 'table'>(`drying:${name}:air-as`, 'one')
  const [scale, setScale] = useHalfTyped<'F' | 'C'>(`drying:${name}:air-scale`, 'F')
  const [pasted, setPasted] = useHalfTyped(`drying:${name}:air-table`, '')
  const warmth = useWritten(`drying:${name}:air-warmth`)
  const [humidity, setHumidity] = useHalfTyped(`drying:${name}:air-humidity`, '')
  const temperatureC = warmth.in('C')
  const isTold = temperatureC !== null && humidity.trim() !== ''
  const table = as === 'table' ? pasted : isTold ? [A_DAY_H, temperatureC, humidity.trim()].join('\t') : ''
  const air = readDryingAir(table, as === 'table' ? scale : 'C')
  return (
    <div className="passage-body">
      <ChoiceTags
        legend={say('keeping:screen-air-as')}
        options={[
          { value: 'one', label: say('keeping:screen-air-one') },
          { value: 'table', label: say('keeping:screen-air-table') },
        ]}
        value={as}
        onValue={setAs}
      />
      {as === 'one' ? (
        <>
          <QuantityField
            label={say('keeping:screen-air-warmth')}
            measures="temperature"
            {...warmth.field}
            limits={WARMTH}
          />
          <TextField label={say('keeping:screen-air-humidity')} value={humidity} onValue={setHumidity} />
        </>
      ) : (
        <>
          <ChoiceTags
            legend={say('keeping:screen-air-scale')}
            options={[
              { value: 'F', label: '°F' },
              { value: 'C', label: '°C' },
            ]}
            value={scale}
            onValue={setScale}
          />
          <TextField
            label={say('keeping:screen-air-pasted')}
            hint={say('keeping:screen-air-pasted-hint')}
            value={pasted}
            onValue={setPasted}
            lines={6}
            maxLength={MOST_TEXT}
          />
          <TextFileField label={say('keeping:screen-air-file')} mostCharacters={MOST_TEXT} onText={setPasted} />
        </>
      )}
      <div aria-live="polite" className="passage-body">
        {air.kind === 'faults' &&
          air.faults.map((fault) => <FieldError key={sentence(fault)}>{sentence(fault)}</FieldError>)}
        {air.kind === 'air' && <Hours tray={tray} air={air.spells} />}
      </div>
    </div>
  )
}

function Hours({ tray, air }: { readonly tray: Tray; readonly air: readonly AirSpell[] }) {
  const { say, sentence } = useWords()
  const told = hoursIn(tray, air)
  if ('offRange' in told) return <FieldError>{sentence(told.offRange)}</FieldError>
  const own = told.warnings.filter(({ key }) => key === 'keeping:air-too-damp' || key === 'keeping:slow-drying')
  return (
    <>
      <NumberRow>
        {told.values
          .filter(({ id }) => id === 'dryingH' || id === 'settlesFraction')
          .map((value) => (
            <BigNumber key={value.id} label={say(`keeping:screen-${value.id}` as MessageKey)} reckoned={value} />
          ))}
      </NumberRow>
      {own.map((warning) => (
        <Caution key={warning.key} sentence={warning} />
      ))}
      <Reasons sentences={told.reasons.filter(({ key }) => key === 'keeping:kernel-hours')} />
    </>
  )
}

function hoursIn(
  tray: Tray,
  air: readonly AirSpell[],
): ReturnType<typeof dryingPlan> | { readonly offRange: Sentence } {
  try {
    return dryingPlan({ what: 'kernels', ...tray, air })
  } catch (error) {
    // Its own message names value, limit, unit and source.
    if (error instanceof ValidRangeError) return { offRange: { key: 'crib:off-range', params: { why: error.message } } }
    throw error
  }
}
