import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

/** The one test with a process of its own: arguments, standard input and exit code arrive through a real shell's doors. */
const MAIN = fileURLToPath(new URL('./main.ts', import.meta.url))

test('a process reads JSON from standard input, writes JSON, and ends with the code of its outcome', () => {
  const run = (input: string) =>
    spawnSync(process.execPath, [MAIN, 'reckon', 'kernel-measure', '-', '--json'], { input, encoding: 'utf8' })
  const reckoned = run('{"massKg":"9 lb"}')
  expect(reckoned.status).toBe(0)
  expect(JSON.parse(reckoned.stdout).kind).toBe('reckoned')
  const faulty = run('{"massKg":"nine"}')
  expect(faulty.status).toBe(2)
  expect(JSON.parse(faulty.stdout).kind).toBe('bad-input')
})
