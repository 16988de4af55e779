import type { WalkStep } from '@crib/planning'
import { useWords } from '../../words.tsx'

/** A stage's own title, with its running number where it is done several times. */
export function useStepTitle(): (step: Pick<WalkStep, 'stage' | 'number' | 'ofCount'>) => string {
  const { say, sentence } = useWords()
  return ({ stage, number, ofCount }) =>
    ofCount > 1
      ? say('kettle:walk-stage-times', { title: sentence(stage.title), number, of: ofCount })
      : sentence(stage.title)
}
