import { lidWaitRule, ventRule } from '@crib/guidance'
import type { Calc } from '@crib/science'
import { cannerLoads } from '../shared/canner-loads.ts'
import { say } from '../shared/say.ts'
import { clockValues } from './clock-values.ts'
import type { DayInput } from './day-input.ts'
import { dayPlan } from './day-plan.ts'

const RULE = { limitSource: 'project-rule' } as const
const MINUTES = { kind: 'quantity', unit: 'Min', min: 0, max: 1440, ...RULE } as const

export interface DayTimelineForm {
  readonly startClockMin?: number
  readonly finishClockMin?: number
  readonly setUpMin?: number
  readonly cleanUpMin?: number
  readonly potLoadsCount: number
  readonly potsCount: number
  readonly stages: readonly {
    readonly title: string
    readonly minutes: number
    readonly needsHands: boolean
    readonly canWaitAfter: boolean
    readonly isHotPack: boolean
  }[]
  readonly jarsCount: number
  readonly canners: readonly {
    readonly name: string
    readonly capacityCount: number
    readonly fillMin: number
    readonly heatMin: number
    readonly comeUpMin: number
    readonly processMin: number
    readonly coolToZeroMin: number
    readonly unloadMin: number
    readonly reloadMin: number
  }[]
  readonly peopleCount?: number
  readonly dayLimitMin?: number
}

function dayInput(form: DayTimelineForm, clock: DayInput['clock']): DayInput {
  const { potLoadsCount, potsCount, jarsCount } = form
  return {
    clock,
    setUpMin: form.setUpMin ?? 0,
    cleanUpMin: form.cleanUpMin ?? 0,
    potLoads: Array.from({ length: form.stages.length === 0 ? 0 : potLoadsCount }, (_, index) => ({
      number: index + 1,
      potName: `pot ${(index % potsCount) + 1}`,
      jarCount: jarsCount / potLoadsCount,
      stages: form.stages.map(({ title, ...stage }, at) => ({
        id: `stage-${at + 1}`,
        title: say('kettle:stage-own', { title }),
        ...stage,
        usesPot: true,
      })),
    })),
    canners: form.canners.map((row) => ({
      name: row.name,
      timings: {
        fill: row.fillMin,
        heat: row.heatMin,
        vent: ventRule().figure.value,
        comeUp: row.comeUpMin,
        process: row.processMin,
        coolToZero: row.coolToZeroMin,
        lidWait: lidWaitRule().figure.value,
        unload: row.unloadMin,
        reload: row.reloadMin,
      },
    })),
    rounds: cannerLoads(
      jarsCount,
      form.canners.map(({ name, capacityCount }) => ({ name, capacity: capacityCount })),
    ),
    ...(form.peopleCount !== undefined && { peopleCount: form.peopleCount }),
  }
}

