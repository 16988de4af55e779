/** The cut jar beside its curves, and the moment looked at. */
import { jarAt } from '@crib/planning'
import type { JarMoments, JarPicture, MadeUpRun, Reckoned } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { memo, type ReactNode, useMemo, useRef, useState } from 'react'
import { Figure, Ledger, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { CurveKey, Curves, lastMinuteOf } from './curves-figure.tsx'
import { ColourScale, LooseJar, SolidJar } from './cutaway.tsx'
import { RangeField } from './range-field.tsx'
import type { BandWork } from './use-band.ts'
import { useWidth } from './use-width.ts'

const READ_EVERY_MIN = 10

export function Picture({
  run,
  picture,
  work,
  isMadeUp,
  calm,
  children,
}: {
  readonly run: MadeUpRun
  readonly picture: JarPicture
  readonly work: BandWork
  readonly isMadeUp: boolean
  /** The jar the table is of, a moment behind a moving finger. */
  readonly calm: { readonly run: MadeUpRun; readonly picture: JarPicture }
  /** What moves the picture: near enough to see both on a phone. */
  readonly children: ReactNode
}) {
  const { say } = useWords()
  const box = useRef<HTMLDivElement>(null)
  const width = useWidth(box)
  const lastMin = lastMinuteOf(picture.moments)
  const [looked, setLooked] = useState<number | null>(null)
  const atMin = Math.round(Math.min(lastMin, looked ?? picture.moments.heatOffMin))
  const values = jarAt(run, picture, atMin)
  const frames = run.pack === 'packed solid' ? work.frames : null
  const isSolid = run.pack === 'packed solid'
  const { now } = work
  const band = useMemo(() => (now ? { curve: now.band, isOfThisJar: now.of === run } : null), [now, run])
  const shown = (id: string) => values.find((value) => value.id === id)
  return (
    <Figure title={say('heat:picture-title')} table={<MomentsTable run={calm.run} picture={calm.picture} />}>
      <div className="heat-picture">
        <div className="heat-cut">
          {isSolid ? (
            frames ? (
              <SolidJar frames={frames.frames} minute={atMin} />
            ) : (
              <p role="status" className="field-hint">
                {work.failure ?? say('heat:cut-drawing')}
              </p>
            )
          ) : (
            <LooseJar
              isQuart={run.jar === 'quart'}
              glassC={shown('wallC')?.value ?? 0}
              liquidC={shown('liquidC')?.value ?? 0}
              kernelC={shown('coldSpotC')?.value ?? 0}
              minute={atMin}
            />
          )}
        </div>
        <div className="heat-curves" ref={box}>
          {width > 0 && (
            <Curves
              picture={picture}
              band={band}
              atMin={atMin}
              width={width}
              withRate={isMadeUp}
              glassC={frames && frames.of === run ? frames.frames.wallC : null}
            />
          )}
        </div>
      </div>
      <RangeField
        label={say('heat:moment')}
        shown={say('heat:moment-at', {
          minute: { value: atMin, unit: 'Min' },
          phase: say(`heat:phase-${phaseAt(picture.moments, atMin)}`),
        })}
        value={atMin}
        min={0}
        max={lastMin}
        step={1}
        onValue={setLooked}
      />
      {children}
      <dl className="facts heat-now">
        {values.map((value) => (
          <Now key={value.id} value={value} isSolid={isSolid} />
        ))}
      </dl>
      {isSolid && <p className="field-hint">{say('heat:cut-has-glass')}</p>}
      <ColourScale />
      <CurveKey
        hasGlass={picture.wallC !== null || frames !== null}
        hasLiquid={picture.liquidC !== null}
        isSolid={isSolid}
      />
      <Working work={work} />
    </Figure>
  )
}

function Now({ value, isSolid }: { readonly value: Reckoned; readonly isSolid: boolean }) {
  const { say } = useWords()
  const name =
    value.id === 'cannerC'
      ? say('heat:curve-canner')
      : value.id === 'wallC'
        ? say('heat:curve-glass')
        : value.id === 'liquidC'
          ? say('heat:curve-liquid')
          : say(isSolid ? 'heat:curve-middle' : 'heat:curve-kernel')
  return (
    <div style={{ display: 'contents' }}>
      <dt>{name}</dt>
      <dd>{formatReckoned(value)}</dd>
    </div>
  )
}

/** What the band is at: told after a fifth of a second, and may be ended. Its room is kept: nothing below moves under a finger. */
function Working({ work }: { readonly work: BandWork }) {
  const { say } = useWords()
  const { progressFraction, failure, isStopped, stop, again } = work
  return (
    <div className="heat-working">
      {failure !== null && <p role="alert">{say('heat:band-failed', { why: failure })}</p>}
      {failure !== null || isStopped ? (
        <SideAction onClick={again}>{say('heat:band-again')}</SideAction>
      ) : (
        progressFraction !== null && (
          <>
            <progress value={progressFraction} max={1} aria-label={say('heat:band-working')} />
            <SideAction onClick={stop}>{say('heat:band-stop')}</SideAction>
          </>
        )
      )}
    </div>
  )
}

const MOMENTS = ['steamMin', 'ventClosedMin', 'atPressureMin', 'heatOffMin', 'zeroMin'] as const

/** The numbered moments, and what the curves read every ten minutes. */
const MomentsTable = memo(function MomentsTable({
  run,
  picture,
}: {
  readonly run: MadeUpRun
  readonly picture: JarPicture
}) {
  const { say } = useWords()
  const { moments } = picture
  const lastMin = lastMinuteOf(moments)
  const minutes = Array.from({ length: Math.floor(lastMin / READ_EVERY_MIN) + 1 }, (_, i) => i * READ_EVERY_MIN)
  const cells = (atMin: number) => jarAt(run, picture, atMin).map((value) => ({ number: formatReckoned(value) }))
  const [first] = [jarAt(run, picture, 0)]
  const head = [
    say('heat:table-when'),
    ...first.map(({ id }) =>
      say(
        id === 'cannerC'
          ? 'heat:curve-canner'
          : id === 'wallC'
            ? 'heat:curve-glass'
            : id === 'liquidC'
              ? 'heat:curve-liquid'
              : 'heat:curve-slowest',
      ),
    ),
  ]
  const rows = [
    ...MOMENTS.map((name, i) => ({
      key: name,
      atMin: moments[name],
      text: say('heat:table-moment', {
        number: i + 1,
        name: say(`heat:moment-${name}`),
        minute: { value: moments[name], unit: 'Min' },
      }),
    })),
    ...minutes.map((atMin) => ({
      key: String(atMin),
      atMin,
      text: say('heat:why-minutes', { minutes: { value: atMin, unit: 'Min' } }),
    })),
  ].toSorted((a, b) => a.atMin - b.atMin)
  return <Ledger head={head} rows={rows.map(({ key, atMin, text }) => ({ key, cells: [text, ...cells(atMin)] }))} />
})

type Phase = 'heat-up' | 'vent' | 'come-up' | 'hold' | 'cool-down' | 'wait'

function phaseAt(moments: JarMoments, atMin: number): Phase {
  const { steamMin, ventClosedMin, atPressureMin, heatOffMin, zeroMin } = moments
  if (atMin < steamMin) return 'heat-up'
  if (atMin < ventClosedMin) return 'vent'
  if (atMin < atPressureMin) return 'come-up'
  if (atMin <= heatOffMin) return 'hold'
  return atMin < zeroMin ? 'cool-down' : 'wait'
}
