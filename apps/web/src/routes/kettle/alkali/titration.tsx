/**
 * Titration: vinegar and phenolphthalein, two end points of one sample, step by step as it is done at the table.
 * Everything typed is kept on this device until it is written down. Props: lot, onKept.
 */
import type { AlkaliLotFact } from '@crib/journal'
import type { LotTestFound } from '@crib/planning'
import { formatQuantity } from '@crib/wording'
import { useHalfTyped } from '../../../half-typed.ts'
import { Caution, ChoiceTags, CountField, SideAction } from '../../../parts-of-the-sheet/index.ts'
import { TapButton, TapGroup } from '../../../walk/taps.tsx'
import { useWords } from '../../../words.tsx'
import { AmountField, amountIn } from '../amount.tsx'
import { G_PER_CUP, ML, SAMPLE_ML, STEEP_L, STEEPED_G } from './limits.ts'
import { TestResult } from './test-result.tsx'
import { TestStep } from './test-step.tsx'

const STEPS = ['weigh', 'shake', 'settle', 'sample', 'cold', 'boil', 'result'] as const
type StepId = (typeof STEPS)[number]
/** Finest marks of kitchen syringes. [mL] */
const MARKS = ['0.01', '0.1', '0.2', '0.5', '1'] as const

interface Typed {
  readonly open: StepId | ''
  readonly steeped: string
  readonly water: string
  readonly cup: string
  readonly sample: string
  readonly liquorParts: number
  readonly label: number
  readonly vinegarParts: number
  readonly mark: (typeof MARKS)[number]
  readonly cold: string
  readonly boiled: string
}

const FRESH: Typed = {
  open: 'weigh',
  steeped: '',
  water: '',
  cup: '',
  sample: '',
  liquorParts: 0,
  label: 5,
  vinegarParts: 0,
  mark: '0.1',
  cold: '',
  boiled: '',
}

