/**
 * WashPlan: which baths for the water, time and fuel there is; waiting, stopping and failing said. Props: input (null while
 * something is missing), soFar (the wash as done).
 */
import type { WashInput, WashSoFar } from '@crib/planning'
import type { Reckoned } from '@crib/science'
import { formatQuantity, formatReckoned } from '@crib/wording'
import { useRef } from 'react'
import {
  BigNumber,
  Caution,
  FieldError,
  Ledger,
  NumberRow,
  Reasons,
  Refusal,
  SideAction,
} from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'
import { useWash } from './use-wash.ts'
import { WhatRemains } from './what-remains.tsx'

const STAMPED = ['bathsCount', 'waterEachL', 'takesMin', 'kernelFraction'] as const

export function WashPlan({ input, soFar }: { readonly input: WashInput | null; readonly soFar: WashSoFar | null }) {
  const { say } = useWords()
  const { state, cancel, again } = useWash(input)
  // The room of the last plan is kept while the next is looked for: what stands below does not move under a finger. [px]
  const room = useRef(0)
  switch (state.kind) {
    case 'idle':
      return <p>{say('kettle:wash-needs')}</p>
    case 'working':
      return (
        <div role="status" className="passage-body" style={{ minHeight: room.current, alignContent: 'start' }}>
          {state.isSlow && (
            <>
              <p>{say('kettle:wash-working', { tried: state.triedCount, of: state.ofCount })}</p>
              <progress value={state.triedCount} max={state.ofCount} aria-label={say('kettle:wash-title')} />
              <SideAction onClick={cancel}>{say('kettle:wash-stop')}</SideAction>
            </>
          )}
        </div>
      )
    case 'stopped':
    case 'failed':
      return (
        <>
          {state.kind === 'failed' ? (
            <FieldError>{say('kettle:wash-failed')}</FieldError>
          ) : (
            <p role="status">{say('kettle:wash-stopped')}</p>
          )}
          <SideAction onClick={again}>{say('kettle:wash-again')}</SideAction>
        </>
      )
    case 'found': {
      const { result, baths, tookMs } = state
      if (!result.ok) return <Refusal title={say('kettle:wash-none')} why={result.why} askWhom={result.askWhom} />
      const of = (id: string) => result.values.find((value) => value.id === id)
      const steps = result.reasons.filter(({ key }) => key.startsWith('kettle:chem-bath-'))
      return (
        <div
          className="passage-body"
          data-took-ms={tookMs}
          ref={(box) => {
            if (box) room.current = box.offsetHeight
          }}
        >
          <NumberRow>
            {STAMPED.map((id) => {
              const value = of(id)
              return (
                value && <BigNumber key={id} label={say(`kettle:wash-value-${id}`)} reckoned={value} size="small" />
              )
            })}
          </NumberRow>
          <Reasons sentences={steps} />
          <WhatRemains baths={baths} />
          <h3>{say('kettle:wash-why')}</h3>
          <NumberRow>
            {(['bathFraction', 'afterStandingFraction'] as const).map((id) => {
              const value = of(id)
              return (
                value && <BigNumber key={id} label={say(`kettle:wash-value-${id}`)} reckoned={value} size="small" />
              )
            })}
          </NumberRow>
          <Reasons sentences={result.reasons.filter((sentence) => !steps.includes(sentence))} />
          {result.warnings.map((sentence) => (
            <Caution key={sentence.key} sentence={sentence} />
          ))}
          <AgainstPlan input={input} values={result.values} soFar={soFar} />
        </div>
      )
    }
  }
}

interface AgainstProps {
  readonly input: WashInput | null
  readonly values: readonly Reckoned[]
  readonly soFar: WashSoFar | null
}

/** Used against plan, as the stages of the walk were written down. */
function AgainstPlan({ input, values, soFar }: AgainstProps) {
  const { say } = useWords()
  if (!soFar || soFar.bathsCount === 0 || !input) return <p>{say('kettle:wash-none-yet')}</p>
  const planned = (id: string) => {
    const value = values.find((each) => each.id === id)
    return { number: value ? formatReckoned(value) : '' }
  }
  const number = (value: Reckoned | undefined) => ({ number: value ? formatReckoned(value) : '' })
  const rows = [
    ['baths', planned('bathsCount'), { number: String(soFar.bathsCount) }],
    ['water', { number: formatQuantity({ value: Number(input.waterL.toFixed(1)), unit: 'L' }) }, number(soFar.waterL)],
    ['time', planned('takesMin'), number(soFar.minutes)],
    ['boils', planned('boilsCount'), number(soFar.boilsCount)],
    ['kernel', planned('kernelFraction'), number(soFar.kernelFraction)],
  ] as const
  return (
    <>
      <h3>{say('kettle:wash-against')}</h3>
      <Ledger
        head={[say('kettle:wash-column-what'), say('kettle:wash-column-plan'), say('kettle:wash-column-so-far')]}
        rows={rows.map(([key, plan, done]) => ({ key, cells: [say(`kettle:wash-row-${key}`), plan, done] }))}
      />
      {soFar.withoutWaterCount > 0 && (
        <p className="field-hint">{say('kettle:wash-without-water', { count: soFar.withoutWaterCount })}</p>
      )}
    </>
  )
}
