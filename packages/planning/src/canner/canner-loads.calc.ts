import type { Calc } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { planLoads } from './loads.ts'

interface CannerLoadsInput {
  readonly jars: number
  readonly jarSize: 'half-pint' | 'pint' | 'quart'
  readonly canners: readonly { readonly name: string; readonly holds: number }[]
}

export const cannerLoadsCalc: Calc<CannerLoadsInput> = {
  id: 'canner-loads',
  title: 'Canner loads, evenly spread',
  question: 'How many rounds and loads do these jars make, and how many jars go into each canner?',
  inputs: {
    jars: { kind: 'count', label: 'Jars', min: 1, max: 10_000, limitSource: 'project-rule' },
    jarSize: { kind: 'choice', label: 'Jar size', options: ['half-pint', 'pint', 'quart'] },
    canners: {
      kind: 'table',
      label: 'Canners',
      columns: {
        name: { kind: 'text', label: 'Name', maxLength: 40 },
        holds: { kind: 'count', label: 'Holds jars of this size', min: 0, max: 200, limitSource: 'project-rule' },
      },
      maxRows: 26,
    },
  },
  outputs: {
    rounds: { label: 'Rounds', unit: 'Count' },
    loadRecords: { label: 'Load records', unit: 'Count' },
    fullestRound: { label: 'Jars in the fullest round', unit: 'Count' },
    largestLoad: { label: 'Jars in its largest load', unit: 'Count' },
    smallestLoad: { label: 'Jars in its smallest load', unit: 'Count' },
    jarsInAll: { label: 'Jars in all', unit: 'Count' },
  },
  sourceKeys: ['canner-booklet-load'],
  example: {
    jars: 96,
    jarSize: 'pint',
    canners: [
      { name: 'A', holds: 16 },
      { name: 'B', holds: 9 },
      { name: 'C', holds: 9 },
    ],
  },
  run: ({ jars, jarSize, canners }) => {
    const plan = planLoads({
      jarCount: jars,
      jarSize,
      canners: canners.map(({ name, holds }) => ({ name, capacity: holds })),
      // Codes need a kitchen and a day; only the spread is shown here.
      kitchenName: 'Crib',
      day: '2000-01-01',
    })
    if (!plan) return { ok: false, refused: 'no-canner', why: [say('canner:loads-no-canner')], askWhom: [] }
    const inputs = { jars, jarSize, canners: canners.map((canner) => ({ ...canner })) }
    const value = (id: string, amount: number) =>
      reckon({ id, value: amount, unit: 'Count', rounding: nearest(1), basis: 'project-rule', inputs })
    const roundTotals = plan.rounds.map((loads) => loads.reduce((sum, { jarCount }) => sum + jarCount, 0))
    return {
      ok: true,
      values: [
        value('rounds', plan.rounds.length),
        value('loadRecords', plan.loadCount),
        value('fullestRound', Math.max(...roundTotals)),
        ...plan.shares.flatMap(({ name, letter, jarCount }) => {
          const own = plan.rounds.flat().filter((load) => load.letter === letter)
          if (own.length === 0) return []
          const counts = own.map((load) => load.jarCount)
          // The letter joins a name used twice, so that results can be told apart.
          const label = canners.filter((canner) => canner.name === name).length > 1 ? `${name} ${letter}` : name
          return [
            value(`${label}:largestLoad`, Math.max(...counts)),
            value(`${label}:smallestLoad`, Math.min(...counts)),
            value(`${label}:jarsInAll`, jarCount),
          ]
        }),
      ],
      reasons: plan.notes,
      warnings: [],
    }
  },
}
