/** Everything written down for a pot-load, in order; each line can be taken out and stays readable in the book. */
import type { BatchFact } from '@crib/journal'
import type { PotWalk } from '@crib/planning'
import { convert } from '@crib/science'
import { formatQuantity, type Words } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { Fold, Passage, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { clockText, type PotAt } from './pot-at.ts'

export function Noted({ at }: { readonly at: PotAt }) {
  const { facts, write } = useBook()
  const words = useWords()
  const { say } = words
  const { batch, walk } = at
  const lotName = (id: string) => facts.alkaliLots[id]?.name ?? ''
  const lines = [
    ...batch.stages
      .filter(({ potLoad }) => potLoad === walk.potLoad)
      .map((note) => ({ at: note.at, text: stageWords(note, walk, words) })),
    ...batch.cook
      .filter(({ potLoad }) => potLoad === walk.potLoad)
      .map((note) => ({ at: note.at, text: seenWords(note.seen, words, lotName) })),
  ].sort((a, b) => Date.parse(a.at.instant) - Date.parse(b.at.instant))
  return (
    <Passage>
      <Fold title={say('kettle:walk-noted')}>
        {lines.length === 0 && <p>{say('kettle:walk-noted-empty')}</p>}
        <div>
          {lines.map(({ at: said, text }) => (
            <details className="line" key={said.entryId}>
              <summary>
                <time dateTime={said.instant}>{clockText(Date.parse(said.instant), at)}</time>
                <span>{text}</span>
              </summary>
              <div className="line-body">
                <SideAction
                  onClick={() =>
                    void write('entry-withdrawn', {
                      withdrawsId: said.entryId,
                      reason: say('kettle:walk-taken-back-reason'),
                    })
                  }
                >
                  {say('kettle:walk-noted-out')}
                </SideAction>
              </div>
            </details>
          ))}
        </div>
      </Fold>
    </Passage>
  )
}

const gallons = (waterL: number) =>
  formatQuantity({ value: Number(convert(waterL, 'L', 'LiquidGal').toFixed(2)), unit: 'LiquidGal' }, 'alone')

function stageWords(note: BatchFact['stages'][number], walk: PotWalk, { say, sentence }: Words): string {
  const step = walk.steps.find(({ stepId }) => stepId === note.stageId)
  const title = step ? sentence(step.stage.title) : note.stageId
  const stage =
    step && step.ofCount > 1 ? say('kettle:walk-stage-times', { title, number: step.number, of: step.ofCount }) : title
  const text = say(note.what === 'begun' ? 'kettle:walk-word-begun' : 'kettle:walk-word-done', { stage })
  return note.waterL === undefined ? text : say('kettle:walk-noted-water', { words: text, water: gallons(note.waterL) })
}

function seenWords(seen: BatchFact['cook'][number]['seen'], { say }: Words, lotName: (id: string) => string): string {
  switch (seen.type) {
    case 'boil':
      return say('kettle:walk-boil-word')
    case 'topped-up':
      return say('kettle:walk-top-up-word', { water: gallons(seen.waterL) })
    case 'darkening':
      return say('kettle:walk-darkening-word')
    case 'rubbed':
      return say('kettle:rub-seen', { slipped: seen.slippedCount, rubbed: seen.ofCount })
    case 'alkali-added': {
      const amount =
        seen.cups !== undefined
          ? formatQuantity({ value: seen.cups, unit: 'Cup' }, 'alone')
          : formatQuantity({ value: Number(convert(seen.massKg ?? 0, 'Kg', 'G').toFixed(1)), unit: 'G' }, 'alone')
      return say('kettle:walk-dose-in-word', { amount, lot: lotName(seen.alkaliLotId) })
    }
    case 'rinsed':
      return say('kettle:walk-noted-water', {
        words: say(seen.hot ? 'kettle:stage-hot-rinse' : 'kettle:stage-cold-rinse'),
        water: gallons(seen.waterL),
      })
    case 'skimmed':
      return say('kettle:stage-skim')
    case 'rinse-tested':
      return say(`kettle:rinse-tested-${seen.way}`, { pH: seen.stripPH })
    case 'handful-sorted':
      return say('kettle:noted-handful', {
        out: seen.tails.reduce((sum, { count }) => sum + count, 0),
        of: seen.ofCount,
      })
    case 'hominy-weighed':
      return say('kettle:noted-hominy', { weight: { value: seen.massKg, unit: 'Kg' } })
    case 'hot-pack-ready':
      return say('kettle:walk-hot-pack-word')
    case 'off-heat':
      return say(seen.then === 'chilled' ? 'kettle:walk-chill-word' : 'kettle:walk-off-heat-word')
  }
}
