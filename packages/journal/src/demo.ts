/**
 * An invented kitchen to look around in: Ostrey Point, one corn, two lots of ash, a pot, a canner and two of its loads,
 * eaten since. Every screen marks it as invented (`demo: true`).
 */
import { type Clock, createAuthor, createId, type Randomness } from './author.ts'
import { demoLoads } from './demo-loads.ts'
import type { StoredEntry } from './envelope.ts'

export interface DemoSetup {
  readonly clock: Clock
  readonly random: Randomness
  /** IANA name; the demo is written in it. */
  readonly zone: string
}

export interface DemoKitchen {
  readonly kitchenId: string
  readonly entries: readonly StoredEntry[]
}

const LB_KG = 0.45359237 // exact, international avoirdupois pound
const LIQUID_QT_L = 0.946352946 // exact, US liquid quart
const FT_M = 0.3048 // exact, international foot
const DAY_MS = 86_400_000

/** The demo kitchen's book, written by a device and a person of its own, at `clock`'s day. */
export function demoKitchen({ clock, random, zone }: DemoSetup): DemoKitchen {
  const newId = (): string => createId(clock, random)
  const kitchenId = newId()
  const deviceId = newId()
  const personId = newId()
  const author = createAuthor({ kitchenId, deviceId, personId, head: null, clock, random, zone })
  const daysAgo = (days: number): { happenedAt: { instant: number } } => ({
    happenedAt: { instant: clock.now() - days * DAY_MS },
  })
  const dayOf = (days: number): string => new Date(clock.now() - days * DAY_MS).toISOString().slice(0, 10)
  const lotId = newId()
  const goodAshId = newId()
  const flatAshId = newId()
  const cannerId = newId()
  const tested = lastSpring(clock.now())

  const entries = [
    author.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: true }, daysAgo(500)),
    author.write(
      'kitchen-noted',
      {
        kitchenId,
        elevationM: 820 * FT_M,
        elevationKnownBy: 'map',
        jarFill: 'loose-to-headspace',
        vagueQuart: 'liquid',
      },
      daysAgo(500),
    ),
    author.write(
      'pot-recorded',
      { potId: newId(), name: 'the big pot', volumeL: 20 * LIQUID_QT_L, material: 'stainless' },
      daysAgo(499),
    ),
    author.write(
      'canner-recorded',
      {
        cannerId,
        name: 'yard canner',
        gauges: ['dial'],
        // Quart jars from the story; no pint load is told there, and the same seven stand on its one rack.
        capacityPints: 7,
        capacityQuarts: 7,
        rim: 'gasket',
        electric: false,
      },
      daysAgo(499),
    ),
    author.write(
      'alkali-lot-recorded',
      {
        alkaliLotId: flatAshId,
        name: 'M-0',
        alkali: 'ash',
        woods: 'maple',
        burntClean: true,
        cold: true,
        sifted: true,
        lidded: false,
        onlyCleanWood: true,
        gatheredOn: dayOf(425), // fourteen months
        note: 'stood in an open pail',
      },
      daysAgo(425),
    ),
    author.write(
      'gauge-tested',
      {
        cannerId,
        testedOn: tested.day,
        tester: 'extension office',
        readings: [10, 11, 15].map((psi) => ({ truePsi: psi, readsPsi: psi })),
        marksEveryPsi: 1,
        restsAtPsi: 0,
      },
      { happenedAt: { instant: tested.instant } },
    ),
    ...demoLoads({ cannerId, newId, testedOn: tested.day, zone }).map(({ kind, body, instant }) =>
      author.write(kind, body, { happenedAt: { instant } }),
    ),
    author.write(
      'alkali-lot-recorded',
      {
        alkaliLotId: goodAshId,
        name: 'M-1',
        alkali: 'ash',
        woods: 'maple',
        burntClean: true,
        cold: true,
        sifted: true,
        lidded: true,
        onlyCleanWood: true,
        gatheredOn: dayOf(60),
        note: 'lidded tin',
      },
      daysAgo(60),
    ),
    author.write(
      'corn-lot-brought-in',
      {
        lotId,
        name: 'Lantern flint',
        cornType: 'flint',
        form: 'shelled',
        massKg: 9 * LB_KG,
        asTyped: '9 lb',
        treatedSeed: false,
        note: 'clean, set aside for jars',
      },
      daysAgo(30),
    ),
    author.write(
      'alkali-lot-judged',
      { alkaliLotId: goodAshId, judged: 'works', cupsPerLiquidQt: 1, slipMin: 55, cornLotId: lotId },
      daysAgo(20),
    ),
  ]
  return { kitchenId, entries }
}

/** The last 12 April that is a week past: "tested this spring", and its first loads told to their seals. */
function lastSpring(nowMs: number): { day: string; instant: string } {
  const year = new Date(nowMs).getUTCFullYear()
  const years = [year, year - 1].map((each) => `${each}-04-12`)
  const day = years.find((each) => Date.parse(`${each}T12:00:00Z`) < nowMs - 7 * DAY_MS) as string
  return { day, instant: `${day}T12:00:00.000Z` }
}