export const dayTimelineCalc: Calc<DayTimelineForm> = {
  id: 'day-timeline',
  title: 'The day by the clock',
  question: 'How long is the day from door to door, and what happens when?',
  inputs: {
    startClockMin: { kind: 'clock', label: 'Begin', optional: true },
    finishClockMin: { kind: 'clock', label: 'Or be done by', optional: true },
    setUpMin: { ...MINUTES, label: 'Setting up', optional: true },
    cleanUpMin: { ...MINUTES, label: 'Washing up', optional: true },
    potLoadsCount: { kind: 'count', min: 0, max: 200, ...RULE, label: 'Pot-loads' },
    potsCount: { kind: 'count', min: 1, max: 20, ...RULE, label: 'Pots' },
    stages: {
      kind: 'table',
      maxRows: 40,
      label: 'Stages of one pot-load',
      columns: {
        title: { kind: 'text', maxLength: 80, label: 'Stage' },
        minutes: { ...MINUTES, label: 'Minutes' },
        needsHands: { kind: 'flag', label: 'Hands busy' },
        canWaitAfter: { kind: 'flag', label: 'Kernels may wait after it' },
        isHotPack: { kind: 'flag', label: 'Last cook, for filling hot' },
      },
    },
    jarsCount: { kind: 'count', min: 0, max: 2000, ...RULE, label: 'Jars' },
    canners: {
      kind: 'table',
      maxRows: 20,
      label: 'Canners',
      columns: {
        name: { kind: 'text', maxLength: 60, label: 'Name' },
        capacityCount: { kind: 'count', min: 0, max: 200, ...RULE, label: 'Jars in one load' },
        fillMin: { ...MINUTES, label: 'Fill jars' },
        heatMin: { ...MINUTES, label: 'Heat' },
        comeUpMin: { ...MINUTES, label: 'Come up to pressure' },
        processMin: { ...MINUTES, label: 'At pressure, from the card' },
        coolToZeroMin: { ...MINUTES, label: 'Cool to zero' },
        unloadMin: { ...MINUTES, label: 'Unload' },
        reloadMin: { ...MINUTES, label: 'Reload between loads' },
      },
    },
    peopleCount: { kind: 'count', min: 1, max: 500, ...RULE, label: 'People at work', optional: true },
    dayLimitMin: { ...MINUTES, label: 'Longest day wanted', optional: true },
  },
  /** Each load and pot-load has its clock: `loadDone:1`, `potLoadReady:1`. */
  outputs: {
    doorToDoorMin: { label: 'Door to door', unit: 'Min' },
    startClockMin: { label: 'Begin', unit: 'ClockMin' },
    finishClockMin: { label: 'Done', unit: 'ClockMin' },
    hominyWaitsMin: { label: 'Hominy waits, hot or chilled', unit: 'Min' },
    hullDayMin: { label: 'In two days: hulling', unit: 'Min' },
    canDayMin: { label: 'In two days: canning', unit: 'Min' },
    potLoadReady: { label: 'Pot-load ready', unit: 'ClockMin' },
    loadDone: { label: 'Load out of the canner', unit: 'ClockMin' },
  },
  sourceKeys: ['usda-aib-539-1994', 'pnw-421'],
  example: {
    startClockMin: 480,
    setUpMin: 30,
    cleanUpMin: 30,
    potLoadsCount: 2,
    potsCount: 1,
    stages: [
      { title: 'Boil in alkali', minutes: 120, needsHands: false, canWaitAfter: false, isHotPack: false },
      { title: 'Wash and rub', minutes: 40, needsHands: true, canWaitAfter: true, isHotPack: false },
      { title: 'Last cook', minutes: 45, needsHands: false, canWaitAfter: true, isHotPack: true },
    ],
    jarsCount: 12,
    canners: [
      {
        name: 'yard canner',
        capacityCount: 7,
        fillMin: 15,
        heatMin: 20,
        comeUpMin: 8,
        processMin: 70,
        coolToZeroMin: 45,
        unloadMin: 5,
        reloadMin: 10,
      },
    ],
    peopleCount: 1,
  },
  run: (form) => {
    const { startClockMin: start, finishClockMin: finish } = form
    if ((start === undefined) === (finish === undefined)) {
      return { ok: false, refused: 'clock-not-once', why: [say('season:clock-not-once')], askWhom: [] }
    }
    const names = form.canners.map(({ name }) => name)
    const twice = names.find((name, index) => names.indexOf(name) < index)
    if (twice !== undefined) {
      const why = [say('kettle:two-canners-one-name', { name: twice })]
      return { ok: false, refused: 'two-canners-one-name', why, askWhom: [] }
    }
    const clock: DayInput['clock'] =
      start !== undefined ? { from: 'start', clockMin: start } : { from: 'finish', clockMin: finish! }
    const plan = dayPlan({
      middle: dayInput(form, clock),
      ...(form.dayLimitMin !== undefined && { dayLimitMin: form.dayLimitMin }),
    })
    return {
      ok: true,
      values: [...plan.values, ...clockValues(plan.day)],
      reasons: plan.reasons,
      warnings: plan.warnings,
    }
  },
}
