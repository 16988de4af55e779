/**
 * Whether a hidden lot can be noticed from outside: two houses alike but for hidden lots must answer alike, to the letter
 * and in the same time.
 */
import { createAuthor, readsFrom, type Standing, type StoredEntry } from '@crib/journal'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { lotBody, openTestHouse, type TestHouse } from './testing.ts'

/** 500 at every test run; 10,000 with LEAK_SAMPLES=10000. */
const SAMPLES = Number(process.env.LEAK_SAMPLES ?? 500)
/** Beyond it two means differ (the usual bound of leakage tests on timing, common practice, no source). */
const MOST_T = 4.5

const ID = (n: number) => `0190b000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`
const KITCHEN = ID(1)

/** One shared life; with `hiddenLots` of another in between, on the same device's chain. */
async function linesOf(hiddenLots: number): Promise<StoredEntry[]> {
  const entries: StoredEntry[] = []
  let head: StoredEntry | null = null
  let made = 0
  const write = (random: number, work: (author: ReturnType<typeof createAuthor>) => StoredEntry) => {
    let count = random
    const author = createAuthor({
      kitchenId: KITCHEN,
      deviceId: ID(2),
      personId: ID(3),
      zone: 'America/Toronto',
      head: head && { deviceSeq: head.envelope.deviceSeq, hash: head.hash, writtenAt: head.envelope.writtenAt },
      clock: { now: () => Date.UTC(2026, 9, 1) + random * 1000 },
      random: {
        bytes: (length) =>
          Uint8Array.from({ length }, () => {
            count += 1
            return (count * 2_654_435_761) >>> 24
          }),
      },
    })
    head = work(author)
    entries.push(head)
  }
  const hide = () => {
    for (let i = 0; i < hiddenLots; i += 1) {
      made += 1
      const lotId = ID(900_000 + made)
      write(1_000_000 + made * 100, (author) => author.write('corn-lot-brought-in', lotBody(lotId, 'Hidden flour')))
    }
  }
  write(100, (author) => author.write('kitchen-opened', { kitchenId: KITCHEN, name: 'Ostrey Point', demo: false }))
  for (let i = 0; i < 6; i += 1) {
    hide()
    const lotId = ID(10 + i)
    write(1000 + i * 500, (author) => author.write('corn-lot-brought-in', lotBody(lotId)))
    const visibility = (['family', 'community', 'open'] as const)[i % 3]!
    write(1200 + i * 500, (author) => author.write('visibility-set', { lotId, visibility, conditions: 'Ask first.' }))
  }
  hide()
  return entries
}

interface Side {
  readonly house: TestHouse
  readonly cookies: Record<string, string>
}

const STANDINGS = ['minder', 'helper', 'reader', 'outsider'] as const

async function sideWith(hiddenLots: number): Promise<Side> {
  const house = await openTestHouse()
  await house.keep(...(await linesOf(hiddenLots)))
  const cookies: Record<string, string> = {}
  for (const [i, standing] of STANDINGS.entries()) {
    const personId = ID(100 + i)
    await house.people.accounts.make({ personId, name: standing, mayOpen: false }, null)
    await house.people.membership.giveSeat(personId, KITCHEN)
    // Written by the house server; alike on both sides but for ids, which a reader's copy may show: kept by the keeper alone.
    if (standing !== 'outsider') {
      await house.people.membership.record(KITCHEN, ID(3), 'person-joined', {
        personId,
        name: standing,
        role: standing,
      })
    }
    cookies[standing] = `crib-session=${(await house.people.sessions.open(personId, 'test')).token}`
  }
  return { house, cookies }
}

let without: Side
let withHidden: Side
beforeAll(async () => {
  without = await sideWith(0)
  withHidden = await sideWith(40)
})
afterAll(async () => {
  await without?.house.remove()
  await withHidden?.house.remove()
})

/** Ids and times of the lines the two house servers wrote about their people; everything else must be the same. */
function plainOf(text: string): unknown {
  const { entries, ...rest } = JSON.parse(text) as { entries?: StoredEntry[] }
  if (!entries) return rest
  return {
    ...rest,
    entries: entries.map(({ envelope, body, hash }) =>
      envelope.kind === 'person-joined' ? { place: envelope.deviceSeq, kind: envelope.kind } : { envelope, body, hash },
    ),
  }
}

