export { EXIT, type ExitCode } from './exit-codes.ts'
export { runCrib } from './run.ts'
export type { Terminal } from './terminal.ts'
