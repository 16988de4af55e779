/**
 * Jars over canners and rounds, each load with a code of its own.
 * Leaves out: clock times of the rounds (day/) and the card of each canner (card.ts).
 */
import { minimumLoad } from '@crib/guidance'
import { requireInRange, type Sentence } from '@crib/science'
import { cannerLoads } from '../shared/canner-loads.ts'
import { say } from '../shared/say.ts'
import { cannerLetter, loadCode } from './load-code.ts'

export interface LoadCanner {
  readonly name: string
  /** Jars of the size at hand. [count] */
  readonly capacity: number
  /** Rounds this canner has already run that day; codes go on after them. */
  readonly roundsDone?: number
}

export interface LoadsInput {
  readonly jarCount: number
  readonly jarSize: 'half-pint' | 'pint' | 'quart'
  readonly canners: readonly LoadCanner[]
  readonly kitchenName: string
  /** YYYY-MM-DD */
  readonly day: string
}

export interface Load {
  readonly round: number
  readonly cannerName: string
  /** Position of the canner on the day's list: A, B, C. Two canners of one name still differ. */
  readonly letter: string
  readonly jarCount: number
  readonly loadCode: string
}

export interface CannerShare {
  readonly name: string
  readonly letter: string
  readonly jarCount: number
  readonly loadCount: number
}

export interface LoadsPlan {
  readonly rounds: readonly (readonly Load[])[]
  readonly loadCount: number
  readonly shares: readonly CannerShare[]
  readonly notes: readonly Sentence[]
}

/**
 * The loads of a day: rounds = jars over all capacities, rounded up; rounds as equal as can be; within a round levelled
 * up to each capacity.
 *
 * @returns null where no canner takes a jar of this size.
 * @throws {ValidRangeError} for a count or a capacity below 0 or absurd.
 * @source project-rule; canner-booklet-load for the fewest jars
 */
export function planLoads({ jarCount, jarSize, canners, kitchenName, day }: LoadsInput): LoadsPlan | null {
  requireInRange('jarCount', jarCount, { min: 1, max: 10_000, unit: 'jars', source: 'project-rule' })
  for (const { capacity } of canners) {
    requireInRange('capacity', capacity, { min: 0, max: 200, unit: 'jars', source: 'project-rule' })
  }
  const lettered = canners.map((canner, index) => ({ ...canner, letter: cannerLetter(index) }))
  // The letter is the name handed on, so that two canners of one name stay two.
  const planned = cannerLoads(
    jarCount,
    lettered.map(({ letter, capacity }) => ({ name: letter, capacity })),
  )
  if (planned.length === 0) return null
  const rounds = planned.map((loads) =>
    loads.map((load): Load => {
      const canner = lettered.find(({ letter }) => letter === load.cannerName)!
      const round = load.round + (canner.roundsDone ?? 0)
      const code = loadCode({ kitchenName, day, letter: canner.letter, round })
      return {
        round: load.round,
        cannerName: canner.name,
        letter: canner.letter,
        jarCount: load.jarCount,
        loadCode: code,
      }
    }),
  )
  const loads = rounds.flat()
  const shares = lettered.map(({ name, letter }) => {
    const own = loads.filter((load) => load.letter === letter)
    return { name, letter, jarCount: own.reduce((sum, load) => sum + load.jarCount, 0), loadCount: own.length }
  })
  return { rounds, loadCount: loads.length, shares, notes: notesOn({ jarCount, jarSize, canners, rounds }) }
}

function notesOn({
  jarCount,
  jarSize,
  canners,
  rounds,
}: Pick<LoadsInput, 'jarCount' | 'jarSize' | 'canners'> & Pick<LoadsPlan, 'rounds'>): Sentence[] {
  const perRound = canners.reduce((sum, { capacity }) => sum + capacity, 0)
  const names = canners.map(({ name }) => name)
  const twice = [...new Set(names.filter((name, index) => names.indexOf(name) !== index))]
  return [
    say('canner:loads-rounds', { count: rounds.length, jarCount, perRound }),
    minimumLoad(jarSize === 'quart' ? 'quart' : 'pint').say,
    ...(canners.length > 1 ? [say('canner:loads-own-card')] : []),
    ...twice.map((name) => say('canner:loads-one-name', { name })),
    say('canner:loads-codes'),
  ]
}
