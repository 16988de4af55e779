/** How much of it: wanted alkali on the corn or wanted strength of the pot, to grams first; and how others compare. */
import { ownStrengths, testedStrength } from '@crib/planning'
import { useSearch } from 'wouter'
import { useBook } from '../../../book/book.tsx'
import { useHalfTyped } from '../../../half-typed.ts'
import { ButtonRow, ChoiceTags, MarginNote, Passage, Sheet, SideAction } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'
import { AmountField } from '../amount.tsx'
import { Across } from './across.tsx'
import { DoseNumbers } from './dose-numbers.tsx'
import { CORN, WANTED_EQ, WANTED_MOL, WATER_L } from './limits.ts'
import { RecipesFigure } from './recipes-figure.tsx'
import { useDose } from './use-dose.ts'

const BOUGHT = [
  'calcium-hydroxide',
  'sodium-hydroxide',
  'potassium-hydroxide',
  'baking-soda',
  'sodium-carbonate',
] as const

export default function DosePage() {
  const { facts } = useBook()
  const { say } = useWords()
  const asked = new URLSearchParams(useSearch()).get('lot')
  const lots = Object.values(facts.alkaliLots)
  const [chosen, setChosen] = useHalfTyped<string | null>('dose:alkali', null)
  const from = chosen ?? asked ?? lots.at(-1)?.alkaliLotId ?? 'calcium-hydroxide'
  const lot = facts.alkaliLots[from]
  const alkali = lot?.alkali ?? BOUGHT.find((each) => each === from) ?? 'calcium-hydroxide'
  const { typed, change, pot } = useDose(alkali, lot)
  const own = ownStrengths(facts)
  return (
    <Sheet title={say('kettle:dose-title')} drawing="scale" lead={say('kettle:dose-lead')}>
      <Passage margin={<MarginNote>{say('kettle:dose-margin')}</MarginNote>}>
        <ChoiceTags
          legend={say('shell:plan-assume-alkali')}
          options={[
            ...lots.map(({ alkaliLotId, name, alkali: kind }) => ({
              value: alkaliLotId,
              label: name,
              note: say(`shell:alkali-${kind}`),
            })),
            ...BOUGHT.filter((each) => !lots.some(({ alkali: kind }) => kind === each)).map((value) => ({
              value: value as string,
              label: say(`shell:alkali-${value}`),
            })),
          ]}
          value={from}
          onValue={setChosen}
        />
        <AmountField
          label={say('kettle:dose-corn')}
          spec={CORN}
          text={typed.corn}
          onText={(corn) => change({ corn })}
          required
        />
        <AmountField
          label={say('kettle:dose-water')}
          spec={WATER_L}
          text={typed.water}
          onText={(water) => change({ water })}
          required
        />
        <ChoiceTags
          legend={say('kettle:dose-wish')}
          options={(['on-corn', 'in-pot'] as const).map((value) => ({
            value,
            label: say(`kettle:dose-wish-${value}`),
            note: say(`kettle:dose-wish-${value}-note`),
          }))}
          value={typed.wish}
          onValue={(wish) => change({ wish })}
        />
        {typed.wish === 'on-corn' ? (
          <AmountField
            label={say('kettle:dose-wanted-on-corn')}
            spec={WANTED_EQ}
            text={typed.onCorn}
            onText={(onCorn) => change({ onCorn })}
            required
          />
        ) : (
          <AmountField
            label={say('kettle:dose-wanted-in-pot')}
            spec={WANTED_MOL}
            text={typed.inPot}
            onText={(inPot) => change({ inPot })}
            required
          />
        )}
      </Passage>
      <Passage title={say('kettle:dose-weigh')}>
        <div aria-live="polite" className="passage-body">
          <DoseNumbers pot={pot} />
        </div>
        {lot && (
          <ButtonRow>
            {lot.alkali === 'ash' && (
              <SideAction href={`/kettle/alkali/${lot.alkaliLotId}/test`}>
                {say(testedStrength(lot) ? 'kettle:lot-test-again' : 'kettle:lot-test')}
              </SideAction>
            )}
            <SideAction href={`/paper/lye-sheet/${lot.alkaliLotId}?dose`}>{say('kettle:page-lye')}</SideAction>
          </ButtonRow>
        )}
      </Passage>
      {pot?.kind === 'pot' && (
        <Passage title={say('kettle:dose-across')} margin={<MarginNote>{say('kettle:dose-across-margin')}</MarginNote>}>
          <Across pot={pot} />
        </Passage>
      )}
      <Passage title={say('kettle:dose-recipes')} margin={<MarginNote>{say('kettle:dose-recipes-margin')}</MarginNote>}>
        <RecipesFigure
          own={own.rows}
          asked={pot?.kind === 'pot' ? { eqPerKg: pot.input.eqPerKgCorn, eqPerL: pot.eqPerL } : null}
        />
        {own.unmeasuredCount > 0 && <p>{say('kettle:dose-own-unmeasured', { count: own.unmeasuredCount })}</p>}
      </Passage>
    </Sheet>
  )
}
