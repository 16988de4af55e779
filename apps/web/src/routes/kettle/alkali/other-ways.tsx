/**
 * StripTest: a pH strip in clear liquor, with its wide band. TrialCup: what the lot did to one cup of corn.
 * Props of both: lot, onKept. What is typed is kept on this device until it is written down.
 */
import type { AlkaliLotFact } from '@crib/journal'
import { type LotTestFound, RUB_TEST_KERNELS } from '@crib/planning'
import { useHalfTyped } from '../../../half-typed.ts'
import { Caution, CountField, Passage } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'
import { AmountField, amountIn } from '../amount.tsx'
import { BOILED_MIN, G_PER_CUP, LIQUOR_C, STEEP_L, STEEPED_G, STRIP_PH } from './limits.ts'
import { TestResult } from './test-result.tsx'

interface WayProps {
  readonly lot: AlkaliLotFact
  readonly onKept: () => void
}

export function StripTest({ lot, onKept }: WayProps) {
  const { say } = useWords()
  const fresh = { steeped: '', water: '', pH: '', heat: '' }
  const [typed, setTyped, forget] = useHalfTyped(`strip:${lot.alkaliLotId}`, fresh)
  const change = (part: Partial<typeof fresh>) => setTyped({ ...typed, ...part })
  const stripPH = amountIn(typed.pH, STRIP_PH)
  const liquorC = amountIn(typed.heat, LIQUOR_C)
  const steepedG = amountIn(typed.steeped, STEEPED_G)
  const steepWaterL = amountIn(typed.water, STEEP_L)
  const found: LotTestFound | null =
    stripPH === null || liquorC === null
      ? null
      : {
          way: 'strip',
          stripPH,
          liquorC,
          ...(steepedG !== null && steepWaterL !== null && { steepedG, steepWaterL }),
        }
  return (
    <Passage title={say('kettle:test-way-strip')}>
      <p>{say('kettle:test-strip-how')}</p>
      <Caution sentence={{ key: 'cautions:alkali-eyes' }} />
      <AmountField
        label={say('kettle:test-steeped')}
        hint={say('kettle:test-strip-steep-hint')}
        spec={STEEPED_G}
        text={typed.steeped}
        onText={(steeped) => change({ steeped })}
      />
      <AmountField
        label={say('kettle:test-water')}
        spec={STEEP_L}
        text={typed.water}
        onText={(water) => change({ water })}
      />
      <AmountField
        label={say('kettle:test-strip-ph')}
        spec={STRIP_PH}
        text={typed.pH}
        onText={(pH) => change({ pH })}
        required
      />
      <AmountField
        label={say('kettle:test-strip-heat')}
        hint={say('kettle:test-strip-heat-hint')}
        spec={LIQUOR_C}
        text={typed.heat}
        onText={(heat) => change({ heat })}
        required
      />
      <TestResult
        lot={lot}
        found={found}
        missing={say('kettle:test-strip-missing')}
        onKept={() => {
          forget()
          onKept()
        }}
      />
    </Passage>
  )
}

export function TrialCup({ lot, onKept }: WayProps) {
  const { say } = useWords()
  const fresh = { weight: '', boiled: '', slipped: 0 }
  const [typed, setTyped, forget] = useHalfTyped(`trial-cup:${lot.alkaliLotId}`, fresh)
  const change = (part: Partial<typeof fresh>) => setTyped({ ...typed, ...part })
  const boiledMin = amountIn(typed.boiled, BOILED_MIN)
  const lotG = amountIn(typed.weight, { ...G_PER_CUP, min: 0, max: 10_000 })
  const found: LotTestFound | null =
    boiledMin === null
      ? null
      : {
          way: 'trial-cup',
          slippedCount: typed.slipped,
          ofCount: RUB_TEST_KERNELS,
          boiledMin,
          ...(lotG !== null && { lotG }),
        }
  return (
    <Passage title={say('kettle:test-way-trial-cup')}>
      <p>{say('kettle:test-trial-how')}</p>
      <Caution sentence={{ key: 'cautions:alkali-eyes' }} />
      <AmountField
        label={say('kettle:test-trial-weight')}
        spec={{ ...G_PER_CUP, min: 0, max: 10_000 }}
        text={typed.weight}
        onText={(weight) => change({ weight })}
      />
      <AmountField
        label={say('kettle:test-trial-min')}
        spec={BOILED_MIN}
        text={typed.boiled}
        onText={(boiled) => change({ boiled })}
        required
      />
      <Caution sentence={{ key: 'cautions:rub-gloves' }} />
      <CountField
        label={say('kettle:walk-rub-of', { count: RUB_TEST_KERNELS })}
        value={typed.slipped}
        onValue={(slipped) => change({ slipped })}
        max={RUB_TEST_KERNELS}
      />
      <TestResult
        lot={lot}
        found={found}
        missing={say('kettle:test-trial-missing')}
        onKept={() => {
          forget()
          onKept()
        }}
      />
    </Passage>
  )
}
