/**
 * How a lot of dry corn stands: how much of its storage time is used, what the air about it does, and what to do next, as
 * sentences. A clock of quality. Leaves out: whether the corn may be eaten, which eye and nose and a test decide.
 */
import {
  allowableStorage,
  type Reckoned,
  type Sentence,
  type StorageSpell,
  type StoredCorn,
  storageUsed,
} from '@crib/science'
import { down, nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface CornStorage {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

export interface CornStorageInput {
  /** In any order. */
  readonly history: readonly StorageSpell[]
  readonly now: StoredCorn
  /** Sound and shelled by hand; machine-shelled corn is cracked and keeps half as long. */
  readonly handShelled?: boolean
  /** For seed as well as food: then heat is no way with insects. */
  readonly isSeed?: boolean
}

/** Share of kernels cracked. [fraction]  Sound hand-shelled; machine-shelled as the tables were made.  @source asae-d535 */
const HAND_SHELLED_DAMAGE = 0.02
const MACHINE_SHELLED_DAMAGE = 0.3
/** Most insects neither feed nor breed below. [°C]  @source cgc-insects */
const INSECTS_REST_C = 17
/** Above this, for a year and more. [fraction]  @source usgc-corn-quality */
const LONG_KEEPING_WET_FRACTION = 0.13

/**
 * Days left and share used of the time to half a percent of dry matter lost, and what is to be said.
 *
 * @throws {ValidRangeError} for corn wetter than 28 % or warmer than 100 °F: nothing is printed, and drying cannot wait.
 * @source asae-d535; ndsu-drying-2019; mcneill-late-season for the sum
 */
export function cornStorage({ history, now, handShelled = false, isSeed = false }: CornStorageInput): CornStorage {
  const damage = handShelled ? HAND_SHELLED_DAMAGE : MACHINE_SHELLED_DAMAGE
  const allowable = allowableStorage(now, damage)
  const used = storageUsed(history, now, damage)
  const common = {
    basis: 'computed',
    sourceKeys: ['asae-d535', 'ndsu-drying-2019', 'mcneill-late-season'],
    inputs: { now: { ...now }, spells: history.length, damage },
  } as const
  const days = (id: string, value: number): Reckoned =>
    // Down: time left is never shown longer than it is.
    reckon({ id, value, unit: 'Days', rounding: down(1), ...common })
  const isOver = used.usedFraction >= 1
  return {
    values: [
      days('leftDays', used.leftDays),
      days('allowableDays', allowable.days),
      reckon({
        id: 'usedFraction',
        value: used.usedFraction,
        unit: 'Fraction',
        rounding: nearest(0.01),
        ...common,
      }),
    ],
    reasons: [
      say(allowable.figure === 'asae-d535' ? 'keeping:storage-by-equations' : 'keeping:storage-by-table'),
      ...used.countedAs.map((each) =>
        say(each === 'colder-as-35-f' ? 'keeping:storage-colder' : 'keeping:storage-drier'),
      ),
      say('keeping:storage-is-quality'),
    ],
    warnings: [
      ...(isOver ? [say('keeping:storage-over')] : used.usedFraction >= 0.5 ? [say('keeping:storage-half')] : []),
      ...(now.wetFraction > LONG_KEEPING_WET_FRACTION ? [say('keeping:dry-for-long-keeping')] : []),
      ...(now.temperatureC >= INSECTS_REST_C ? [say('keeping:insects-awake')] : []),
      say(isSeed ? 'keeping:insects-freeze-seed' : 'keeping:insects-freeze'),
    ],
  }
}
