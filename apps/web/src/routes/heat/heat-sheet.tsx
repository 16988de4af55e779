/**
 * MadeUpJar: the jar to play with. RunAsHeat: the same picture set as a run of the book, as temperatures alone: a total stands
 * only beside a jar that is made up.
 */
import { madeUpLikeRun, madeUpRun } from '@crib/planning'
import type { MadeUpRun } from '@crib/science'
import { useCallback, useDeferredValue, useMemo, useRef } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  ButtonRow,
  Caution,
  Empty,
  Fold,
  NextAction,
  Passage,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { CannerTimes } from './canner-times.tsx'
import { Export } from './export.tsx'
import { Figures } from './figures.tsx'
import { FoodFigures } from './food-figures.tsx'
import { Picture } from './picture.tsx'
import { FirstSliders, MoreSliders } from './sliders.tsx'
import { Tornado } from './tornado.tsx'
import { useBand } from './use-band.ts'
import { usePicture } from './use-picture.ts'
import { WhyCards } from './why-cards.tsx'

export function MadeUpJar() {
  const { facts } = useBook()
  const fresh = useMemo(() => madeUpRun(facts), [facts])
  return <HeatSheet name="made-up" fresh={fresh} load={null} />
}

export function RunAsHeat({ runId }: { readonly runId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const run = facts.runs[runId]
  const fresh = useMemo(() => run && madeUpLikeRun(facts, run), [facts, run])
  if (!run || !fresh) {
    return (
      <Sheet title={say('heat:title')} drawing="jar">
        <Passage>
          <Empty drawing="canner" action={<NextAction href="/heat">{say('heat:to-made-up')}</NextAction>}>
            <p>{say('canner:run-screen-not-in-book')}</p>
          </Empty>
        </Passage>
      </Sheet>
    )
  }
  return <HeatSheet key={runId} name={runId} fresh={fresh} load={{ runId, code: run.begun.loadCode }} />
}

function HeatSheet({
  name,
  fresh,
  load,
}: {
  readonly name: string
  readonly fresh: MadeUpRun
  readonly load: { readonly runId: string; readonly code: string } | null
}) {
  const { say } = useWords()
  const [run, setRun, forget] = useHalfTyped<MadeUpRun>(`heat:${name}`, fresh)
  const picture = usePicture(run)
  const work = useBand(run)
  const isMadeUp = load === null
  // The curve follows the finger; what is read afterwards follows when the finger rests.
  const calm = useDeferredValue(run)
  const calmPicture = useDeferredValue(picture)
  const latest = useRef(run)
  latest.current = run
  const change = useCallback((more: Partial<MadeUpRun>) => setRun({ ...latest.current, ...more }), [setRun])
  if (!picture || !calmPicture) {
    return (
      <Sheet title={say('heat:title')} drawing="jar">
        <Passage>
          <p role="alert">{say('heat:cannot-draw')}</p>
          <ButtonRow>
            <SideAction onClick={forget}>{say('heat:set-back')}</SideAction>
          </ButtonRow>
        </Passage>
      </Sheet>
    )
  }
  return (
    <Sheet
      title={say('heat:title')}
      drawing="jar"
      lead={load ? say('heat:lead-run', { code: load.code }) : say('heat:lead')}
    >
      <Passage id="picture">
        <Caution>{say('heat:does-not-change-directions')}</Caution>
        <Picture run={run} picture={picture} work={work} isMadeUp={isMadeUp} calm={{ run: calm, picture: calmPicture }}>
          <FirstSliders run={run} onChange={change} />
        </Picture>
        <Figures isStale={work.now?.of !== run} now={work.now} isMadeUp={isMadeUp} />
        <Fold title={say('heat:more-sliders')}>
          <MoreSliders run={run} onChange={change} />
          <CannerTimes jar={run.jar} onChange={change} />
        </Fold>
        <ButtonRow>
          <SideAction onClick={forget}>{say(load ? 'heat:set-back-run' : 'heat:set-back')}</SideAction>
          {load && <SideAction href="/heat">{say('heat:to-made-up')}</SideAction>}
        </ButtonRow>
      </Passage>
      <Passage title={say('heat:why-title')}>
        <p>{say('heat:why-lead')}</p>
        <WhyCards run={calm} onChange={change} />
      </Passage>
      {isMadeUp && (
        <Passage title={say('heat:food-title')}>
          <FoodFigures isStale={work.quality?.of !== calm} quality={work.quality} />
          <ButtonRow>
            <SideAction href="/workbench/jar-quality">{say('heat:to-quality')}</SideAction>
          </ButtonRow>
        </Passage>
      )}
      {isMadeUp && (
        <Passage title={say('heat:matters-title')}>
          <Tornado isStale={work.now?.of !== calm} now={work.now} />
        </Passage>
      )}
      <Passage title={say('heat:replay-title')}>
        <p>{say('heat:replay-lead')}</p>
        <NextAction href={load ? `/heat/replay/${load.runId}` : '/heat/replay'}>{say('heat:to-replay')}</NextAction>
      </Passage>
      <RunsOfTheBook except={load?.runId} />
      <Passage title={say('heat:take-title')}>
        <Export run={calm} picture={calmPicture} now={work.now} isMadeUp={isMadeUp} />
        <ButtonRow>
          <SideAction href={load ? `/paper/load-heat/${load.runId}` : '/paper/jar-heat'}>
            {load ? say('heat:paper-run-title', { code: load.code }) : say('heat:paper-sheet')}
          </SideAction>
        </ButtonRow>
      </Passage>
      <Passage title={say('heat:limits-title')}>
        <p>{say(run.pack === 'packed solid' ? 'heat:packed-solid' : 'heat:free-brine')}</p>
        <p>{say('heat:made-up')}</p>
        <ButtonRow>
          <SideAction href="/workbench/jar-heating">{say('heat:to-workbench')}</SideAction>
          <SideAction href="/workbench/heating-fit">{say('heat:to-fit')}</SideAction>
          <SideAction href="/canner">{say('heat:to-canner')}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}

function RunsOfTheBook({ except }: { readonly except: string | undefined }) {
  const { facts } = useBook()
  const { say } = useWords()
  const runs = Object.values(facts.runs).filter(({ runId }) => runId !== except)
  if (runs.length === 0) return null
  return (
    <Passage title={say('heat:runs-title')}>
      <p>{say('heat:runs-lead')}</p>
      <ButtonRow>
        {runs.slice(-6).map(({ runId, begun }) => (
          <SideAction key={runId} href={`/heat/run/${runId}`}>
            {begun.loadCode}
          </SideAction>
        ))}
      </ButtonRow>
    </Passage>
  )
}
