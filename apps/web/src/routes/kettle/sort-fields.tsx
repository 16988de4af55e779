/**
 * What is sorted out at a sort: its weight, and by cause where the keeper parts it. Half typed, it stays on this device.
 * useSorted(step, at): { field, isRead, lines, weightKg, forget }. Causes that do not belong to this sort are not asked.
 */
import type { SortCause, WalkStep } from '@crib/planning'
import { useHalfTyped } from '../../half-typed.ts'
import { Fold } from '../../parts-of-the-sheet/index.ts'
import { upperFirst } from '../../upper-first.ts'
import type { Line } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import { AmountField, type AmountSpec, amountIn } from './amount.tsx'
import type { PotAt } from './pot-at.ts'

/** A bare number is not taken: a pound and a kilogram are both near at hand. */
const SORTED_KG: AmountSpec = { unit: 'Kg', min: 0, max: 500 }

/** What there is to sort out, dry and after the cook. */
export const CAUSES = {
  'sort-dry': ['mould', 'field-damage', 'shrivelled', 'discoloured', 'broken', 'foreign'],
  'sort-wet': ['mould', 'unhulled', 'dark-tip', 'broken', 'discoloured', 'field-damage', 'foreign'],
} as const satisfies Record<string, readonly SortCause[]>

interface Typed {
  readonly whole: string
  readonly causes: { readonly [cause: string]: string }
}

const NOTHING: Typed = { whole: '', causes: {} }

export interface Sorted {
  readonly field: React.ReactNode
  /** False while something is typed that is no weight. */
  readonly isRead: boolean
  readonly lines: readonly Line[]
  /** Null where nothing was weighed. [kg] */
  readonly weightKg: number | null
  readonly hasMould: boolean
  readonly forget: () => void
}

export function useSorted(step: WalkStep, { batch, walk }: PotAt): Sorted {
  const { say } = useWords()
  const kind = step.stage.kind === 'sort-dry' ? 'sort-dry' : 'sort-wet'
  const isAsked = step.stage.kind === kind && step.doneAtMs === undefined
  const name = `sorted:${batch.batchId}:${walk.potLoad}:${step.stepId}`
  const [typed, setTyped, forget] = useHalfTyped(name, NOTHING)
  const causes: readonly SortCause[] = CAUSES[kind]
  const texts = causes
    .map((cause) => [cause, typed.causes[cause] ?? ''] as const)
    .filter(([, text]) => text.trim() !== '')
  const tails = texts.flatMap(([cause, text]) => {
    const massKg = amountIn(text, SORTED_KG)
    return massKg === null ? [] : [{ cause, massKg }]
  })
  const whole = typed.whole.trim() === '' ? null : amountIn(typed.whole, SORTED_KG)
  const isRead = (typed.whole.trim() === '' || whole !== null) && tails.length === texts.length
  const parted = tails.reduce((sum, { massKg }) => sum + massKg, 0)
  const weightKg = whole ?? (tails.length > 0 ? parted : null)
  const line: Line = [
    'corn-sorted',
    {
      entity: 'batch',
      entityId: batch.batchId,
      when: kind === 'sort-dry' ? 'dry' : 'wet',
      removedKg: weightKg ?? 0,
      potLoad: walk.potLoad,
      ...(tails.length > 0 && { tails }),
    },
  ]
  return {
    isRead,
    weightKg,
    hasMould: tails.some(({ cause, massKg }) => cause === 'mould' && massKg > 0),
    lines: isAsked && weightKg !== null ? [line] : [],
    forget,
    field: isAsked && (
      <>
        <AmountField
          label={say('kettle:walk-sorted')}
          hint={say('kettle:walk-sorted-hint')}
          spec={SORTED_KG}
          text={typed.whole}
          onText={(text) => setTyped({ ...typed, whole: text })}
        />
        <Fold title={say('kettle:sort-by-cause')} open={texts.length > 0}>
          <p className="field-hint">{say('kettle:sort-by-cause-hint')}</p>
          {causes.map((cause) => (
            <AmountField
              key={cause}
              label={say('kettle:cause-weighed', { cause: upperFirst(say(`kettle:cause-${cause}`)) })}
              spec={SORTED_KG}
              text={typed.causes[cause] ?? ''}
              onText={(text) => setTyped({ ...typed, causes: { ...typed.causes, [cause]: text } })}
            />
          ))}
        </Fold>
      </>
    ),
  }
}
