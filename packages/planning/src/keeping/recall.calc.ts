import type { Calc } from '@crib/science'
import { countOfJars, type RecallRow, recallReasons } from './recall-table.ts'

interface RecallForm {
  readonly by: 'canner' | 'load' | 'alkali-lot' | 'corn-lot'
  readonly name: string
  readonly jars: readonly RecallRow[]
}

const TEXT = { kind: 'text', maxLength: 200 } as const

export const recallCalc: Calc<RecallForm> = {
  id: 'recall',
  title: 'Which jars a doubt reaches',
  question: 'Which loads, how many jars and whose, come from this canner, load, alkali or corn?',
  inputs: {
    by: { kind: 'choice', options: ['canner', 'load', 'alkali-lot', 'corn-lot'], label: 'The doubt is about a' },
    name: { ...TEXT, label: 'Its name or code' },
    jars: {
      kind: 'table',
      maxRows: 2000,
      label: 'Jars',
      columns: {
        loadCode: { ...TEXT, label: 'Load code' },
        jarsCount: { kind: 'count', min: 1, max: 10_000, limitSource: 'project-rule', label: 'Jars' },
        canner: { ...TEXT, label: 'Canner', optional: true },
        alkaliLot: { ...TEXT, label: 'Ash or other alkali', optional: true },
        cornLot: { ...TEXT, label: 'Corn', optional: true },
        household: { ...TEXT, label: 'Household', optional: true },
      },
    },
  },
  outputs: {
    recallLoads: { label: 'Loads', unit: 'Count' },
    recallJars: { label: 'Jars', unit: 'Count' },
    recallHouseholds: { label: 'Households', unit: 'Count' },
  },
  sourceKeys: [],
  example: {
    by: 'canner',
    name: 'B',
    jars: [
      { loadCode: 'MILL-261003-A1', jarsCount: 14, canner: 'A' },
      { loadCode: 'MILL-261003-B1', jarsCount: 9, canner: 'B', household: 'house 4' },
      { loadCode: 'MILL-261003-B2', jarsCount: 9, canner: 'B', household: 'house 12' },
      { loadCode: 'MILL-261003-B3', jarsCount: 9, canner: 'B', household: 'house 20' },
    ],
  },
  run: ({ by, name, jars }) => {
    const column = { canner: 'canner', load: 'loadCode', 'alkali-lot': 'alkaliLot', 'corn-lot': 'cornLot' } as const
    const reached = jars.filter((row) => row[column[by]]?.trim() === name.trim())
    return { ok: true, values: countOfJars(reached), reasons: recallReasons(reached), warnings: [] }
  },
}
