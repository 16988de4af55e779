/** The most memory a program of a bench has held. */
import { readFileSync } from 'node:fs'

/**
 * Of this program since it began. The system's own `maxRSS` also counts what the parent held when it started the child,
 * so where the kernel tells the peak of the program itself, that is taken. [kB]
 */
export function peakKb(): number {
  try {
    return Number(/^VmHWM:\s+(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))![1])
  } catch {
    return process.resourceUsage().maxRSS
  }
}
