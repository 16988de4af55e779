/** The story of a seed lot: what was put by, what tests, gifts and sowings took, and what its plants showed. */
import type { LedgerLine, SeedKernels, SeedLotFact } from './facts.ts'
import { told } from './stories.ts'

export function seedLotStory(lines: readonly LedgerLine[]): SeedLotFact | null {
  const lot = told(lines, 'seed-lot-recorded').at(-1)
  if (!lot) return null
  const tests = told(lines, 'germination-tested').sort(byDay(({ testedOn }) => testedOn))
  const given = told(lines, 'seed-given')
  const sown = told(lines, 'seed-sown')
  const taken = {
    testedCount: total(tests, ({ ofCount }) => ofCount),
    givenCount: total(given, ({ kernelsCount }) => kernelsCount),
    sownCount: total(sown, ({ kernelsCount }) => kernelsCount),
  }
  return {
    ...lot,
    tests,
    storeNotes: told(lines, 'seed-store-noted').sort(byDay(({ notedOn }) => notedOn)),
    given,
    sown,
    offTypes: told(lines, 'off-types-counted').sort(byDay(({ countedOn }) => countedOn)),
    kernels: kernelsOf(putByCount(lot), taken),
  }
}

/** Counted, else equal shares of the ears, else by weight where the kernels of an ounce were counted. */
function putByCount(
  lot: Pick<SeedLotFact, 'kernelsCount' | 'parentEarsCount' | 'kernelsPerEarCount' | 'massKg' | 'kernelsPerOz'>,
) {
  const { kernelsCount, parentEarsCount, kernelsPerEarCount, massKg, kernelsPerOz } = lot
  if (kernelsCount !== undefined) return kernelsCount
  if (parentEarsCount !== undefined && kernelsPerEarCount !== undefined) return parentEarsCount * kernelsPerEarCount
  // 16 oz to the pound of 0.45359237 kg.
  if (massKg !== undefined && kernelsPerOz !== undefined)
    return Math.floor((massKg / 0.45359237) * 16 * kernelsPerOz + 1e-6)
  return null
}

function kernelsOf(
  putBy: number | null,
  taken: Pick<SeedKernels, 'testedCount' | 'givenCount' | 'sownCount'>,
): SeedKernels | null {
  if (putBy === null) return null
  return { putByCount: putBy, ...taken, leftCount: putBy - taken.testedCount - taken.givenCount - taken.sownCount }
}

function total<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((sum, item) => sum + of(item), 0)
}

/** Days are written so that text order is time order; two of one day stay as they were told. */
function byDay<T>(day: (item: T) => string): (a: T, b: T) => number {
  return (a, b) => (day(a) < day(b) ? -1 : +(day(a) > day(b)))
}
