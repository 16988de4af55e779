/** Scenario S6's kitchen (invented): nine loads of three canners, 96 pints of 24 households, told to the house server. */
import type { BodyOf, Kind, StoredEntry } from '@crib/journal'
import type { House } from './harness.ts'
import { tellingDevice, tellTheHouse } from './teller.ts'

export interface ToldVillage {
  readonly kitchenId: string
  /** The first lot of load B1: jars of one household. */
  readonly lotIdOfB1: string
  readonly householdOfB1: string
}

/** Canner A holds 14 a round, B and C 9, three rounds; jars go home four by four, in order. */
export async function tellVillage(house: House): Promise<ToldVillage> {
  const { kitchenId, author, newId } = tellingDevice()
  const lotId = newId()
  const ashId = newId()
  const batchId = newId()
  const entries: StoredEntry[] = []
  const tell = <K extends Kind>(kind: K, body: BodyOf<K>, hoursAgo: number) =>
    entries.push(author.write(kind, body, { happenedAt: { instant: Date.now() - hoursAgo * 3_600_000 } }))
  tell('kitchen-opened', { kitchenId, name: 'Millrind', demo: false }, 60)
  tell('kitchen-noted', { kitchenId, elevationM: 1180 * 0.3048, elevationKnownBy: 'map' }, 60)
  const corn = { lotId, name: 'Copper Hinge flint', cornType: 'flint', form: 'shelled', treatedSeed: false } as const
  tell('corn-lot-brought-in', { ...corn, massKg: 26.7 * 0.45359237, asTyped: '26.7 lb' }, 60)
  tell('alkali-lot-recorded', { alkaliLotId: ashId, name: 'M-1', alkali: 'ash' }, 60)
  const plan = { title: 'Village', inputs: {}, edition: 'guidance-2026-11', codeVersion: '0.1.0', shown: {} }
  tell('batch-planned', { batchId, ...plan, corn: [{ lotId, massKg: 24 * 0.45359237 }] }, 50)
  const addition = { type: 'alkali-added', alkaliLotId: ashId, cups: 16 } as const
  tell('cook-noted', { batchId, potLoad: 1, seen: addition }, 49)
  const canners = { A: newId(), B: newId(), C: newId() }
  for (const name of ['A', 'B', 'C'] as const) {
    const capacity = name === 'A' ? 16 : 9
    const holds = { capacityPints: capacity, capacityQuarts: 7, rim: 'gasket', electric: false } as const
    tell('canner-recorded', { cannerId: canners[name], name, gauges: [name === 'B' ? 'dial' : 'weight'], ...holds }, 59)
  }
  let jar = 0
  let ofB1: Pick<ToldVillage, 'lotIdOfB1' | 'householdOfB1'> | null = null
  for (const round of [1, 2, 3]) {
    for (const name of ['A', 'B', 'C'] as const) {
      const runId = newId()
      const loadCode = `MILL-261003-${name}${round}`
      const jarCount = name === 'A' ? 14 : 9
      const isDial = name === 'B'
      tell(
        'run-begun',
        {
          runId,
          batchId,
          cannerId: canners[name],
          cannerName: name,
          loadCode,
          jarSize: 'pint',
          jarCount,
          gauge: isDial ? 'dial' : 'weight',
          requiredReadingPsi: isDial ? 11 : 15,
          ventMin: 10,
          processMin: 60,
          edition: 'guidance-2026-11',
          cardShown: {},
        },
        48 - round * 3,
      )
      tell('run-event', { runId, event: { type: 'seal-seen', sealedCount: jarCount, unsealedCount: 0 } }, 24)
      const counts = new Map<string, number>()
      for (let each = 0; each < jarCount; each += 1, jar += 1) {
        const household = `house ${Math.floor(jar / 4) + 1}`
        counts.set(household, (counts.get(household) ?? 0) + 1)
      }
      for (const [householdName, count] of counts) {
        const foodId = newId()
        if (loadCode.endsWith('B1')) ofB1 ??= { lotIdOfB1: foodId, householdOfB1: householdName }
        const put = { lotId: foodId, runId, batchId, loadCode, form: 'jar', jarSize: 'pint', count } as const
        tell('food-put-up', { ...put, householdName, place: 'cellar' }, 23)
      }
    }
  }
  if (!ofB1) throw new Error('load B1 was not told')
  await tellTheHouse(house, entries)
  return { kitchenId, ...ofB1 }
}
