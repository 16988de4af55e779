/** What stands after the lines of a run so far. Leaves out: how a line changes it (run-walk.ts). */

/** What let the pressure go, or showed that it was gone. */
export type DipCause =
  | 'dipped'
  | 'reading'
  | 'heat-off'
  | 'fuel-out'
  | 'vent-opened'
  | 'vent-closed-late'
  | 'relief-plug-blown'
  | 'boiled-dry'
  | 'abandoned'
  | 'forced-cooling'
  | 'zero'
  | 'weight-off'
  | 'lid-off'
  | 'jars-out'

export interface Dip {
  readonly atMs: number
  readonly cause: DipCause
  /** Needle reading where one was written down. [psi] */
  readonly psi?: number
}

export interface Restart {
  /** When pressure was let go. */
  readonly dipAtMs: number
  readonly cause: DipCause
  readonly psi?: number
  /** When it was back, and the full time began again. */
  readonly regainedAtMs: number
  /** Minutes that had run and do not count. [min] */
  readonly lostMin: number
}

export interface OpenDip extends Dip {
  readonly lostMin: number
  /** True once more than the needle's fall let pressure go: then only a tap, never a reading, says that it is back. */
  readonly needsTap: boolean
}

export type BadEndType = 'relief-plug-blown' | 'boiled-dry' | 'abandoned'

export type Question =
  | { readonly kind: 'out-of-order'; readonly atMs: number; readonly laterStepAtMs: number }
  | { readonly kind: 'pressure-before-vent-closed'; readonly atMs: number }
  | { readonly kind: 'dip-before-pressure'; readonly atMs: number }
  | { readonly kind: 'after-the-end'; readonly atMs: number }
  | { readonly kind: 'clock-jumped'; readonly atMs: number; readonly jumpMs: number; readonly laterMs: number }
  | { readonly kind: 'unreadable'; readonly recordId: string }

/** Something done otherwise than directed, that later steps cannot undo. */
export type Misstep =
  | { readonly kind: 'vent-opened-under-pressure' | 'weight-off-early' | 'lid-off-early'; readonly atMs: number }
  | { readonly kind: 'forced-cooling'; readonly atMs: number; readonly how?: string }

export interface Walk {
  loadedAtMs?: number
  waterIn?: number
  lidSeatedAtMs?: number
  /** Of the vent that stands now. */
  steamAtMs: number | undefined
  ventClosedAtMs: number | undefined
  firstAtPressureAtMs?: number
  count?: { readonly fromMs: number; readonly dueMs: number }
  openDip: OpenDip | undefined
  /** The full time ran with nothing written down against it. */
  ran: boolean
  dips: Dip[]
  restarts: Restart[]
  highSpells: { readonly atMs: number; readonly psi?: number }[]
  heatOffAtMs: number | undefined
  zeroAtMs: number | undefined
  weightOffAtMs: number | undefined
  lidOffAtMs: number | undefined
  jarsOutAtMs: number | undefined
  seals?: { readonly atMs: number; readonly sealedCount: number; readonly unsealedCount: number }
  badEnd?: { readonly type: BadEndType; readonly atMs: number }
  missteps: Misstep[]
  questions: Question[]
  lowestPsi?: number
  lastStep: { readonly rank: number; readonly atMs: number } | undefined
}

export function emptyWalk(): Walk {
  return {
    steamAtMs: undefined,
    ventClosedAtMs: undefined,
    openDip: undefined,
    ran: false,
    dips: [],
    restarts: [],
    highSpells: [],
    heatOffAtMs: undefined,
    zeroAtMs: undefined,
    weightOffAtMs: undefined,
    lidOffAtMs: undefined,
    jarsOutAtMs: undefined,
    missteps: [],
    questions: [],
    lastStep: undefined,
  }
}
