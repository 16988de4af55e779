import { foldFacts } from '@crib/journal'
import { renderHtml } from '@crib/paper'
import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { testKitchen } from '../../../../../packages/journal/src/testing/invented.ts'
import { runLogDocument } from './logs.ts'

/** Half past seven in the evening of 3 November where the kitchen is; in Greenwich it is the 4th. */
const EVENING = '2026-11-04T00:30:00.000Z'

test('the log of a load begun in the evening bears the day it was there', () => {
  const kitchen = testKitchen()
  kitchen.clock.set(EVENING)
  const { kitchenId } = kitchen
  const runId = kitchen.newId()
  const author = kitchen.author()
  const facts = foldFacts([
    author.write('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: false }),
    author.write('run-begun', {
      runId,
      cannerId: kitchen.newId(),
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
