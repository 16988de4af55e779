import { expect, test } from 'vitest'
import { type NoSlipKnown, noSlipCauses } from './no-slip-causes.ts'

const shown = (known: NoSlipKnown) =>
  noSlipCauses(known)
    .filter(({ isShownByBook }) => isShownByBook)
    .map(({ id }) => id)

test('the ash of scenario S2 that stood open for 14 months stands first', () => {
  const causes = noSlipCauses({ alkali: 'ash', stoodOpenMonths: 14, boiledMin: 120, rangeLowMin: 40, elevationFt: 820 })
  expect(causes[0]).toMatchObject({ id: 'weak-lot', isShownByBook: true })
  expect(causes.filter(({ isShownByBook }) => isShownByBook)).toHaveLength(1)
})

test.each<[string, NoSlipKnown, string[]]>([
  ['mostly carbonate', { alkali: 'ash', hydroxideFraction: 0.1 }, ['mostly-carbonate']],
  ['a high kitchen', { alkali: 'calcium-hydroxide', elevationFt: 5000 }, ['high-kitchen']],
  ['little water', { alkali: 'ash', waterToCornRatio: 2 }, ['too-little-liquid']],
  ['popcorn', { alkali: 'ash', cornType: 'popcorn' }, ['thick-hull']],
  ['very dry corn', { alkali: 'ash', cornWetFraction: 0.08 }, ['old-dry-corn']],
  ['before the range', { alkali: 'ash', boiledMin: 20, rangeLowMin: 40 }, ['too-early']],
  ['soda', { alkali: 'baking-soda' }, ['unbaked-soda']],
  ['nothing known', { alkali: 'ash' }, []],
])('%s is what the book shows', (_, known, ids) => {
  expect(shown(known)).toEqual(ids)
})

test('a cause that cannot be meant with this alkali is left out, and silence rules out nothing', () => {
  const of = (alkali: NoSlipKnown['alkali']) => noSlipCauses({ alkali }).map(({ id }) => id)
  expect(of('ash')).not.toContain('lime-settled')
  expect(of('ash')).toEqual(expect.arrayContaining(['not-boiling', 'weak-lot', 'too-little-alkali', 'old-dry-corn']))
  expect(of('sodium-hydroxide')).not.toContain('weak-lot')
  expect(of('calcium-hydroxide')).toContain('lime-settled')
})
