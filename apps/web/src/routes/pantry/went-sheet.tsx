/** Where it went: every pound of corn that went into the kettle, on the shelf, used, or named as a loss. */
import { pantryShelf, whereItWent } from '@crib/planning'
import { formatWeight } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import {
  BigNumber,
  Empty,
  Ledger,
  MarginNote,
  NextAction,
  Passage,
  Reasons,
  Sheet,
} from '../../parts-of-the-sheet/index.ts'
import { usePreferences } from '../../preferences.tsx'
import { useWords } from '../../words.tsx'

export function WentSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const { measureFirst } = usePreferences()
  const went = whereItWent(facts)
  const placesOf = (form: string | null) => [
    ...new Set(pantryShelf(facts).flatMap(({ lot }) => (lot.form === form && lot.place ? [lot.place] : []))),
  ]
  return (
    <Sheet title={say('pantry:went-title')} drawing="scale" lead={say('pantry:went-lead')}>
      {went ? (
        <Passage margin={<MarginNote>{say('pantry:went-margin')}</MarginNote>}>
          <BigNumber label={say('pantry:went-in')} reckoned={went.corn} />
          <Ledger
            caption={say('pantry:went-caption')}
            head={[say('pantry:went-where'), say('pantry:went-corn'), say('pantry:went-stands')]}
            rows={[
              ...went.strands.map(({ place, form, corn }) => ({
                key: `${place} ${form}`,
                cells: [
                  form === null ? say(`pantry:went-${place}`) : say(`pantry:form-${form}`),
                  { number: formatWeight(corn.value, measureFirst) },
                  form === null ? '' : placesOf(form).join(', '),
                ],
              })),
              {
                key: 'all',
                cells: [say('pantry:went-all'), { number: formatWeight(went.corn.value, measureFirst) }, ''],
              },
            ]}
          />
          <Reasons sentences={went.reasons} />
          {went.unweighedCodes.length > 0 && (
            <p>{say('pantry:went-unweighed', { codes: went.unweighedCodes.join(', ') })}</p>
          )}
        </Passage>
      ) : (
        <Passage>
          <Empty drawing="pot" action={<NextAction href="/plan">{say('shell:plan-title')}</NextAction>}>
            <p>{say('pantry:went-empty')}</p>
          </Empty>
        </Passage>
      )}
    </Sheet>
  )
}
