/**
 * The day by clock: every step with its start and end, who waits for whom, and the true length door to door.
 * Leaves out: what to buy, and what happens once the day runs (canner runs keep their own clock).
 */
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { type DayCanner, type DayInput, type DayPotLoad, LOAD_STEPS } from './day-input.ts'
import { type Block, type Placed, type Segment, schedule } from './schedule.ts'

export interface DayStep {
  readonly id: string
  readonly title: Sentence
  /** The pot or canner it happens in, or null for setting up and cleaning up. */
  readonly where: string | null
  readonly potLoad?: number
  readonly load?: number
  readonly startMin: number
  readonly endMin: number
  readonly needsHands: boolean
}

/** Hominy between its pot and its load: hot or chilled, never left to stand. */
export interface DayWait {
  readonly potLoad: number
  readonly load: number
  readonly fromMin: number
  readonly toMin: number
}

export interface Day {
  /** Clock times. [ClockMin] */
  readonly startMin: number
  readonly finishMin: number
  /** From opening the door to closing it. [min] */
  readonly doorToDoorMin: number
  readonly steps: readonly DayStep[]
  readonly waits: readonly DayWait[]
}

const SET_UP = 'set-up'
const CLEAN_UP = 'clean-up'

/** Lays the day out. [ClockMin]  The same input gives the same day. */
export function dayTimeline(input: DayInput): Day {
  const titles = new Map<string, Omit<DayStep, 'id' | 'startMin' | 'endMin' | 'needsHands'>>()
  const blocks = [...potBlocks(input.potLoads, titles), ...loadBlocks(input, titles)]
  const placed = schedule(blocks, input.peopleCount ?? Number.POSITIVE_INFINITY)
  const workMin = placed.reduce((latest, { endMin }) => Math.max(latest, endMin), 0)
  const doorToDoorMin = input.setUpMin + workMin + input.cleanUpMin
  const startMin = input.clock.from === 'start' ? input.clock.clockMin : input.clock.clockMin - doorToDoorMin
  const workStart = startMin + input.setUpMin
  const steps = placed
    .filter(({ startMin: from, endMin: to }) => to > from)
    .map(
      ({ segmentId, startMin: from, endMin: to, needsHands }): DayStep => ({
        id: segmentId,
        ...titles.get(segmentId)!,
        startMin: workStart + from,
        endMin: workStart + to,
        needsHands,
      }),
    )
  const edge = (id: string, from: number, minutes: number): DayStep[] =>
    minutes === 0
      ? []
      : [
          {
            id,
            title: say(`season:step-${id as 'set-up'}`),
            where: null,
            startMin: from,
            endMin: from + minutes,
            needsHands: true,
          },
        ]
  return {
    startMin,
    finishMin: startMin + doorToDoorMin,
    doorToDoorMin,
    steps: [
      ...edge(SET_UP, startMin, input.setUpMin),
      ...steps,
      ...edge(CLEAN_UP, startMin + doorToDoorMin - input.cleanUpMin, input.cleanUpMin),
    ],
    waits: waitsOf(input, placed, workStart),
  }
}

type Titles = Map<string, Omit<DayStep, 'id' | 'startMin' | 'endMin' | 'needsHands'>>

/** A pot-load is a chain of blocks, broken where kernels may wait; the pot is its own from its first use to the end. */
function potBlocks(potLoads: readonly DayPotLoad[], titles: Titles): Block[] {
  const lastInPot = new Map<string, string>()
  return potLoads.flatMap((potLoad) => {
    const blocks: Block[] = []
    let segments: Segment[] = []
    let needed: readonly string[] = []
    let isPotTaken = false
    for (const [index, stage] of potLoad.stages.entries()) {
      const id = `pot-load-${potLoad.number}:${stage.id}`
      titles.set(id, { title: stage.title, where: stage.usesPot ? potLoad.potName : null, potLoad: potLoad.number })
      segments.push({ id, minutes: stage.minutes, needsHands: stage.needsHands })
      if (stage.usesPot && !isPotTaken) {
        isPotTaken = true
        const before = lastInPot.get(potLoad.potName)
        if (before !== undefined) needed = [...needed, before]
      }
      if (stage.canWaitAfter || index === potLoad.stages.length - 1) {
        blocks.push({ id, segments, after: needed })
        needed = [id]
        segments = []
      }
    }
    if (blocks.length > 0) lastInPot.set(potLoad.potName, blocks.at(-1)!.id)
    return blocks
  })
}

