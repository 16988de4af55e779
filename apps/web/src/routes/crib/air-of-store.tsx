/** AirOfStore: what moisture corn comes to in the air of a place, if it lies there long enough. Props: lot. */
import { findCalc } from '@crib/catalogue'
import type { CornLotFact } from '@crib/journal'
import { percentFraction } from '@crib/planning'
import type { CalcResult } from '@crib/science'
import { useHalfTyped } from '../../half-typed.ts'
import { BigNumber, NumberRow, QuantityField, Reasons } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { useWritten } from '../keeping/written.tsx'
import { PercentField } from './moisture-test-form.tsx'

const WARMTH = { min: 0, max: 60, unit: 'C', source: 'ASAE D245' } as const

export default function AirOfStore({ lot: { lotId, cornType } }: { readonly lot: CornLotFact }) {
  const { say, sentence } = useWords()
  const warmth = useWritten(`air:${lotId}:warmth`)
  const [humidity, setHumidity] = useHalfTyped(`air:${lotId}:humidity`, '')
  const temperatureC = warmth.in('C')
  const humidityFraction = percentFraction(humidity)
  const result =
    temperatureC === null || humidityFraction === null
      ? null
      : settle({ temperatureC, humidityFraction, sort: cornType === 'unknown' ? 'flour' : cornType })
  return (
    <>
      <QuantityField label={say('crib:air-warmth')} measures="temperature" {...warmth.field} limits={WARMTH} />
      <PercentField label={say('crib:store-humidity')} text={humidity} onText={setHumidity} />
      <div aria-live="polite" className="passage-body">
        {result?.ok && (
          <>
            <NumberRow>
              {result.values.map((value) => (
                <BigNumber
                  key={value.id}
                  label={say(value.id === 'equilibriumWetFraction' ? 'crib:settles-at' : 'crib:settles-dry')}
                  reckoned={value}
                  size="small"
                />
              ))}
            </NumberRow>
            <Reasons sentences={[...result.reasons, ...result.warnings]} />
          </>
        )}
        {result && !result.ok && <p role="alert">{result.why.map((why) => sentence(why)).join(' ')}</p>}
      </div>
    </>
  )
}

/** Of a sort nobody told, the widest band is shown. */
function settle({
  sort,
  ...air
}: {
  readonly temperatureC: number
  readonly humidityFraction: number
  readonly sort: string
}): CalcResult | null {
  try {
    return findCalc('equilibrium-moisture')?.run({ ...air, cornType: sort } as never) ?? null
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    return {
      ok: false,
      refused: 'off-range',
      why: [{ key: 'crib:off-range', params: { why: error.message } }],
      askWhom: [],
    }
  }
}
