/** The papers by the fire out of the invented demo kitchen, whose ash is called M-1. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { POPPLER_FOUND, textOf } from '../../../../packages/paper/testing/read-pdf.ts'
import { createTestingTerminal, type TestingTerminal } from '../../testing/testing-terminal.ts'

let terminal: TestingTerminal
beforeEach(async () => {
  terminal = createTestingTerminal('2026-11-03T07:00:00Z')
  await terminal.crib('demo')
})
afterEach(() => terminal.remove())

test.runIf(POPPLER_FOUND)(
  'lye and titration sheets name the lot asked for, and put the cautions on the page',
  async () => {
    for (const kind of ['lye', 'titration']) {
      const file = join(terminal.folder, `${kind}.pdf`)
      const { exitCode, err } = await terminal.crib('paper', kind, '--lot', 'm-1', '--out', file)
      expect({ err, exitCode }).toMatchObject({ exitCode: 0 })
      const text = textOf(readFileSync(file))
      expect(text).toContain('M-1')
      expect(text).toMatch(/eyes|goggles/i)
    }
  },
)

test('a lot that is not in the book is an error that names those that are', async () => {
  const file = join(terminal.folder, 'lye.pdf')
  const { exitCode, err } = await terminal.crib('paper', 'lye', '--lot', 'Q-9', '--out', file)
  expect(exitCode).not.toBe(0)
  expect(err).toContain('M-1')
  expect(existsSync(file)).toBe(false)
})

test('a rub log asks for a batch where none is planned', async () => {
  const { exitCode, err } = await terminal.crib('paper', 'rubs', '--out', join(terminal.folder, 'rubs.pdf'))
  expect(exitCode).not.toBe(0)
  expect(err).toContain('No batch is planned in this book yet')
})
