/** The invented kitchen, written into this device's store once. It stays on this device. */
import { demoKitchen, type JournalStore } from '@crib/journal'
import { CLOCK, deviceZone, RANDOM } from './keeper.ts'

export async function writeDemoKitchen(store: JournalStore): Promise<string> {
  const { kitchenId, entries } = demoKitchen({ clock: CLOCK, random: RANDOM, zone: deviceZone() })
  await store.append(entries)
  return kitchenId
}
