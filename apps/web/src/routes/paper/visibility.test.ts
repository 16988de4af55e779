/** Every paper for other eyes, by every role, with lots opened to everyone, some or nobody: no hidden name is printed. */
import {
  type Facts,
  factsOpenedTo,
  foldFacts,
  mayNameTo,
  mayRead,
  ROLES,
  type Standing,
  VISIBILITIES,
  type Visibility,
} from '@crib/journal'
import { type PaperDocument, renderHtml } from '@crib/paper'
import { batchPlan, batchPlannedBody, madeUpRun, workJar } from '@crib/planning'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { testKitchen } from '../../../../../packages/journal/src/testing/invented.ts'
import { classSheetDocument, type Desk } from './documents.ts'
import { jarHeatDocument, runHeatDocument } from './heat-papers.ts'
import { labelsDocument } from './label-sheets.ts'
import { callListDocument, recallNoticeDocument } from './recall-papers.ts'
import { germinationSheetDocument, reserveTagsDocument, seedEnvelopeDocument } from './seed-papers.ts'
import { yearSheetDocument } from './year-paper.ts'

/** Invented, and in no sentence of ours. */
const CORN = 'Quillmere flint'
const SEED = 'Brackenby seed'
const GIVER = 'from the Ottery bank'
const HOUSE = 'the Wexcombe house'
const CONDITION = 'Not to be planted upriver.'

const { newId, author, clock, kitchenId } = testKitchen()
clock.set('2026-11-03T12:00:00.000Z')

const plan = batchPlan({
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: ['the loft', 'the tin'] },
  cornName: CORN,
  cornType: 'flint',
  alkali: 'ash',
  pots: [{ name: 'the big pot', volumeLiquidQt: 20, material: 'stainless' }],
  washPattern: 'common-practice',
  endings: [{ ending: 'freezer', shareFraction: 1 }],
  fill: 'loose-to-headspace',
  jarSize: 'quart',
  canners: [],
  elevationFt: 820,
  elevationKnownBy: 'map',
  isStandingRead: true,
})
if (plan.kind !== 'planned') throw new Error(plan.refused)

function book(opened: Visibility) {
  const [lotId, seedLotId, batchId, jarsId, packsId, runId] = Array.from({ length: 6 }, newId) as [
    ...[string, string, string, string, string, string],
  ]
  const keeper = author()
  const facts = foldFacts([
    keeper.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false }),
    keeper.write('kitchen-noted', { kitchenId, elevationM: 250, elevationKnownBy: 'map' }),
    keeper.write('corn-lot-brought-in', {
      lotId,
      name: CORN,
      cornType: 'flint',
      form: 'shelled',
      massKg: 9,
      asTyped: '9 kg',
      treatedSeed: false,
    }),
    keeper.write('seed-lot-recorded', {
      seedLotId,
      name: SEED,
      seasonYear: 2026,
      putByOn: '2026-10-20',
      source: 'given',
      sourceNote: GIVER,
      lotId,
      kernelsCount: 900,
      containers: [{ container: 'tin', place: 'shelf' }],
    }),
    keeper.write(
      'batch-planned',
      batchPlannedBody({ batchId, title: `${CORN}, 9 lb`, plan: plan as never, beside: { cornLotId: lotId } }),
    ),
    keeper.write('lot-used', { lotId, massKg: 4, how: 'used-in-batch', batchId }),
    keeper.write('food-put-up', { lotId: packsId, batchId, loadCode: 'K-1', form: 'freezer', count: 3, massKg: 2 }),
    keeper.write('food-put-up', {
      lotId: jarsId,
      batchId,
      loadCode: 'K-2',
      form: 'jar',
      count: 3,
      householdName: HOUSE,
    }),
    keeper.write('run-begun', {
      runId,
      batchId,
      cannerId: newId(),
      cannerName: 'yard canner',
      loadCode: 'K-2',
      jarSize: 'pint',
      jarCount: 3,
      gauge: 'dial',
      requiredReadingPsi: 11,
      ventMin: 10,
      processMin: 60,
      edition: 'guidance-2026-11',
      cardShown: null,
      households: [HOUSE],
    }),
    ...(['vent-closed', 'at-pressure', 'heat-off', 'zero'] as const).map((type, index) =>
      keeper.write(
        'run-event',
        { runId, event: { type } },
        { happenedAt: { instant: Date.parse('2026-11-03T10:00:00.000Z') + index * 1_800_000 } },
      ),
    ),
    ...[lotId, seedLotId, batchId, packsId, jarsId].map((id) =>
      keeper.write('visibility-set', { lotId: id, visibility: opened, conditions: CONDITION }),
    ),
  ])
  return { facts, lotId, seedLotId, batchId, packsId, jarsId, runId }
}
type Book = ReturnType<typeof book>

/** What somebody of that standing has on their device. */
const factsOf = (facts: Facts, standing: Standing): Facts =>
  factsOpenedTo(facts, VISIBILITIES.find((one) => mayRead(standing, one)) ?? 'open')

