/** `npm run crib -- ...`: hands the command line to the verbs and ends with their exit code. */
import { enableCompileCache } from 'node:module'
import { processTerminal } from './terminal.ts'

// The second start finds its modules stripped and compiled: about half the time of the first.
enableCompileCache()

const NODE_AT_LEAST = [24, 15] as const

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
if (major < NODE_AT_LEAST[0] || (major === NODE_AT_LEAST[0] && minor < NODE_AT_LEAST[1])) {
  const { createWords } = await import('@crib/wording')
  console.error(
    createWords().say('terminal:node-too-old', { found: process.versions.node, needed: NODE_AT_LEAST.join('.') }),
  )
  process.exit(3)
}

const { runCrib } = await import('./run.ts')
process.exitCode = await runCrib(process.argv.slice(2), processTerminal())