describe.each(STANDINGS)('for a %s', (standing: Standing) => {
  const doors = [
    `/api/entries?kitchen=${KITCHEN}`,
    `/api/entries?kitchen=${KITCHEN}&limit=2`,
    `/api/entries?kitchen=${KITCHEN}&after=3&limit=1`,
    `/api/entries?kitchen=${KITCHEN}&after=99`,
    `/api/entries?kitchen=${KITCHEN}&after=6&device=${ID(2)}`,
    '/api/kitchens',
    `/api/people/members?kitchen=${KITCHEN}`,
    `/api/people/invitations?kitchen=${KITCHEN}`,
    '/api/people/me',
  ]
  test.each(doors)('%s answers the same with and without forty hidden lots seven times over', async (path) => {
    const answers = []
    for (const { house, cookies } of [without, withHidden]) {
      const { status, text, body } = await house.ask('GET', path, { cookie: cookies[standing]! })
      // The members' list tells when each joined, by the house's own clock, which stands still here.
      answers.push({ status, plain: plainOf(text), count: body.entries?.length, next: body.next, view: body.view })
    }
    expect(answers[1]).toEqual(answers[0])
    expect(JSON.stringify(answers)).not.toContain('Hidden')
  })

  test('bringing lines answers the same', async () => {
    const answers = []
    for (const { house, cookies } of [without, withHidden]) {
      const author = createAuthor({
        kitchenId: KITCHEN,
        deviceId: ID(2),
        personId: ID(3),
        zone: 'UTC',
        head: null,
        clock: house.clock,
        random: { bytes: (length) => new Uint8Array(length).fill(7) },
      })
      const line = author.write('corn-lot-brought-in', lotBody(ID(77)))
      const { status, body } = await house.ask('POST', '/api/entries', {
        cookie: cookies[standing]!,
        body: { entries: [line] },
      })
      answers.push({ status, body })
    }
    expect(answers[1]).toEqual(answers[0])
    expect(answers[0]!.body.results[0].outcome).toBe('refused')
  })
})

test('the very hashes of a reader’s copy are the same, when nobody joined in between', async () => {
  const texts = []
  for (const hidden of [0, 40]) {
    const house = await openTestHouse()
    await house.keep(...(await linesOf(hidden)))
    const reader = { kitchenId: KITCHEN, from: readsFrom('reader'), personId: ID(9), deviceId: '' }
    texts.push(JSON.stringify(await house.people.feed.page(reader, { after: 0, limit: 100 })))
    await house.remove()
  }
  expect(texts[1]).toBe(texts[0])
})

/** Welch's t of two samples. @source Welch 1947 (from memory, not re-read) */
function welchT(a: readonly number[], b: readonly number[]): number {
  const mean = (each: readonly number[]) => each.reduce((sum, x) => sum + x, 0) / each.length
  const meanA = mean(a)
  const meanB = mean(b)
  const spread = (each: readonly number[], m: number) =>
    each.reduce((sum, x) => sum + (x - m) ** 2, 0) / (each.length - 1) / each.length
  return (meanA - meanB) / Math.sqrt(spread(a, meanA) + spread(b, meanB))
}

test('Welch’s t tells a tenth more time apart, and equal times not', () => {
  const noise = Array.from({ length: 500 }, (_, i) => 100 + 10 * Math.sin(i * 12.9898))
  expect(Math.abs(welchT(noise, [...noise].reverse()))).toBeLessThan(0.001)
  expect(
    Math.abs(
      welchT(
        noise,
        noise.map((x) => x * 1.1),
      ),
    ),
  ).toBeGreaterThan(MOST_T)
})

test.each(['reader', 'outsider'] as const)(
  `for a %s the time of an answer does not tell (Welch |t| < ${MOST_T}, ${SAMPLES} samples)`,
  async (standing) => {
    const sides = [without, withHidden]
    const timeOf = async ({ house, cookies }: Side) => {
      const from = process.hrtime.bigint()
      await house.ask('GET', `/api/entries?kitchen=${KITCHEN}`, { cookie: cookies[standing]! })
      return Number(process.hrtime.bigint() - from) / 1000
    }
    for (let i = 0; i < 100; i += 1) for (const side of sides) await timeOf(side)
    const times: [number[], number[]] = [[], []]
    for (let i = 0; i < SAMPLES; i += 1) {
      // Which comes first is tossed: what runs second finds warmer caches.
      const first = Math.random() < 0.5 ? 0 : 1
      for (const at of [first, 1 - first] as const) times[at as 0 | 1].push(await timeOf(sides[at]!))
    }
    // Pauses of the machine itself are cut at the same place on both sides.
    const cut = [...times[0], ...times[1]].sort((a, b) => a - b)[Math.floor(SAMPLES * 2 * 0.95)]!
    const t = welchT(
      times[0].filter((x) => x <= cut),
      times[1].filter((x) => x <= cut),
    )
    console.log(`${standing}: Welch t ${t.toFixed(2)} over ${SAMPLES} samples`)
    expect(Math.abs(t)).toBeLessThan(MOST_T)
  },
  600_000,
)
