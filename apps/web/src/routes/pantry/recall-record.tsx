/** RecallRecord: that a recall was made, why, and which households were told. Props: found, about (name of what is doubted). */
import { type Recall, recallValues } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { FlagTag, TextField } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

export function RecallRecord({ found, about }: { readonly found: Recall; readonly about: string }) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const { origin, loadCodes, households } = found
  const [why, setWhy, forgetWhy] = useHalfTyped(`recall:why:${about}`, '')
  const [told, setTold, forgetTold] = useHalfTyped<readonly string[]>(`recall:told:${about}`, [])
  const jarsCount = recallValues(found).find(({ id }) => id === 'recallJars')?.value ?? 0
  const keep = async () => {
    const reached = told.filter((household) => households.includes(household))
    const kept = await record.keep('recall-noted', {
      recallId: newId(),
      drill: false,
      by: origin.by,
      about,
      loadCodes,
      jarsCount,
      ...(why.trim() && { why: why.trim() }),
      ...(reached.length > 0 && { toldHouseholds: reached }),
    })
    if (!kept) return
    forgetWhy()
    forgetTold()
  }
  return (
    <Form action={say('pantry:recall-keep')} onSubmit={keep}>
      <TextField
        label={say('pantry:recall-why')}
        hint={say('pantry:recall-why-hint')}
        value={why}
        onValue={setWhy}
        lines={2}
        maxLength={10_000}
      />
      {households.length > 0 && (
        <fieldset className="field" style={{ maxWidth: 'none' }}>
          <legend>{say('pantry:recall-who-was-told')}</legend>
          <div className="tags">
            {households.map((household) => (
              <FlagTag
                key={household}
                label={household}
                value={told.includes(household)}
                onValue={(isTold) => setTold(isTold ? [...told, household] : told.filter((each) => each !== household))}
              />
            ))}
          </div>
        </fieldset>
      )}
      <Asked record={record} />
    </Form>
  )
}
