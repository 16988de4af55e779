/** What to buy: lids with their spares and jars, less what is at hand. */
import { lidsAndJarsToBuy } from '@crib/planning'
import { useHalfTyped } from '../../half-typed.ts'
import { BigNumber, CountField, NumberRow, Passage, Sheet } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

/** As the village kitchen plans: 5 in 100. */
const SPARE_PERCENT = 5

export function BuySheet() {
  const { say } = useWords()
  const [jarsCount, setJars] = useHalfTyped('buy:jars', 0)
  const [sparePercent, setSpare] = useHalfTyped('buy:spare', SPARE_PERCENT)
  const [lidsAtHandCount, setLids] = useHalfTyped('buy:lids', 0)
  const [jarsAtHandCount, setAtHand] = useHalfTyped('buy:at-hand', 0)
  const [lids, jars] = lidsAndJarsToBuy({
    jarsCount,
    lidsAtHandCount,
    jarsAtHandCount,
    spareLidFraction: sparePercent / 100,
  })
  return (
    <Sheet title={say('pantry:buy-title')} drawing="jar" lead={say('pantry:buy-lead')}>
      <Passage>
        <CountField label={say('pantry:buy-jars')} value={jarsCount} onValue={setJars} max={10_000} />
        <CountField label={say('pantry:buy-spare')} value={sparePercent} onValue={setSpare} max={100} />
        <CountField
          label={say('pantry:buy-lids-at-hand')}
          hint={say('pantry:buy-lids-hint')}
          value={lidsAtHandCount}
          onValue={setLids}
          max={10_000}
        />
        <CountField label={say('pantry:buy-jars-at-hand')} value={jarsAtHandCount} onValue={setAtHand} max={10_000} />
        <div aria-live="polite">
          <NumberRow>
            <BigNumber label={say('pantry:buy-lids')} reckoned={lids} />
            <BigNumber label={say('pantry:buy-jars-to-buy')} reckoned={jars} />
          </NumberRow>
        </div>
      </Passage>
    </Sheet>
  )
}
