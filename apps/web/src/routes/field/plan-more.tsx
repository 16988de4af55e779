/** PlanMore: ears, losses and how sure, folded away; own numbers where the book has them. Props: wish, change, lot, years. */
import type { SeedLotFact } from '@crib/journal'
import type { FieldYear } from '@crib/planning'
import { ChoiceTags, CountField, Fold, PercentField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { PER_OZ, sproutsOf100, standOf100, type Wish } from './plan-wish.ts'

const CONFIDENCES = ['80', '90', '95', '99'] as const

export function PlanMore({
  wish,
  change,
  lot,
  years,
}: {
  readonly wish: Wish
  readonly change: (part: Partial<Wish>) => void
  readonly lot: SeedLotFact | null
  readonly years: readonly FieldYear[]
}) {
  const { say } = useWords()
  const isTested = (lot?.tests.length ?? 0) > 0
  return (
    <Fold title={say('field:screen-plan-more')}>
      <p className="field-hint">{say('field:screen-plan-more-lead')}</p>
      <CountField
        label={say('field:screen-plan-per-oz')}
        value={wish.perOz}
        onValue={(perOz) => change({ perOz })}
        max={PER_OZ.most}
        error={wish.perOz < PER_OZ.least ? say('field:screen-plan-per-oz-outside') : null}
      />
      <CountField
        label={say('field:screen-plan-per-ear')}
        value={wish.perEar}
        onValue={(perEar) => change({ perEar })}
        max={1200}
      />
      <CountField
        label={say('field:screen-plan-ears')}
        value={wish.earsOnTen}
        onValue={(earsOnTen) => change({ earsOnTen })}
        max={60}
      />
      <PercentField
        label={say('field:screen-plan-loss')}
        value={wish.lossPercent}
        onValue={(lossPercent) => change({ lossPercent })}
        max={95}
      />
      <CountField
        label={say('field:screen-plan-sprouts')}
        {...(isTested && wish.sproutsOf100 === 0 && { hint: say('field:screen-plan-sprouts-of-test') })}
        value={sproutsOf100(wish, lot)}
        onValue={(value) => change({ sproutsOf100: value })}
        max={100}
      />
      <CountField
        label={say('field:screen-plan-stand')}
        {...(years.length > 0 &&
          wish.standOf100 === 0 && { hint: say('field:screen-plan-stand-own', { count: years.length }) })}
        value={standOf100(wish, years)}
        onValue={(value) => change({ standOf100: value })}
        max={100}
      />
      <ChoiceTags
        legend={say('field:screen-plan-confidence')}
        options={CONFIDENCES.map((value) => ({ value, label: value }))}
        value={wish.confidence}
        onValue={(confidence) => change({ confidence })}
      />
    </Fold>
  )
}
