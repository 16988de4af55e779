/** Where the picture of a made-up jar begins: the kitchen's own height and table, or the figures of a run of the book. */
import { pressureRowFor, ventRule } from '@crib/guidance'
import type { Facts, RunFact } from '@crib/journal'
import { convert, type MadeUpRun } from '@crib/science'
import { runSetupOf } from '../canner/begin-run.ts'
import { runState } from '../canner/run.ts'
import { runRecords } from '../canner/run-event.ts'
import { cannerOwnTimes } from './own-times.ts'

/** Minutes in print for whole-kernel corn in pints: a neighbour, and no direction for hominy. @source usda-aib-539-1994 */
const NEIGHBOUR_MIN = 55
/** Where no table covers the height. [psi] */
const SOME_PSI = 11
const HOT_FILL_C = 82

/** A pint of loose kernels as the table has it at this height, vented as directed. Sea level where the kitchen has no height. */
export function madeUpRun(facts: Pick<Facts, 'kitchen'>): MadeUpRun {
  const elevationM = facts.kitchen?.elevationM ?? 0
  const row = pressureRowFor('dial', convert(elevationM, 'M', 'Ft'))
  return {
    jar: 'pint',
    pack: 'free brine',
    elevationM,
    gaugeKPa: convert(row.kind === 'found' ? row.setPsi : SOME_PSI, 'PsiGauge', 'KPaGauge'),
    gaugeReadsHighKPa: 0,
    ventMin: ventRule().figure.value,
    holdMin: NEIGHBOUR_MIN,
    fillC: HOT_FILL_C,
    coolDownMin: 35,
  }
}

/**
 * A jar like those of a run of the book: its table pressure, vent as recorded, minutes and jar; come-up and cool-down of its
 * canner. What the run does not tell is as `madeUpRun` has it. It is shown as temperatures alone.
 */
export function madeUpLikeRun(facts: Pick<Facts, 'kitchen' | 'runs'>, run: RunFact): MadeUpRun {
  const { begun } = run
  const fallback = madeUpRun(facts)
  const shown = asRecord(begun.cardShown)
  const elevationFt = numberIn(shown, 'elevationFt')
  const { ventedMin } = runState(runSetupOf(run), runRecords(run), 0)
  const own = cannerOwnTimes(facts, begun.cannerId, begun.jarSize)
  return {
    ...fallback,
    jar: begun.jarSize === 'quart' ? 'quart' : 'pint',
    ...(elevationFt !== undefined && { elevationM: convert(elevationFt, 'Ft', 'M') }),
    gaugeKPa: convert(numberIn(shown, 'tablePsi') ?? begun.requiredReadingPsi, 'PsiGauge', 'KPaGauge'),
    ventMin: ventedMin ?? begun.ventMin,
    holdMin: begun.processMin,
    comeUpMin: own.comeUp.value,
    coolDownMin: own.coolDown.value,
  }
}

function asRecord(shown: unknown): { readonly [name: string]: unknown } {
  return typeof shown === 'object' && shown !== null ? { ...shown } : {}
}

function numberIn(shown: { readonly [name: string]: unknown }, name: string): number | undefined {
  const value = shown[name]
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined
}
