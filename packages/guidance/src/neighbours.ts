/** Minutes of neighbouring foods, shown for comparison and never used. */
import json from '../data/neighbour-processes.json' with { type: 'json' }
import { neighbourProcessesSchema } from '../schema/list-tables.ts'
import { loadTable } from './load.ts'

export const NEIGHBOUR_PROCESSES = loadTable(neighbourProcessesSchema, json)
