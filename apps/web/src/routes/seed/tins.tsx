/** Tins: containers of a seed lot and where each stands; two to begin with, for two places. Props: tins, onTins. */
import { TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export interface Tin {
  readonly container: string
  readonly place: string
}

export function Tins({ tins, onTins }: { readonly tins: readonly Tin[]; readonly onTins: (tins: Tin[]) => void }) {
  const { say } = useWords()
  const change = (index: number, part: Partial<Tin>) =>
    onTins(tins.map((tin, i) => (i === index ? { ...tin, ...part } : tin)))
  return tins.flatMap(({ container, place }, index) => {
    const number = index + 1
    return [
      <TextField
        key={`container ${number}`}
        label={say('seed:screen-tin', { number })}
        {...(index === 0 && { hint: say('seed:screen-tin-hint') })}
        value={container}
        onValue={(text) => change(index, { container: text })}
      />,
      <TextField
        key={`place ${number}`}
        label={say('seed:screen-place', { number })}
        value={place}
        onValue={(text) => change(index, { place: text })}
      />,
    ]
  })
}