const said = (document: PaperDocument | null) => (document === null ? '' : renderHtml(document))

/** At the kitchen's height; few samples, as no figure is looked at here. */
const WORKED = workJar(madeUpRun({ kitchen: null }), 64)

/** `eyes`: whose the paper is for when nobody chooses; absent where the desk chooses. */
const PAPERS: readonly {
  readonly name: string
  readonly eyes?: Visibility
  readonly make: (desk: Desk, ids: Book) => PaperDocument | null
}[] = [
  {
    name: 'seed envelope',
    make: (desk, { seedLotId }) => {
      const lot = desk.facts.seedLots[seedLotId]
      return lot ? seedEnvelopeDocument(desk, lot) : null
    },
  },
  {
    name: 'reserve tags',
    make: (desk, { seedLotId }) => {
      const lot = desk.facts.seedLots[seedLotId]
      return lot ? reserveTagsDocument(desk, lot) : null
    },
  },
  {
    name: 'sprouting test',
    make: (desk, { seedLotId }) => {
      const lot = desk.facts.seedLots[seedLotId]
      return lot ? germinationSheetDocument(desk, lot, 2) : null
    },
  },
  { name: 'year sheet', make: (desk) => yearSheetDocument(desk, 2026) },
  { name: 'class sheet', eyes: 'community', make: (desk, { batchId }) => classSheetDocument(desk, batchId) },
  {
    name: 'labels of packs for the family',
    eyes: 'family',
    make: (desk, { packsId }) => {
      const lot = desk.facts.foodLots[packsId]
      return lot ? labelsDocument(desk, [lot], 'letter-2x3', 0) : null
    },
  },
  {
    name: 'labels of another household’s jars',
    eyes: 'community',
    make: (desk, { jarsId }) => {
      const lot = desk.facts.foodLots[jarsId]
      return lot ? labelsDocument(desk, [lot], 'letter-2x3', 0) : null
    },
  },
  {
    name: 'recall notice from the corn',
    eyes: 'community',
    make: (desk, { lotId }) => recallNoticeDocument(desk, { by: 'corn-lot', lotId }, 'the mill'),
  },
  {
    name: 'call list from the corn',
    eyes: 'community',
    make: (desk, { lotId }) => callListDocument(desk, { by: 'corn-lot', lotId }),
  },
  {
    name: 'heat in a made-up jar',
    eyes: 'open',
    make: (desk) => jarHeatDocument(desk, madeUpRun(desk.facts), WORKED),
  },
  {
    name: 'temperatures of a load',
    eyes: 'community',
    make: (desk, { runId }) => {
      const run = desk.facts.runs[runId]
      return run ? runHeatDocument(desk, run) : null
    },
  },
]

const STANDINGS: readonly Standing[] = [...ROLES, 'outsider']

describe.each(PAPERS)('$name', ({ name, eyes, make }) => {
  test.each(VISIBILITIES)('of lots opened to %s', (opened) => {
    const ids = book(opened)
    for (const standing of STANDINGS) {
      const facts = factsOf(ids.facts, standing)
      for (const audience of eyes === undefined ? VISIBILITIES : (['keeper'] as const)) {
        const desk: Desk = {
          facts,
          words: createWords(),
          paper: 'letter',
          isLargePrint: false,
          audience,
          today: '2026-11-14',
          isStandingRead: () => true,
        }
        const html = said(make(desk, ids))
        const who = `${standing}, for ${eyes ?? audience}`
        const mayName = mayNameTo(ids.facts, ids.lotId, eyes ?? audience) && mayRead(standing, opened)
        for (const hidden of [CORN, SEED, GIVER]) if (!mayName) expect(html, who).not.toContain(hidden)
        // A household is named on what goes home with it and on the keeper's list, nowhere else.
        if (!/household|call list/.test(name)) expect(html, who).not.toContain(HOUSE)
      }
    }
  })
})

test('what may be named is named, and conditions go along', () => {
  const ids = book('open')
  const desk: Desk = {
    facts: ids.facts,
    words: createWords(),
    paper: 'letter',
    isLargePrint: false,
    audience: 'open',
    today: '2026-11-14',
    isStandingRead: () => true,
  }
  const html = Object.fromEntries(PAPERS.map(({ name, make }) => [name, said(make(desk, ids))]))
  for (const name of ['seed envelope', 'reserve tags', 'sprouting test', 'year sheet'])
    expect(html[name]).toContain(SEED)
  for (const name of ['class sheet', 'labels of packs for the family', 'labels of another household’s jars'])
    expect(html[name]).toContain(CORN)
  expect(html['recall notice from the corn']).toContain(CORN)
  for (const name of ['seed envelope', 'reserve tags', 'class sheet', 'labels of packs for the family'])
    expect(html[name], name).toContain(CONDITION)
})
