/** The demo kitchen's loads are what its own card would have begun, and what its own run says of them. */
import { demoKitchen, foldFacts } from '@crib/journal'
import { expect, test } from 'vitest'
import { handClock, repeatingRandom } from '../../../journal/src/testing/invented.ts'
import { runBegunBody, runSetupOf } from './begin-run.ts'
import { cardOfCanner } from './card-of-canner.ts'
import { runState } from './run.ts'
import { runRecords } from './run-event.ts'

const zone = 'America/Toronto'
const clock = handClock('2026-11-02T13:00:00.000Z')
const facts = foldFacts(demoKitchen({ clock, random: repeatingRandom(), zone }).entries)
const [byHand, byLogger] = Object.values(facts.runs).toSorted((a, b) => (a.begun.loadCode < b.begun.loadCode ? -1 : 1))

test('each was begun with the number, the minutes and the code its card gives', () => {
  const [canner] = Object.values(facts.canners)
  const wish = { today: '2026-04-15', jarSize: 'quart', alkali: 'ash', isHotPack: true, isStandingRead: true } as const
  const card = cardOfCanner(canner!, facts.kitchen, wish)
  if (card?.kind !== 'card') throw new Error('no card')
  const runs: typeof facts.runs = {}
  for (const run of [byHand!, byLogger!]) {
    const { at: _at, ...begun } = run.begun
    const body = runBegunBody(
      { ...facts, runs },
      {
        runId: begun.runId,
        canner: canner!,
        jarSize: 'quart',
        jarCount: 7,
        card,
        route: card.routes[0]!,
        requiredReadingPsi: 11,
        atMs: Date.parse(run.begun.at.instant),
        zone,
      },
    )
    // A load keeps the edition it was begun with.
    expect({ ...begun, edition: body.edition }).toEqual(body)
    Object.assign(runs, { [run.runId]: run })
  }
})

test('the first ran its 70 min as directed; of the second the vent, the pressure and the end are in the file', () => {
  const [first, second] = [byHand!, byLogger!].map((run) => runState(runSetupOf(run), runRecords(run), clock.now()))
  expect(first).toMatchObject({
    phase: 'seals-seen',
    outcome: 'time-ran',
    ventedMin: 10,
    departures: [],
    questions: [],
  })
  expect(new Date(first!.marks.loadedAtMs!).toISOString()).toBe('2026-04-15T13:02:00.000Z')
  expect(second!.phase).toBe('seals-seen')
  expect(second!.marks.ventClosedAtMs).toBeUndefined()
  expect(second!.outcome).not.toBe('time-ran')
})
