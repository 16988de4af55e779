/** What may be moved on the picture. The first two stand open; the rest behind a fold. */
import { convert, type MadeUpRun, type Unit } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { ChoiceTags } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { RangeField } from './range-field.tsx'

interface SlidersProps {
  readonly run: MadeUpRun
  readonly onChange: (change: Partial<MadeUpRun>) => void
}

/** In the figures printed on gauge and map; the jar itself is kept in metric. */
const shownIn = (value: number, from: Unit, to: Unit, digits: number) =>
  Number(convert(value, from, to).toFixed(digits))

export function FirstSliders({ run, onChange }: SlidersProps) {
  const { say } = useWords()
  const psi = shownIn(run.gaugeKPa, 'KPaGauge', 'PsiGauge', 1)
  return (
    <div className="heat-sliders">
      <RangeField
        label={say('heat:slide-vent')}
        shown={formatQuantity({ value: run.ventMin, unit: 'Min' })}
        value={run.ventMin}
        min={0}
        max={20}
        step={1}
        onValue={(ventMin) => onChange({ ventMin })}
      />
      <RangeField
        label={say('heat:slide-gauge')}
        shown={formatQuantity({ value: psi, unit: 'PsiGauge' })}
        value={psi}
        min={5}
        max={15}
        step={0.5}
        onValue={(value) => onChange({ gaugeKPa: convert(value, 'PsiGauge', 'KPaGauge') })}
      />
    </div>
  )
}

export function MoreSliders({ run, onChange }: SlidersProps) {
  const { say } = useWords()
  const ft = shownIn(run.elevationM, 'M', 'Ft', 0)
  const highPsi = shownIn(run.gaugeReadsHighKPa, 'KPaGauge', 'PsiGauge', 1)
  return (
    <div className="heat-sliders">
      <ChoiceTags
        legend={say('heat:slide-pack')}
        options={[
          { value: 'free brine', label: say('heat:why-pack-loose') },
          { value: 'packed solid', label: say('heat:why-pack-tight') },
        ]}
        value={run.pack}
        onValue={(pack) => onChange({ pack })}
      />
      <ChoiceTags
        legend={say('heat:slide-jar')}
        options={[
          { value: 'pint', label: say('canner:run-screen-pint') },
          { value: 'quart', label: say('canner:run-screen-quart') },
        ]}
        value={run.jar}
        onValue={(jar) => onChange({ jar })}
      />
      <RangeField
        label={say('heat:slide-height')}
        shown={formatQuantity({ value: ft, unit: 'Ft' })}
        value={ft}
        min={0}
        max={8000}
        step={50}
        onValue={(value) => onChange({ elevationM: convert(value, 'Ft', 'M') })}
      />
      <RangeField
        label={say('heat:slide-reads-high')}
        shown={formatQuantity({ value: highPsi, unit: 'PsiGauge' })}
        value={highPsi}
        min={-2}
        max={3}
        step={0.5}
        onValue={(value) => onChange({ gaugeReadsHighKPa: convert(value, 'PsiGauge', 'KPaGauge') })}
      />
      <RangeField
        label={say('heat:slide-hold')}
        shown={formatQuantity({ value: run.holdMin, unit: 'Min' })}
        value={run.holdMin}
        min={10}
        max={120}
        step={5}
        onValue={(holdMin) => onChange({ holdMin })}
      />
      <RangeField
        label={say('heat:slide-fill')}
        shown={formatQuantity({ value: run.fillC, unit: 'C' })}
        value={run.fillC}
        min={40}
        max={95}
        step={1}
        onValue={(fillC) => onChange({ fillC })}
      />
      <RangeField
        label={say('heat:slide-cool')}
        shown={formatQuantity({ value: Math.round(run.coolDownMin), unit: 'Min' })}
        value={Math.round(run.coolDownMin)}
        min={3}
        max={90}
        step={1}
        onValue={(coolDownMin) => onChange({ coolDownMin })}
      />
    </div>
  )
}