/** The last block of a pot-load. */
function readyId({ number, stages }: DayPotLoad): string {
  return `pot-load-${number}:${stages.at(-1)!.id}`
}

function loadBlocks({ canners, rounds, potLoads }: DayInput, titles: Titles): Block[] {
  const lastInCanner = new Map<string, string>()
  const cannersByName = new Map(canners.map((canner) => [canner.name, canner]))
  let filled = 0
  return rounds.flat().map((load) => {
    const canner = cannersByName.get(load.cannerName)
    if (!canner)
      throw new RangeError(`load ${load.number} names the canner "${load.cannerName}", which the day does not have`)
    const before = lastInCanner.get(load.cannerName)
    const id = `load-${load.number}`
    filled += load.jarCount
    const needed = potLoadsFor(potLoads, filled)
    lastInCanner.set(load.cannerName, id)
    return {
      id,
      segments: loadSegments(id, canner, before !== undefined).map((segment) => {
        titles.set(segment.id, { title: segment.title, where: load.cannerName, load: load.number })
        return segment
      }),
      after: [...(before === undefined ? [] : [before]), ...needed.map(readyId)],
    }
  })
}

/** Pot-loads that must be done before this many jars can be filled. */
function potLoadsFor(potLoads: readonly DayPotLoad[], jarCount: number): readonly DayPotLoad[] {
  let jars = 0
  const needed: DayPotLoad[] = []
  for (const potLoad of potLoads) {
    if (jars >= jarCount - 1e-9) break
    needed.push(potLoad)
    jars += potLoad.jarCount
  }
  return needed.filter(({ stages }) => stages.length > 0)
}

function loadSegments(
  id: string,
  { timings }: DayCanner,
  isReload: boolean,
): (Segment & { readonly title: Sentence })[] {
  const segment = (step: keyof DayCanner['timings'], needsHands: boolean) => ({
    id: `${id}:${step}`,
    title: say(`season:step-${step}`),
    minutes: timings[step],
    needsHands,
  })
  return [
    ...(isReload ? [segment('reload', true)] : []),
    segment('fill', true),
    ...LOAD_STEPS.map((step) => segment(step, step === 'unload')),
  ]
}

function waitsOf({ potLoads, rounds }: DayInput, placed: readonly Placed[], workStart: number): readonly DayWait[] {
  const endOf = new Map(placed.map(({ segmentId, endMin }) => [segmentId, endMin]))
  const startOf = new Map<string, number>()
  for (const { blockId, startMin } of placed) {
    startOf.set(blockId, Math.min(startMin, startOf.get(blockId) ?? Number.POSITIVE_INFINITY))
  }
  const waits: DayWait[] = []
  let filled = 0
  for (const load of rounds.flat()) {
    // The pot-loads this load draws from: those holding the jars after `filled`.
    let from = 0
    for (const potLoad of potLoads) {
      const to = from + potLoad.jarCount
      if (potLoad.stages.length > 0 && to > filled + 1e-9 && from < filled + load.jarCount - 1e-9) {
        const ready = endOf.get(readyId(potLoad))!
        const used = startOf.get(`load-${load.number}`)!
        if (used > ready) {
          waits.push({
            potLoad: potLoad.number,
            load: load.number,
            fromMin: workStart + ready,
            toMin: workStart + used,
          })
        }
      }
      from = to
    }
    filled += load.jarCount
  }
  return waits
}
