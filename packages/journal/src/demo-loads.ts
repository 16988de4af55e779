/**
 * Two invented loads of the demo kitchen, three days after its dial was tested: one told line by line at the stove, and one
 * for which only the ends were told because a logger was in the canner. Its file lies in `examples/`.
 */
import type { BodyOf } from './kinds/index.ts'
import type { RunEvent } from './kinds/run.ts'

const DAY_MS = 86_400_000
const MIN_MS = 60_000
/** What the card of this canner shows at 820 ft: dial, 11 psi, quarts 70 min. */
const HELD_PSI = 11

export interface ToldLine<K extends 'run-begun' | 'run-event'> {
  readonly kind: K
  readonly body: BodyOf<K>
  readonly instant: number
}

export interface DemoLoads {
  readonly cannerId: string
  readonly newId: () => string
  /** YYYY-MM-DD of the gauge test. */
  readonly testedOn: string
  /** IANA name. */
  readonly zone: string
}

/** Clock of the first load; each line in minutes after midnight. */
const BY_HAND: readonly (readonly [clockMin: number, event: RunEvent])[] = [
  [542, { type: 'canner-loaded', waterIn: 3 }],
  [546, { type: 'lid-seated' }],
  [561, { type: 'steam-steady' }],
  [571, { type: 'vent-closed' }],
  [578, { type: 'at-pressure' }],
  [600, { type: 'reading', psi: 11.5 }],
  [625, { type: 'reading', psi: 11.5 }],
  [649, { type: 'heat-off' }],
  [691, { type: 'zero' }],
  [691, { type: 'weight-off' }],
  [701, { type: 'lid-off' }],
  [706, { type: 'jars-out' }],
  [1440 + 480, { type: 'seal-seen', sealedCount: 7, unsealedCount: 0 }],
]

/** The second: what lies between is in the logger's file. */
const BY_LOGGER: typeof BY_HAND = [
  [749, { type: 'canner-loaded', waterIn: 3 }],
  [753, { type: 'lid-seated' }],
  [943, { type: 'lid-off' }],
  [948, { type: 'jars-out' }],
  [1440 + 481, { type: 'seal-seen', sealedCount: 6, unsealedCount: 1 }],
]

/** The lines of both loads, in order of their clock. */
export function demoLoads({ cannerId, newId, testedOn, zone }: DemoLoads): ToldLine<'run-begun' | 'run-event'>[] {
  const day = new Date(Date.parse(`${testedOn}T00:00:00Z`) + 3 * DAY_MS).toISOString().slice(0, 10)
  return [BY_HAND, BY_LOGGER].flatMap((lines, index) => {
    const runId = newId()
    const at = (clockMin: number) => instantOfClock(day, clockMin, zone)
    return [
      {
        kind: 'run-begun' as const,
        body: begun({ runId, cannerId, day, round: index + 1 }),
        instant: at(lines[0]![0]),
      },
      ...lines.map(([clockMin, event]) => ({
        kind: 'run-event' as const,
        body: { runId, event },
        instant: at(clockMin),
      })),
    ]
  })
}

function begun(of: { runId: string; cannerId: string; day: string; round: number }): BodyOf<'run-begun'> {
  return {
    runId: of.runId,
    cannerId: of.cannerId,
    cannerName: 'yard canner',
    loadCode: `OSTR-${of.day.slice(2).replaceAll('-', '')}-A${of.round}`,
    jarSize: 'quart',
    jarCount: 7,
    gauge: 'dial',
    requiredReadingPsi: HELD_PSI,
    ventMin: 10,
    processMin: 70,
    edition: 'guidance-2026-11',
    cardShown: {
      elevationFt: 820,
      elevationKnownBy: 'map',
      gauge: 'dial',
      tablePsi: HELD_PSI,
      holdAtPsi: HELD_PSI,
      standing: [
        'guidance:made-for-none',
        'guidance:looks-like-lye-hominy',
        'guidance:now-withdrawn',
        'guidance:hearsay-minutes',
      ],
    },
  }
}

/** [epoch ms]  Days on which the clocks change are not among them. */
function instantOfClock(day: string, clockMin: number, zone: string): number {
  const asIfUtcMs = Date.parse(`${day}T00:00:00Z`) + clockMin * MIN_MS
  const shown = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'medium' })
  return asIfUtcMs - (Date.parse(`${shown.format(asIfUtcMs).replace(' ', 'T')}Z`) - asIfUtcMs)
}
