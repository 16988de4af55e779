import type { MadeUpRun } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { type WhyCard, whyCards } from './why-cards.ts'

const words = createWords()
/** Invented; 11 psi at sea level. */
const run: MadeUpRun = {
  jar: 'pint',
  pack: 'free brine',
  elevationM: 0,
  gaugeKPa: 11 * 6.894757293168,
  gaugeReadsHighKPa: 0,
  ventMin: 10,
  holdMin: 55,
  fillC: 82,
  coolDownMin: 35,
}
const card = (id: WhyCard['id'], about: MadeUpRun = run) => whyCards(about).find((one) => one.id === id)!
const said = (id: WhyCard['id'], variant: string, about: MadeUpRun = run) =>
  words.sentence(card(id, about).variants.find((one) => one.id === variant)!.says)
const rule = (id: WhyCard['id'], about: MadeUpRun = run) =>
  card(id, about)
    .rule.map((one) => words.sentence(one))
    .join(' ')

describe('a card that says why', () => {
  test('tells three vents beside ten minutes, and ends with ten', () => {
    expect(card('vent').variants.map(({ change }) => change.ventMin)).toEqual([0, 7, 10])
    expect(said('vent', 'vent-0')).toContain('cooler than after 10 min')
    // All of the first air left in at 11 psi: the steam has 11 psi alone, 25.7 psi less 14.7, which is far below boiling at sea level.
    expect(said('vent', 'vent-0')).toContain('0 %')
    expect(rule('vent')).toContain('Vent 10 min of steady steam before closing, every load')
    expect(rule('vent')).toContain('One study of three canners')
    expect(card('vent').sourceKeys).toContain('usda-aib-539-1994')
  })

  test('tells ten psi beside eleven: 2.2 °F and three quarters of the rate, as thermal tables have it', () => {
    // Pure steam at sea level, 10 psig 239.36 °F rate 0.256, 11 psig 241.56 °F rate 0.340: 75 %.
    const vented = { ...run, ventMin: 60 }
    expect(said('dial', 'dial-10', vented)).toContain('2.2 °F (1.2 °C) cooler')
    expect(said('dial', 'dial-10', vented)).toContain('75 %')
    expect(rule('dial')).toContain('11 psi (76 kPa)')
    expect(rule('dial')).toContain('2,000 ft')
  })

  test('tells a dial that reads 1 psi high the same way', () => {
    expect(said('gauge', 'gauge-1', { ...run, ventMin: 60 })).toContain('75 %')
    expect(rule('gauge')).toContain('tested each year')
    expect(rule('gauge')).toContain('replace it at the first chance')
  })

  test('tells what height does to a ten-pound weight, and where the table goes to fifteen', () => {
    expect(said('weight', 'weight-1000-10')).toContain('cooler')
    expect(said('weight', 'weight-2000-15')).toContain('warmer')
    expect(rule('weight')).toContain('1,000 ft')
    expect(rule('weight')).toContain('15 lb weight')
  })

  test('tells a tight pack and a forced cool-down, each ending with what is printed', () => {
    expect(said('pack', 'pack-tight')).toContain('cooler')
    expect(rule('pack')).toContain('neither shaken nor pressed down')
    expect(said('cooling', 'cooling-forced')).toMatch(/\d+ %/)
    expect(rule('cooling')).toContain('Let it cool by itself')
  })

  test('says so where no table covers the height, and whom to ask', () => {
    const high = { ...run, elevationM: 2600 }
    expect(rule('dial', high)).toContain('outside the table')
    expect(rule('dial', high)).toContain('extension office')
  })

  test('never calls anything safe', () => {
    const all = whyCards(run).flatMap(({ title, variants, rule: lines }) => [
      title,
      ...variants.flatMap(({ name, says }) => [name, says]),
      ...lines,
    ])
    expect(all.length).toBeGreaterThan(30)
    expect(all.map((one) => words.sentence(one)).filter((text) => /\bsafe\b|\bpure\b|enough/i.test(text))).toEqual([])
  })
})
