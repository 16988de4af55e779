import type { Calc, CalcResult, Reckoned, Sentence } from '@crib/science'
import { alkaliSchema, foodSchema, jarKeySchema } from '../schema/process-tables.ts'
import { ELEVATION_FIELD, GAUGE_FIELD } from './fields.ts'
import { printedFigure } from './figures.ts'
import { PRESSURE_OUTPUTS, pressureValues } from './pressure-band.calc.ts'
import { findProcess } from './process.ts'
import type { ProcessQuery, PublishedProcess } from './process-types.ts'

function processValues(process: PublishedProcess, query: ProcessQuery): readonly Reckoned[] {
  const inputs = { ...query }
  const { sourceKeys, seen } = process
  return [
    printedFigure({ id: 'processMin', value: process.processMin, unit: 'Min', seen, sourceKeys, inputs }),
    printedFigure({ id: 'headspaceIn', value: process.headspaceIn, unit: 'In', seen, sourceKeys, inputs }),
    ...pressureValues(process.pressure, inputs),
  ]
}

function found(process: PublishedProcess, query: ProcessQuery, warnings: readonly Sentence[]): CalcResult {
  return {
    ok: true,
    values: processValues(process, query),
    reasons: process.hearsay.map((heard) => heard.note),
    warnings,
  }
}

export const processLookupCalc: Calc<ProcessQuery> = {
  id: 'process-lookup',
  title: 'Published process for a jar',
  question: 'Is there a published process for this food, packed this way, and where does it stand?',
  inputs: {
    food: { kind: 'choice', label: 'Food', options: foodSchema.options },
    alkali: { kind: 'choice', label: 'Hulled with', options: alkaliSchema.options },
    hotPack: { kind: 'flag', label: 'Hot pack: kernels reheated 30 to 45 min in fresh water' },
    fill: { kind: 'choice', label: 'Fill', options: ['loose', 'packed-tight'] },
    liquidClear: { kind: 'flag', label: 'Clear, fresh boiling water' },
    headspaceIn: { kind: 'quantity', label: 'Headspace', unit: 'In', min: 0, max: 4, limitSource: 'project-rule' },
    jar: { kind: 'choice', label: 'Jar', options: jarKeySchema.options },
    gauge: GAUGE_FIELD,
    elevationFt: ELEVATION_FIELD,
    standingRead: { kind: 'flag', label: 'I have read where this process stands' },
  },
  outputs: {
    processMin: { label: 'Minutes at pressure', unit: 'Min' },
    headspaceIn: { label: 'Headspace', unit: 'In' },
    ...PRESSURE_OUTPUTS,
  },
  sourceKeys: ['so-easy-to-preserve-1999', 'nchfp-hominy-without-lye', 'usda-aib-539-1994'],
  example: {
    food: 'hominy',
    alkali: 'sodium-hydroxide',
    hotPack: true,
    fill: 'loose',
    liquidClear: true,
    headspaceIn: 1,
    jar: 'pint',
    gauge: 'dial',
    elevationFt: 820,
    standingRead: true,
  },
  run: (query) => {
    const outcome = findProcess(query)
    switch (outcome.kind) {
      case 'found':
        return found(outcome.process, query, outcome.standingSentences)
      case 'no-published-process': {
        const { why, standingSentences, askWhom, openedByReading } = outcome
        if (openedByReading) return found(openedByReading, query, [...why, ...standingSentences, ...askWhom])
        return { ok: false, refused: outcome.kind, why, askWhom }
      }
      case 'off-table':
      case 'conflict':
        return { ok: false, refused: outcome.kind, why: outcome.why, askWhom: outcome.askWhom }
    }
  },
}
