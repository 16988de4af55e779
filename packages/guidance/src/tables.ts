/** Every table of this edition, for the page that lists them and for checks that must see them all. */
import type { Seen, Standing } from '../schema/envelope.ts'
import { CAUTIONS } from './cautions.ts'
import { COOLING_WINDOW } from './cooling.ts'
import { HABITS } from './habits.ts'
import { JAR_SIZES } from './jars.ts'
import { KEEPING } from './keeping.ts'
import { NEIGHBOUR_PROCESSES } from './neighbours.ts'
import { NOURISHMENT } from './nourishment.ts'
import { NUTRITION } from './nutrition.ts'
import { DIAL_BANDS, WEIGHT_BANDS } from './pressure.ts'
import { PROCESS_TABLES } from './process.ts'
import { ALKALI_RECIPES } from './recipes.ts'
import { RULE_TABLES } from './rules.ts'
import { SUSPECT_JARS } from './suspect.ts'
import { UNSEALED_JARS } from './unsealed.ts'

export interface GuidanceTable {
  readonly id: string
  readonly title: string
  readonly source: string
  readonly alsoSources: readonly string[]
  readonly locator: string
  readonly edition: string
  readonly retrievedOn: string | null
  readonly licence: string
  readonly transcribedBy: string
  readonly checkedBy: string | null
  readonly checkedAgainst: string | null
  readonly supersedes: string | null
  readonly standing: Standing
  readonly seen: Seen
  readonly rows: readonly { readonly [column: string]: string | number | null | undefined }[]
  readonly notes: readonly string[]
}

export const GUIDANCE_TABLES: readonly GuidanceTable[] = [
  ...PROCESS_TABLES,
  NEIGHBOUR_PROCESSES,
  DIAL_BANDS,
  WEIGHT_BANDS,
  JAR_SIZES,
  ...RULE_TABLES,
  UNSEALED_JARS,
  COOLING_WINDOW,
  KEEPING,
  HABITS,
  ALKALI_RECIPES,
  CAUTIONS,
  NOURISHMENT,
  NUTRITION,
  SUSPECT_JARS,
]
