/**
 * useDose: the dose as it is typed, kept on this device, and the pot it comes to for a lot or a bought alkali. The page of
 * the dose and the sheet by the fire read the same.
 */
import type { AlkaliLotFact } from '@crib/journal'
import { type DosedAlkali, type DosePot, dosePot } from '@crib/planning'
import { parseQuantity } from '@crib/science'
import { useBook } from '../../../book/book.tsx'
import { useHalfTyped } from '../../../half-typed.ts'
import { amountIn } from '../amount.tsx'
import { WANTED_EQ, WANTED_MOL, WATER_L } from './limits.ts'

export interface DoseTyped {
  readonly corn: string
  readonly water: string
  readonly wish: 'on-corn' | 'in-pot'
  readonly onCorn: string
  readonly inPot: string
}

const FRESH: DoseTyped = { corn: '1 liquid qt', water: '4 liquid qt', wish: 'on-corn', onCorn: '0.1', inPot: '0.05' }

export function useDose(
  alkali: DosedAlkali,
  lot: AlkaliLotFact | undefined,
): {
  readonly typed: DoseTyped
  readonly change: (part: Partial<DoseTyped>) => void
  /** Null while something is missing. */
  readonly pot: DosePot | null
} {
  const { facts } = useBook()
  const [typed, setTyped] = useHalfTyped<DoseTyped>('dose', FRESH)
  const corn = parseQuantity(typed.corn, ['mass', 'volume'], { bareNumberUnit: 'Lb' })
  const waterL = amountIn(typed.water, WATER_L)
  const wanted = typed.wish === 'on-corn' ? amountIn(typed.onCorn, WANTED_EQ) : amountIn(typed.inPot, WANTED_MOL)
  const pot =
    corn.ok && waterL !== null && wanted !== null
      ? dosePot(facts, { alkali, lot, corn: corn.quantity, waterL, wish: typed.wish, wanted })
      : null
  return { typed, change: (part) => setTyped({ ...typed, ...part }), pot }
}
