/** GaugeTag: what is written on the tag tied to the lid. Props: canner, route (the dial's part of its card). */
import type { CannerFact } from '@crib/journal'
import { type GaugeCard, nextTestSentence } from '@crib/planning'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { ButtonRow, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'

export function GaugeTag({ canner, route }: { readonly canner: CannerFact; readonly route: GaugeCard | undefined }) {
  const { say, sentence } = useWords()
  const test = canner.gaugeTests.at(-1)
  if (!test) {
    return (
      <>
        <p>{say('shell:card-tag-untested')}</p>
        <ButtonRow>
          <SideAction href="/canner">{say('shell:gauge-keep')}</SideAction>
        </ButtonRow>
      </>
    )
  }
  const psi = (value: number) => formatQuantity({ value, unit: 'PsiGauge' }, 'alone')
  return (
    <div className="lid-tag">
      <p className="lid-tag-aim">
        {route?.holdAt ? formatReckoned(route.holdAt, 'alone') : say('shell:card-tag-no-aim')}
      </p>
      <ul>
        {test.readings.map(({ truePsi, readsPsi }) => (
          <li key={truePsi}>{say('shell:card-tag-reads', { truth: psi(truePsi), reads: psi(readsPsi) })}</li>
        ))}
        <li>{say('shell:card-tag-tested', { day: dayText(test.testedOn), tester: test.tester })}</li>
        {route?.holdAt && route.nextTestDue && <li>{sentence(nextTestSentence(route.nextTestDue))}</li>}
      </ul>
    </div>
  )
}
