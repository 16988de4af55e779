/**
 * Compiles packages/science/kernel/heat-step.ts and writes it as a module of text, so that science needs no file at run time and
 * every bundler carries it. A test compiles again and compares.
 * Run: npx node packages/science/scripts/make-heat-step.ts
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import asc from 'assemblyscript/asc'

const SOURCE = join(import.meta.dirname, '../kernel/heat-step.ts')
const MODULE = join(import.meta.dirname, '../src/heat/heat-step-bytes.ts')

/** The compiled kernel. @throws {Error} with the compiler's own words when it does not compile. */
export async function compileHeatStep(): Promise<Uint8Array> {
  let bytes: Uint8Array | undefined
  const { error, stderr } = await asc.main(
    ['heat-step.ts', '-O3', '--noAssert', '--runtime', 'stub', '--enable', 'simd', '--outFile', 'heat-step.wasm'],
    {
      readFile: (name) => (name === 'heat-step.ts' ? readFileSync(SOURCE, 'utf8') : null),
      writeFile: (_name, contents) => {
        if (typeof contents !== 'string') bytes = contents
      },
      listFiles: () => [],
    },
  )
  if (error || !bytes) throw new Error(`heat-step.ts does not compile: ${stderr}`)
  return bytes
}

/** The module that carries them. */
export function moduleOf(bytes: Uint8Array): string {
  return `/** Made by packages/science/scripts/make-heat-step.ts from packages/science/kernel/heat-step.ts. */
export const HEAT_STEP_BASE64 =
  '${Buffer.from(bytes).toString('base64')}'
`
}

if (import.meta.main) writeFileSync(MODULE, moduleOf(await compileHeatStep()))
