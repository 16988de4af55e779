import type { Calc } from '@crib/science'
import { expect, test } from 'vitest'
import { calculationsPage } from './calculations-page.ts'
import { changelogPage } from './changelog-page.ts'

const POT_LOADS: Calc = {
  id: 'pot-loads',
  title: 'Pot-loads',
  question: 'How many pot-loads does this corn make?',
  inputs: {
    corn: { kind: 'quantity', label: 'Dry corn', unit: 'LiquidQt', min: 0.25, max: 400, limitSource: 'project-rule' },
    pots: {
      kind: 'table',
      label: 'Pots at hand',
      maxRows: 8,
      columns: {
        volume: {
          kind: 'quantity',
          label: 'Size | brim',
          unit: 'LiquidQt',
          min: 1,
          max: 200,
          limitSource: 'made-up-2020',
        },
      },
    },
  },
  outputs: { potLoadsCount: { label: 'Pot-loads', unit: 'Count' } },
  sourceKeys: ['made-up-2020'],
  example: { corn: '6 liquid qt' },
  run: () => ({ ok: true, values: [], reasons: [], warnings: [] }),
}

test('a calculation is listed with each input, nested ones too, its limits, who set them, outputs and sources', () => {
  const page = calculationsPage([POT_LOADS])
  expect(page).toContain('- [pot-loads](#pot-loads): How many pot-loads does this corn make?')
  expect(page).toContain('| `corn` | Dry corn | 0.25 liquid qt to 400 liquid qt (`project-rule`) |')
  expect(page).toContain('| `pots[].volume` | Size \\| brim | 1 liquid qt to 200 liquid qt (`made-up-2020`) |')
  expect(page).toContain('| `potLoadsCount` | Pot-loads | count |')
  expect(page).toContain('Sources: `made-up-2020`')
})

test('every fragment becomes one line of the changelog', () => {
  const page = changelogPage([
    { name: 'a.md', text: 'Plans a day.\nBoth ways.\n' },
    { name: 'b.md', text: '- Prints a card.' },
  ])
  expect(page).toContain('## Unreleased\n\n- Plans a day. Both ways.\n- Prints a card.\n')
})

test('an empty fragment is named rather than listed', () => {
  expect(() => changelogPage([{ name: 'c.md', text: ' \n' }])).toThrow('changes/c.md is empty')
})
