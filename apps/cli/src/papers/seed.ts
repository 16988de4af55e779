/** Papers of a seed lot: its envelope, the sheet of a sprouting test, tags for its tins. */
import type { SeedLotFact } from '@crib/journal'
import { germinationSheet, reserveTags, seedEnvelope } from '@crib/paper'
import { germinationRanges, seedPaper } from '@crib/planning'
import { dateOf } from '../clock-times.ts'
import { badInput } from '../exit-codes.ts'
import { printSetting } from '../print.ts'
import { type Asked, type MakePaper, readAudience } from './paper-flags.ts'

/** Four rolls of 25: a hundred kernels, as the rules of seed testing lay them. Project rule. */
const ROLLS = [25, 25, 25, 25] as const

export const SEED_PAPERS = {
  'seed-envelope': (asked) => {
    const { lot, paper, setting, isKeeper } = seedOf(asked)
    const [tin, ...others] = lot.containers
    // Where a tin stands is the keeper's own business.
    const kept = isKeeper && tin && others.length === 0 ? { container: tin.container, place: tin.place } : {}
    return seedEnvelope({ ...paper, putByOn: lot.putByOn, ...kept }, setting, asked.words)
  },
  'sprouting-test': (asked) => {
    const { paper, setting } = seedOf(asked)
    const ranges = germinationRanges(ROLLS.reduce((sum, ofCount) => sum + ofCount, 0))
    const parts = ROLLS.map((ofCount) => ({ ofCount }))
    return germinationSheet(
      { ...(paper.name !== undefined && { lot: paper.name }), parts, ranges },
      setting,
      asked.words,
    )
  },
  'reserve-tags': (asked) => {
    const { lot, paper, setting } = seedOf(asked)
    if (lot.containers.length === 0) throw badInput('terminal:no-tins', { name: lot.name })
    const tins = lot.containers.map(({ container, place }) => ({ container, place }))
    return reserveTags({ ...paper, tins }, setting, asked.words)
  },
} satisfies Record<string, MakePaper>

/** The lot named, else the one written down last. */
function seedOf(asked: Asked) {
  const { facts, flags, door } = asked
  const lots: readonly SeedLotFact[] = Object.values(facts.seedLots)
  const wanted = flags.seed?.toLowerCase()
  const lot = lots.findLast(({ name }) => wanted === undefined || name.toLowerCase() === wanted)
  if (!lot) throw badInput('terminal:no-such-seed-lot', { names: lots.map(({ name }) => name).join(', ') || '-' })
  const audience = readAudience(asked)
  const today = dateOf(door.terminal.now(), door.terminal.zone)
  return {
    lot,
    isKeeper: audience === 'keeper',
    paper: seedPaper(lot, facts, { today, audience }),
    setting: printSetting(facts, flags, door),
  }
}