export function Titration({ lot, onKept }: { readonly lot: AlkaliLotFact; readonly onKept: () => void }) {
  const { say } = useWords()
  const [typed, setTyped, forget] = useHalfTyped<Typed>(`titration:${lot.alkaliLotId}`, FRESH)
  const change = (part: Partial<Typed>) => setTyped({ ...typed, ...part })
  const sampleMl = amountIn(typed.sample, SAMPLE_ML)
  const coldMl = amountIn(typed.cold, ML)
  const boiledMl = amountIn(typed.boiled, ML)
  const steepedG = amountIn(typed.steeped, STEEPED_G)
  const steepWaterL = amountIn(typed.water, STEEP_L)
  const gPerCup = amountIn(typed.cup, G_PER_CUP) ?? undefined
  const isSteepTold = steepedG !== null && steepWaterL !== null
  const missing = [
    sampleMl === null && say('kettle:test-step-sample'),
    coldMl === null && say('kettle:test-step-cold'),
    boiledMl === null && say('kettle:test-step-boil'),
  ].filter((words) => words !== false)
  const found: LotTestFound | null =
    sampleMl === null || coldMl === null || boiledMl === null
      ? null
      : {
          way: 'vinegar',
          sampleMl,
          coldMl,
          boiledMl,
          acidityGPer100Ml: typed.label,
          ...(typed.vinegarParts > 0 && { vinegarWaterParts: typed.vinegarParts }),
          ...(typed.liquorParts > 0 && { liquorWaterParts: typed.liquorParts }),
          syringeStepMl: Number(typed.mark),
          ...(isSteepTold && { steepedG, steepWaterL }),
        }
  const ml = (value: number | null) => (value === null ? undefined : formatQuantity({ value, unit: 'Ml' }, 'alone'))
  const read: Partial<Record<StepId, string | undefined>> = {
    weigh: isSteepTold
      ? say('kettle:test-steep-read', {
          ash: formatQuantity({ value: steepedG, unit: 'G' }, 'alone'),
          water: formatQuantity({ value: steepWaterL, unit: 'L' }, 'alone'),
        })
      : undefined,
    sample: ml(sampleMl),
    cold: ml(coldMl),
    boil: ml(boiledMl),
  }
  const at = STEPS.indexOf(typed.open as StepId)
  const next = (id: Exclude<StepId, 'result'>) => (
    <TapGroup>
      <TapButton isNext onClick={() => change({ open: STEPS[STEPS.indexOf(id) + 1]! })}>
        {say(`kettle:test-next-${id}`)}
      </TapButton>
    </TapGroup>
  )
  const inside: Record<StepId, React.ReactNode> = {
    weigh: (
      <>
        <p>{say('kettle:test-weigh-how')}</p>
        <Caution sentence={{ key: 'cautions:ash-embers' }} />
        <AmountField
          label={say('kettle:test-steeped')}
          hint={say('kettle:test-steeped-hint')}
          spec={STEEPED_G}
          text={typed.steeped}
          onText={(steeped) => change({ steeped })}
        />
        <AmountField
          label={say('kettle:test-water')}
          hint={say('kettle:test-water-hint')}
          spec={STEEP_L}
          text={typed.water}
          onText={(water) => change({ water })}
        />
        <AmountField
          label={say('kettle:test-cup')}
          hint={say('kettle:test-cup-hint')}
          spec={G_PER_CUP}
          text={typed.cup}
          onText={(cup) => change({ cup })}
        />
        <Caution sentence={{ key: 'cautions:alkali-eyes' }} />
        {next('weigh')}
      </>
    ),
    shake: (
      <>
        <p>{say('kettle:test-shake-how')}</p>
        <Caution>{say('kettle:test-shake-care')}</Caution>
        {next('shake')}
      </>
    ),
    settle: (
      <>
        <p>{say('kettle:test-settle-how')}</p>
        {next('settle')}
      </>
    ),
    sample: (
      <>
        <Caution sentence={{ key: 'cautions:alkali-eyes' }} />
        <p>{say('kettle:test-sample-how')}</p>
        <AmountField
          label={say('kettle:test-sample')}
          hint={say('kettle:test-sample-hint')}
          spec={SAMPLE_ML}
          text={typed.sample}
          onText={(sample) => change({ sample })}
          required
        />
        <CountField
          label={say('kettle:test-liquor-parts')}
          hint={say('kettle:test-liquor-parts-hint')}
          value={typed.liquorParts}
          onValue={(liquorParts) => change({ liquorParts })}
          max={99}
        />
        {next('sample')}
      </>
    ),
    cold: (
      <>
        <p>{say('kettle:test-cold-how')}</p>
        <CountField
          label={say('kettle:test-label')}
          hint={say('kettle:test-label-hint')}
          value={typed.label}
          onValue={(label) => change({ label })}
          min={1}
          max={12}
        />
        <CountField
          label={say('kettle:test-vinegar-parts')}
          value={typed.vinegarParts}
          onValue={(vinegarParts) => change({ vinegarParts })}
          max={50}
        />
        <ChoiceTags
          legend={say('kettle:test-mark')}
          options={MARKS.map((value) => ({ value, label: ml(Number(value))! }))}
          value={typed.mark}
          onValue={(mark) => change({ mark })}
        />
        <AmountField
          label={say('kettle:test-cold')}
          hint={say('kettle:test-cold-hint')}
          spec={ML}
          text={typed.cold}
          onText={(cold) => change({ cold })}
          required
        />
        <Caution sentence={{ key: 'cautions:rub-first-aid' }} />
        {next('cold')}
      </>
    ),
    boil: (
      <>
        <Caution>{say('kettle:test-boil-care')}</Caution>
        <p>{say('kettle:test-boil-how')}</p>
        <AmountField
          label={say('kettle:test-boiled')}
          hint={say('kettle:test-boiled-hint')}
          spec={ML}
          text={typed.boiled}
          onText={(boiled) => change({ boiled })}
          required
        />
        {next('boil')}
      </>
    ),
    result: (
      <>
        {!isSteepTold && <p>{say('kettle:test-no-steep')}</p>}
        <TestResult
          lot={lot}
          found={found}
          missing={say('kettle:test-missing', { steps: missing.join(', ') })}
          gPerCup={gPerCup}
          onKept={() => {
            forget()
            onKept()
          }}
        />
        <SideAction onClick={forget}>{say('kettle:test-begin-anew')}</SideAction>
      </>
    ),
  }
  return STEPS.map((id, index) => (
    <TestStep
      key={id}
      title={say(`kettle:test-step-${id}`)}
      number={index + 1}
      read={read[id]}
      isOpen={typed.open === id}
      isDone={id === 'shake' || id === 'settle' ? at > index : read[id] !== undefined}
      onOpen={() => change({ open: typed.open === id ? '' : id })}
    >
      {inside[id]}
    </TestStep>
  ))
}
