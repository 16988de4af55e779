import { createAuthor, createId, foldFacts } from '@crib/journal'
import { renderHtml } from '@crib/paper'
import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { runLogDocument } from './logs.ts'

/** Half past seven in the evening of 3 November where the kitchen is; in Greenwich it is the 4th. */
const EVENING = Date.parse('2026-11-04T00:30:00.000Z')

test('the log of a load begun in the evening bears the day it was there', () => {
  const clock = { now: () => EVENING }
  const random = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }
  const newId = () => createId(clock, random)
  const kitchenId = newId()
  const runId = newId()
  const author = createAuthor({
    kitchenId,
    deviceId: newId(),
    personId: newId(),
    head: null,
    clock,
    random,
    zone: 'America/Toronto',
  })
  const facts = foldFacts([
    author.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false }),
    author.write('run-begun', {
      runId,
      cannerId: newId(),
      cannerName: 'yard canner',
      loadCode: 'OSTR-1',
      jarSize: 'pint',
      jarCount: 3,
      gauge: 'dial',
      requiredReadingPsi: 11,
      ventMin: 10,
      processMin: 60,
      edition: 'guidance-2026-11',
      cardShown: null,
    }),
  ])
  const desk = {
    facts,
    words: createWords(),
    paper: 'letter',
    isLargePrint: false,
    audience: 'keeper',
    today: '2026-11-03',
    isStandingRead: () => true,
  } as const
  const html = renderHtml(runLogDocument(desk, facts.runs[runId]!))
  expect(html).toContain('3 Nov 2026')
  expect(html).not.toContain('4 Nov 2026')
})
