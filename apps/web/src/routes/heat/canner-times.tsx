/** Come-up and cool-down of a canner of the book, from its own runs where it has some, put on the picture by a tap. */
import { cannerOwnTimes } from '@crib/planning'
import type { MadeUpRun } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { memo } from 'react'
import { useBook } from '../../book/book.tsx'
import { SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export const CannerTimes = memo(function CannerTimes({
  jar,
  onChange,
}: {
  readonly jar: MadeUpRun['jar']
  readonly onChange: (change: Partial<MadeUpRun>) => void
}) {
  const { facts } = useBook()
  const { say } = useWords()
  return Object.values(facts.canners).map(({ cannerId, name }) => {
    const { comeUp, coolDown } = cannerOwnTimes(facts, cannerId, jar)
    return (
      <div key={cannerId}>
        <p>
          {say(coolDown.recordsCount > 0 ? 'heat:times-own' : 'heat:times-printed', {
            name,
            comeUp: formatReckoned(comeUp.reckoned),
            coolDown: formatReckoned(coolDown.reckoned),
            count: coolDown.recordsCount,
          })}
        </p>
        <SideAction onClick={() => onChange({ comeUpMin: comeUp.value, coolDownMin: coolDown.value })}>
          {say('heat:times-take', { name })}
        </SideAction>
      </div>
    )
  })
})
