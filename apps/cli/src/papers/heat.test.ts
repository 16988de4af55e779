/** The papers of a load, and of heat, out of the invented demo kitchen. */
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

const UNCHANGED = 'This does not change what the published directions say.'

test.runIf(POPPLER_FOUND)(
  'a made-up jar ends with the published rule; a load has temperatures and no total',
  async () => {
    const [jar, load] = ['jar', 'load'].map((name) => join(terminal.folder, `${name}.pdf`)) as [string, string]
    expect(await terminal.crib('paper', 'jar-heat', '--out', jar)).toMatchObject({ exitCode: 0, err: '' })
    const ofJar = textOf(readFileSync(jar))
    expect(ofJar).toContain(UNCHANGED)
    expect(ofJar).toContain('Vent 10 min of steady steam before closing, every load')
    expect(ofJar).toContain('Nine tenths of 10,000 made-up jars')
    const asked = await terminal.crib('paper', 'load-heat', '--load', 'ostr-260415-a1', '--paper', 'a4', '--out', load)
    expect(asked).toMatchObject({ exitCode: 0, err: '' })
    const ofLoad = textOf(readFileSync(load))
    expect(ofLoad).toContain(UNCHANGED)
    expect(ofLoad).toContain('None written down.')
    expect(ofLoad).not.toMatch(/lethality|F0|log reductions|\bsafe\b|enough/i)
  },
)

test.runIf(POPPLER_FOUND)('the log of a load bears the day it was begun', async () => {
  const file = join(terminal.folder, 'log.pdf')
  const asked = await terminal.crib('paper', 'process-log', '--load', 'OSTR-260415-A1', '--out', file)
  expect(asked).toMatchObject({ exitCode: 0, err: '' })
  expect(textOf(readFileSync(file))).toContain('15 Apr 2026')
})

test('a load that is not in the book is an error that names those that are', async () => {
  const file = join(terminal.folder, 'load.pdf')
  const { exitCode, err } = await terminal.crib('paper', 'load-heat', '--load', 'Q-9', '--out', file)
  expect(exitCode).not.toBe(0)
  expect(err).toContain('OSTR-260415-A1')
  expect(existsSync(file)).toBe(false)
})
