/** The invented kitchen, written into this device's store once. */
import type { JournalStore } from '@crib/journal'

export async function writeDemoKitchen(
  _desk: { readonly store: JournalStore; readonly deviceId: string; readonly personId: string },
  _kitchenId: string,
): Promise<void> {}
