/** Jar sizes: which printed minutes an odd jar takes. */
import json from '../data/jar-sizes.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Standing } from '../schema/envelope.ts'
import { type JarKey, jarSizesSchema, type PrintedJar } from '../schema/process-tables.ts'
import { loadTable, tableSourceKeys } from './load.ts'

export const JAR_SIZES = loadTable(jarSizesSchema, json)

export const JAR_KEYS: readonly JarKey[] = JAR_SIZES.rows.map((row) => row.jar)

export interface JarUse {
  readonly jar: JarKey
  /** Nominal size. [US fluid oz] */
  readonly volumeOz: number
  /** The printed size whose minutes it takes; null where no low-acid process is printed. */
  readonly timeAs: PrintedJar | null
  readonly standing: Standing
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/**
 * How a jar is treated in low-acid canning: a size between two printed ones takes the minutes of the larger.
 *
 * @throws {RangeError} for a jar the table does not know.
 * @source kstate-odd-jars-2022; half-gallon: penn-state-half-gallon
 */
export function jarUses(jar: JarKey): JarUse {
  const row = JAR_SIZES.rows.find((candidate) => candidate.jar === jar)
  if (!row) {
    throw new RangeError(`jar is "${String(jar)}"; ${JAR_SIZES.source} covers ${JAR_KEYS.join(', ')}`)
  }
  return { ...row, standing: JAR_SIZES.standing, sourceKeys: tableSourceKeys(JAR_SIZES), edition: GUIDANCE_EDITION }
}
