/** The mill and the roast: what will come of it, what to mind, and what did. */
import { flourFromHominy, masaFromFlour, roastedYield } from '@crib/planning'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  Caution,
  ChoiceTags,
  CountField,
  Fold,
  MarginNote,
  NumberRow,
  Passage,
  QuantityField,
  Reasons,
  Sheet,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { WorkForm } from './work-form.tsx'
import { MoistureField, useMoisture, useWritten, within } from './written.tsx'

const MASS = { min: 0.001, max: 5000, unit: 'Kg', source: 'project rule' } as const

export function MillSheet() {
  const { say } = useWords()
  return (
    <Sheet title={say('keeping:screen-mill')} drawing="kernel" lead={say('keeping:screen-mill-lead')}>
      <Passage title={say('keeping:screen-flour')}>
        <Flour />
      </Passage>
      <Passage title={say('keeping:screen-masa')}>
        <Masa />
      </Passage>
      <Passage title={say('keeping:screen-ground')} margin={<MarginNote>{say('keeping:screen-work-note')}</MarginNote>}>
        <Fold title={say('keeping:screen-ground-write')}>
          <WorkForm work="ground" />
        </Fold>
      </Passage>
    </Sheet>
  )
}

function Flour() {
  const { say } = useWords()
  const hominy = useWritten('mill:hominy')
  const water = useMoisture('mill:water')
  const hominyKg = hominy.in('Kg')
  const hominyWetFraction = water.wetFraction
  const answer =
    hominyKg !== null && hominyWetFraction !== null
      ? within(() => flourFromHominy({ hominyKg, hominyWetFraction }))
      : null
  return (
    <>
      <QuantityField label={say('keeping:screen-hominy')} measures="mass" {...hominy.field} limits={MASS} />
      <MoistureField
        label={say('keeping:screen-hominy-water')}
        hint={say('keeping:screen-hominy-water-hint')}
        moisture={water}
      />
      <div aria-live="polite" className="passage-body">
        {answer && (
          <>
            <NumberRow>
              <BigNumber label={say('keeping:screen-flour-gives')} reckoned={answer.values[1]!} />
              <BigNumber label={say('keeping:screen-dried-gives')} reckoned={answer.values[0]!} size="small" />
            </NumberRow>
            <Reasons sentences={answer.reasons} />
            {answer.warnings.map((warning) => (
              <Caution key={warning.key} sentence={warning} />
            ))}
          </>
        )}
        {hominyKg !== null && hominyWetFraction !== null && !answer && (
          <p role="alert">{say('keeping:screen-hominy-outside')}</p>
        )}
      </div>
    </>
  )
}

/** Water of the dough: plants print 45 to 56 %, home recipes come to about 60 to 65 %. */
const DOUGHS = { stiff: 0.5, middle: 0.55, soft: 0.6 } as const

function Masa() {
  const { say } = useWords()
  const flour = useWritten('mill:flour')
  const [dough, setDough] = useHalfTyped<keyof typeof DOUGHS>('mill:dough', 'middle')
  const [ballG, setBall] = useHalfTyped('mill:ball', 30)
  const flourKg = flour.in('Kg')
  const answer = flourKg === null ? null : masaFromFlour({ flourKg, masaWetFraction: DOUGHS[dough], ballG })
  const labels = ['screen-water', 'screen-dough', 'screen-tortillas', 'screen-tortilla-g'] as const
  return (
    <>
      <QuantityField label={say('keeping:screen-flour-at-hand')} measures="mass" {...flour.field} limits={MASS} />
      <ChoiceTags
        legend={say('keeping:screen-dough-how')}
        options={(Object.keys(DOUGHS) as (keyof typeof DOUGHS)[]).map((value) => ({
          value,
          label: say(`keeping:screen-dough-${value}`),
        }))}
        value={dough}
        onValue={setDough}
      />
      <CountField label={say('keeping:screen-ball')} value={ballG} onValue={setBall} min={5} max={500} />
      <div aria-live="polite" className="passage-body">
        {answer && (
          <>
            <NumberRow>
              {answer.values.map((value, index) => (
                <BigNumber key={value.id} label={say(`keeping:${labels[index]!}`)} reckoned={value} size="small" />
              ))}
            </NumberRow>
            <Reasons sentences={answer.reasons} />
          </>
        )}
      </div>
    </>
  )
}

export function RoastSheet() {
  const { say } = useWords()
  const kernels = useWritten('roast:kernels')
  const water = useMoisture('roast:water')
  const end = useMoisture('roast:end')
  const kernelsKg = kernels.in('Kg')
  const kernelWetFraction = water.wetFraction
  const roastedWetFraction = end.wetFraction
  const isTold = kernelsKg !== null && kernelWetFraction !== null && roastedWetFraction !== null
  const answer = isTold ? within(() => roastedYield({ kernelsKg, kernelWetFraction, roastedWetFraction })) : null
  return (
    <Sheet title={say('keeping:screen-roast')} drawing="pot" lead={say('keeping:screen-roast-lead')}>
      <Passage>
        {/* Said before the pan is hot, whatever is typed below. */}
        <Caution sentence={{ key: 'keeping:roast-oil' }} />
        <Caution sentence={{ key: 'keeping:roast-teeth' }} />
      </Passage>
      <Passage title={say('keeping:screen-roast-gives')}>
        <QuantityField label={say('keeping:screen-kernels')} measures="mass" {...kernels.field} limits={MASS} />
        <MoistureField label={say('keeping:screen-kernel-water')} moisture={water} />
        <MoistureField
          label={say('keeping:screen-roasted-water')}
          hint={say('keeping:screen-roasted-water-hint')}
          moisture={end}
        />
        <div aria-live="polite" className="passage-body">
          {answer && (
            <>
              <NumberRow>
                <BigNumber label={say('keeping:screen-roasted')} reckoned={answer.values[0]!} />
                <BigNumber label={say('keeping:screen-water-gone')} reckoned={answer.values[1]!} size="small" />
              </NumberRow>
              <Reasons sentences={answer.reasons} />
            </>
          )}
          {isTold && !answer && <p role="alert">{say('keeping:screen-roast-outside')}</p>}
        </div>
      </Passage>
      <Passage
        title={say('keeping:screen-roasted-title')}
        margin={<MarginNote>{say('keeping:screen-work-note')}</MarginNote>}
      >
        <Fold title={say('keeping:screen-roasted-write')}>
          <WorkForm work="roasted" />
        </Fold>
      </Passage>
    </Sheet>
  )
}
