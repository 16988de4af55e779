import { expect, test } from 'vitest'
import { checkBundle, FIRST_SCREEN_LIMIT_BYTES } from '../scripts/check-bundle.ts'
import { builtScreens } from './built-screens.ts'

test('the first screen takes less than 170 kB of compressed script, and no script asks for Node', () => {
  const { firstScreenBytes, firstScreenFiles, withNode } = checkBundle(builtScreens())
  expect(firstScreenFiles.length).toBeGreaterThan(1)
  expect(firstScreenBytes).toBeGreaterThan(50_000)
  expect(firstScreenBytes).toBeLessThan(FIRST_SCREEN_LIMIT_BYTES)
  expect(withNode).toEqual([])
})
